import type { WallName } from '../../core';
import { type DraftStud, newStud, useDraft, useSession } from '../../job';
import { Card, ChoiceField, NumberField, Plus, SidedField } from '../parts';
import lists from './lists.module.css';
import { RowHead } from './RowHead';
import { WaitingLine } from './readings';
import rows from './rows.module.css';
import styles from './site.module.css';

const walls: readonly (readonly [WallName, string])[] = [
  ['left', 'left'],
  ['back', 'back'],
  ['right', 'right'],
];

/** What is known to stand behind the walls, so that holes clear it and bars find it. */
export function Studs() {
  const studs = useDraft(({ draft }) => draft.job.studs) ?? [];
  const { draft } = useSession();
  const add = () => draft.getState().addTo(['studs'], newStud(draft.getState().draft.job));
  return (
    <Card
      title="Studs and blocking"
      rows
      aside={
        <button type="button" className={lists.add} data-adds onClick={add}>
          <Plus /> Add a stud
        </button>
      }
    >
      <p className={styles.about}>
        Holes are to clear studs, and a grab bar must be fixed to one or to blocking. Look for cables and pipes before
        you drill into a wall.
      </p>
      {studs.length === 0 && <p>None known.</p>}
      <ul className={lists.list}>
        {studs.map((stud) => (
          <StudRow key={stud.id} stud={stud} />
        ))}
      </ul>
    </Card>
  );
}

function StudRow({ stud }: { stud: DraftStud }) {
  const { choose, remove } = useSession().draft.getState();
  const path = ['studs', stud.id] as const;
  return (
    <li className={rows.reading} data-row>
      <RowHead name={stud.id} onRemove={() => remove('studs', stud.id)} />
      <div className={rows.sentence}>
        <span className={rows.phrase}>
          <ChoiceField
            label={`${stud.id}: wall`}
            value={stud.wall}
            choices={walls}
            onChoose={(wall) => choose([...path, 'wall'], wall)}
          />
          wall, its middle
        </span>
        {stud.wall === 'back' ? (
          <span className={rows.phrase}>
            <SidedField path={[...path, 'at']} label="distance from the plumb line" sides={['right of', 'left of']} />
            plumb line,
          </span>
        ) : (
          <span className={rows.phrase}>
            <NumberField path={[...path, 'at']} label="distance out from the back wall" /> out from the back wall,
          </span>
        )}
        <span className={rows.phrase}>
          <NumberField path={[...path, 'width']} label="width of the stud" /> wide
        </span>
      </div>
      <WaitingLine list="studs" id={stud.id} />
    </li>
  );
}
