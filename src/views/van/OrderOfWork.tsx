import { type Job, type Result, type SequenceStep, temperatureText } from '../../core';
import { jobFileStem } from '../../job';
import { capital, checklistPdf, durationWords, loadBrowserFonts, orderOfWorkCalendar, timeWords } from '../../output';
import { Attention, Card, Download } from '../parts';
import { byDay } from './days';
import { slipWords, untilWords } from './step-words';
import styles from './van.module.css';

/** Every step by day, in the order in which they begin, with its checks and cautions. */
export function OrderOfWork({ job, result }: { job: Job; result: Result }) {
  const { people, temperature } = job.schedule;
  const calendar = async () => {
    const made = await orderOfWorkCalendar(job, result, new Date());
    if (!made.ok) return made;
    const name = `${jobFileStem(job)}-order-of-work.ics`;
    return { ok: true as const, content: made.text, name, type: 'text/calendar' };
  };
  const paper = async () => ({
    ok: true as const,
    name: `${jobFileStem(job)}-checklist.pdf`,
    content: new Uint8Array(await checklistPdf(job, result, await loadBrowserFonts())),
    type: 'application/pdf',
  });
  return (
    <Card
      title="Order of work"
      aside={
        <span className={styles.files}>
          <Download label="Checklist: PDF" what="checklist" make={paper} />
          <Download label="Calendar: iCalendar" what="calendar" make={calendar} />
        </span>
      }
    >
      <p className={styles.about}>
        For {people === 1 ? 'one person' : 'two people'} at {temperatureText('temperature', temperature, job.display)}.
        Slip: how much later a step can end without moving the end of the job.
      </p>
      {byDay(result.sequence, job.schedule).map(({ day, steps }) => (
        <section key={day} className={styles.day} aria-label={day}>
          <h3>{day}</h3>
          <ol className={styles.steps}>
            {steps.map((step) => (
              <Step key={step.id} step={step} all={result.sequence} job={job} />
            ))}
          </ol>
        </section>
      ))}
    </Card>
  );
}

function Step({ step, all, job }: { step: SequenceStep; all: SequenceStep[]; job: Job }) {
  const waits = all.filter(({ id }) => step.during.includes(id));
  return (
    <li className={styles.step} data-kind={step.kind}>
      <span className={styles.begin}>{timeWords(step.start)}</span>
      <div className={styles.stepText}>
        <p>
          {step.kind === 'gate' && <b className={styles.tag}>Check</b>}
          {step.kind === 'wait' && <b className={styles.tag}>Wait</b>}
          <strong>{capital(step.label)}</strong>
        </p>
        <p className={styles.about}>
          {durationWords(step.duration)}, until {untilWords(step, job.schedule)}; {slipWords(step)}
          {step.people === 2 && '; two people'}
          {job.schedule.people === 2 && step.who.length === 1 && `; ${step.who[0] === 1 ? 'first' : 'second'} person`}
        </p>
        {waits.map((wait) => (
          <p key={wait.id} className={styles.about}>
            While it cures: {wait.label}
          </p>
        ))}
        {step.cautions.length > 0 && (
          <ul className={styles.cautions} aria-label="Cautions">
            {step.cautions.map((caution) => (
              <li key={caution}>
                <span className={styles.cautionSign}>
                  <Attention />
                </span>
                {caution}
              </li>
            ))}
          </ul>
        )}
      </div>
    </li>
  );
}
