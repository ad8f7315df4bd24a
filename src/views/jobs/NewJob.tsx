import { DropdownMenu } from 'radix-ui';
import { blankJob, demos, useSession } from '../../job';
import { ChevronDown, MenuContent, MenuItem } from '../parts';
import { goTo } from '../place';
import styles from './jobs.module.css';

/** Starts an empty job or a demo. */
export function NewJob() {
  const session = useSession();
  const start = (job: Parameters<typeof session.openJob>[0]) => {
    void session.openJob(job);
    goTo({ name: 'site', part: 'readings' });
  };
  return (
    <div className={styles.buttons}>
      <button type="button" className={styles.main} onClick={() => start(blankJob())}>
        Start an empty job
      </button>
      <DropdownMenu.Root modal={false}>
        <DropdownMenu.Trigger>
          Look at a demo <ChevronDown />
        </DropdownMenu.Trigger>
        <MenuContent>
          {demos.map(({ name, job }) => (
            <MenuItem key={name} onSelect={() => start(job)}>
              {name}
            </MenuItem>
          ))}
        </MenuContent>
      </DropdownMenu.Root>
    </div>
  );
}
