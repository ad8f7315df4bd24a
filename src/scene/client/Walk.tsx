import { OrbitControls } from '@react-three/drei';
import { useFrame, useThree } from '@react-three/fiber';
import { type ComponentRef, useEffect, useRef, useState } from 'react';
import { PerspectiveCamera, Spherical, Vector3 } from 'three';
import type { Stand } from './viewpoint';

const WALK_MS = 700;

interface WalkProps {
  stand: Stand;
  /** goes to the viewpoint at once, with no motion that goes on by itself */
  calm: boolean;
  /** counts up each time the viewpoint is asked for again */
  reset: number;
}

const ease = (t: number): number => t * t * (3 - 2 * t);

/** Brings the viewer to a viewpoint and lets the view turn about it within limits. */
export function Walk({ stand, calm, reset }: WalkProps) {
  const { camera, invalidate } = useThree();
  const [controls, setControls] = useState<ComponentRef<typeof OrbitControls> | null>(null);
  const walk = useRef<{ began: number; from: Vector3; to: Vector3; fov: number } | null>(null);
  const arrived = useRef(false);

  // biome-ignore lint/correctness/useExhaustiveDependencies: `reset` asks for the same viewpoint again
  useEffect(() => {
    if (!controls || !(camera instanceof PerspectiveCamera)) return;
    const at = new Vector3(...stand.to);
    const angles = new Spherical().setFromVector3(new Vector3(...stand.from).sub(at));
    controls.minAzimuthAngle = angles.theta - stand.turn.around;
    controls.maxAzimuthAngle = angles.theta + stand.turn.around;
    controls.minPolarAngle = Math.max(0.15, angles.phi - stand.turn.up);
    controls.maxPolarAngle = Math.min(1.9, angles.phi + stand.turn.down);
    controls.minDistance = stand.near;
    controls.maxDistance = stand.far;
    [camera.near, camera.far] = [20, 30_000];
    if (calm || !arrived.current) {
      arrived.current = true;
      camera.position.set(...stand.from);
      controls.target.copy(at);
      camera.fov = stand.fov;
      camera.updateProjectionMatrix();
      controls.update();
    } else {
      walk.current = {
        began: performance.now(),
        from: camera.position.clone(),
        to: controls.target.clone(),
        fov: camera.fov,
      };
      controls.enabled = false;
    }
    invalidate();
  }, [stand, calm, reset, controls, camera, invalidate]);

  useFrame(() => {
    const walking = walk.current;
    if (walking === null || !controls || !(camera instanceof PerspectiveCamera)) return;
    const share = ease(Math.min(1, (performance.now() - walking.began) / WALK_MS));
    camera.position.lerpVectors(walking.from, new Vector3(...stand.from), share);
    controls.target.lerpVectors(walking.to, new Vector3(...stand.to), share);
    camera.fov = walking.fov + (stand.fov - walking.fov) * share;
    camera.updateProjectionMatrix();
    camera.lookAt(controls.target);
    if (share === 1) {
      walk.current = null;
      controls.enabled = true;
      controls.update();
    }
    invalidate();
  });

  return (
    <OrbitControls
      ref={setControls}
      makeDefault
      enablePan={false}
      enableDamping={!calm}
      dampingFactor={0.12}
      rotateSpeed={0.55}
    />
  );
}
