import { useFrame, useThree } from '@react-three/fiber';
import { type RefObject, useEffect } from 'react';
import { type Group, PerspectiveCamera, Vector3 } from 'three';
import { drawViews } from './draw-views';
import type { Stand, Viewpoint } from './viewpoint';

/** Takes pictures of the scene as PNG: as it is seen now, or from a viewpoint. */
export interface Photographer {
  picture(viewpoint?: Viewpoint): Promise<Blob>;
}

interface ViewsProps {
  groups: RefObject<(Group | null)[]>;
  count: number;
  wipe: number | null;
  standAt: (viewpoint: Viewpoint) => Stand;
  onPhotographer: (photographer: Photographer | null) => void;
}

/** Draws the views whenever something moved, and hands out somebody who takes pictures of them. */
export function Views({ groups, count, wipe, standAt, onPhotographer }: ViewsProps) {
  const { invalidate, get } = useThree();
  // Whatever is drawn differently is rendered anew here; turning the view leaves the shadows of one alone as they are.
  useEffect(() => {
    const { gl } = get();
    gl.shadowMap.autoUpdate = count > 1;
    gl.shadowMap.needsUpdate = true;
    invalidate();
  });
  useFrame(({ gl, scene, camera, size }) => {
    if (!(camera instanceof PerspectiveCamera)) return;
    drawViews({ gl, scene, camera, ...size, groups: groups.current.slice(0, count), wipe });
  }, 1);
  useEffect(() => {
    onPhotographer({
      picture: (viewpoint) => {
        const stand = viewpoint && standAt(viewpoint);
        const { gl, scene, camera: seen, size } = get();
        const camera = (seen as PerspectiveCamera).clone();
        if (stand) {
          camera.position.set(...stand.from);
          camera.fov = stand.fov;
          camera.lookAt(new Vector3(...stand.to));
        }
        camera.updateMatrixWorld();
        drawViews({ gl, scene, camera, ...size, groups: groups.current.slice(0, count), wipe });
        return new Promise((resolve, reject) => {
          gl.domElement.toBlob(
            (blob) => (blob ? resolve(blob) : reject(new Error('the picture came out empty'))),
            'image/png',
          );
          invalidate();
        });
      },
    });
    return () => onPhotographer(null);
  }, [get, invalidate, groups, count, wipe, standAt, onPhotographer]);
  return null;
}
