import { useMemo, useRef } from 'react';
import { useDraft } from '../../../job';
import type { Paper } from './paper';
import { type KeptFree, type PlacedTag, placeTags } from './tags';
import type { Mark } from './useMarks';

type Tags = ReadonlyMap<string, PlacedTag>;

/** Where each tag lies. While a number is typed nothing moves but for what is new. */
export function useTags(marks: readonly Mark[], paper: Paper | null, free: readonly KeptFree[]): Tags {
  const typing = useDraft((state) => state.typing !== null);
  const last = useRef<{ paper: Paper; tags: Tags } | null>(null);
  return useMemo(() => {
    if (!paper) return new Map();
    const stands = last.current?.paper === paper && marks.every(({ place }) => last.current?.tags.has(place.key));
    if (typing && stands && last.current) return last.current.tags;
    const loose = marks.map(({ place, drawn, from, to, width }) => ({
      key: place.key,
      from,
      to,
      width,
      best: drawn.shape === 'column' ? 0.25 : 0.5,
    }));
    const tags = new Map(placeTags(loose, paper, free).map((tag) => [tag.key, tag]));
    last.current = { paper, tags };
    return tags;
  }, [marks, paper, typing, free]);
}
