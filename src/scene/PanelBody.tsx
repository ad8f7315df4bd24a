import { BuiltMesh } from './BuiltMesh';
import { CutStrips } from './CutStrips';
import { colours } from './colours';
import type { DrawnPanel } from './geometry';
import { Polyline } from './Polyline';
import { picking } from './picking';

interface PanelBodyProps {
  panel: DrawnPanel;
  picked: boolean;
  /** what is cut off or missing along its edges */
  stripsShown: boolean;
  onPick: () => void;
}

/** A panel on its wall with what is cut off or missing along its edges; it can be picked. */
export function PanelBody({ panel: { solid, strips }, picked, stripsShown, onPick }: PanelBodyProps) {
  return (
    <group>
      <BuiltMesh data={solid.mesh} onClick={picking(onPick)}>
        <meshStandardMaterial color={picked ? colours.panelPicked : colours.panel} roughness={0.55} />
      </BuiltMesh>
      <Polyline
        points={solid.faceOutline}
        colour={picked ? colours.outlinePicked : colours.outline}
        width={picked ? 4 : 1.5}
        closed
      />
      {stripsShown && <CutStrips strips={strips} />}
    </group>
  );
}
