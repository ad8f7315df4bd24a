import { type Finish, finishes, lookWords, nameOfFinish } from '../../core';
import { type FieldPath, useDraft, useSession, valueAt } from '../../job';
import { ChoiceField, NumberField, Tick } from '../parts';
import { ColourField } from './ColourField';
import styles from './client.module.css';
import { Swatch } from './Swatch';

const looks = Object.entries(lookWords) as [Finish['look'], string][];
const sizeWords: Record<Finish['look'], string | null> = {
  plain: null,
  stone: 'Size of the figure',
  ribbed: 'From rib to rib',
  'large-format': 'Width of a field',
};

/** Chooses a finish, or makes one's own. */
export function FinishForm({ path, title }: { path: FieldPath; title: string }) {
  const finish = useDraft(({ draft }) => valueAt(draft.job, path)) as Finish;
  const { choose } = useSession().draft.getState();
  const held = nameOfFinish(finish);
  const size = sizeWords[finish.look];
  return (
    <div className={styles.column}>
      <fieldset className={styles.swatches}>
        <legend>{title}</legend>
        {finishes.map(({ name, finish: each }) => (
          <button
            key={name}
            type="button"
            className={styles.pickFinish}
            aria-pressed={name === held}
            onClick={() => choose(path, each)}
          >
            <Swatch finish={each} />
            <span>
              {name === held && <Tick />}
              {name}
            </span>
          </button>
        ))}
      </fieldset>
      <details className={styles.own}>
        <summary>{held === null ? 'A finish of your own' : 'Change this finish'}</summary>
        <div className={styles.form}>
          <ChoiceField
            label="Look"
            labelShown
            value={finish.look}
            choices={looks}
            onChoose={(look) => choose([...path, 'look'], look)}
          />
          <ColourField path={[...path, 'colour']} label="Colour" />
          {finish.look !== 'plain' && (
            <ColourField path={[...path, 'second']} label={finish.look === 'stone' ? 'Veins' : 'Joints and grooves'} />
          )}
          {size !== null && <NumberField path={[...path, 'size']} label={size} labelShown />}
          {finish.look !== 'plain' && finish.look !== 'ribbed' && (
            <button
              type="button"
              onClick={() => choose([...path, 'seed'], (Math.floor(finish.seed) * 7 + 13) % 10_000)}
            >
              Another figure
            </button>
          )}
          <NumberField path={[...path, 'gloss']} label="Gloss" kind="percent" labelShown />
        </div>
      </details>
      <div className={styles.form}>
        <ColourField path={[...path, 'trim']} label="Colour of the trim" />
      </div>
    </div>
  );
}
