import { DropdownMenu } from 'radix-ui';
import { useRef } from 'react';
import { blankJob, demos, download, jobFileName, jobText, usable, useSession, useSessionState } from '../../job';
import { ChevronDown, MenuContent, MenuItem } from '../parts';
import { goTo } from '../place';
import styles from './shell.module.css';

const keepingWords = {
  kept: 'Kept in this browser as you type.',
  writing: 'Being kept in this browser…',
  'not-kept': 'Not kept in this browser: save it.',
};

/** Open, save, demo jobs and a new job. */
export function JobMenu() {
  const session = useSession();
  const keeping = useSessionState((state) => state.keeping);
  const picker = useRef<HTMLInputElement>(null);

  const save = () => {
    const { draft } = session.draft.getState();
    const understood = usable(draft);
    if (!understood.ok) return session.tell('This job is not complete enough for a file yet.');
    download(jobFileName(draft.job), jobText(understood.job), 'application/json');
    const left = understood.setAside.length;
    const photos = draft.job.readings.reduce((sum, reading) => sum + (reading.photos?.length ?? 0), 0);
    const lacking = [
      ...(left === 0 ? [] : [`${left === 1 ? 'the one entry that is' : `the ${left} entries that are`} not finished`]),
      ...(photos === 0 ? [] : [photos === 1 ? 'its photo' : `its ${photos} photos`]),
    ];
    return session.tell(
      lacking.length === 0
        ? `Saved ${jobFileName(draft.job)}.`
        : `Saved ${jobFileName(draft.job)} without ${lacking.join(' and without ')}. They stay here; a file saved under All jobs holds them too.`,
    );
  };
  const open = async (file: File | undefined) => {
    if (!file) return;
    if (/\.zip$/i.test(file.name)) {
      session.tell(`${file.name} is a file of jobs: bring it in here.`);
      goTo({ name: 'jobs' });
      return;
    }
    try {
      session.openText(file.name, await file.text());
    } catch {
      session.tell(`${file.name} could not be read. Check that it is still there and try again.`);
    }
  };

  return (
    <>
      <input
        ref={picker}
        type="file"
        accept=".json,application/json"
        hidden
        data-testid="job-file"
        onChange={({ target }) => {
          void open(target.files?.[0]);
          target.value = '';
        }}
      />
      <DropdownMenu.Root modal={false}>
        <DropdownMenu.Trigger className={styles.menuButton}>
          Job <ChevronDown />
        </DropdownMenu.Trigger>
        <MenuContent>
          <MenuItem onSelect={() => goTo({ name: 'jobs' })}>All jobs</MenuItem>
          <MenuItem onSelect={() => session.openJob(blankJob())}>New job</MenuItem>
          <MenuItem onSelect={() => picker.current?.click()}>Open a job file…</MenuItem>
          <MenuItem onSelect={save}>Save as a job file</MenuItem>
          <DropdownMenu.Label className={styles.menuLabel}>{keepingWords[keeping]}</DropdownMenu.Label>
          <DropdownMenu.Separator className={styles.menuLine} />
          <DropdownMenu.Label className={styles.menuLabel}>Demo jobs</DropdownMenu.Label>
          {demos.map(({ name, job }) => (
            <MenuItem key={name} onSelect={() => session.openJob(job)}>
              {name}
            </MenuItem>
          ))}
        </MenuContent>
      </DropdownMenu.Root>
    </>
  );
}
