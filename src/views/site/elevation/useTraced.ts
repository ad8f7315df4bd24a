import { useEffect, useMemo } from 'react';
import { useDrawing } from '../../alcove';
import type { Drawn, WallPlace } from './drawn';

/** Least radius at which a hole is shown, mm. */
const RING = 45;

/** Shows a place on the 3D drawing as well. */
export function useTraced(drawn: Drawn | null): void {
  const set = useDrawing((state) => state.set);
  const key = drawn && JSON.stringify(lineOf(drawn));
  const line = useMemo(() => (key === null ? null : (JSON.parse(key) as WallPlace[])), [key]);
  useEffect(() => set({ traced: line }), [line, set]);
  useEffect(() => () => set({ traced: null }), [set]);
}

function lineOf({ shape, from, to, radius }: Drawn): WallPlace[] {
  if (shape !== 'hole') return [from, to];
  const r = Math.max(RING, radius);
  return Array.from({ length: 17 }, (_, i) => {
    const turn = (2 * Math.PI * i) / 16;
    return { ...from, at: from.at + r * Math.cos(turn), height: from.height + r * Math.sin(turn) };
  });
}
