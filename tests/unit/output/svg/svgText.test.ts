import { XMLParser } from 'fast-xml-parser';
import { describe, expect, it } from 'vitest';
import type { PanelName, Point } from '../../../../src/core';
import { jobDrawings, panelSvg } from '../../../../src/output';
import { words } from '../../../../src/output/drawing';
import { escapeXml, svgText } from '../../../../src/output/svg';
import { fixtureJob, fixtureResult } from '../fixture';

interface Element {
  [name: string]: string | Element | Element[];
}
const parser = new XMLParser({
  ignoreAttributes: false,
  attributeNamePrefix: '@',
  isArray: (name) => ['g', 'polygon', 'text', 'circle', 'polyline'].includes(name),
  parseAttributeValue: false,
  parseTagValue: false,
  trimValues: false,
});
const svgOf = (text: string) =>
  parser.parse(text).svg as Record<string, string> & { g: (Element & { '@id': string })[] };
const group = (svg: ReturnType<typeof svgOf>, id: string) =>
  svg.g.find((each) => each['@id'] === id) as Record<string, Record<string, string>[]>;
const points = (text: string): Point[] => text.split(' ').map((pair) => pair.split(',').map(Number) as Point);

describe('panelSvg', () => {
  const job = fixtureJob();
  const result = fixtureResult();
  const drawings = jobDrawings(job, result);

  it('is drawn in millimetres: width, height and viewBox agree', () => {
    for (const drawing of drawings) {
      const svg = svgOf(panelSvg(drawing));
      const [, , width, height] = svg['@viewBox']!.split(' ');
      expect(svg['@width']).toBe(`${width}mm`);
      expect(svg['@height']).toBe(`${height}mm`);
    }
  });

  it('carries the flat outline of the result, left panel mirrored, to 1e-4 mm', () => {
    for (const drawing of drawings) {
      const cut = points(group(svgOf(panelSvg(drawing)), 'cut').polygon![0]!['@points']!);
      const { outline } = result.panels[drawing.name as PanelName].flat;
      const sign = drawing.name === 'left' ? -1 : 1;
      expect(cut).toHaveLength(outline.length);
      cut.forEach(([x, y], i) => {
        expect(Math.abs(x - sign * outline[i]![0])).toBeLessThanOrEqual(5.1e-5);
        expect(Math.abs(-y - outline[i]![1])).toBeLessThanOrEqual(5.1e-5);
      });
    }
  });

  it('carries the holes with their radii', () => {
    const circles = group(svgOf(panelSvg(drawings[2]!)), 'hole').circle!;
    expect(circles.map((circle) => Number(circle['@r']))).toEqual([47.5, 16, 11]);
  });

  it('keeps everything inside the viewBox', () => {
    for (const drawing of drawings) {
      const svg = svgOf(panelSvg(drawing));
      const [left, top, width, height] = svg['@viewBox']!.split(' ').map(Number) as [number, number, number, number];
      for (const { polygon = [], text = [] } of svg.g as unknown as Record<string, Record<string, string>[]>[]) {
        const all = [
          ...polygon.flatMap((each) => points(each['@points']!)),
          ...text.map((each): Point => [Number(each['@x']), Number(each['@y'])]),
        ];
        for (const [x, y] of all) {
          expect(x >= left && x <= left + width && y >= top && y <= top + height).toBe(true);
        }
      }
    }
  });

  it('shows a hostile name as text and never as markup', () => {
    const name = `<script>alert("1")</script><img src=x onerror='alert(2)'> & co`;
    const panels = {
      ...result.panels,
      right: { ...result.panels.right, holes: result.panels.right.holes.map((hole) => ({ ...hole, id: name })) },
    };
    const text = panelSvg(jobDrawings(job, { ...result, panels })[2]!);
    expect(text).not.toContain('<script');
    expect(text).not.toContain('<img');
    expect(svgOf(text)).not.toHaveProperty('script');
    expect(svgOf(text)['desc' as never]).toBeDefined();
  });
});

describe('escapeXml', () => {
  it('comes back as typed through a parser', () => {
    const typed = `a < b > c & "d" 'e' – ½ ±`;
    const text = svgText([words(typed, [0, 0], 10)], { title: typed, description: typed });
    expect(
      parser
        .parse(text)
        .svg.g[0].text[0]['#text'].replace(
          /&(lt|gt|amp|quot|#39);/g,
          (_: string, name: string) => ({ lt: '<', gt: '>', amp: '&', quot: '"', '#39': "'" })[name]!,
        ),
    ).toBe(typed);
  });
  it('replaces what XML cannot hold', () => {
    expect(escapeXml('a\u0000b\uD800c\uFFFFd')).toBe('a\uFFFDb\uFFFDc\uFFFDd');
    expect(escapeXml('😀')).toBe('😀');
  });
});
