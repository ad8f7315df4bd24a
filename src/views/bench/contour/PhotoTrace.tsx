import { type PointerEvent, useEffect, useId, useRef, useState } from 'react';
import { parseLength } from '../../../core';
import { useLengths } from '../../parts';
import styles from './contour.module.css';
import { type Pixel, tracedLine } from './traced-line';
import { useContour } from './use-contour';

interface Picture {
  address: string;
  width: number;
  height: number;
}

/** A photo along the tub with a rule held plumb: its ends are tapped for the scale, then points along the contour. */
export function PhotoTrace() {
  const id = useId();
  const { unit } = useLengths();
  const take = useContour();
  const [picture, setPicture] = useState<Picture | null>(null);
  const [taps, setTaps] = useState<Pixel[]>([]);
  const [ruleText, setRuleText] = useState('');
  const [told, setTold] = useState<string | null>(null);
  const drawing = useRef<SVGSVGElement>(null);
  useEffect(() => () => void (picture && URL.revokeObjectURL(picture.address)), [picture]);

  const open = async (file: File | undefined) => {
    if (!file) return;
    try {
      const bitmap = await createImageBitmap(file);
      const { width, height } = bitmap;
      bitmap.close();
      setPicture({ address: URL.createObjectURL(file), width, height });
      setTaps([]);
      setTold(null);
    } catch {
      setTold(`${file.name} is not a picture that this browser can show.`);
    }
  };
  const tap = (event: PointerEvent<SVGSVGElement>) => {
    const element = drawing.current;
    const toScreen = element?.getScreenCTM();
    if (!element || !toScreen) return;
    const { x, y } = new DOMPoint(event.clientX, event.clientY).matrixTransform(toScreen.inverse());
    setTold(null);
    setTaps([...taps, [x, y]]);
  };
  const [upper, lower, ...contour] = taps;
  const rule = parseLength(ruleText, unit);
  const use = () => {
    if (!rule.ok) return setTold(`Length of the rule: ${rule.message}.`);
    const line = upper && lower && tracedLine(contour, [upper, lower], rule.mm);
    return setTold(
      line
        ? (take(line) ?? 'The contour is taken from the photo.')
        : 'The ends of the rule fall together; tap them again.',
    );
  };
  const grid = rule.ok && upper && lower ? gridOf(upper, lower, rule.mm, unit) : null;
  return (
    <div className={styles.gauge}>
      <p>
        Look along the tub, square to the wall, with a rule held plumb against its outer face. Tap the rule’s upper end,
        its lower end, then points along the contour from where the rim leaves its plane down to the floor.
      </p>
      <label htmlFor={`${id}-file`}>Photo (stays on this device)</label>
      <input id={`${id}-file`} type="file" accept="image/*" onChange={({ target }) => void open(target.files?.[0])} />
      <label htmlFor={`${id}-rule`}>Between the two taps on the rule, {unit}</label>
      <input
        id={`${id}-rule`}
        value={ruleText}
        autoComplete="off"
        placeholder={unit === 'in' ? '12' : '300'}
        onChange={({ target }) => setRuleText(target.value)}
      />
      {picture && (
        <svg
          ref={drawing}
          className={styles.photo}
          viewBox={`0 0 ${picture.width} ${picture.height}`}
          role="img"
          aria-label={`The photo, ${taps.length} points tapped`}
          onPointerUp={tap}
        >
          <image href={picture.address} width={picture.width} height={picture.height} />
          {grid && (
            <>
              <defs>
                <pattern
                  id={`${id}-grid`}
                  width={grid.step}
                  height={grid.step}
                  patternUnits="userSpaceOnUse"
                  patternTransform={`translate(${upper![0]} ${upper![1]}) rotate(${grid.turn})`}
                >
                  <path className={styles.photoGrid} d={`M0 0H${grid.step}M0 0V${grid.step}`} />
                </pattern>
              </defs>
              <rect width={picture.width} height={picture.height} fill={`url(#${id}-grid)`} />
            </>
          )}
          {upper && lower && <polyline className={styles.photoRule} points={`${upper} ${lower}`} />}
          <polyline className={styles.photoLine} points={contour.join(' ')} />
          {taps.map(([x, y], i) => (
            <circle
              // biome-ignore lint/suspicious/noArrayIndexKey: a tap is nothing but its place in the order
              key={i}
              className={styles.photoPoint}
              cx={x}
              cy={y}
              r={Math.max(picture.width, picture.height) / 90}
            />
          ))}
        </svg>
      )}
      {picture && (
        <div className={styles.photoRow}>
          <button type="button" disabled={taps.length === 0} onClick={() => setTaps(taps.slice(0, -1))}>
            Take the last tap back
          </button>
          <button type="button" disabled={contour.length < 2} onClick={use}>
            Use this contour
          </button>
        </div>
      )}
      <p role="status">{told ?? (picture ? next(taps.length) : null)}</p>
    </div>
  );
}

const next = (count: number): string =>
  ['Tap the upper end of the rule.', 'Tap its lower end.'][count] ??
  `Tap along the contour: ${count - 2} ${count === 3 ? 'point' : 'points'} so far.`;

/** Squares of an inch or 20 mm along the rule, in px. */
function gridOf(upper: Pixel, lower: Pixel, ruleLength: number, unit: 'in' | 'mm') {
  const [dx, dy] = [lower[0] - upper[0], lower[1] - upper[1]];
  const step = ((unit === 'in' ? 25.4 : 20) * Math.hypot(dx, dy)) / ruleLength;
  return step > 2 ? { step, turn: (Math.atan2(dy, dx) * 180) / Math.PI - 90 } : null;
}
