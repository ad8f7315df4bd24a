import type { PanelName } from '../../core';
import { useDraft, useSession } from '../../job';
import { panelTitle } from '../alcove';
import { Card, ChoiceField, NumberField, Switch } from '../parts';
import styles from './bench.module.css';

const across = { back: ['left', 'right'], left: ['back', 'front'], right: ['back', 'front'] } as const;

/** Sheets, joints and how the panels are to end. */
export function FitForm({ panel }: { panel: PanelName }) {
  const fit = useDraft(({ draft }) => draft.job.fit);
  const grain = useDraft(({ draft }) => draft.job.sheets[panel].grain ?? 'none');
  const { choose } = useSession().draft.getState();
  const kept: readonly string[] = fit.keep[panel];
  const keep = (pair: readonly [string, string]) => kept.find((edge) => pair.includes(edge)) ?? 'none';
  const setKeep = (pair: readonly [string, string], edge: string) =>
    choose(
      ['fit', 'keep', panel],
      [...kept.filter((other) => !pair.includes(other)), ...(edge === 'none' ? [] : [edge])],
    );
  return (
    <>
      <Card title={`Sheet for the ${panelTitle[panel].toLowerCase()}`}>
        <div className={styles.form}>
          <NumberField path={['sheets', panel, 'width']} label="Sheet width" labelShown />
          <NumberField path={['sheets', panel, 'height']} label="Sheet height" labelShown />
          <ChoiceField
            label="Factory edge kept, across"
            labelShown
            value={keep(across[panel])}
            onChoose={(edge) => setKeep(across[panel], edge)}
            choices={[['none', 'none, centred'], ...across[panel].map((edge) => [edge, edge] as const)]}
          />
          <ChoiceField
            label="Factory edge kept, up"
            labelShown
            value={keep(['top', 'bottom'])}
            onChoose={(edge) => setKeep(['top', 'bottom'], edge)}
            choices={[
              ['none', 'none, centred'],
              ['top', 'top'],
              ['bottom', 'bottom'],
            ]}
          />
          <ChoiceField
            label="Grain or pattern runs"
            labelShown
            value={grain}
            onChoose={(way) => choose(['sheets', panel, 'grain'], way)}
            choices={[
              ['none', 'neither way'],
              ['up', 'up the panel'],
              ['across', 'across the panel'],
            ]}
          />
        </div>
      </Card>
      <Card title="Fit of all panels">
        <div className={styles.form}>
          <NumberField path={['fit', 'thickness']} label="Panel thickness" labelShown />
          <NumberField path={['fit', 'bed']} label="Adhesive bed" labelShown />
          <NumberField path={['fit', 'cornerJoint']} label="Joint in the corners" labelShown />
          <NumberField path={['fit', 'rimJoint']} label="Joint at the rim" labelShown />
          <NumberField path={['fit', 'top']} label="Top above the level line" labelShown />
          <NumberField path={['fit', 'frontSetBack']} label="Set back from the front edge" labelShown />
          <NumberField path={['fit', 'markTolerance']} label="Straight cuts within" labelShown />
          <ChoiceField
            label="Wet wall"
            labelShown
            value={fit.wetWall}
            onChoose={(wall) => choose(['fit', 'wetWall'], wall)}
            choices={[
              ['left', 'left'],
              ['back', 'back'],
              ['right', 'right'],
            ]}
          />
        </div>
        <Switch
          label="Thin sheets that follow a bowed wall"
          on={fit.flexible}
          onChange={(on) => choose(['fit', 'flexible'], on)}
        />
      </Card>
    </>
  );
}
