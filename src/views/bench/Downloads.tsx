import type { Job, Result } from '../../core';
import { type PanelDrawing, panelDxf, panelSvg, type View } from '../../output';
import { Files } from './Files';

interface DownloadsProps {
  job: Job;
  result: Result;
  drawing: PanelDrawing;
  view: View;
}

/** Files of a panel and of the whole job. */
export function Downloads({ drawing, ...job }: DownloadsProps) {
  return (
    <Files
      {...job}
      title={drawing.title}
      name={drawing.name}
      svg={() => panelSvg(drawing)}
      dxf={() => panelDxf(drawing)}
    />
  );
}
