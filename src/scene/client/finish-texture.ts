import type { WebGLRenderer } from 'three';
import type { Finish } from '../../core';
import { FinishPainter, type Painted } from './finish-painter';
import type { FlatArea } from './geometry';
import { Shared } from './shared';

/** Pixels per mm, by what has the finest detail, and the most pixels along a side. */
const fineness: Record<Finish['look'], number> = { plain: 0.05, stone: 0.5, ribbed: 0.75, 'large-format': 0.75 };
const MOST = 2048;

const studios = new WeakMap<WebGLRenderer, { painter: FinishPainter; painted: Shared<Painted> }>();

function studioOf(gl: WebGLRenderer) {
  const studio = studios.get(gl) ?? { painter: new FinishPainter(gl), painted: new Shared<Painted>() };
  studios.set(gl, studio);
  return studio;
}

interface Surface {
  area: FlatArea;
  /** which of the job's sheets: no two have the same figure */
  sheet: number;
  /** share of the full fineness */
  detail?: number;
  repeats?: boolean;
}

/** A finish over a flat area, colour and normal: painted once for all surfaces of the renderer that show the same. */
export function finishTextures(
  gl: WebGLRenderer,
  { trim: _, gloss: __, ...figure }: Finish,
  { area, sheet, detail = 1, repeats = false }: Surface,
): Painted {
  const { painter, painted } = studioOf(gl);
  const along = (mm: number) => Math.max(16, Math.min(MOST, Math.round(mm * fineness[figure.look] * detail)));
  const painting = { figure, area, sheet, width: along(area.width), height: along(area.height), repeats };
  const { thing, release } = painted.take(JSON.stringify(painting), () => painter.paint(painting));
  return { ...thing, dispose: release };
}
