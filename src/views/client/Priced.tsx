import { useMemo } from 'react';
import { type Job, priceOf, type Result } from '../../core';
import { Card } from '../parts';
import { PriceTable } from './PriceTable';
import { Quote } from './Quote';

/** Price and quote to read; nothing where the link came without prices. */
export function Priced({ job, result }: { job: Job; result: Result }) {
  const price = useMemo(() => priceOf(job, result), [job, result]);
  if (price.lines.every(({ amount }) => amount === null)) return null;
  return (
    <>
      <Card title="Price">
        <PriceTable price={price} label="Price" />
      </Card>
      <Quote job={job} result={result} price={price} />
    </>
  );
}
