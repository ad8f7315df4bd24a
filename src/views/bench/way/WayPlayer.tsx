import { Suspense, useEffect, useId, useState } from 'react';
import type { Job, PanelName, Result } from '../../../core';
import { degrees } from '../../../output';
import { panelTitle, useCalm } from '../../alcove';
import { loaded, Segments, useTouched } from '../../parts';
import { setBefore } from './set-before';
import styles from './way.module.css';

const WayView = loaded(() => import('../../../scene').then((scene) => scene.WayView));

/** The whole way takes this long when it plays, ms. */
const LASTS = 6000;

/** The panel in 3D on its way in: a slider, a button that plays it, and its steps. */
export function WayPlayer({ panel, job, result }: { panel: PanelName; job: Job; result: Result }) {
  const { poses } = result.gettingIn.panels[panel];
  const last = poses.length - 1;
  const calm = useCalm();
  const touched = useTouched();
  const id = useId();
  const [at, setAt] = useState(0);
  const [playing, setPlaying] = useState(false);
  const [from, setFrom] = useState<'room' | 'above'>(panel === 'back' ? 'above' : 'room');
  const place = Math.min(at, Math.max(last, 0));

  useEffect(() => {
    if (!playing) return;
    let frame = 0;
    let before: number | null = null;
    const go = (now: number) => {
      const step = before === null ? 0 : ((now - before) / LASTS) * last;
      before = now;
      setAt((was) => Math.min(last, was + step));
      frame = requestAnimationFrame(go);
    };
    frame = requestAnimationFrame(go);
    return () => cancelAnimationFrame(frame);
  }, [playing, last]);
  useEffect(() => {
    if (playing && at >= last) setPlaying(false);
  }, [playing, at, last]);

  if (poses.length === 0) return <p>There is no way in to show.</p>;
  const steps = poses.flatMap(({ step }, k) => (step === '' ? [] : [{ step, k }]));
  const current = steps.findLast(({ k }) => k <= place + 1e-6) ?? steps[0]!;
  const pose = poses[Math.round(place)]!;
  const words = `${current.step}${Math.abs(pose.angle) > 0.05 ? `, turned ${degrees(Math.abs(pose.angle))}` : ''}`;
  const description = `${panelTitle[panel]} on its way in: ${words}. The alcove is drawn as it is, not exaggerated.`;
  const next = () => setAt(steps.find(({ k }) => k > place + 1e-6)?.k ?? 0);
  const play = () => {
    if (place >= last) setAt(0);
    setPlaying(!playing);
  };
  return (
    <div className={styles.player}>
      <div className={styles.stage} data-testid="way">
        {touched ? (
          <Suspense fallback={<p className={styles.wait}>Loading the drawing…</p>}>
            <WayView {...{ result, job, panel, from, description, calm }} set={setBefore(panel, job)} at={place} />
          </Suspense>
        ) : (
          <button type="button" className={styles.wait}>
            Show the way in 3D
          </button>
        )}
      </div>
      <div className={styles.controls}>
        {calm ? (
          <button type="button" onClick={next}>
            {place >= last ? 'From the start' : 'Next step'}
          </button>
        ) : (
          <button type="button" onClick={play}>
            {playing ? 'Stop' : place >= last ? 'Play again' : 'Play'}
          </button>
        )}
        <div className={styles.slider}>
          <label htmlFor={id}>
            Way in: <strong>{words}</strong>
          </label>
          <input
            id={id}
            type="range"
            min={0}
            max={last}
            step={0.1}
            value={place}
            aria-valuetext={words}
            onChange={({ target }) => {
              setPlaying(false);
              setAt(target.valueAsNumber);
            }}
          />
        </div>
        <Segments
          label="Seen from"
          value={from}
          choices={[
            ['room', 'From the room'],
            ['above', 'From above'],
          ]}
          onChoose={setFrom}
        />
      </div>
      <ol className={styles.steps} aria-label="Steps of the way in">
        {steps.map(({ step, k }) => (
          <li key={k}>
            <button
              type="button"
              aria-current={k === current.k ? 'step' : undefined}
              onClick={() => {
                setPlaying(false);
                setAt(k);
              }}
            >
              {step}
            </button>
          </li>
        ))}
      </ol>
    </div>
  );
}
