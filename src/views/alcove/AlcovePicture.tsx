import { useMemo } from 'react';
import type { Job, Result } from '../../core';
import { alcovePicture } from '../../output';
import styles from './alcove.module.css';

/** The finished alcove as a plain picture, there at once. */
export function AlcovePicture({ job, result }: { job: Job; result: Result }) {
  const { width, height, faces } = useMemo(() => alcovePicture(job, result), [job, result]);
  return (
    <svg
      className={styles.picture}
      viewBox={`0 0 ${width} ${height}`}
      preserveAspectRatio="xMidYMid slice"
      role="img"
      aria-label="The finished alcove, a plain picture"
    >
      {faces.map(({ points, fill, line }, i) => (
        <polygon
          // biome-ignore lint/suspicious/noArrayIndexKey: faces are drawn in a fixed order
          key={i}
          points={points.map(([x, y]) => `${x.toFixed(1)},${y.toFixed(1)}`).join(' ')}
          fill={fill}
          stroke={line ?? fill}
          strokeWidth={1.2}
          strokeLinejoin="round"
        />
      ))}
    </svg>
  );
}
