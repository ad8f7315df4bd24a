import fc from 'fast-check';
import { XMLParser, XMLValidator } from 'fast-xml-parser';
import ICAL from 'ical.js';
import Papa from 'papaparse';
import { type Job, parseJob, type Result, solve } from '../../../src/core';
import { orderOfWorkCalendar } from '../../../src/output/calendar';
import { readTemplate } from '../../../src/output/dryFit';
import { shoppingListCsv } from '../../../src/output/shoppingList';
import { templateFiles } from '../../../src/output/templateFiles';
import { jobs } from '../samples';
import { must, target } from '../target';

type Keyed = Record<string, unknown>;

/** Words that mean something to a page, a drawing, a spreadsheet, a calendar or a formatter. */
const hostile = fc.oneof(
  fc.constantFrom(
    '<script>alert(1)</script>',
    '"><svg onload=alert(1)>',
    "' onmouseover='alert(1)",
    ']]><x>',
    '<!--',
    '&lt;b&gt;&amp;',
    '&#x0;',
    '=HYPERLINK("http://a.example","x")',
    '+1+1',
    '-2+3',
    '@SUM(A1)',
    '%n%s%%c%%d',
    '\\P\\{\\fArial;x}',
    'a;b,c\\n"d"',
    'BEGIN:VEVENT',
    '../../etc',
    '浴室 حمام 😀 \u202eabc',
    '\uD83D',
  ),
  fc.string({ maxLength: 40, unit: 'binary' }),
  fc.string({ maxLength: 40 }),
);

const base: Keyed = { ...(jobs.at(-1) as unknown as Keyed), schedule: { start: '2026-03-06' } };

/** A complete job in which the free texts that the schema lets through are any words. */
const withWords: fc.Arbitrary<Job> = fc.array(hostile, { minLength: 1, maxLength: 12 }).map((words) => {
  const job = structuredClone(base);
  const texts: { of: Keyed; key: string }[] = [];
  const visit = (of: Keyed): void => {
    for (const [key, held] of Object.entries(of)) {
      if (typeof held === 'string') texts.push({ of, key });
      else if (held !== null && typeof held === 'object') visit(held as Keyed);
    }
  };
  visit(job);
  texts.forEach(({ of, key }, i) => {
    const before = of[key];
    of[key] = `${words[i % words.length]}${key === 'id' ? i : ''}`;
    if (!parseJob(job).ok) of[key] = before;
  });
  const parsed = parseJob(job);
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.faults));
  return parsed.job;
});

const xml = new XMLParser({ ignoreAttributes: false, parseTagValue: false, processEntities: true });
const allowed = new Set(
  'svg title desc defs pattern clipPath g polygon polyline path text circle line tspan style rect ?xml #text'.split(
    ' ',
  ),
);

function plainSvg(svg: string): void {
  const valid = XMLValidator.validate(svg);
  must(valid === true, `an SVG is not well-formed: ${JSON.stringify(valid)}`);
  const visit = (value: unknown): void => {
    if (value === null || typeof value !== 'object') return;
    for (const [name, held] of Object.entries(value)) {
      if (Array.isArray(value)) visit(held);
      else if (name.startsWith('@_')) must(!/^@_on|href/i.test(name), `an SVG has the attribute ${name}`);
      else {
        must(allowed.has(name), `an SVG has an element ${name}`);
        visit(held);
      }
    }
  };
  visit(xml.parse(svg));
}

async function plainFiles(job: Job, result: Result): Promise<void> {
  for (const { svg, dxf } of await templateFiles(job, result)) {
    plainSvg(svg);
    const read = await readTemplate(dxf);
    must(read.ok, `a DXF does not read back: ${read.ok ? '' : read.why}`);
  }
  const rows = Papa.parse<string[]>(await shoppingListCsv(job, result)).data;
  must(
    rows.every((row) => row.length === rows[0]!.length && row.every((cell) => !/^[=+@\t\r]|^-(?![\d ]|$)/.test(cell))),
    'a cell of the shopping list is a formula',
  );
  const calendar = await orderOfWorkCalendar(job, result, new Date(0));
  must(calendar.ok, 'no calendar');
  const events = new ICAL.Component(ICAL.parse(calendar.text)).getAllSubcomponents('vevent');
  must(events.length === result.sequence.length, 'the calendar has other events than the order of work');
}

export const wordTargets = [
  target({
    name: 'words',
    about: 'Whatever names, notes and labels say, drawings, lists and calendars hold it as words alone and read back.',
    cases: withWords,
    check: (job) => plainFiles(job, solve(job)),
    inTests: 12,
  }),
];
