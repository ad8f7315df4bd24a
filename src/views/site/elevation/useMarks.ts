import { useMemo } from 'react';
import { useDraft, useSessionState } from '../../../job';
import { useLengths } from '../../parts';
import {
  type PlaceState,
  type SurveyPlace,
  stateOf,
  type TagWords,
  tagWords,
  unfinishedWords,
  useSurvey,
} from '../survey';
import { type Drawn, drawnPlace } from './drawn';
import type { Frame, Point } from './frame';
import type { Paper } from './paper';
import { TOUCH } from './tags';

/** A place of the survey as it stands on the paper, px. */
export interface Mark {
  place: SurveyPlace;
  drawn: Drawn;
  state: PlaceState;
  words: TagWords;
  /** what is to be done, shown as a sign before the words */
  sign: 're-measure' | 'unfinished' | null;
  /** of its tag */
  width: number;
  from: Point;
  to: Point;
  ticks: Point[];
}

const CHARACTER = 8.7;
const BOW = 16;
const SIGN = 16;
const PADDING = 12;
const WIDEST = 116;

/** The places that can be drawn, on the paper. */
export function useMarks(places: readonly SurveyPlace[], frame: Frame | null, paper: Paper | null): Mark[] {
  const { settled } = useSurvey();
  const setAside = useSessionState((state) => state.setAside);
  const typed = useDraft(({ draft }) => draft.typed);
  const lengths = useLengths();
  return useMemo(() => {
    if (!frame || !paper) return [];
    const isUnfinished = (list: SurveyPlace['list'], id: string) =>
      setAside.some((each) => each.list === list && each.id === id);
    return places.flatMap((place): Mark[] => {
      const drawn = drawnPlace(place, frame);
      if (!drawn) return [];
      const state = stateOf(place, settled?.result.adjustment, isUnfinished);
      const words = state === 'unfinished' ? unfinishedWords(place, typed, lengths) : tagWords(place, lengths);
      const sign = state === 're-measure' || state === 'unfinished' ? state : null;
      const at = ({ wall, at: station, height }: Drawn['from']) => paper.at(frame.point(wall, station, height));
      const text = (sign === null ? 0 : SIGN) + CHARACTER * words.short.length + (words.bow === 0 ? 0 : BOW) + PADDING;
      return [
        {
          place,
          drawn,
          state,
          words,
          sign,
          width: Math.min(WIDEST, Math.max(TOUCH, text)),
          from: at(drawn.from),
          to: at(drawn.to),
          ticks: drawn.ticks.map(at),
        },
      ];
    });
  }, [places, frame, paper, settled, setAside, typed, lengths]);
}
