import type { ThreeEvent } from '@react-three/fiber';
import { useMemo } from 'react';
import type { Panel } from '../core';
import { BuiltMesh } from './BuiltMesh';
import { CutStrips } from './CutStrips';
import { colours } from './colours';
import {
  type AlcoveShape,
  type CutStrip,
  cutStrips,
  intoRoom,
  isWithin,
  moved,
  onWall,
  panelSolid,
  type Vec3,
} from './geometry';
import { Polyline } from './Polyline';
import { Tag } from './Tag';

interface PanelBodyProps {
  shape: AlcoveShape;
  panel: Panel;
  bed: number;
  factor: number;
  /** distance the panel is drawn off its wall, mm */
  off: number;
  place: (point: Vec3) => Vec3;
  picked: boolean;
  onPick: () => void;
  /** words for a strip; null draws no words */
  tagText: ((strip: CutStrip) => string) | null;
}

/** A panel on its wall with what is cut off or missing along its edges; it can be picked. */
export function PanelBody({ shape, panel, bed, factor, off, place, picked, onPick, tagText }: PanelBodyProps) {
  const drawnAt = useMemo(() => {
    const direction = intoRoom(panel.name);
    return (point: Vec3) => moved(place(point), direction, off);
  }, [panel.name, place, off]);
  const solid = useMemo(() => panelSolid(shape, panel, bed, drawnAt), [shape, panel, bed, drawnAt]);
  const strips = useMemo(() => cutStrips(shape, panel, bed, factor, drawnAt), [shape, panel, bed, factor, drawnAt]);
  const holes = useMemo(() => {
    const face = onWall(shape, panel.name, bed + panel.thickness + 1);
    return panel.holes.map((hole) => ({ hole, at: drawnAt(face(hole.u, hole.v)) }));
  }, [shape, panel, bed, drawnAt]);
  const pick = (event: ThreeEvent<MouseEvent>) => {
    if (event.delta > 6) return;
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
      <CutStrips strips={strips} tagText={tagText} />
      {tagText &&
        holes.map(({ hole, at }) => (
          <Tag key={hole.id} at={at} kind={isWithin(hole) ? 'hole' : 'gap'}>
            {isWithin(hole) ? hole.id : `${hole.id}: off the panel`}
          </Tag>
        ))}
    </group>
  );
}
