import {
  Colors,
  DxfWriter,
  LineTypes,
  LWPolylineFlags,
  point2d,
  point3d,
  TextHorizontalAlignment,
  TextVerticalAlignment,
  Units,
} from '@tarikjabiri/dxf';
import { type Layer, layers, type Shape, shapeBounds, type Words } from '../drawing';
import { dxfSafe } from './dxfSafe';

const colours: Record<Layer, number> = {
  sheet: Colors.Cyan,
  sliver: Colors.Yellow,
  gap: Colors.Magenta,
  axes: Colors.Blue,
  datum: Colors.Blue,
  tape: Colors.Yellow,
  lip: Colors.Cyan,
  back: Colors.Magenta,
  cut: Colors.Red,
  hole: Colors.Red,
  mark: Colors.Green,
  text: Colors.White,
};
/** Height of capitals over font size. */
const CAPITALS = 0.73;

/** Shapes as a DXF drawing in millimetres, layers named by meaning. */
export function dxfText(shapes: Shape[]): string {
  const dxf = new DxfWriter();
  dxf.setUnits(Units.Millimeters);
  dxf.setVariable('$MEASUREMENT', { 70: 1 });
  const box = shapeBounds(shapes);
  dxf.setVariable('$EXTMIN', { 10: box.left, 20: box.bottom, 30: 0 });
  dxf.setVariable('$EXTMAX', { 10: box.right, 20: box.top, 30: 0 });
  for (const layer of layers) dxf.addLayer(layer, colours[layer], LineTypes.Continuous);
  for (const shape of shapes) add(dxf, shape);
  return dxf.stringify();
}

function add(dxf: DxfWriter, shape: Shape): void {
  const options = { layerName: shape.layer };
  switch (shape.kind) {
    case 'polyline': {
      const [from, to] = shape.points;
      if (!shape.closed && shape.points.length === 2 && from && to) {
        dxf.addLine(point3d(from[0], from[1]), point3d(to[0], to[1]), options);
        return;
      }
      const flags = shape.closed ? LWPolylineFlags.Closed : LWPolylineFlags.None;
      dxf.addLWPolyline(
        shape.points.map(([x, y]) => ({ point: point2d(x, y) })),
        { ...options, flags },
      );
      return;
    }
    case 'circle':
      dxf.addCircle(point3d(shape.centre[0], shape.centre[1]), shape.radius, options);
      return;
    case 'words':
      addWords(dxf, shape);
  }
}

function addWords(dxf: DxfWriter, { at: [x, y], size, text, angle, anchor, layer }: Words): void {
  const horizontalAlignment = {
    start: TextHorizontalAlignment.Left,
    middle: TextHorizontalAlignment.Center,
    end: TextHorizontalAlignment.Right,
  }[anchor];
  dxf.addText(point3d(x, y), size * CAPITALS, dxfSafe(text), {
    layerName: layer,
    rotation: angle,
    horizontalAlignment,
    verticalAlignment: TextVerticalAlignment.BaseLine,
    ...(anchor === 'start' ? {} : { secondAlignmentPoint: point3d(x, y) }),
  });
}
