import { useCallback, useEffect, useMemo, useRef, useState } from 'react';
import type { WallName } from '../../../core';
import { Attention, Card, ChevronRight, Cross, Minus, Plus, Segments, Switch, useLengths } from '../../parts';
import { kindWords } from '../readings';
import { type PlaceState, type SurveyPlace, useEntryState, useSurvey, whereWords } from '../survey';
import { Bow } from './Bow';
import styles from './elevation.module.css';
import { frameOf } from './frame';
import { Ground } from './Ground';
import { lineNames, roomOf } from './lineNames';
import { Prompt } from './Prompt';
import { paperOf } from './paper';
import { ReadingLine } from './ReadingLine';
import { useMarks } from './useMarks';
import { useRoving } from './useRoving';
import { useTags } from './useTags';
import { useTraced } from './useTraced';
import { useWidth } from './useWidth';

const walls: readonly (readonly [WallName, string])[] = [
  ['left', 'Left'],
  ['back', 'Back'],
  ['right', 'Right'],
];
const zooms = [1, 1.5, 2.25];
/** Empty places that invite at a time, unless all are asked for. */
const INVITED = 10;

interface ElevationProps {
  picked: WallName | null;
  onPick: (wall: WallName) => void;
}

/** The three walls unrolled side by side, each reading where its tape lies and the empty places of the plan. */
export function Elevation({ picked, onPick }: ElevationProps) {
  const { entry, survey, settled, best } = useSurvey();
  const active = useEntryState((state) => state.active);
  const lengths = useLengths();
  const [zoom, setZoom] = useState(0);
  const [all, setAll] = useState(false);
  const [box, width] = useWidth();
  const scroller = useRef<HTMLDivElement>(null);

  const frame = useMemo(() => settled && frameOf(settled.result), [settled]);
  const paper = useMemo(() => frame && paperOf(frame, width, zooms[zoom]!), [frame, width, zoom]);
  const empties = survey.places.filter(({ id }) => id === null);
  const activeKey = active?.place.key ?? null;
  const shown = useMemo(() => {
    const open = survey.places.filter(({ id }) => id === null);
    const invited = new Set(all ? open : open.slice(0, INVITED));
    return survey.places.filter(
      (place) => place.id !== null || invited.has(place) || place === best || place.key === activeKey,
    );
  }, [survey, all, best, activeKey]);
  const marks = useMarks(shown, frame, paper);
  const names = useMemo(
    () => (paper && frame && settled ? lineNames(frame, paper, settled.job) : []),
    [paper, frame, settled],
  );
  const rooms = useMemo(() => names.map(roomOf), [names]);
  const tags = useTags(marks, paper, rooms);

  const roving = useRoving(
    marks.map(({ place }) => place.key),
    activeKey,
  );
  useTraced(marks.find(({ place }) => place.key === (activeKey ?? roving.focused))?.drawn ?? null);

  const scrollTo = useCallback(
    (wall: WallName) => {
      if (!frame || !paper) return;
      const middle = wall === 'back' ? 0 : frame.front[wall](0) / 2;
      scroller.current?.scrollTo({ left: paper.at(frame.point(wall, middle, 0))[0] - width / 2 });
    },
    [frame, paper, width],
  );
  const pickedBefore = useRef(picked);
  useEffect(() => {
    if (!frame || !paper || picked === pickedBefore.current) return;
    pickedBefore.current = picked;
    if (picked) scrollTo(picked);
  }, [picked, frame, paper, scrollTo]);
  const centred = useRef(false);
  useEffect(() => {
    if (!paper || width === 0 || centred.current || !scroller.current) return;
    centred.current = true;
    scroller.current.scrollTo({ left: paper.at([0, 0])[0] - width / 2 });
  }, [paper, width]);

  const showWall = (wall: WallName) => {
    scrollTo(wall);
    onPick(wall);
  };
  const scrolls = paper !== null && paper.width > width + 1;
  return (
    <Card title="On the walls" aside={<Progress />}>
      <Prompt />
      <div className={styles.stage} ref={box}>
        <div className={styles.scroller} ref={scroller}>
          {paper && frame && settled ? (
            <div className={styles.paper} style={{ width: paper.width, height: paper.height }}>
              <svg width={paper.width} height={paper.height} aria-hidden="true">
                <Ground
                  frame={frame}
                  paper={paper}
                  names={names}
                  job={settled.job}
                  result={settled.result}
                  picked={picked}
                />
                {marks.map(({ place }) => {
                  const tag = tags.get(place.key);
                  return (
                    tag && (
                      <line
                        key={place.key}
                        className={styles.leader}
                        x1={tag.foot[0]}
                        y1={tag.foot[1]}
                        x2={tag.x}
                        y2={tag.y}
                      />
                    )
                  );
                })}
                {marks.map((mark) => (
                  <ReadingLine key={mark.place.key} mark={mark} paper={paper} active={mark.place.key === activeKey} />
                ))}
              </svg>
              <div
                ref={roving.box}
                role="toolbar"
                aria-label="Places of the survey, in the order of the plan"
                onKeyDown={roving.onKeyDown}
                onBlur={roving.onBlur}
              >
                {marks.map(({ place, state, words, sign, width: wide }) => {
                  const tag = tags.get(place.key);
                  if (!tag) return null;
                  const isBest = place === best;
                  return (
                    <button
                      key={place.key}
                      type="button"
                      className={styles.tag}
                      data-place={place.key}
                      data-state={state}
                      data-best={isBest || undefined}
                      aria-current={place.key === activeKey || undefined}
                      tabIndex={roving.tabIndex(place.key)}
                      style={{ left: tag.x, top: tag.y, width: wide }}
                      aria-label={`${labelOf(place, lengths)}: ${sayState(state, words.long)}${isBest ? ', best to read next' : ''}`}
                      onFocus={() => roving.onFocus(place.key)}
                      onClick={() => entry.getState().open(place)}
                    >
                      <span className={styles.tagFace}>
                        {sign === 're-measure' && <Cross />}
                        {sign === 'unfinished' && <Attention />}
                        {words.bow !== 0 && <Bow hollow={words.bow > 0} />}
                        <span className={styles.tagText}>{words.short || (isBest ? <ChevronRight /> : <Plus />)}</span>
                      </span>
                    </button>
                  );
                })}
              </div>
            </div>
          ) : (
            <p className={styles.wait}>Working out the alcove…</p>
          )}
        </div>
      </div>
      <div className={styles.controls}>
        {scrolls && <Segments label="Show a wall" value={picked} choices={walls} onChoose={showWall} />}
        <div className={styles.zoom}>
          <button type="button" aria-label="Smaller" disabled={zoom === 0} onClick={() => setZoom(zoom - 1)}>
            <Minus />
          </button>
          <button
            type="button"
            aria-label="Larger"
            disabled={zoom === zooms.length - 1}
            onClick={() => setZoom(zoom + 1)}
          >
            <Plus />
          </button>
        </div>
        {empties.length > INVITED && <Switch label={`All ${empties.length} empty places`} on={all} onChange={setAll} />}
      </div>
    </Card>
  );
}

function labelOf(place: SurveyPlace, lengths: ReturnType<typeof useLengths>): string {
  if (place.list === 'fixtures') return `Hole for ${place.where.id}, ${place.where.wall} wall`;
  return `${kindWords[place.where.kind].name}, ${whereWords(place.where, lengths)}`;
}

const sayState = (state: PlaceState, words: string): string => {
  switch (state) {
    case 'empty':
      return 'empty';
    case 'unfinished':
      return `${words} not finished`.trim();
    case 're-measure':
      return `${words}, re-measure this one`;
    case 'off':
      return `${words}, left out`;
    case 'taken':
      return words;
  }
};

function Progress() {
  const { survey } = useSurvey();
  const planned = useEntryState(({ plan }) => plan.length > 0);
  const open = survey.steps.filter(({ place }) => place.startsWith('empty/'));
  const first = open.filter(({ round }) => round === 1).length;
  if (!planned) return null;
  return (
    <p className={styles.progress}>
      {first > 0 ? `${first} more for a first template; ` : open.length > 0 && 'Readings enough for a first template; '}
      {open.length === 0 ? 'All of the plan is read' : `${open.length} of ${survey.steps.length} to go`}
    </p>
  );
}
