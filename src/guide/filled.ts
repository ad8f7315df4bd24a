import { facts } from './facts';
import { tables } from './tables';

/** The keys that stand in a page's markup for what the code knows: `⟦key⟧` and `⟦table name⟧`; pictures are put in later. */
const KEY = /⟦(?!picture )([^⟧]+)⟧/g;

/**
 * A page's markup with its facts in place.
 * @throws where a page names a fact that there is not
 */
export function filled(html: string): string {
  return html.replace(KEY, (_, key: string) => {
    const [, table] = /^table (.+)$/.exec(key) ?? [];
    const fact = table === undefined ? facts()[key] : tables[table]?.();
    if (fact === undefined) throw new Error(`the guide names a fact that there is not: ${key}`);
    return fact;
  });
}
