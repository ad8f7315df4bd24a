// Files of every piece read by independent programs: two DXF parsers and an audit, an SVG rasteriser, a PDF reader.
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { initWasm, Resvg } from '@resvg/resvg-wasm';
import DxfParser from 'dxf-parser';
import { beforeAll, describe, expect, it } from 'vitest';
import { jobPackPdf, type TemplateFiles, templateFiles } from '../../../src/output';
import { readPdf, testFonts } from '../../unit/output/pdf/readPdf';
import { auditDxf } from './auditDxf';
import { madeJob } from './madeJob';

/** The second parser ships without types. */
type Helper = new (text: string) => { parsed: { header: { insUnits: number }; entities: CutLine[] } };
const load = createRequire(import.meta.url);
const { Helper } = load('dxf') as { Helper: Helper };

const { job, result, pieces } = madeJob();
const outlines = new Map<string, readonly (readonly [number, number])[]>([
  ...Object.values(result.panels).map(({ name, flat }) => {
    const drawn = flat.outline.map(([x, y]) => [name === 'left' ? -x : x, y] as const);
    return [`panels.${name}`, drawn] as const;
  }),
  ...pieces.map(({ id, outline }) => [id, outline] as const),
]);
let files: TemplateFiles[];

beforeAll(async () => {
  files = await templateFiles(job, result);
  const wasm = load.resolve('@resvg/resvg-wasm/index_bg.wasm');
  await initWasm(readFileSync(wasm));
}, 60_000);

interface CutLine {
  layer: string;
  vertices: { x: number; y: number }[];
}

describe('DXF', () => {
  it('is there for every panel and piece, and has no fault by the audit', () => {
    expect(files.map(({ piece }) => piece).sort()).toEqual([...outlines.keys()].sort());
    for (const { piece, dxf } of files) expect(auditDxf(dxf), piece).toEqual([]);
  });

  it('is found faulty by the audit once it is', () => {
    const { dxf } = files[0]!;
    expect(auditDxf(dxf.replace(/\n8\ncut\n/, '\n8\ncuts\n')).join()).toContain('layer cuts');
    expect(auditDxf(dxf.replace(/\n90\n\d+\n/, '\n90\n3\n')).join()).toContain('vertex count');
    expect(auditDxf(dxf.replace(/0\nEOF\n?$/, '')).join()).toContain('no EOF');
  });

  it('gives two parsers the outline of result.json, in millimetres', () => {
    for (const { piece, dxf } of files) {
      const outline = outlines.get(piece)!;
      const one = new DxfParser().parseSync(dxf)!;
      const { parsed: other } = new Helper(dxf);
      expect([one.header.$INSUNITS, other.header.insUnits]).toEqual([4, 4]);
      for (const entities of [one.entities as unknown as CutLine[], other.entities]) {
        const cuts = entities.filter(({ layer }) => layer === 'cut');
        expect(cuts, piece).toHaveLength(1);
        expect(cuts[0]!.vertices).toHaveLength(outline.length);
        cuts[0]!.vertices.forEach(({ x, y }, i) => {
          expect(Math.hypot(x - outline[i]![0], y - outline[i]![1]), piece).toBeLessThan(1e-6);
        });
      }
    }
  });
});

describe('SVG, rasterised', () => {
  /** Pixels in a millimetre: 96 px to the inch, times the zoom. */
  const zoom = 0.8;
  const scale = (96 / 25.4) * zoom;
  const shortest = (['shelf', 'leg', 'filler'] as const).map(
    (kind) => pieces.filter((piece) => piece.kind === kind).sort((a, b) => a.size.along - b.size.along)[0]!.id,
  );
  it.each(shortest)('shows %s as large as it is', (id) => {
    const { svg } = files.find(({ piece }) => piece === id)!;
    const onlyCut = svg
      .replace(/<g id="(?!cut")[^"]*"[\s\S]*?<\/g>\n/g, '')
      .replace('.cut{stroke-width:1.8px}', '.cut{stroke-width:.6px}');
    const image = new Resvg(onlyCut, { fitTo: { mode: 'zoom', value: zoom }, background: '#fff' }).render();
    const [, width, height] = /viewBox="\S+ \S+ (\S+) (\S+)"/.exec(svg)!;
    expect(Math.abs(image.width - Number(width) * scale)).toBeLessThanOrEqual(1);
    expect(Math.abs(image.height - Number(height) * scale)).toBeLessThanOrEqual(1);
    const dark = { left: Infinity, right: -Infinity, top: Infinity, bottom: -Infinity };
    const { pixels } = image;
    for (let y = 0; y < image.height; y++) {
      for (let x = 0; x < image.width; x++) {
        if (pixels[4 * (y * image.width + x)]! > 127) continue;
        dark.left = Math.min(dark.left, x);
        dark.right = Math.max(dark.right, x + 1);
        dark.top = Math.min(dark.top, y);
        dark.bottom = Math.max(dark.bottom, y + 1);
      }
    }
    const outline = outlines.get(id)!;
    const extent = (axis: 0 | 1) => {
      const values = outline.map((point) => point[axis]);
      return Math.max(...values) - Math.min(...values);
    };
    // half the line lies outside on each side; this rasteriser draws its width in user units, mm
    const line = 0.6;
    expect(Math.abs((dark.right - dark.left) / scale - line - extent(0))).toBeLessThan(0.5);
    expect(Math.abs((dark.bottom - dark.top) / scale - line - extent(1))).toBeLessThan(0.5);
  });
});

describe('PDF', () => {
  it('has outlines of legs and shelves at 1:1, to 0.01 mm as in result.json', async () => {
    const pages = await readPdf(await jobPackPdf(job, result, await testFonts(), { paper: 'a3' }));
    const paths = pages.flatMap((page) => page.paths);
    for (const id of ['legs.right', 'shelves.1', 'shelves.2']) {
      const outline = outlines.get(id)!;
      const [x0, y0] = outline[0]!;
      const same = paths.filter(({ points }) => {
        if (points.length !== outline.length) return false;
        const [px, py] = points[0]!;
        return outline.every(
          ([x, y], i) => Math.hypot(points[i]![0] - px - x + x0, points[i]![1] - py - y + y0) < 0.01,
        );
      });
      expect(same.length, id).toBeGreaterThan(0);
    }
  }, 120_000);

  it('makes a roll as long as the template, with check bars', async () => {
    const pages = await readPdf(await jobPackPdf(job, result, await testFonts(), { paper: 'roll' }));
    const { outline } = result.panels.left.flat;
    const high = Math.max(...outline.map(([, y]) => y)) - Math.min(...outline.map(([, y]) => y));
    const long = pages.filter(({ height }) => height > high && height < high + 100);
    expect(long.length).toBeGreaterThan(0);
    for (const { width, paths } of long) {
      expect(width).toBeCloseTo(609.6, 2);
      const lengths = paths
        .filter(({ points }) => points.length === 2)
        .map(({ points: [a, b] }) => Math.hypot(b![0] - a![0], b![1] - a![1]));
      expect(lengths.some((mm) => Math.abs(mm - 100) < 0.01)).toBe(true);
      expect(lengths.some((mm) => Math.abs(mm - 101.6) < 0.01)).toBe(true);
    }
    expect(pages[0]!.height).toBeLessThan(300);
  }, 120_000);
});
