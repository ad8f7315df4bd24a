import { useThree } from '@react-three/fiber';
import { useEffect, useMemo, useRef } from 'react';
import { type BufferAttribute, PerspectiveCamera, Vector3 } from 'three';

interface ScanCameraProps {
  positions: BufferAttribute;
  /** numbers of the points to look at; null for all */
  subject: Uint32Array | null;
  /** counts up each time the first view is asked for again */
  reset: number;
}

/** From the room's side, from above. */
const direction = new Vector3(0.35, 0.35, 1).normalize();
/** Of the points, left out at each end of an axis where the view is fitted. */
const stray = 0.01;

/** Looks at a scan, or at what of it matters, but its strays; a view once taken stays as the points change their parts. */
export function ScanCamera({ positions, subject, reset }: ScanCameraProps) {
  const camera = useThree((state) => state.camera);
  const size = useThree((state) => state.size);
  const controls = useThree((state) => state.controls) as { target: Vector3; update(): void } | null;
  const invalidate = useThree((state) => state.invalidate);
  const box = useMemo(() => {
    const [low, high] = [new Vector3(), new Vector3()];
    for (const axis of [0, 1, 2] as const) {
      const values = new Float32Array(subject?.length ?? positions.count);
      for (let i = 0; i < values.length; i++) values[i] = positions.array[3 * (subject?.[i] ?? i) + axis]!;
      values.sort();
      low.setComponent(axis, values[Math.floor(stray * values.length)] ?? 0);
      high.setComponent(axis, values[Math.ceil((1 - stray) * values.length) - 1] ?? 0);
    }
    return { middle: low.clone().add(high).multiplyScalar(0.5), radius: Math.max(1, low.distanceTo(high) / 2) };
  }, [positions, subject]);
  const looked = useRef<readonly unknown[]>([]);
  useEffect(() => {
    const view = [reset, size.width > size.height, positions, subject === null];
    if (!(camera instanceof PerspectiveCamera) || !controls || view.every((part, i) => part === looked.current[i]))
      return;
    looked.current = view;
    const vertical = (camera.fov * Math.PI) / 360;
    const narrower = Math.min(vertical, Math.atan(Math.tan(vertical) * (size.width / size.height)));
    [camera.near, camera.far] = [box.radius / 100, box.radius * 40];
    camera.position.copy(box.middle).addScaledVector(direction, box.radius / Math.sin(narrower));
    camera.updateProjectionMatrix();
    controls.target.copy(box.middle);
    controls.update();
    invalidate();
  }, [camera, controls, size, reset, box, positions, subject, invalidate]);
  return null;
}
