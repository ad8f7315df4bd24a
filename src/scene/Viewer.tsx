import { OrbitControls } from '@react-three/drei';
import { useThree } from '@react-three/fiber';
import { type ComponentRef, useEffect, useRef, useState } from 'react';
import { PerspectiveCamera, Vector3 } from 'three';
import type { Box, Vec3 } from './geometry';

const margin = 1.02;
const firstDirection: Vec3 = [0.42, 0.3, 1];

interface ViewerProps {
  box: Box;
  /** no motion that goes on by itself */
  calm: boolean;
  /** counts up each time the first view is asked for again */
  reset: number;
  /** direction of the first view, from the alcove's middle */
  from?: Vec3;
}

/** Looks at the alcove from the room: the first view fits it, turning stays in front of it and above the floor. */
export function Viewer({ box, calm, reset, from = firstDirection }: ViewerProps) {
  const { camera, size, invalidate } = useThree();
  const [controls, setControls] = useState<ComponentRef<typeof OrbitControls> | null>(null);
  const { left, right, bottom, top, front } = box;
  const radius = Math.hypot(right - left, top - bottom, front) / 2;
  const looked = useRef('');

  useEffect(() => {
    const view = `${reset} ${size.width > size.height}`;
    if (!(camera instanceof PerspectiveCamera) || !controls || looked.current === view) return;
    looked.current = view;
    const vertical = (camera.fov * Math.PI) / 360;
    const narrower = Math.min(vertical, Math.atan(Math.tan(vertical) * (size.width / size.height)));
    const distance = (radius * margin) / Math.sin(narrower);
    const middle = new Vector3((left + right) / 2, (top + bottom) / 2, front / 2);
    [camera.near, camera.far] = [radius / 50, radius * 30];
    camera.position.copy(middle).addScaledVector(new Vector3(...from).normalize(), distance);
    camera.updateProjectionMatrix();
    controls.target.copy(middle);
    controls.update();
    invalidate();
  }, [camera, controls, size, reset, from, invalidate, left, right, front, radius, top, bottom]);

  return (
    <OrbitControls
      ref={setControls}
      enablePan={false}
      enableDamping={!calm}
      minAzimuthAngle={-1.25}
      maxAzimuthAngle={1.25}
      minPolarAngle={0.35}
      maxPolarAngle={1.75}
      minDistance={radius * 0.6}
      maxDistance={radius * 7}
    />
  );
}
