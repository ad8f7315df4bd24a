import { describe, expect, it } from 'vitest';
import { setPage } from '../../../src/guide/build';

const set = (markdown: string) => setPage('site', markdown, () => ({ width: 400, height: 200 }));

describe('setPage', () => {
  it('puts headings a level down, with ids of the page, and lists them', () => {
    const { title, html, contents } = set('# At the wall\n\n## What ± means\n\n### More');
    expect(title).toBe('At the wall');
    expect(html).toContain('<h2 id="site" tabindex="-1">At the wall</h2>');
    expect(html).toContain('<h3 id="site.what-means" tabindex="-1">What ± means</h3>');
    expect(contents).toEqual([
      { id: 'site.what-means', words: 'What ± means', level: 2 },
      { id: 'site.more', words: 'More', level: 3 },
    ]);
  });

  it('leads links to pages, to places on the page and to screens', () => {
    expect(set('[a](bench.md#trim) [b](#hold) [c](app:site/truth) [d](work.md)').links).toEqual([
      '#guide/bench/trim',
      '#guide/site/hold',
      '#site/truth',
      '#guide/work',
    ]);
  });

  it('sets formulas as MathML, and says which one it cannot read', () => {
    expect(set('A line with $r_i$ in it').html).toMatch(/<math><msub><mi>r<\/mi><mi>i<\/mi><\/msub><\/math>/);
    expect(set('$$\n\\frac{a}{b}\n$$').html).toMatch(/^<div data-wide="formula"><math display="block"/);
    expect(() => set('$\\frac{a}$')).toThrow();
  });

  it('gives columns and rows of a table their heads', () => {
    const { html } = set('| A | B |\n| --- | --- |\n| **c** | d |');
    expect(html).toContain('<th scope="col">A</th><th scope="col">B</th>');
    expect(html).toContain('<th scope="row"><strong>c</strong></th><td>d</td>');
  });

  it('gives pictures their size and what is seen on them', () => {
    const { html, pictures } = set('![A "wall"](./pictures/a.webp "Seen")');
    expect(pictures).toEqual(['./pictures/a.webp']);
    expect(html).toContain('alt="A &quot;wall&quot;" width="400" height="200"');
    expect(html).toContain('<figcaption>Seen</figcaption>');
  });

  it('gives a paragraph that is a table’s key its place', () => {
    expect(set('⟦table priors⟧').html).toBe('⟦table priors⟧\n');
  });
});
