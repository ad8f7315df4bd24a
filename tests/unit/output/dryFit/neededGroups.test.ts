import { expect, it } from 'vitest';
import { neededGroups } from '../../../../src/output/dryFit/neededGroups';

const dxf = (...groups: (string | number)[]): string => `${[...groups, 0, 'EOF'].join('\n')}\n`;
const HEADER = [0, 'SECTION', 2, 'HEADER', 9, '$INSUNITS', 70, 4, 0, 'ENDSEC'];
const LINE = [0, 'LINE', 8, 'cut', 10, 0, 20, 0, 11, 1, 21, 0];

it('keeps the header and the entities that templates are read from', () => {
  const tables = [0, 'SECTION', 2, 'TABLES', 0, 'TABLE', 2, 'LAYER', 0, 'ENDTAB', 0, 'ENDSEC'];
  const before = [0, 'SECTION', 2, 'ENTITIES'];
  const text = dxf(...HEADER, ...tables, ...before, 0, 'HATCH', 8, 'cut', 91, 4e9, ...LINE, 0, 'ENDSEC');
  expect(neededGroups(text)).toBe(dxf(...HEADER, ...before, ...LINE, 0, 'ENDSEC'));
});

it('refuses a line of more corners than the file has lines, and a file that breaks off', () => {
  const endless = [0, 'SECTION', 2, 'ENTITIES', 0, 'LWPOLYLINE', 90, 4_000_000_000, 10, 0, 20, 0];
  expect(() => neededGroups(dxf(...endless, 0, 'ENDSEC'))).toThrow(
    'line 8 of the file gives a line 4000000000 corners',
  );
  expect(() => neededGroups(LINE.join('\n'))).toThrow('breaks off');
});

it('puts a light polyline’s corners after what else is said of it', () => {
  const start = [0, 'SECTION', 2, 'ENTITIES', 0, 'LWPOLYLINE'];
  const text = dxf(...start, 90, 2, 10, 0, 20, 0, 2, 'x', 10, 5, 20, 5, 8, 'cut', 0, 'ENDSEC');
  expect(neededGroups(text)).toBe(dxf(...start, 90, 2, 2, 'x', 8, 'cut', 10, 0, 20, 0, 10, 5, 20, 5, 0, 'ENDSEC'));
});
