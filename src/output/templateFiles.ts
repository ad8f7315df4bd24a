import type { Job, Result } from '../core';
import type { View } from './drawing';
import { jobDrawings, pieceDrawings } from './jobDrawings';
import { panelDxf, panelSvg, pieceDxf, pieceSvg } from './template';

/** The files of one cut piece. */
export interface TemplateFiles {
  /** `panels.left`, or the piece's id */
  piece: string;
  /** name without its ending: `left`, `trim.top` */
  stem: string;
  svg: string;
  dxf: string;
}

/** SVG and DXF of every panel and piece, back panel first. */
export async function templateFiles(job: Job, result: Result, view: View = 'face'): Promise<TemplateFiles[]> {
  const files: TemplateFiles[] = [];
  for (const drawing of jobDrawings(job, result, view)) {
    const { name } = drawing;
    files.push({ piece: `panels.${name}`, stem: name, svg: panelSvg(drawing), dxf: await panelDxf(drawing) });
  }
  for (const drawing of pieceDrawings(job, result, view)) {
    const { id } = drawing;
    files.push({ piece: id, stem: id, svg: pieceSvg(drawing), dxf: await pieceDxf(drawing) });
  }
  return files;
}
