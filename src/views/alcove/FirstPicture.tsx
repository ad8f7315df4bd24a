import { type ReactNode, Suspense } from 'react';
import type { Job, Result } from '../../core';
import { useTouched } from '../parts';
import { AlcovePicture } from './AlcovePicture';
import styles from './alcove.module.css';

interface FirstPictureProps {
  job: Job;
  result: Result;
  /** the drawing in 3D, whose code is large, and which the plain picture stands in for where it fails */
  children: (picture: ReactNode) => ReactNode;
}

/** A plain picture at once; the drawing in 3D takes its place at the first sign that somebody is there. */
export function FirstPicture({ job, result, children }: FirstPictureProps) {
  const touched = useTouched();
  const picture = <AlcovePicture job={job} result={result} />;
  if (touched) return <Suspense fallback={picture}>{children(picture)}</Suspense>;
  return (
    <>
      {picture}
      <button type="button" className={styles.turn}>
        Look around in 3D
      </button>
    </>
  );
}
