import { onlyTab, type TabListener, type Tabs } from './tabs';

type Message = { say: 'written' | 'free' | 'want'; job: string };

const lockName = (job: string) => `nookwright-job-${job}`;
/** A page that is reloaded may still be letting go, ms. */
const patience = 700;
/** A page that does not answer for so long is asleep or stuck, ms. */
const answerIn = 3000;

/** Ties the pages of this browser together by Web Locks (who edits) and a BroadcastChannel (what was written). */
export function browserTabs(): Tabs {
  if (!('locks' in navigator) || typeof BroadcastChannel === 'undefined') return onlyTab;
  const channel = new BroadcastChannel('nookwright');
  const send = (say: Message['say'], job: string) => channel.postMessage({ say, job } satisfies Message);
  let held: { job: string; release: () => void } | null = null;
  let listener: TabListener | null = null;

  const letGo = () => {
    if (!held) return;
    const { job, release } = held;
    held = null;
    release();
    send('free', job);
  };

  /** Waits for the lock; null where it was not given in time. */
  const request = (job: string, lost: () => void, options: LockOptions): Promise<boolean> =>
    new Promise((resolve) => {
      navigator.locks
        .request(lockName(job), options, () => {
          resolve(true);
          return new Promise<void>((release) => {
            held = { job, release };
          });
        })
        .catch(() => {
          // The waiting was given up, or a lock that was held has been taken away.
          if (held?.job === job) {
            held = null;
            lost();
          }
          resolve(false);
        });
    });
  const hold = async (job: string, lost: () => void, wait: number) => {
    letGo();
    return request(job, lost, { signal: AbortSignal.timeout(wait) });
  };

  channel.addEventListener('message', async ({ data }: MessageEvent<Message>) => {
    if (data.say === 'written') listener?.written(data.job);
    else if (data.say === 'free') listener?.free(data.job);
    else if (held?.job === data.job) {
      await listener?.wanted(data.job);
      const given = held;
      held = null;
      given?.release();
    }
  });
  window.addEventListener('pagehide', letGo);

  return {
    hold: (job, lost, freed = false) => hold(job, lost, freed ? answerIn : patience),
    takeOver: async (job, lost) => {
      send('want', job);
      if (await hold(job, lost, answerIn)) return;
      await request(job, lost, { steal: true });
    },
    letGo,
    heldElsewhere: async (job) => {
      if (held?.job === job) return false;
      const { held: locks = [] } = await navigator.locks.query();
      return locks.some(({ name }) => name === lockName(job));
    },
    tellWritten: (job) => send('written', job),
    listen: (to) => {
      listener = to;
    },
  };
}
