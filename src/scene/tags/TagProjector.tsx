import { useFrame, useThree } from '@react-three/fiber';
import { type RefObject, useEffect } from 'react';
import { Vector3 } from 'three';
import { arranged, type TagBox } from './arrange';
import type { Tag } from './tag';

interface TagProjectorProps {
  tags: readonly Tag[];
  elements: RefObject<Map<string, HTMLElement>>;
  /** what stands over the drawing in this frame and is to be left free */
  inTheWay?: () => readonly TagBox[];
}

/** Puts the tags' elements where their places appear on the screen, frame by frame. */
export function TagProjector({ tags, elements, inTheWay }: TagProjectorProps) {
  const invalidate = useThree((state) => state.invalidate);
  // biome-ignore lint/correctness/useExhaustiveDependencies: other tags need another frame
  useEffect(() => invalidate(), [tags, invalidate]);
  useFrame(({ camera, size }) => {
    camera.updateMatrixWorld();
    const on = new Vector3();
    const { x, y, z } = camera.position;
    const wanted = tags.map(({ key, at, seenFrom }) => {
      const element = elements.current.get(key);
      on.set(at[0], at[1], at[2]).project(camera);
      if (seenFrom?.([x, y, z]) === false) return null;
      if (!element || on.z > 1 || Math.abs(on.x) > 1 || Math.abs(on.y) > 1) return null;
      return {
        x: ((on.x + 1) / 2) * size.width,
        y: ((1 - on.y) / 2) * size.height,
        width: element.offsetWidth,
        height: element.offsetHeight,
      };
    });
    arranged(wanted, size, inTheWay?.()).forEach((box, i) => {
      const element = elements.current.get(tags[i]!.key);
      if (!element) return;
      element.style.visibility = box ? 'visible' : 'hidden';
      if (box) element.style.transform = `translate(${box.x - box.width / 2}px, ${box.y - box.height / 2}px)`;
    });
  });
  return null;
}
