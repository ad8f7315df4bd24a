import { useMemo, useState } from 'react';
import { useSessionState } from '../../job';
import { contourSteps, drawnHeat, fittingStep, HeatView, scaleRange } from '../../scene';
import { FactorSlider, useCalm, useDrawing } from '../alcove';
import { wallTitle } from '../findings';
import { ChoiceField, Segments, Switch, useLengths } from '../parts';
import styles from './heat.module.css';
import { useHeat } from './heat-store';
import { placeWords, referenceWords } from './heat-words';
import { Legend } from './Legend';
import { SectionPanel } from './SectionPanel';

/** The walls painted by how far out of true they stand, and a section through one of them. */
export function HeatPane() {
  const result = useSessionState((state) => state.result);
  const job = useSessionState((state) => state.solved);
  const { reference, step: chosen, section, set, cut } = useHeat();
  const { factor, tags, set: draw } = useDrawing();
  const lengths = useLengths();
  const calm = useCalm();
  const [reset, setReset] = useState(0);
  const drawn = useMemo(
    () => (result && job ? drawnHeat(result, job, reference, factor) : null),
    [result, job, reference, factor],
  );
  if (!drawn) return <p className={styles.wait}>Nothing to draw yet.</p>;
  const largest = Math.max(...drawn.walls.map(({ field }) => Math.max(field.highest.value, -field.lowest.value)));
  const steps = contourSteps[lengths.unit];
  const own = steps.find((each) => each === chosen) ?? null;
  const step = own ?? fittingStep(largest, lengths.unit);
  const range = scaleRange(largest, step);
  const { field } = drawn.walls.find(({ name }) => name === section.wall)!;
  const place = placeWords(section, field, lengths);
  const plane = reference === 'plumb' ? 'plumb plane' : 'flat plane';
  return (
    <section className={styles.pane} aria-label="How far the walls stand off, in 3D">
      <div className={styles.stage} data-testid="heat">
        <HeatView
          drawn={drawn}
          range={range}
          interval={step}
          section={section}
          sectionLabel={`Section through the ${wallTitle[section.wall].toLowerCase()}`}
          sectionText={place}
          onSection={(share) => cut({ share })}
          tags={tags}
          lengths={lengths}
          description={`The three walls painted by how far each stands off its best ${plane}, with a contour line each ${lengths.fine(step)}. The section and the figures beside it say the same in words.`}
          calm={calm}
          reset={reset}
        />
        <button type="button" className={styles.reset} onClick={() => setReset((count) => count + 1)}>
          First view
        </button>
      </div>
      <Legend range={range} step={step} lengths={lengths} />
      <div className={styles.controls}>
        <Segments
          label="What the colours show"
          value={reference}
          choices={referenceWords}
          onChoose={(next) => set({ reference: next })}
        />
        <ChoiceField
          label="Contour line each"
          labelShown
          value={own === null ? 'fitting' : String(own)}
          onChoose={(next) => set({ step: next === 'fitting' ? null : Number(next) })}
          choices={[
            ['fitting', `${lengths.fine(fittingStep(largest, lengths.unit))}, as fits`],
            ...steps.map((each) => [String(each), lengths.fine(each)] as const),
          ]}
        />
        <FactorSlider label="Shape drawn" />
        <Switch label="Labels" on={tags} onChange={(on) => draw({ tags: on })} />
      </div>
      <SectionPanel section={section} field={field} reference={reference} range={range} lengths={lengths} onCut={cut} />
    </section>
  );
}
