import { BuiltMesh } from './BuiltMesh';
import { colours } from './colours';
import type { DrawnPiece } from './geometry';
import { Polyline } from './Polyline';
import { picking } from './picking';

interface PieceBodyProps {
  piece: DrawnPiece;
  picked: boolean;
  onPick: () => void;
}

/** A piece of trim, a leg, a filler or a shelf in its place; it can be picked. */
export function PieceBody({ piece: { kind, solid }, picked, onPick }: PieceBodyProps) {
  return (
    <group>
      <BuiltMesh data={solid.mesh} onClick={picking(onPick)}>
        <meshStandardMaterial color={picked ? colours.piecePicked : colours[kind]} roughness={0.5} />
      </BuiltMesh>
      {solid.outlines.map((points, i) => (
        <Polyline
          // biome-ignore lint/suspicious/noArrayIndexKey: outlines have no other name than their place
          key={i}
          points={points}
          colour={picked ? colours.outlinePicked : colours.outline}
          width={picked ? 4 : 1.25}
          closed
        />
      ))}
    </group>
  );
}
