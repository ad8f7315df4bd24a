import { useDraft, useSession } from '../../../job';
import { Card, ChoiceField, NumberField, Switch } from '../../parts';
import styles from '../bench.module.css';

const pieces = [
  ['top', 'Top piece, wall to wall'],
  ['sideTops', 'Along the tops of the side panels'],
  ['verticals', 'Down the outer edges'],
  ['insideCorners', 'Angle strips in the inside corners'],
] as const;

/** Which trim is made, from what strip, and how its pieces meet. */
export function TrimForm() {
  const trim = useDraft(({ draft }) => draft.job.trim);
  const { choose } = useSession().draft.getState();
  return (
    <>
      <Card title="Which trim">
        <div className={styles.switches}>
          {pieces.map(([name, label]) => (
            <Switch key={name} label={label} on={trim[name]} onChange={(on) => choose(['trim', name], on)} />
          ))}
        </div>
        <div className={styles.form}>
          <ChoiceField
            label="Joint at the corners"
            labelShown
            value={trim.joinery}
            onChoose={(joinery) => choose(['trim', 'joinery'], joinery)}
            choices={[
              ['butt', 'butt, square ends'],
              ['mitre', 'mitre, true angles'],
            ]}
          />
          <ChoiceField
            label="Outer pieces end"
            labelShown
            value={trim.foot}
            onChoose={(foot) => choose(['trim', 'foot'], foot)}
            choices={[
              ['floor', 'at the floor'],
              ['rim', 'on the rim'],
            ]}
          />
        </div>
      </Card>
      <Card title="Profile and fit of the trim">
        <div className={styles.form}>
          <NumberField path={['trim', 'width']} label="Width of the face" labelShown />
          <NumberField
            path={['trim', 'verticalWidth']}
            label="Width down the sides"
            labelShown
            optional
            placeholder="the same"
          />
          <NumberField path={['trim', 'thickness']} label="Thickness" labelShown />
          <NumberField path={['trim', 'lip']} label="Lip over the panel’s edge" labelShown />
          <NumberField path={['trim', 'rise']} label="Above the panels’ top" labelShown />
          <NumberField path={['trim', 'overhang']} label="Past the panels’ front" labelShown />
          <NumberField path={['trim', 'joint']} label="Joint between pieces" labelShown />
          <NumberField path={['trim', 'floorGap']} label="Gap to the floor" labelShown />
          <NumberField path={['trim', 'tapeSpacing']} label="Tape every" labelShown />
          <NumberField path={['trim', 'allowance']} label="Extra for fitting" labelShown />
        </div>
        <p className={styles.about}>A lip of 0 is a flat strip. The extra is added when stock lengths are cut.</p>
      </Card>
      <Card title="Plumb outer line">
        <p className={styles.about}>
          From the back wall out to the outer edge of the side pieces. Left empty, it is set where the panels’ edges
          stand out most.
        </p>
        <div className={styles.form}>
          {(['left', 'right'] as const).map((side) => (
            <NumberField
              key={side}
              path={['trim', 'outerLine', side]}
              label={side === 'left' ? 'On the left' : 'On the right'}
              labelShown
              optional
              placeholder="fitted"
            />
          ))}
        </div>
      </Card>
      {trim.insideCorners && (
        <Card title="Angle strip">
          <div className={styles.form}>
            <NumberField path={['trim', 'angleStrip', 'width']} label="Width of each flange" labelShown />
            <NumberField path={['trim', 'angleStrip', 'thickness']} label="Thickness of the strip" labelShown />
          </div>
        </Card>
      )}
    </>
  );
}
