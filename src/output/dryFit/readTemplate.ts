import type { IDxf, IEntity, ILwpolylineEntity, IPolylineEntity, ITextEntity } from 'dxf-parser';
import type { FlatTemplate, Point, ReadBack } from '../../core';
import { closedLoops, type Path } from './closedLoops';
import { neededGroups } from './neededGroups';
import { axesOf } from './readAxes';
import { Unreadable } from './unreadable';

/**
 * Reads a template's DXF back into flat coordinates: outline, back outline and holes by their layers. It may be moved,
 * turned, mirrored, in another unit, in other order, its lines apart; other layers and entities are passed over.
 */
export async function readTemplate(text: string): Promise<ReadBack> {
  const { default: parser } = await import('dxf-parser');
  // bundlers and Node wrap the package's default export differently
  const DxfParser = (parser as unknown as { default?: typeof parser }).default ?? parser;
  try {
    const dxf = new DxfParser().parseSync(neededGroups(text));
    if (dxf === null) throw new Unreadable('the file holds no drawing');
    return { ok: true, template: templateOf(dxf) };
  } catch (error) {
    const reason = error instanceof Error ? error.message : String(error);
    return { ok: false, why: error instanceof Unreadable ? reason : `the file is no DXF that can be read (${reason})` };
  }
}

/** Millimetres in a drawing's unit by $INSUNITS: none is taken as mm; in, ft, mm, cm, m. */
const MM: Record<number, number> = { 0: 1, 1: 25.4, 2: 304.8, 4: 1, 5: 10, 6: 1000 };

function templateOf(dxf: IDxf): FlatTemplate {
  const unit = Number(dxf.header?.$INSUNITS ?? 0);
  const mm = MM[unit];
  if (mm === undefined) throw new Unreadable(`it is in a unit that is not known ($INSUNITS ${unit})`);
  const on = (layer: string): IEntity[] => dxf.entities.filter((entity) => entity.layer.toLowerCase() === layer);
  const paths = (layer: string): Path[] => on(layer).flatMap((entity) => pathOf(entity, mm));
  const texts = on('axes').flatMap((entity) => (isText(entity) ? [entity.text] : []));
  const toFlat = axesOf(paths('axes'), texts);
  const loops = closedLoops(paths('cut'));
  if (loops.length === 0) throw new Unreadable('no closed line is on its layer "cut"');
  if (loops.length > 1) throw new Unreadable(`${loops.length} closed lines are on its layer "cut", where one belongs`);
  const [back] = closedLoops(paths('back'));
  return {
    outline: loops[0]!.map(toFlat),
    back: back ? back.map(toFlat) : null,
    holes: on('hole').flatMap((entity) => {
      if (entity.type !== 'CIRCLE') return [];
      const { center, radius } = entity as IEntity & { center?: Corner; radius: number };
      if (!isReal(radius)) throw new Unreadable('a circle on its layer "hole" has no radius');
      return [{ centre: toFlat(placeOf(center, entity, mm)), diameter: 2 * radius * mm }];
    }),
  };
}

/** No template reaches farther, in any unit. */
const FARTHEST = 1e6;
const isReal = (value: number | undefined): value is number => value !== undefined && Math.abs(value) <= FARTHEST;

type Corner = { x?: number; y?: number };

/** A corner's place, mm. */
function placeOf(corner: Corner | undefined, { layer }: IEntity, mm: number): Point {
  const { x, y } = corner ?? {};
  if (!isReal(x) || !isReal(y)) throw new Unreadable(`a point on its layer "${layer}" has no place on any sheet`);
  return [x * mm, y * mm];
}

const isText = (entity: IEntity): entity is ITextEntity => entity.type === 'TEXT' || entity.type === 'MTEXT';

function pathOf(entity: IEntity, mm: number): Path[] {
  if (entity.type !== 'LINE' && entity.type !== 'LWPOLYLINE' && entity.type !== 'POLYLINE') return [];
  const { vertices, shape } = entity as ILwpolylineEntity | IPolylineEntity;
  if (vertices.some((vertex) => 'bulge' in vertex && vertex.bulge)) {
    throw new Unreadable(`an arc stands in a line on its layer "${entity.layer}"; straight lines are wanted`);
  }
  return [{ points: vertices.map((vertex) => placeOf(vertex, entity, mm)), closed: shape === true }];
}
