import { useDraft, useSession } from '../../../job';
import { Card, ChoiceField, NumberField } from '../../parts';
import styles from '../bench.module.css';

type Stiffness = 'follows' | 'stated' | 'rigid';

/** How stiff sheets are, what holds them to the wall, what their edges are cut to, and what shims are for. */
export function BeddingForm() {
  const bedding = useDraft(({ draft }) => draft.job.bedding);
  const flexible = useDraft(({ draft }) => draft.job.fit.flexible);
  const { choose, chooseAll } = useSession().draft.getState();
  const stiffness: Stiffness = flexible ? 'follows' : bedding.stiffness;
  return (
    <>
      <Card title="Stiffness of the sheets">
        <div className={styles.form}>
          <ChoiceField<Stiffness>
            label="They"
            labelShown
            value={stiffness}
            onChoose={(chosen) =>
              chooseAll([
                [['fit', 'flexible'], chosen === 'follows'],
                ...(chosen === 'follows' ? [] : [[['bedding', 'stiffness'], chosen] as const]),
              ])
            }
            choices={[
              ['stated', 'bend as stiff as stated'],
              ['rigid', 'do not bend'],
              ['follows', 'follow their walls'],
            ]}
          />
          <NumberField path={['fit', 'thickness']} label="Panel thickness" labelShown />
          <NumberField
            path={['bedding', 'modulusAcross']}
            label="Young’s modulus, across"
            kind="number"
            unit="N/mm²"
            labelShown
          />
          <NumberField
            path={['bedding', 'modulusUp']}
            label="Young’s modulus, up"
            kind="number"
            unit="N/mm²"
            labelShown
          />
          <NumberField path={['bedding', 'poisson']} label="Poisson’s ratio" kind="number" labelShown />
          <NumberField path={['bedding', 'strainLimit']} label="Most strain in bending" kind="number" labelShown />
        </div>
        <p className={styles.about}>
          The maker’s sheet says them. A strain of 0.003 is 0.3 %. What stands here at first is common practice, no
          source.
        </p>
      </Card>
      <Card title="Bed and adhesive">
        <div className={styles.form}>
          <NumberField path={['fit', 'bed']} label="Even bed" labelShown />
          <NumberField path={['bedding', 'reach']} label="Thickest bed it bridges" labelShown />
          <NumberField
            path={['bedding', 'pressing']}
            label="Strips and braces press with"
            kind="number"
            unit="N/m²"
            labelShown
          />
        </div>
      </Card>
      <Card title="Edges and shims">
        <div className={styles.form}>
          <ChoiceField
            label="Edges are cut to"
            labelShown
            value={bedding.edges}
            onChoose={(edges) => choose(['bedding', 'edges'], edges)}
            choices={[
              ['seated', 'the sheets as they sit'],
              ['shimmed', 'the sheets on their shims'],
              ['even', 'an even bed all over'],
            ]}
          />
          <ChoiceField
            label="Shims bring them"
            labelShown
            value={bedding.shimTo}
            onChoose={(to) => choose(['bedding', 'shimTo'], to)}
            choices={[
              ['flat', 'flat, as the wall leans'],
              ['plumb', 'flat and plumb'],
            ]}
          />
          <NumberField path={['bedding', 'shimSpacing']} label="Between shims" labelShown />
          <NumberField path={['bedding', 'leastShim']} label="Thinnest shim" labelShown />
        </div>
        <p className={styles.about}>
          An even bed is what older jobs were cut to. Where shims are not set, what they would be is listed.
        </p>
      </Card>
    </>
  );
}
