import type { WallReport } from '../diagnose';
import type { WallName } from '../job-file';
import { judge, type Measured } from './judge';
import type { FigureName, JudgedFigure } from './report';
import type { Limits } from './tolerances';

export function judged(figure: FigureName, measured: Measured, over: number, limit: number | null): JudgedFigure {
  return { figure, value: measured.value, sd: measured.sd, over, limit, judgement: judge(measured, limit) };
}

/**
 * The figures of a wall against their limits: lean over the panelled height, hollow or hump up and across, twist.
 * Twist is what the fourth corner stands off the plane of the other three; a straightedge along a diagonal of a wall
 * that is only twisted shows a quarter of that in its middle, so its limit is four times flatness over the diagonal.
 * @param assumed whether an adjusted parameter, by name, rests on its prior alone
 */
export function wallFigures(
  wall: WallName,
  report: WallReport,
  assumed: (parameter: string) => boolean,
  limits: Limits,
): JudgedFigure[] {
  const [width, height] = [report.judged.at, report.judged.height].map(([from, to]) => to - from) as [number, number];
  const diagonal = Math.hypot(width, height);
  const metres = height / 1000;
  const flatDiagonal = limits.flat(diagonal);
  return [
    judged(
      'plumb',
      { value: report.plumb * metres, sd: report.plumbSd * metres, assumed: assumed(`${wall}.plumb`) },
      height,
      limits.plumb(height),
    ),
    judged(
      'bow-up',
      { value: report.bow, sd: report.bowSd, assumed: assumed(`${wall}.bowUp`) },
      height,
      limits.flat(height),
    ),
    judged(
      'bow-across',
      { value: report.bowAcross, sd: report.bowAcrossSd, assumed: assumed(`${wall}.bowAcross`) },
      width,
      limits.flat(width),
    ),
    judged(
      'twist',
      { value: report.twist, sd: report.twistSd, assumed: assumed(`${wall}.twist`) },
      diagonal,
      flatDiagonal === null ? null : 4 * flatDiagonal,
    ),
  ];
}
