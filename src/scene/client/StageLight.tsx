import { useThree } from '@react-three/fiber';
import { useEffect, useMemo } from 'react';
import { Object3D } from 'three';
import type { Room } from './geometry';
import { studioLight } from './studio';

/** The studio's even light, and one lamp in the room that casts soft shadows into the alcove. */
export function StageLight({ room }: { room: Room }) {
  const { gl, scene, invalidate } = useThree();
  useEffect(() => {
    const light = studioLight(gl);
    scene.environment = light.texture;
    scene.environmentIntensity = 0.7;
    invalidate();
    return () => {
      scene.environment = null;
      light.dispose();
    };
  }, [gl, scene, invalidate]);
  const target = useMemo(() => new Object3D(), []);
  const middle = (room.left + room.right) / 2;
  const wide = room.right - room.left;
  target.position.set(middle, (room.floor + room.ceiling) / 2 - 150, 0.3 * room.front);
  return (
    <>
      <primitive object={target} />
      <directionalLight
        target={target}
        position={[middle + 0.05 * wide, room.ceiling + 1100, room.front + 2500]}
        color="#fffdf9"
        intensity={1.35}
        castShadow
        shadow-mapSize={[1024, 1024]}
        shadow-camera-left={-0.75 * wide - 500}
        shadow-camera-right={0.75 * wide + 500}
        shadow-camera-top={1700}
        shadow-camera-bottom={-1700}
        shadow-camera-near={200}
        shadow-camera-far={7000}
        shadow-bias={-0.0006}
        shadow-normalBias={3}
        shadow-radius={3.5}
        shadow-intensity={0.7}
      />
      <pointLight
        position={[middle, room.ceiling - 120, 0.55 * room.front]}
        color="#fffaf3"
        intensity={0.55e6}
        decay={2}
      />
    </>
  );
}
