import { useMemo } from 'react';
import { type Job, priceOf, type Result } from '../../core';
import { Callout, Card } from '../parts';
import styles from './client.module.css';
import { PriceForm } from './PriceForm';
import { PriceTable } from './PriceTable';
import { Quote } from './Quote';
import { QuoteDownload } from './QuoteDownload';
import { QuoteForm } from './QuoteForm';

/** The price by the person's own list, and the quote that follows from it. */
export function PricePart({ job, result }: { job: Job; result: Result }) {
  const price = useMemo(() => priceOf(job, result), [job, result]);
  return (
    <div className={styles.look}>
      <div className={styles.column}>
        {price.unpriced.length > 0 && (
          <Callout weight="warn">
            <p>
              {price.unpriced.length === 1 ? 'One line has' : `${price.unpriced.length} lines have`} no price and{' '}
              {price.unpriced.length === 1 ? 'is' : 'are'} not in the total. Put what you charge into the price list.
            </p>
          </Callout>
        )}
        <Card title="Price" aside={<QuoteDownload job={job} result={result} price={price} />}>
          <PriceTable price={price} label="Price" />
        </Card>
        <Quote job={job} result={result} price={price} />
      </div>
      <div className={styles.column}>
        <Callout weight="plain">
          <p>Prices stay on this device. They go into a link only where you say so under Send.</p>
        </Callout>
        <PriceForm />
        <QuoteForm />
      </div>
    </div>
  );
}
