import { grown, type Layer, layers, type Shape, shapeBounds } from '../drawing';
import { escapeXml } from './escapeXml';

/**
 * Lines keep one width on a screen and on paper; strips are hatched, gaps cross-hatched, so that both read in black and
 * white.
 */
const style = `
.layer{fill:none;stroke:#111;stroke-width:1px;stroke-linejoin:round}
.layer *{vector-effect:non-scaling-stroke}
.cut{stroke-width:1.8px}.hole{stroke-width:1.6px}
.sheet{stroke:#666;stroke-dasharray:6 3}
.datum{stroke:#005a9c;stroke-dasharray:12 3 2 3}
.back{stroke-dasharray:5 3}
.lip{stroke:#666;stroke-dasharray:2 2}
.tape{stroke:#999;stroke-width:2px;stroke-dasharray:2 2}
.axes{stroke:#005a9c;stroke-width:.5px}
.mark{stroke-width:1.2px}
.sliver{fill:url(#sliver-hatch);stroke:#777;stroke-width:.6px}
.gap{fill:url(#gap-hatch);stroke:#a12b00}
.axes text{fill:#005a9c;stroke:none;font-family:"DejaVu Sans Condensed",Arial,sans-serif}
.text{stroke:#999;stroke-width:.6px}
.text text{fill:#111;stroke:#fff;stroke-width:3px;paint-order:stroke;font-family:"DejaVu Sans Condensed","Segoe UI",Roboto,"Helvetica Neue",Arial,sans-serif}
`.trim();

const hatches = [
  '<pattern id="sliver-hatch" width="8" height="8" patternUnits="userSpaceOnUse" patternTransform="rotate(45)"><path d="M0 0V8" stroke="#777" stroke-width="1.2"/></pattern>',
  '<pattern id="gap-hatch" width="8" height="8" patternUnits="userSpaceOnUse" patternTransform="rotate(45)"><path d="M0 0V8M0 0H8" stroke="#a12b00" stroke-width="1.4"/></pattern>',
].join('');

export interface SvgOptions {
  title: string;
  description: string;
  /** clear border, mm */
  margin?: number;
}

/** Shapes as an SVG document: one user unit is 1 mm, `width` and `height` in mm, one group per layer. */
export function svgText(shapes: Shape[], { title, description, margin = 10 }: SvgOptions): string {
  const view = grown(shapeBounds(shapes), margin);
  const [width, height] = [number(view.right - view.left), number(view.top - view.bottom)];
  const groups = layers
    .map((layer) =>
      group(
        layer,
        shapes.filter((shape) => shape.layer === layer),
      ),
    )
    .join('');
  return `<?xml version="1.0" encoding="UTF-8"?>
<svg xmlns="http://www.w3.org/2000/svg" width="${width}mm" height="${height}mm" viewBox="${number(view.left)} ${number(-view.top)} ${width} ${height}" role="img" aria-labelledby="title description">
<title id="title">${escapeXml(title)}</title>
<desc id="description">${escapeXml(description)}</desc>
<style>${style}</style>
<defs>${hatches}</defs>
${groups}</svg>
`;
}

function group(layer: Layer, shapes: Shape[]): string {
  if (shapes.length === 0) return '';
  return `<g id="${layer}" class="layer ${layer}">\n${shapes.map(element).join('\n')}\n</g>\n`;
}

function element(shape: Shape): string {
  switch (shape.kind) {
    case 'polyline': {
      const points = shape.points.map(([x, y]) => `${number(x)},${number(-y)}`).join(' ');
      return shape.closed ? `<polygon points="${points}"/>` : `<polyline points="${points}"/>`;
    }
    case 'circle':
      return `<circle cx="${number(shape.centre[0])}" cy="${number(-shape.centre[1])}" r="${number(shape.radius)}"/>`;
    case 'words': {
      const [x, y] = [number(shape.at[0]), number(-shape.at[1])];
      const turn = shape.angle ? ` transform="rotate(${number(-shape.angle)} ${x} ${y})"` : '';
      const weight = shape.bold ? ' font-weight="700"' : '';
      return `<text x="${x}" y="${y}" font-size="${number(shape.size)}" text-anchor="${shape.anchor}"${weight}${turn}>${escapeXml(shape.text)}</text>`;
    }
  }
}

/** To a tenth of a micrometre, never in exponent notation, no minus zero. */
function number(value: number): string {
  const text = value.toFixed(4).replace(/\.?0+$/, '');
  return text === '-0' ? '0' : text;
}
