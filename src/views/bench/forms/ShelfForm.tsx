import { useDraft, useSession } from '../../../job';
import { capital } from '../../../output';
import { Callout, Card, ChoiceField, Cross, NumberField, RemoveButton, useLengths } from '../../parts';
import styles from '../bench.module.css';
import { fallAdvice, newShelf } from './shelf-words';

const most = 20;

/** Corner shelves: added, removed, and each with its size, place and fall. */
export function ShelfForm({ shown }: { shown: string | null }) {
  const shelves = useDraft(({ draft }) => draft.job.shelves);
  const { addTo } = useSession().draft.getState();
  return (
    <Card
      title="Shelves"
      rows
      aside={
        <button
          type="button"
          data-adds
          disabled={shelves.length >= most}
          onClick={() => addTo(['shelves'], newShelf(shelves))}
        >
          Add a shelf
        </button>
      }
    >
      <p className={styles.about}>
        A shelf is no grab bar: it must not be leant on. Let it fall to the room by 1/8 to 1/4 in per ft (10 to 21 mm/m)
        so that water runs off.
      </p>
      {shelves.length === 0 && <p>No shelf yet.</p>}
      {shelves.map((shelf, i) => (
        <ShelfRow
          // biome-ignore lint/suspicious/noArrayIndexKey: a shelf without an id is nothing but its place in the list
          key={i}
          index={i}
          name={shelf.id ?? `${i + 1}`}
          shown={shown === `shelves.${shelf.id ?? i + 1}`}
        />
      ))}
    </Card>
  );
}

function ShelfRow({ index, name, shown }: { index: number; name: string; shown: boolean }) {
  const shelf = useDraft(({ draft }) => draft.job.shelves[index]);
  const { choose, removeFrom } = useSession().draft.getState();
  const { unit } = useLengths();
  if (!shelf) return null;
  const path = ['shelves', index] as const;
  const advice = fallAdvice(shelf.slope, unit);
  return (
    <fieldset className={styles.item} data-shown={shown || undefined} data-row>
      <legend>{capital(`shelf ${name}`)}</legend>
      <div className={styles.form}>
        <ChoiceField
          label="Corner"
          labelShown
          value={shelf.corner}
          onChoose={(corner) => choose([...path, 'corner'], corner)}
          choices={[
            ['left', 'left'],
            ['right', 'right'],
          ]}
        />
        <NumberField path={[...path, 'aboveRim']} label="Top above the rim" labelShown />
        <NumberField path={[...path, 'back']} label="Along the back wall" labelShown />
        <NumberField path={[...path, 'side']} label="Along the side wall" labelShown />
        <NumberField path={[...path, 'thickness']} label="Thickness" labelShown />
        <NumberField path={[...path, 'slope']} kind="slope" label="Fall to the room" labelShown />
        <NumberField path={[...path, 'gap']} label="Gap to each panel" labelShown />
        <ChoiceField
          label="Front edge"
          labelShown
          value={shelf.front}
          onChoose={(front) => choose([...path, 'front'], front)}
          choices={[
            ['straight', 'straight'],
            ['round', 'round'],
            ['returned', 'straight, with returns'],
          ]}
        />
        {shelf.front === 'returned' && (
          <NumberField path={[...path, 'returns']} label="Length of the returns" labelShown />
        )}
      </div>
      {advice && (
        <Callout weight="warn">
          <p>{advice}</p>
        </Callout>
      )}
      <RemoveButton onRemove={() => removeFrom(['shelves'], index)}>
        <Cross /> Remove shelf {name}
      </RemoveButton>
    </fieldset>
  );
}
