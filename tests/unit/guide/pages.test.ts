import { readdirSync, readFileSync, statSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { cautions, type ReadingKind, reading, toleranceSets } from '../../../src/core';
import { guidePages, pageNames } from '../../../src/guide';
import { setPage } from '../../../src/guide/build';
import { sizeOfPicture } from '../../../src/guide/build/sizeOfPicture';
import { facts } from '../../../src/guide/facts';
import { filled } from '../../../src/guide/filled';
import { tables } from '../../../src/guide/tables';
import { guideFor, placeOf } from '../../../src/views/place';
import { TABLE_COLUMNS } from '../../bench/table';

const folder = new URL('../../../src/guide/', import.meta.url);
const bytesOf = (path: string) => readFileSync(new URL(path, folder));
const pages = Object.fromEntries(
  pageNames.map((name) => {
    const text = bytesOf(`${name}.md`).toString('utf8');
    return [name, { text, ...setPage(name, text, (path) => sizeOfPicture(path, bytesOf(path))) }];
  }),
);
const everything = Object.values(pages)
  .map(({ text }) => text)
  .join('\n');
const words = (html: string) => html.replace(/<[^>]+>/g, '').replaceAll('&amp;', '&');
/** Addresses of headings: `guide/page/section`. */
const headings = new Set(
  Object.entries(pages).flatMap(([name, { contents }]) => [
    `#guide/${name}`,
    ...contents.map(({ id }) => `#guide/${name}/${id.slice(name.length + 1)}`),
  ]),
);

describe('the guide', () => {
  it('has a page for every name, and no text that is on none', () => {
    const files = readdirSync(folder).filter((file) => file.endsWith('.md'));
    expect(files.map((file) => file.slice(0, -3)).sort()).toEqual([...pageNames].sort());
    for (const name of pageNames) expect(guidePages[name].words).not.toBe('');
  });

  it('links only to what there is', () => {
    for (const { links } of Object.values(pages)) {
      for (const link of links) {
        expect(link).toMatch(/^#/);
        if (link.startsWith('#guide/')) expect(headings).toContain(link);
        else expect(placeOf(link).name, link).toBe(/^#(\w+)/.exec(link)![1]);
      }
    }
  });

  it('gives no two headings of a page the same address', () => {
    for (const { contents } of Object.values(pages)) {
      const ids = contents.map(({ id }) => id);
      expect(new Set(ids).size).toBe(ids.length);
    }
  });

  it('has for every screen a place that there is', () => {
    const screens = [
      ...['readings', 'scan', 'truth', 'holes', 'basics'].map((part) => `#site/${part}`),
      ...['back', 'trim.top', 'legs.left', 'shelves', 'fillers', 'sheets', 'ways.back', 'beds.back'].map(
        (item) => `#bench/${item}`,
      ),
      ...['materials', 'work', 'pieces'].map((part) => `#van/${part}`),
      ...['look', 'choices', 'price', 'send'].map((part) => `#client/${part}`),
      '#jobs',
      '#link/x',
    ];
    for (const screen of screens) {
      const { page, section } = guideFor(placeOf(screen));
      expect(headings, screen).toContain(`#guide/${page}${section ? `/${section}` : ''}`);
    }
  });

  it('says of every picture what is seen on it, shows every picture, and keeps them small', () => {
    const shown = Object.values(pages).flatMap(({ pictures }) => pictures);
    for (const [, alt] of everything.matchAll(/!\[([^\]]*)\]/g)) expect(alt!.length).toBeGreaterThan(20);
    const files = ['pictures', 'drawings'].flatMap((each) =>
      readdirSync(new URL(`${each}/`, folder)).map((file) => `./${each}/${file}`),
    );
    expect([...new Set(shown)].sort()).toEqual(files.sort());
    expect(files.reduce((sum, file) => sum + statSync(new URL(file, folder)).size, 0)).toBeLessThan(1_500_000);
  });

  it('names only facts that there are, and all of them', () => {
    const named = new Set([...everything.matchAll(/⟦([^⟧]+)⟧/g)].map(([, key]) => key));
    expect([...named].sort()).toEqual(
      [...Object.keys(facts()), ...Object.keys(tables).map((t) => `table ${t}`)].sort(),
    );
    for (const { html } of Object.values(pages)) expect(() => filled(html)).not.toThrow();
    expect(() => filled('⟦nothing⟧')).toThrow('nothing');
  });

  it('gives every kind of reading a section with its equation', () => {
    const kinds: ReadingKind[] = reading.options.map((option) => {
      const [kind] = (option.shape as { kind: { values: Set<ReadingKind> } }).kind.values;
      return kind!;
    });
    expect(kinds).toHaveLength(9);
    for (const kind of [...kinds, 'scan']) {
      const [, section] = pages.method!.text.split(`\n### ${kind}\n`);
      expect(section?.split('\n#')[0], kind).toContain('$$');
    }
  });

  it('quotes the tests’ figures as the literature has them', () => {
    expect(facts()).toMatchObject({ z95: '1.96', critical: '3.29', delta0: '4.13', significance: '0.1 %' });
  });

  it('holds every caution and every tolerance set with its source', () => {
    const work = words(filled(pages.work!.html));
    for (const caution of Object.values(cautions)) expect(work).toContain(caution);
    for (const name of ['site', 'method']) {
      const page = words(filled(pages[name]!.html));
      for (const { name, about, source } of toleranceSets)
        for (const each of [name, about, source]) expect(page).toContain(each);
    }
  });

  it('tells of every bench and of every column of its table', () => {
    const benches = readdirSync(new URL('../../bench/', import.meta.url))
      .filter((file) => file.endsWith('.bench.ts'))
      .map((file) => {
        const text = readFileSync(new URL(`../../bench/${file}`, import.meta.url), 'utf8');
        return /export const name = '([\w-]+)'/.exec(text)![1]!;
      });
    const told = [...pages.figures!.text.matchAll(/^\| `([\w-]+)` \|/gm)].map(([, name]) => name);
    expect(told.sort()).toEqual(benches.sort());
    const columns = [...pages.figures!.text.split('\n## ')[1]!.matchAll(/^\| ([a-z, ]+) \| /gm)].map(
      ([, each]) => each,
    );
    expect(columns.join(', ').split(', ')).toEqual([...TABLE_COLUMNS]);
  });

  it('tells the same limits of accuracy as the developers’ page', () => {
    const numbers = (text: string) =>
      [...text.matchAll(/^\| ((?:paper|Nookwright).+) \|$/gm)].map(([, row]) => row!.replace(/\s+/g, ' '));
    const developers = numbers(readFileSync(new URL('../../../DEVELOPERS.md', import.meta.url), 'utf8'));
    expect(developers.length).toBeGreaterThan(5);
    expect(numbers(pages.method!.text)).toEqual(developers);
  });
});
