import { Html } from '@react-three/drei';
import type { Vec3 } from './geometry';
import styles from './scene.module.css';

export type TagKind = 'line' | 'sliver' | 'gap' | 'hole' | 'panel';

/** Words at a place in the drawing. The same is said in the lists beside it, so readers of the screen skip it here. */
export function Tag({ at, kind, children }: { at: Vec3; kind: TagKind; children: string }) {
  return (
    <Html
      position={[at[0], at[1], at[2]]}
      center
      zIndexRange={[5, 0]}
      wrapperClass={styles.tagPlace}
      pointerEvents="none"
    >
      <span className={styles.tag} data-kind={kind} aria-hidden="true">
        {children}
      </span>
    </Html>
  );
}
