import { onlyTab, type TabListener, type Tabs } from './tabs';

type Message = { say: 'written' | 'want' | 'ready'; job: string };

/** One request for a job's lock, from when it is asked for until it is let go or taken away. */
interface Turn {
  job: string;
  lost: () => void;
  waiting: AbortController;
  /** null while the lock is waited for */
  release: (() => void) | null;
}

const lockName = (job: string) => `nookwright-job-${job}`;
/** A page that is reloaded may still be letting go, ms. */
const patience = 700;
/** A page that does not answer for so long is asleep or stuck, ms. */
const answerIn = 3000;

/**
 * Ties the pages of this browser together by Web Locks (who edits) and a BroadcastChannel (what was written). A page
 * that looks at a job waits for its lock for as long as it takes, so that it gets the job also from a page that was
 * killed and could say nothing.
 */
export function browserTabs(): Tabs {
  if (!('locks' in navigator) || typeof BroadcastChannel === 'undefined') return onlyTab;
  const channel = new BroadcastChannel('nookwright');
  const send = (say: Message['say'], job: string) => channel.postMessage({ say, job } satisfies Message);
  let turn: Turn | null = null;
  let listener: TabListener | null = null;

  const letGo = () => {
    const ended = turn;
    turn = null;
    ended?.waiting.abort();
    ended?.release?.();
  };

  /** Takes the place of the turn before, which stays as it is. */
  const begin = (job: string, lost: () => void, given: () => void, steal = false) => {
    const mine: Turn = { job, lost, waiting: new AbortController(), release: null };
    turn = mine;
    navigator.locks
      .request(lockName(job), steal ? { steal } : { signal: mine.waiting.signal }, () => {
        if (turn !== mine) return undefined;
        return new Promise<void>((release) => {
          mine.release = release;
          given();
        });
      })
      .catch(() => {
        if (turn !== mine) return;
        if (mine.release === null) {
          // No locks to be had here: revisions alone keep pages apart.
          given();
          return;
        }
        lost();
        waitFor(job, lost);
      });
  };
  const waitFor = (job: string, lost: () => void) => begin(job, lost, () => listener?.given(job));

  const hold = (job: string, lost: () => void): Promise<boolean> =>
    new Promise((resolve) => {
      letGo();
      let late = false;
      const timer = setTimeout(() => {
        late = true;
        resolve(false);
      }, patience);
      begin(job, lost, () => {
        clearTimeout(timer);
        if (late) listener?.given(job);
        else resolve(true);
      });
    });

  /** Resolves when the page that edits the job has kept what it has, or does not answer. */
  const ready = (job: string): Promise<void> =>
    new Promise((resolve) => {
      const done = () => {
        clearTimeout(timer);
        channel.removeEventListener('message', hear);
        resolve();
      };
      const hear = ({ data }: MessageEvent<Message>) => {
        if (data.say === 'ready' && data.job === job) done();
      };
      const timer = setTimeout(done, answerIn);
      channel.addEventListener('message', hear);
      send('want', job);
    });

  const giveUp = async (given: Turn) => {
    const { job, lost, release } = given;
    await listener?.wanted(job);
    if (turn !== given) return;
    send('ready', job);
    waitFor(job, lost);
    // The page that asked takes the lock away; where it is gone, the next one gets it.
    setTimeout(() => release?.(), answerIn);
  };

  channel.addEventListener('message', ({ data }: MessageEvent<Message>) => {
    if (data.say === 'written') listener?.written(data.job);
    else if (data.say === 'want' && turn?.job === data.job && turn.release) void giveUp(turn);
  });

  let left: Turn | null = null;
  window.addEventListener('pagehide', () => {
    left = turn;
    letGo();
  });
  window.addEventListener('pageshow', ({ persisted }) => {
    if (!persisted || !left) return;
    left.lost();
    waitFor(left.job, left.lost);
  });

  return {
    hold,
    takeOver: async (job, lost) => {
      const waiting = turn;
      await ready(job);
      if (turn !== waiting || waiting?.release) return;
      letGo();
      await new Promise<void>((given) => begin(job, lost, given, true));
    },
    letGo,
    heldElsewhere: async (job) => {
      if (turn?.job === job && turn.release) return false;
      const { held: locks = [] } = await navigator.locks.query();
      return locks.some(({ name }) => name === lockName(job));
    },
    tellWritten: (job) => send('written', job),
    listen: (to) => {
      listener = to;
    },
  };
}
