import { DropdownMenu } from 'radix-ui';
import { blankJob, demos, useSession } from '../../job';
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
          Look at a demo <span aria-hidden="true">▾</span>
        </DropdownMenu.Trigger>
        <DropdownMenu.Portal>
          <DropdownMenu.Content className={styles.menu} align="end" sideOffset={6} collisionPadding={8}>
            {demos.map(({ name, job }) => (
              <DropdownMenu.Item key={name} className={styles.menuItem} onSelect={() => start(job)}>
                {name}
              </DropdownMenu.Item>
            ))}
          </DropdownMenu.Content>
        </DropdownMenu.Portal>
      </DropdownMenu.Root>
    </div>
  );
}
