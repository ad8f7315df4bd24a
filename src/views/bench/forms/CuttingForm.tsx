import { useDraft, useSession } from '../../../job';
import { panelTitle } from '../../alcove';
import { Card, ChoiceField, NumberField, Switch } from '../../parts';
import styles from '../bench.module.css';
import { type CutRule, cutRule, ruleChoices } from './cut-rule';

const panels = ['back', 'left', 'right'] as const;

const rules: readonly (readonly [CutRule, string])[] = [
  ['keep', 'own sheet, factory edges kept'],
  ['centre', 'own sheet, pattern centred'],
  ['least', 'least sheet for all'],
];

/** Sheets, saw cut, and the rule by which pieces are laid on sheets. */
export function CuttingForm() {
  const rule = useDraft(({ draft }) => cutRule(draft.job));
  const fit = useDraft(({ draft }) => draft.job.fit);
  const turn = useDraft(({ draft }) => draft.job.cutting.turn);
  const { choose, chooseAll } = useSession().draft.getState();
  return (
    <>
      <Card title="How sheets are cut up">
        <div className={styles.form}>
          <ChoiceField
            label="Each panel comes from"
            labelShown
            value={rule}
            choices={rules}
            onChoose={(chosen) => chooseAll(ruleChoices(chosen, fit.keep))}
          />
          <NumberField path={['cutting', 'kerf']} label="Saw cut" labelShown />
          <NumberField path={['cutting', 'margin']} label="Margin around a piece" labelShown />
          <NumberField path={['cutting', 'leastOffcut']} label="Waste below" labelShown />
        </div>
        <p className={styles.about}>
          Which factory edge is kept is set with each panel. Legs and fillers are cut from offcuts where they fit.
        </p>
        <Switch
          label="Pieces that show may be turned a quarter (no grain or pattern)"
          on={turn}
          onChange={(on) => choose(['cutting', 'turn'], on)}
        />
      </Card>
      <Card title="Sheets as bought">
        {panels.map((panel) => (
          <fieldset key={panel} className={styles.pair}>
            <legend>{panelTitle[panel]}</legend>
            <NumberField path={['sheets', panel, 'width']} label="Width" labelShown />
            <NumberField path={['sheets', panel, 'height']} label="Height" labelShown />
          </fieldset>
        ))}
      </Card>
    </>
  );
}
