import { Colors, DxfWriter, LineTypes, LWPolylineFlags, point2d, point3d, Units } from '@tarikjabiri/dxf';
import { describe, expect, it } from 'vitest';
import { type Point, solve } from '../../../../src/core';
import { jobDrawings, panelDxf, pieceDrawings, pieceDxf, type View } from '../../../../src/output';
import { readTemplate } from '../../../../src/output/dryFit';
import { fixtureJob, fixtureResult } from '../fixture';

const job = fixtureJob();
const result = { ...solve(job), panels: fixtureResult().panels };

const outline: Point[] = [
  [0, 0],
  [100, 0],
  [100, 50],
  [30, 60],
];
type Place = (point: Point) => Point;

/** A template as another program may have saved it. */
function file(place: Place, { units = Units.Millimeters, apart = false, skip = '', bulge = 0 } = {}): string {
  const dxf = new DxfWriter();
  dxf.setUnits(units);
  for (const layer of ['cut', 'axes', 'hole', 'other']) dxf.addLayer(layer, Colors.Red, LineTypes.Continuous);
  const line = (a: Point, b: Point, layerName: string) =>
    dxf.addLine(point3d(...place(a)), point3d(...place(b)), { layerName });
  if (skip !== 'cut') {
    if (apart) for (const i of [2, 0, 3, 1]) line(outline[i]!, outline[(i + 1) % 4]!, 'cut');
    else {
      const points = outline.map((at, i) => ({ point: point2d(...place(at)), ...(i === 1 && bulge && { bulge }) }));
      dxf.addLWPolyline(points, { layerName: 'cut', flags: LWPolylineFlags.Closed });
    }
  }
  if (skip !== 'axes') {
    line([50, 20], [90, 20], 'axes');
    line([50, 20], [50, 40], 'axes');
    dxf.addText(point3d(...place([51, 21])), 4, '50 20', { layerName: 'axes' });
  }
  const centre = place([40, 20]);
  const scale = Math.hypot(place([1, 0])[0] - place([0, 0])[0], place([1, 0])[1] - place([0, 0])[1]);
  dxf.addCircle(point3d(...centre), 8 * scale, { layerName: 'hole' });
  line([-5, -5], [500, -5], 'other');
  return dxf.stringify();
}

const places: [string, Place, object?][] = [
  ['as it is', (p) => p],
  ['moved', ([x, y]) => [x + 1234, y - 77]],
  ['mirrored', ([x, y]) => [-x, y]],
  ['turned', ([x, y]) => [0.6 * x - 0.8 * y, 0.8 * x + 0.6 * y]],
  ['in inches', ([x, y]) => [x / 25.4, y / 25.4], { units: Units.Inches }],
  ['with its lines apart', (p) => p, { apart: true }],
];

describe('readTemplate', () => {
  it.each(places)('reads a file back into flat coordinates, %s', async (_, place, how = {}) => {
    const read = await readTemplate(file(place, how));
    if (!read.ok) throw new Error(read.why);
    const { template } = read;
    expect(template.outline).toHaveLength(4);
    for (const [x, y] of outline) {
      expect(Math.min(...template.outline.map(([px, py]) => Math.hypot(px - x, py - y)))).toBeLessThan(1e-6);
    }
    expect(template.back).toBeNull();
    expect(template.holes).toHaveLength(1);
    expect(template.holes[0]!.diameter).toBeCloseTo(16, 9);
    expect(Math.hypot(template.holes[0]!.centre[0] - 40, template.holes[0]!.centre[1] - 20)).toBeLessThan(1e-6);
  });

  it.each<View>(['face', 'back'])('gives the flat outlines and holes of our own files back, %s up', async (view) => {
    for (const drawing of jobDrawings(job, result, view)) {
      const read = await readTemplate(await panelDxf(drawing));
      if (!read.ok) throw new Error(read.why);
      const { flat, holes } = result.panels[drawing.name];
      flat.outline.forEach((point, i) => {
        expect(read.template.outline[i]![0]).toBeCloseTo(point[0], 9);
        expect(read.template.outline[i]![1]).toBeCloseTo(point[1], 9);
      });
      expect(read.template.holes.map(({ diameter }) => diameter)).toEqual(holes.map(({ diameter }) => diameter));
    }
    const pieces = Object.values(result.pieces).flat();
    for (const drawing of pieceDrawings(job, result, view)) {
      const read = await readTemplate(await pieceDxf(drawing));
      if (!read.ok) throw new Error(read.why);
      const piece = pieces.find(({ id }) => id === drawing.id)!;
      piece.outline.forEach(([x, y], i) => {
        expect(read.template.outline[i]![0]).toBeCloseTo(x, 9);
        expect(read.template.outline[i]![1]).toBeCloseTo(y, 9);
      });
      expect(read.template.back === null).toBe(drawing.back === null);
    }
  });

  it('says what is missing', async () => {
    const why = async (text: string) => {
      const read = await readTemplate(text);
      return read.ok ? 'read' : read.why;
    };
    const same: Place = (p) => p;
    expect(await why(file(same, { skip: 'cut' }))).toBe('no closed line is on its layer "cut"');
    expect(await why(file(same, { skip: 'axes' }))).toContain('layer "axes" lacks the L');
    expect(await why(file(same, { bulge: 0.4 }))).toContain('an arc stands in a line');
    expect(await why(file(same, { units: Units.Parsecs }))).toContain('unit that is not known');
    const torn = file(same, {}).replace(/(\n *10\r?\n)[^\r\n]*/g, '$1x');
    expect(await why(torn)).toMatch(/^a point on its layer ".*" has no place on any sheet$/);
    expect(await why('no drawing at all')).toContain('no DXF that can be read');
  });
});
