import { useId } from 'react';
import { type Reference, type Section, sectionProfile, type WallField } from '../../scene';
import { wallTitle } from '../findings';
import { type Lengths, Segments } from '../parts';
import styles from './heat.module.css';
import { againstWords, cutWords, deviationWords, extremesOf, placeWords, wallWords } from './heat-words';
import { SectionInset } from './SectionInset';

interface SectionPanelProps {
  section: Section;
  field: WallField;
  reference: Reference;
  range: number;
  lengths: Lengths;
  onCut: (part: Partial<Section>) => void;
}

/** A section through a wall: where it lies, its picture and its figures. */
export function SectionPanel({ section, field, reference, range, lengths, onCut }: SectionPanelProps) {
  const id = useId();
  const profile = sectionProfile(section, field);
  const { out, back } = extremesOf(profile);
  const place = placeWords(section, field, lengths);
  const against = againstWords(reference, section.cut);
  const title = `${wallTitle[section.wall]}, ${section.cut} section ${place}`;
  const figures = `furthest out ${deviationWords(out, lengths)}; furthest back ${deviationWords(back, lengths)}`;
  return (
    <section className={styles.section} aria-label="Section">
      <div className={styles.sectionControls}>
        <h3>{title}</h3>
        <Segments
          label="Wall that is cut"
          value={section.wall}
          choices={wallWords}
          onChoose={(wall) => onCut({ wall })}
        />
        <Segments label="Way it is cut" value={section.cut} choices={cutWords} onChoose={(cut) => onCut({ cut })} />
        <div className={styles.slider}>
          <label htmlFor={`${id}-place`}>Section {place}</label>
          <input
            id={`${id}-place`}
            type="range"
            min={0}
            max={100}
            step={1}
            value={Math.round(100 * section.share)}
            aria-valuetext={place}
            onChange={({ target }) => onCut({ share: target.valueAsNumber / 100 })}
          />
        </div>
        <dl className={styles.figures}>
          <div>
            <dt>Furthest out</dt>
            <dd>{deviationWords(out, lengths)}</dd>
          </div>
          <div>
            <dt>Furthest back</dt>
            <dd>{deviationWords(back, lengths)}</dd>
          </div>
        </dl>
        <p className={styles.about}>
          {field.assumed ? 'Part of this wall’s shape is assumed, not measured. ' : ''}Against the best {against}{' '}
          through the wall; the band is its ±.
        </p>
      </div>
      <SectionInset
        section={section}
        profile={profile}
        range={range}
        against={against}
        description={`${title}, against the ${against}: ${figures}.`}
        lengths={lengths}
      />
    </section>
  );
}
