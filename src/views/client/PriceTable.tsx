import { moneyText, type Price } from '../../core';
import { eachText, priceAmountText, quantityText } from '../../output';
import styles from './client.module.css';

const groups = [
  ['materials', 'Materials'],
  ['labour', 'Work'],
  ['other', 'Other'],
] as const;

/** Every line of a price, its sums, taxes and total. */
export function PriceTable({ price, label }: { price: Price; label: string }) {
  const money = (amount: number) => moneyText(amount, price.currency);
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a table wider than a phone is scrolled by keyboard too
    <section className={styles.tableBox} tabIndex={0} aria-label={label}>
      <table className={styles.table}>
        <thead>
          <tr>
            <th scope="col">What</th>
            <th scope="col">Quantity</th>
            <th scope="col">Price</th>
            <th scope="col">Amount</th>
          </tr>
        </thead>
        {groups.map(([group, title]) => {
          const lines = price.lines.filter((line) => line.group === group);
          if (lines.length === 0) return null;
          return (
            <tbody key={group}>
              {lines.map((line) => (
                <tr key={line.id}>
                  <th scope="row">{line.label}</th>
                  <td>{quantityText(line)}</td>
                  <td>{eachText(line, price.currency)}</td>
                  <td data-none={line.amount === null || undefined}>{priceAmountText(line, price.currency)}</td>
                </tr>
              ))}
              <tr className={styles.sum}>
                <th scope="row" colSpan={3}>
                  {title} together
                </th>
                <td>{money(price.sums[group])}</td>
              </tr>
            </tbody>
          );
        })}
        <tfoot>
          <tr>
            <th scope="row" colSpan={3}>
              Before tax
            </th>
            <td>{money(price.net)}</td>
          </tr>
          {price.taxes.map((tax) => (
            <tr key={tax.on}>
              <th scope="row" colSpan={3}>
                {tax.name}, {tax.percent} % of {tax.on === 'labour' ? 'work' : 'materials'} {money(tax.of)}
              </th>
              <td>{money(tax.amount)}</td>
            </tr>
          ))}
          <tr className={styles.total}>
            <th scope="row" colSpan={3}>
              To pay
            </th>
            <td>{money(price.total)}</td>
          </tr>
        </tfoot>
      </table>
    </section>
  );
}
