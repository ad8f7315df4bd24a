import type { RefObject } from 'react';
import type { Tag } from './tag';
import styles from './tags.module.css';

interface TagLayerProps {
  tags: readonly Tag[];
  elements: RefObject<Map<string, HTMLElement>>;
}

/** The tags' elements over the canvas. The lists beside the drawing say the same, so readers of the screen skip them. */
export function TagLayer({ tags, elements }: TagLayerProps) {
  return (
    <div className={styles.layer} aria-hidden="true">
      {tags.map(({ key, kind, text }) => (
        <span
          key={key}
          className={styles.tag}
          data-kind={kind}
          ref={(element) => {
            if (!element) return undefined;
            elements.current.set(key, element);
            return () => void elements.current.delete(key);
          }}
        >
          {text}
        </span>
      ))}
    </div>
  );
}
