import type { TableLayout, TableReading, TableSeparator } from '../../../scan';
import { ChoiceField } from '../../parts';
import styles from './scan.module.css';

const separators: readonly (readonly [TableSeparator, string])[] = [
  ['blank', 'blanks'],
  ['comma', 'commas'],
  ['semicolon', 'semicolons'],
  ['tab', 'tabs'],
  ['bar', 'bars'],
];

/** How the lines of a text were read; a change reads it again. */
export function ReadAs({ table, onRead }: { table: TableReading; onRead: (table: TableLayout) => void }) {
  const { separator, decimal, columns, names, width, sample } = table;
  const columnChoices = Array.from({ length: Math.max(width, ...columns.map((column) => column + 1)) }, (_, column) => {
    const name = names?.[column];
    return [String(column), name === undefined ? `column ${column + 1}` : `${column + 1}: ${name}`] as const;
  });
  return (
    <details className={styles.more}>
      <summary>How its lines were read</summary>
      <pre className={styles.sample}>{sample.join('\n')}</pre>
      <div className={styles.fields}>
        <ChoiceField
          label="Numbers parted by"
          labelShown
          value={separator}
          choices={separators}
          onChoose={(chosen) => onRead({ separator: chosen, decimal, columns })}
        />
        <ChoiceField
          label="Decimal mark"
          labelShown
          value={decimal}
          choices={[
            ['point', 'point'],
            ['comma', 'comma'],
          ]}
          onChoose={(chosen) => onRead({ separator, decimal: chosen, columns })}
        />
        {(['x', 'y', 'z'] as const).map((axis, i) => (
          <ChoiceField
            key={axis}
            label={`${axis} from`}
            labelShown
            value={String(columns[i])}
            choices={columnChoices}
            onChoose={(chosen) => {
              const changed: TableLayout['columns'] = [...columns];
              changed[i] = Number(chosen);
              onRead({ separator, decimal, columns: changed });
            }}
          />
        ))}
      </div>
    </details>
  );
}
