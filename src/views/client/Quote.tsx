import type { Job, Price, Result } from '../../core';
import { quoteWords } from '../../output';
import { Card } from '../parts';
import styles from './client.module.css';
import { today } from './today';

/** What a quote says beside its lines. */
export function Quote({ job, result, price }: { job: Job; result: Result; price: Price }) {
  const words = quoteWords(job, result, price, today());
  const list = (title: string, items: readonly string[]) =>
    items.length > 0 && (
      <>
        <h3>{title}</h3>
        <ul className={styles.sentences}>
          {items.map((item) => (
            <li key={item}>{item}</li>
          ))}
        </ul>
      </>
    );
  return (
    <Card title={job.quote.number === '' ? 'Quote' : `Quote ${job.quote.number}`}>
      {job.quote.client !== '' && (
        <p>
          <strong>For {job.quote.client}</strong>
        </p>
      )}
      {job.quote.from !== '' && <p className={styles.lines}>{job.quote.from}</p>}
      <p>
        {words.date}. This offer holds until <strong>{words.validUntil}</strong>.
      </p>
      {list('Included', [...words.included, ...words.finish])}
      {list('Not included', words.exclusions)}
      {list('Please note', [...words.cautions, ...words.figures])}
    </Card>
  );
}
