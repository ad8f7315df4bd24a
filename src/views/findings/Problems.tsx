import type { PanelName } from '../../core';
import { useSessionState } from '../../job';
import { Callout, useLengths } from '../parts';
import styles from './findings.module.css';
import { problemPlace } from './problem-words';

interface ProblemsProps {
  /** the panel that is shown already */
  shown: PanelName | null;
  onShow: (panel: PanelName) => void;
}

/** What keeps the job from being built as it stands. */
export function Problems({ shown, onShow }: ProblemsProps) {
  const problems = useSessionState((state) => state.result?.problems);
  const lengths = useLengths();
  if (!problems) return null;
  if (problems.length === 0)
    return (
      <Callout weight="good">
        <p>The sheets cover the alcove and every hole lies on its panel.</p>
      </Callout>
    );
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
