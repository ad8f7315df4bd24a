import { type PanelName, Z_95 } from '../../core';
import { useSessionState } from '../../job';
import { placesInTheWay } from '../../output';
import { Callout, useLengths } from '../parts';
import { goTo, usePlace } from '../place';
import styles from './findings.module.css';
import { problemPlace } from './problem-words';
import { readiness } from './readiness';

interface ProblemsProps {
  /** the panel that is shown already */
  shown: PanelName | null;
  onShow: (panel: PanelName) => void;
}

/** What keeps the job from being built as it stands. */
export function Problems({ shown, onShow }: ProblemsProps) {
  const result = useSessionState((state) => state.result);
  const lengths = useLengths();
  const place = usePlace();
  const atVerdicts = place.name === 'site' && place.part === 'truth';
  if (!result) return null;
  const { problems } = result;
  const { unmeasured, uncertain } = readiness(result);
  if (unmeasured.length > 0) {
    return (
      <Callout weight="warn">
        <p>
          <strong>Nothing to cut by yet.</strong> Not measured: {unmeasured.join('; ')}.
        </p>
      </Callout>
    );
  }
  if (problems.length === 0 && uncertain !== null) {
    return (
      <Callout weight="warn">
        <p>
          <strong>Too uncertain to cut by.</strong> The least certain cut edge is known to{' '}
          {lengths.plusMinus(uncertain / Z_95)} only. Take the readings advised.
        </p>
      </Callout>
    );
  }
  if (problems.length === 0) {
    const inTheWay = placesInTheWay(result);
    return (
      <Callout weight={inTheWay.length > 0 ? 'warn' : 'good'}>
        <p>The sheets cover the alcove and every hole lies on its panel.</p>
        {inTheWay.length > 0 && (
          <div className={styles.ready}>
            <span>
              <strong>Not ready for panels.</strong> {inTheWay.join('. ')}.
            </span>
            {!atVerdicts && (
              <button type="button" onClick={() => goTo({ name: 'site', part: 'truth' })}>
                See why
              </button>
            )}
          </div>
        )}
      </Callout>
    );
  }
  return (
    <Callout weight="bad">
      <h2 className={styles.problemsHead}>
        {problems.length === 1 ? 'One problem' : `${problems.length} problems`} before anything is cut
      </h2>
      <ul className={styles.problems}>
        {problems.map((problem) => {
          const { words, panel } = problemPlace(problem);
          return (
            <li key={`${problem.where} ${problem.what}`}>
              <span>
                <strong>{words}:</strong> {problem.what}
                {problem.howMuch !== null && (
                  <>
                    {' '}
                    (<b>{lengths.text(problem.howMuch)}</b>)
                  </>
                )}
                .
              </span>
              {panel && panel !== shown && (
                <button type="button" onClick={() => onShow(panel)}>
                  Show it
                </button>
              )}
            </li>
          );
        })}
      </ul>
    </Callout>
  );
}
