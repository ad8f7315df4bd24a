import { type Job, SHELF_COUNTS, SHELF_SIZES, type ShelfSet, shelfSetOf, shelvesOf } from '../../core';
import { type FieldPath, useDraft, useSession, valueAt } from '../../job';
import { ChoiceField, useLengths } from '../parts';
import styles from './client.module.css';

const countWords: Record<number, string> = { 1: 'one', 2: 'two', 3: 'three' };
const corners: readonly (readonly [ShelfSet['corners'], string])[] = [
  ['left', 'left corner'],
  ['right', 'right corner'],
  ['both', 'each corner'],
];
const fronts: readonly (readonly [ShelfSet['front'], string])[] = [
  ['round', 'round'],
  ['straight', 'straight'],
  ['returned', 'with returns'],
];
/** What shelves are when somebody first asks for some. */
const FIRST: ShelfSet = { count: 2, corners: 'left', size: SHELF_SIZES[1], front: 'round' };

/** Shelves of a choice: as planned, none, or a usual set. @param tall height of the panels above the rim, mm */
export function ShelvesOfChoice({ path, tall }: { path: FieldPath; tall: number }) {
  const shelves = useDraft(({ draft }) => valueAt(draft.job, path)) as Job['shelves'] | undefined;
  const planned = useDraft(({ draft }) => draft.job.shelves);
  const { choose } = useSession().draft.getState();
  const { text } = useLengths();
  const set = shelves === undefined ? null : shelfSetOf(shelves);
  const put = (change: Partial<ShelfSet>) =>
    choose(path, shelvesOf({ ...(set ?? shelfSetOf(planned) ?? FIRST), ...change }, tall));
  const many = shelves === undefined ? 'planned' : set === null ? 'none' : String(set.count);
  return (
    <div className={styles.form}>
      <ChoiceField
        label="Shelves"
        labelShown
        value={many}
        choices={[
          ['planned', 'as planned'],
          ['none', 'none'],
          ...SHELF_COUNTS.map((count) => [String(count), countWords[count]!] as const),
        ]}
        onChoose={(chosen) => {
          if (chosen === 'planned') choose(path, undefined);
          else if (chosen === 'none') choose(path, []);
          else put({ count: Number(chosen) });
        }}
      />
      {set && (
        <>
          <ChoiceField
            label="In the"
            labelShown
            value={set.corners}
            choices={corners}
            onChoose={(chosen) => put({ corners: chosen })}
          />
          <ChoiceField
            label="Along each wall"
            labelShown
            value={String(set.size)}
            choices={SHELF_SIZES.map((size) => [String(size), text(size)] as const)}
            onChoose={(chosen) => put({ size: Number(chosen) })}
          />
          <ChoiceField
            label="Front edge"
            labelShown
            value={set.front}
            choices={fronts}
            onChoose={(chosen) => put({ front: chosen })}
          />
        </>
      )}
    </div>
  );
}
