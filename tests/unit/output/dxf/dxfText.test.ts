import DxfParser from 'dxf-parser';
import { describe, expect, it } from 'vitest';
import { jobDrawings, panelDxf } from '../../../../src/output';
import { dxfSafe } from '../../../../src/output/dxf';
import { fixtureJob, fixtureResult } from '../fixture';

const read = (text: string) => {
  const dxf = new DxfParser().parseSync(text);
  if (!dxf) throw new Error('not a DXF file');
  return dxf;
};
interface Entity {
  type: string;
  layer: string;
  shape?: boolean;
  vertices?: { x: number; y: number }[];
  center?: { x: number; y: number };
  radius?: number;
  text?: string;
  textHeight?: number;
}
const entities = (text: string): Entity[] => read(text).entities as unknown as Entity[];

describe('panelDxf', () => {
  const job = fixtureJob();
  const result = fixtureResult();
  const drawings = jobDrawings(job, result);

  it('says that its unit is the millimetre', async () => {
    for (const drawing of drawings) expect(read(await panelDxf(drawing)).header.$INSUNITS).toBe(4);
  });

  it('names layers by meaning', async () => {
    const { layers } = (
      read(await panelDxf(drawings[0]!)).tables as unknown as { layer: { layers: Record<string, unknown> } }
    ).layer;
    expect(Object.keys(layers)).toEqual(
      expect.arrayContaining(['sheet', 'sliver', 'gap', 'datum', 'cut', 'hole', 'mark', 'text']),
    );
  });

  it('holds one closed cut line that is the flat outline of the result', async () => {
    for (const drawing of drawings) {
      const cuts = entities(await panelDxf(drawing)).filter(({ layer }) => layer === 'cut');
      expect(cuts).toHaveLength(1);
      expect(cuts[0]).toMatchObject({ type: 'LWPOLYLINE', shape: true });
      const sign = drawing.name === 'left' ? -1 : 1;
      const { outline } = result.panels[drawing.name].flat;
      expect(cuts[0]!.vertices).toHaveLength(outline.length);
      cuts[0]!.vertices!.forEach(({ x, y }, i) => {
        expect(x).toBeCloseTo(sign * outline[i]![0], 9);
        expect(y).toBeCloseTo(outline[i]![1], 9);
      });
    }
  });

  it('holds a circle per hole', async () => {
    const holes = entities(await panelDxf(drawings[2]!)).filter(({ layer }) => layer === 'hole');
    expect(holes.map(({ type, radius }) => [type, radius])).toEqual([
      ['CIRCLE', 47.5],
      ['CIRCLE', 16],
      ['CIRCLE', 11],
    ]);
    holes.forEach(({ center }, i) => {
      expect([center!.x, center!.y]).toEqual(result.panels.right.holes[i]!.sheet);
    });
  });

  it('tells the distances of the marks', async () => {
    const texts = entities(await panelDxf(drawings[2]!))
      .filter(({ type }) => type === 'TEXT')
      .map(({ text }) => text);
    for (const { marks } of drawings[2]!.edges)
      for (const mark of marks) expect(texts.some((text) => text?.includes(mark.across.text))).toBe(true);
    expect(texts).toContain('FACE UP: drawn as you look at the finished face');
  });

  it('stays readable with a name full of control codes', async () => {
    const holes = result.panels.right.holes.map((hole) => ({
      ...hole,
      id: `%%c^J\\U+0041\n0\nLINE\n8\ncut ${hole.id}`,
    }));
    const panels = { ...result.panels, right: { ...result.panels.right, holes } };
    const all = entities(await panelDxf(jobDrawings(job, { ...result, panels })[2]!));
    expect(all.filter(({ layer }) => layer === 'cut')).toHaveLength(1);
  });
});

describe('dxfSafe', () => {
  it('leaves plain words alone', () => {
    expect(dxfSafe('Ø 3 3/4" ±1/16" 100 % Łódź')).toBe('Ø 3 3/4" ±1/16" 100 % Łódź');
  });
  it('parts the sequences that a reader would interpret', () => {
    expect(dxfSafe('%%d %%%')).toBe('% %d % % %');
    expect(dxfSafe('a^Jb')).toBe('a^ Jb');
    expect(dxfSafe('\\U+2205')).toBe('\\ U+2205');
    expect(dxfSafe('a\r\n0\r\nEOF')).toBe('a 0 EOF');
  });
});
