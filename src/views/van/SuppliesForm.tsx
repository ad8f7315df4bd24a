import { degreeMark } from '../../core';
import { type FieldPath, useDraft, useSession, valueAt } from '../../job';
import { Card, ChoiceField, NumberField } from '../parts';
import { cartridgeChoice, cartridgeChoices } from './cartridges';
import styles from './van.module.css';

/** What the quantities are counted by. */
export function SuppliesForm() {
  const layout = useDraft(({ draft }) => draft.job.supplies.adhesive.layout);
  const degree = useDraft(({ draft }) => degreeMark(draft.job.display));
  const { choose } = useSession().draft.getState();
  return (
    <Card title="Counted by">
      <h3>Adhesive</h3>
      <div className={styles.form}>
        <ChoiceField
          label="Laid in"
          labelShown
          value={layout}
          choices={[
            ['dots', 'dots'],
            ['beads', 'upright beads'],
          ]}
          onChoose={(chosen) => choose(['supplies', 'adhesive', 'layout'], chosen)}
        />
        <NumberField path={['supplies', 'adhesive', 'spacing']} label="Spacing" labelShown />
        <NumberField path={['supplies', 'adhesive', 'edgeClear']} label="Clear of edges" labelShown />
        <NumberField path={['supplies', 'adhesive', 'pressedWidth']} label="Width pressed flat" labelShown />
        <NumberField path={['supplies', 'adhesive', 'trimBead']} label="Bead along trim" labelShown />
        <Cartridge path={['supplies', 'adhesive', 'cartridge']} />
        <Share path={['supplies', 'adhesive', 'waste']} label="Waste" />
      </div>
      {(['sealant', 'caulk'] as const).map((paste) => (
        <section key={paste} className={styles.column} aria-label={pasteTitle[paste]}>
          <h3>{pasteTitle[paste]}</h3>
          <div className={styles.form}>
            <Cartridge path={['supplies', paste, 'cartridge']} />
            <NumberField path={['supplies', paste, 'fillet']} label="Leg of the fillet" labelShown />
            <Share path={['supplies', paste, 'toolingLoss']} label="Lost in tooling" />
          </div>
        </section>
      ))}
      <div className={styles.form}>
        <NumberField path={['supplies', 'widestJoint']} label="Widest joint for sealant" labelShown />
        <NumberField path={['supplies', 'backerRod', 'roll']} label="Backer rod, a roll" labelShown />
      </div>
      <h3>Movement</h3>
      <div className={styles.form}>
        {growths(degree).map(({ key, label, kind, most }) => (
          <NumberField
            key={key}
            path={['supplies', 'movement', key]}
            label={label}
            kind={kind}
            labelShown
            {...(most && { optional: true, placeholder: 'the same' })}
          />
        ))}
        <NumberField
          path={['supplies', 'movement', 'swing']}
          label={`Change of temperature, ${degree}`}
          kind="temperature-change"
          labelShown
        />
        <NumberField
          path={['supplies', 'movement', 'humidity']}
          label="Change of relative humidity"
          kind="number"
          unit="%"
          labelShown
        />
        <Share path={['supplies', 'movement', 'capability']} label="Sealant moves, of its width" />
      </div>
      <h3>Tape, strips and alcohol</h3>
      <div className={styles.form}>
        <NumberField path={['supplies', 'flashingTape', 'roll']} label="Flashing tape, a roll" labelShown />
        <NumberField path={['supplies', 'flashingTape', 'overlap']} label="Flashing tape past each end" labelShown />
        <NumberField path={['supplies', 'strips', 'spacing']} label="Strips apart" labelShown />
        <NumberField path={['supplies', 'strips', 'edgeClear']} label="Strips clear of edges" labelShown />
        <NumberField path={['supplies', 'strips', 'width']} label="Strip’s width" labelShown />
        <NumberField path={['supplies', 'strips', 'roll']} label="Double-faced strip, a roll" labelShown />
        <NumberField path={['supplies', 'painterTape', 'roll']} label="Painter’s tape, a roll" labelShown />
        <NumberField
          path={['supplies', 'alcohol', 'perSquareMetre']}
          label="Alcohol, for each m² wiped"
          kind="number"
          unit="mL"
          labelShown
        />
        <NumberField
          path={['supplies', 'alcohol', 'bottle']}
          label="Alcohol, a bottle"
          kind="number"
          unit="mL"
          labelShown
        />
      </div>
      <h3>Shelves</h3>
      <div className={styles.form}>
        <NumberField
          path={['supplies', 'brackets', 'perShelf']}
          label="Brackets, each shelf"
          kind="number"
          labelShown
        />
        <NumberField path={['supplies', 'brackets', 'screws']} label="Screws, each bracket" kind="number" labelShown />
        <NumberField path={['supplies', 'brackets', 'box']} label="Screws in a box" kind="number" labelShown />
      </div>
      <p className={styles.about}>Figures to begin with are common practice, no source: put in your own.</p>
    </Card>
  );
}

const growths = (degree: string) =>
  [
    { key: 'expansion', label: `Sheet grows, 10⁻⁶ per ${degree}`, kind: 'per-degree', most: false },
    { key: 'expansionMost', label: `At most, 10⁻⁶ per ${degree}`, kind: 'per-degree', most: true },
    { key: 'swelling', label: 'Sheet grows, 10⁻⁶ per % humidity', kind: 'number', most: false },
    { key: 'swellingMost', label: 'At most, 10⁻⁶ per % humidity', kind: 'number', most: true },
  ] as const;

const pasteTitle = { sealant: 'Sealant, wet joints', caulk: 'Caulk, room side' };

const Share = ({ path, label }: { path: FieldPath; label: string }) => (
  <NumberField path={path} label={label} kind="percent" labelShown />
);

/** A cartridge in a common size, or what it holds. */
function Cartridge({ path }: { path: FieldPath }) {
  const contents = useDraft(({ draft }) => valueAt(draft.job, path)) as number;
  const { choose } = useSession().draft.getState();
  return (
    <>
      <ChoiceField
        label="Cartridge"
        labelShown
        value={cartridgeChoice(contents)}
        choices={cartridgeChoices(contents)}
        onChoose={(chosen) => choose(path, Number(Number(chosen).toFixed(1)))}
      />
      <NumberField path={path} label="Contents of one" kind="number" unit="mL" labelShown />
    </>
  );
}
