import type { Result } from '../../core';
import { ChoiceField, Segments } from '../parts';
import { goTo } from '../place';
import styles from './bench.module.css';
import type { BenchItem, Group } from './bench-item';

const groups: readonly (readonly [Group, string])[] = [
  ['panels', 'Panels'],
  ['trim', 'Trim'],
  ['legs', 'Legs and tub'],
  ['shelves', 'Shelves'],
  ['fillers', 'Fillers'],
  ['sheets', 'Sheets and lengths'],
  ['beds', 'How it sits'],
  ['ways', 'Getting in'],
];

/** More pieces than these are offered as a list to choose from, to save room. */
const mostButtons = 3;

/** All that is cut, by kind: pick one and its template shows. */
export function BenchList({ shown, result }: { shown: BenchItem; result: Result }) {
  const count = (group: Group): string => {
    if (group === 'ways' || group === 'beds') return '';
    return ` ${group === 'panels' ? 3 : group === 'sheets' ? result.layout.sheets.length : result.pieces[group].length}`;
  };
  const Pick = shown.siblings.length > mostButtons ? ChoiceField<string> : Segments<string>;
  const item =
    shown.group === 'ways' || shown.group === 'beds'
      ? `${shown.group}.${shown.panel}`
      : (shown.panel ?? shown.piece?.id ?? null);
  return (
    <nav className={styles.list} aria-label="What is cut">
      <Segments
        label="Kind of piece"
        value={shown.group}
        choices={groups.map(([group, words]) => [group, `${words}${count(group)}`] as const)}
        onChoose={(group) => goTo({ name: 'bench', item: group === 'panels' ? 'back' : group })}
      />
      {shown.siblings.length > 0 && (
        <div className={styles.siblings}>
          <Pick
            label={shown.panel ? 'Panel' : 'Piece'}
            value={item ?? ''}
            choices={shown.siblings}
            onChoose={(chosen) => goTo({ name: 'bench', item: chosen })}
          />
        </div>
      )}
    </nav>
  );
}
