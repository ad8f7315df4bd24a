import type { ThreeEvent } from '@react-three/fiber';
import { BuiltMesh } from './BuiltMesh';
import { CutStrips } from './CutStrips';
import { colours } from './colours';
import type { DrawnPanel } from './geometry';
import { Polyline } from './Polyline';

interface PanelBodyProps {
  panel: DrawnPanel;
  picked: boolean;
  onPick: () => void;
}

/** Pointer travel beyond which a press turns the view and picks nothing, px. */
const still = 6;

/** A panel on its wall with what is cut off or missing along its edges; it can be picked. */
export function PanelBody({ panel: { solid, strips }, picked, onPick }: PanelBodyProps) {
  const pick = (event: ThreeEvent<MouseEvent>) => {
    if (event.delta > still) return;
    event.stopPropagation();
    onPick();
  };
  return (
    <group>
      <BuiltMesh data={solid.mesh} onClick={pick}>
        <meshStandardMaterial color={picked ? colours.panelPicked : colours.panel} roughness={0.55} />
      </BuiltMesh>
      <Polyline
        points={solid.faceOutline}
        colour={picked ? colours.outlinePicked : colours.outline}
        width={picked ? 4 : 1.5}
        closed
      />
      <CutStrips strips={strips} />
    </group>
  );
}
