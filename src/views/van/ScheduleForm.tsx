import { degreeMark } from '../../core';
import { useDraft, useSession } from '../../job';
import { Card, ChoiceField, DateField, NumberField, Switch } from '../parts';
import { beginChoices, endChoices } from './hours';
import styles from './van.module.css';

const weekdays = ['Mon', 'Tue', 'Wed', 'Thu', 'Fri', 'Sat', 'Sun'];

const rates = [
  ['shutOff', 'Shut off, protect'],
  ['prepareWall', 'Prepare a wall'],
  ['tapeMetre', 'Tape, a metre'],
  ['knifeMetre', 'Knife cut, a metre'],
  ['planeMetre', 'Plane or sand, a metre'],
  ['jigsawMetre', 'Jigsaw, a metre'],
  ['jointMetre', 'Joint, a metre'],
  ['hole', 'Hole'],
  ['dryFit', 'Dry fit a panel'],
  ['adhesive', 'Adhesive on a panel'],
  ['setPanel', 'Set a panel'],
  ['leg', 'Leg'],
  ['trimPiece', 'Piece of trim'],
  ['shelf', 'Shelf'],
  ['clean', 'Tape off and clean'],
  ['plumbing', 'Plumbing trim'],
  ['handOver', 'Hand over'],
] as const;

/** Who works when and how fast, and what the pastes need. */
export function ScheduleForm() {
  const schedule = useDraft(({ draft }) => draft.job.schedule);
  const degree = useDraft(({ draft }) => degreeMark(draft.job.display));
  const { choose } = useSession().draft.getState();
  const setDay = (day: number, on: boolean) =>
    choose(
      ['schedule', 'days'],
      on ? [...schedule.days, day].sort((a, b) => a - b) : schedule.days.filter((each) => each !== day),
    );
  return (
    <Card title="Planned by">
      <div className={styles.form}>
        <ChoiceField
          label="People"
          labelShown
          value={String(schedule.people)}
          choices={[
            ['1', 'one'],
            ['2', 'two'],
          ]}
          onChoose={(people) => choose(['schedule', 'people'], Number(people))}
        />
        <DateField path={['schedule', 'start']} label="First day" />
        <ChoiceField
          label="Work begins"
          labelShown
          value={String(schedule.from)}
          choices={beginChoices(schedule)}
          onChoose={(minute) => choose(['schedule', 'from'], Number(minute))}
        />
        <ChoiceField
          label="Work ends"
          labelShown
          value={String(schedule.to)}
          choices={endChoices(schedule)}
          onChoose={(minute) => choose(['schedule', 'to'], Number(minute))}
        />
      </div>
      <fieldset className={styles.weekdays}>
        <legend>Days of work</legend>
        {weekdays.map((words, i) => (
          <Switch
            key={words}
            label={words}
            on={schedule.days.includes(i + 1)}
            onChange={(on) => (on || schedule.days.length > 1) && setDay(i + 1, on)}
          />
        ))}
      </fieldset>
      <h3>Curing</h3>
      <div className={styles.form}>
        <NumberField path={['schedule', 'cure', 'adhesive']} label="Adhesive cures" kind="number" unit="h" labelShown />
        <NumberField path={['schedule', 'cure', 'sealant']} label="Sealant cures" kind="number" unit="h" labelShown />
        <NumberField
          path={['schedule', 'temperature']}
          label={`Temperature, ${degree}`}
          kind="temperature"
          labelShown
        />
        <NumberField
          path={['schedule', 'skinOver']}
          label="Sealant skins over in"
          kind="number"
          unit="min"
          labelShown
        />
      </div>
      <details className={styles.rates}>
        <summary>Your own rates, minutes</summary>
        <p className={styles.about}>Figures to begin with are common practice, no source: put in your own.</p>
        <div className={styles.form}>
          {rates.map(([name, label]) => (
            <NumberField
              key={name}
              path={['schedule', 'rates', name]}
              label={label}
              kind="number"
              unit="min"
              labelShown
            />
          ))}
        </div>
      </details>
    </Card>
  );
}
