import type { Job, Mark, Result, Side } from '../../../core';
import { type AlcoveShape, gridMesh, joinMeshes, type MeshData, onWall, type Vec3 } from '../../geometry';

/** Beads are drawn no thinner than this, so that they show, mm. */
const LEAST_LEG = 4;

/** Beads of sealant up both inside corners and along the rim, as chamfers between the faces that they join. */
export function sealantMesh(shape: AlcoveShape, { panels }: Result, job: Job): MeshData {
  const leg = Math.max(LEAST_LEG, job.supplies.sealant.fillet);
  const face = job.fit.bed + job.fit.thickness;
  const bead = (marks: readonly Mark[], ends: (mark: Mark) => [Vec3, Vec3], flip: boolean): MeshData =>
    gridMesh(
      [0, 1].map((i) => marks.map((mark) => ends(mark)[i]!)),
      flip,
    );
  const corner = (side: Side): MeshData => {
    const inward = side === 'left' ? 1 : -1;
    const on = onWall(shape, side, face);
    return bead(
      panels[side].edges.back?.marks ?? [],
      ({ u, v }) => {
        const [x, y, z] = on(u, v);
        return [
          [x, y, z + leg],
          [x + inward * leg, y, shape.back(x, y) + face],
        ];
      },
      side === 'right',
    );
  };
  const rim = (name: 'back' | Side): MeshData => {
    const on = onWall(shape, name, face);
    const [dx, dz] = name === 'back' ? [0, leg] : name === 'left' ? [leg, 0] : [-leg, 0];
    return bead(
      panels[name].edges.bottom?.marks ?? [],
      ({ u, v }) => {
        const [x, y, z] = on(u, v);
        return [
          [x, y + leg, z],
          [x + dx, shape.rim(x + dx, z + dz), z + dz],
        ];
      },
      name !== 'left',
    );
  };
  return joinMeshes([corner('left'), corner('right'), rim('back'), rim('left'), rim('right')]);
}
