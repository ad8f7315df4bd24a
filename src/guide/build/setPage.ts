import { Marked, type MarkedExtension, type Tokens } from 'marked';
import temml from 'temml';
import type { Page } from '../page.ts';
import { linkTo } from './linkTo.ts';
import { slugOf } from './slugOf.ts';

export interface PageSource extends Page {
  /** files that the page shows, as written in it */
  pictures: string[];
  /** addresses that it links to, as they stand in the page */
  links: string[];
}

/** Stands in the markup where the address of a picture goes. */
export const PICTURE = (index: number): string => `⟦picture ${index}⟧`;

/** Size of a picture, px, by the path under which a page names it. */
export type SizeOf = (path: string) => { width: number; height: number };

/**
 * Sets a page of the guide: Markdown with formulas between `$` or `$$`, which become MathML. Headings are one level lower
 * than written, for the app's own heading stands above them, and carry ids `page.heading`. A table's first column heads
 * its rows. A paragraph that is nothing but a key `⟦table …⟧` gives its place to a table.
 */
export function setPage(id: string, markdown: string, sizeOf: SizeOf): PageSource {
  const page: PageSource = { title: '', contents: [], html: '', pictures: [], links: [] };
  const renderer: MarkedExtension['renderer'] = {
    heading({ tokens, depth, text }) {
      const words = this.parser.parseInline(tokens);
      if (depth === 1) {
        page.title = text;
        return `<h2 id="${id}" tabindex="-1">${words}</h2>\n`;
      }
      const slug = `${id}.${slugOf(text)}`;
      if (depth <= 3) page.contents.push({ id: slug, words: text, level: depth === 2 ? 2 : 3 });
      return `<h${depth + 1} id="${slug}" tabindex="-1">${words}</h${depth + 1}>\n`;
    },
    link({ href, tokens }) {
      const to = linkTo(id, href);
      page.links.push(to);
      return `<a href="${to}">${this.parser.parseInline(tokens)}</a>`;
    },
    image: (image) => figureOf(image, page, sizeOf),
    paragraph({ tokens, text }) {
      if (/^⟦table [\w-]+⟧$/.test(text)) return `${text}\n`;
      const alone = tokens.length === 1 && tokens[0]!.type === 'image';
      const inner = this.parser.parseInline(tokens);
      return alone ? `${inner}\n` : `<p>${inner}</p>\n`;
    },
    table({ header, rows }) {
      const cell = (tag: string, { tokens }: Tokens.TableCell): string =>
        `<${tag}>${this.parser.parseInline(tokens)}</${tag.split(' ')[0]}>`;
      const head = header.map((each) => cell('th scope="col"', each)).join('');
      const body = rows
        .map((row) => `<tr>${row.map((each, i) => cell(i === 0 ? 'th scope="row"' : 'td', each)).join('')}</tr>`)
        .join('\n');
      return `<div data-wide="table"><table><thead><tr>${head}</tr></thead>\n<tbody>${body}</tbody></table></div>\n`;
    },
  };
  page.html = new Marked({ renderer, extensions: [blockFormula, inlineFormula] }).parse(markdown, { async: false });
  return page;
}

/** Higher than this by its width, a picture shows a phone, and stands small. */
const PHONE = 1.6;

function figureOf({ href, text, title }: Tokens.Image, page: PageSource, sizeOf: SizeOf): string {
  const { width, height } = sizeOf(href);
  const index = page.pictures.push(href) - 1;
  const drawing = href.endsWith('.svg') ? ' data-drawing' : '';
  const narrow = height > PHONE * width ? ' data-narrow' : '';
  const caption = title ? `<figcaption>${title}</figcaption>` : '';
  return `<figure${drawing}${narrow}><img src="${PICTURE(index)}" alt="${attribute(text)}" width="${width}" height="${height}" decoding="async">${caption}</figure>`;
}

const attribute = (text: string): string => text.replaceAll('&', '&amp;').replaceAll('"', '&quot;');

const setFormula = (tex: string, displayMode: boolean): string =>
  temml.renderToString(tex, { displayMode, throwOnError: true, annotate: false });

const blockFormula: NonNullable<MarkedExtension['extensions']>[number] = {
  name: 'blockFormula',
  level: 'block',
  start: (text) => text.indexOf('$$'),
  tokenizer(text) {
    const found = /^\$\$\n?([\s\S]+?)\n?\$\$(?:\n|$)/.exec(text);
    return found ? { type: 'blockFormula', raw: found[0], tex: found[1]! } : undefined;
  },
  renderer: ({ tex }) => `<div data-wide="formula">${setFormula(tex, true)}</div>\n`,
};

const inlineFormula: NonNullable<MarkedExtension['extensions']>[number] = {
  name: 'inlineFormula',
  level: 'inline',
  start: (text) => text.indexOf('$'),
  tokenizer(text) {
    const found = /^\$([^$\n]+?)\$/.exec(text);
    return found ? { type: 'inlineFormula', raw: found[0], tex: found[1]! } : undefined;
  },
  renderer: ({ tex }) => setFormula(tex, false),
};
