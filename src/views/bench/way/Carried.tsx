import type { Carried as CarriedSheet, Job } from '../../../core';
import { capital, carriedName, passageNames, passageWords } from '../../../output';
import { Callout, Card, Cross, Tick, useLengths } from '../../parts';
import styles from '../bench.module.css';

/** Every sheet as bought and every panel as cut, past the places on the way whose sizes are given. */
export function Carried({ job, carried }: { job: Job; carried: readonly CarriedSheet[] }) {
  const lengths = useLengths();
  const judged = carried.filter(({ passages }) => passages.length > 0);
  return (
    <Card title="On the way to the alcove">
      {judged.length === 0 ? (
        <p className={styles.about}>
          Put in the sizes of door, corridor, stair or ceiling: each sheet and panel is then judged against them.
        </p>
      ) : (
        <>
          <Standing carried={judged} />
          <table className={styles.marks}>
            <thead>
              <tr>
                <th scope="col">What</th>
                <th scope="col">Size</th>
                {judged[0]!.passages.map(({ place }) => (
                  <th key={place} scope="col">
                    {passageNames[place]}
                  </th>
                ))}
              </tr>
            </thead>
            <tbody>
              {judged.map((each) => (
                <tr key={`${each.panel} ${each.as}`}>
                  <th scope="row">{capital(carriedName(each))}</th>
                  <td data-head="Size">
                    {lengths.text(each.width)} × {lengths.text(each.height)}
                  </td>
                  {each.passages.map((passage) => (
                    <td key={passage.place} data-head={passageNames[passage.place]}>
                      {passage.passes ? <Tick /> : <Cross />} {passageWords(passage, job)}
                    </td>
                  ))}
                </tr>
              ))}
            </tbody>
          </table>
          <p className={styles.about}>
            Carried on edge, level or on end; along a stair, with its slope. A half turn of a stair is taken as two
            quarter turns. Where it is near, try the way with a strip of cardboard first.
          </p>
        </>
      )}
    </Card>
  );
}

function Standing({ carried }: { carried: readonly CarriedSheet[] }) {
  const stuck = carried.filter(({ passages }) => passages.some(({ passes }) => !passes));
  if (stuck.length === 0) return <Callout weight="good">Every sheet and panel passes.</Callout>;
  const bad = stuck.some(({ as }) => as === 'panel');
  return (
    <Callout weight={bad ? 'bad' : 'warn'}>
      {bad
        ? `Does not pass: ${stuck.map(carriedName).join('; ')}.`
        : `Does not pass as bought, so cut it first: ${stuck.map(carriedName).join('; ')}.`}
    </Callout>
  );
}
