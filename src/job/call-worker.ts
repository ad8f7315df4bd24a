import { type Remote, wrap } from 'comlink';

/** A worker that answers nothing for so long while it is asked is given up, ms. */
const longestSilence = 90_000;

interface Call {
  ask(): void;
  giveUp(why: string): void;
  /** it was asked of a second worker after the first one stopped */
  again: boolean;
}

/**
 * Calls a worker that is started at the first call, and anew after it stopped. What a worker that stopped by itself has
 * not answered is asked once more of a new one; a worker that does not answer any more is stopped.
 * @param what the worker does, for the error where it stops
 * @param silence the worker is given up where it answers nothing for so long, ms
 */
export function workerCaller<W>(start: () => Worker, what: string, silence = longestSilence) {
  const waiting = new Set<Call>();
  // What is wrapped is held on to: a worker whose wrapping is collected takes no more calls.
  let running: { worker: Worker; remote: Remote<W> } | null = null;
  let patience: ReturnType<typeof setTimeout> | undefined;

  const watch = () => {
    clearTimeout(patience);
    if (waiting.size > 0) patience = setTimeout(() => end((call) => call.giveUp('does not answer')), silence);
  };
  const end = (leave: (call: Call) => void) => {
    running?.worker.terminate();
    running = null;
    const left = [...waiting];
    waiting.clear();
    left.forEach(leave);
    watch();
  };
  const started = () => {
    const worker = start();
    const stopped = () => {
      if (worker !== running?.worker) return;
      end((call) => {
        if (call.again) call.giveUp('stopped');
        else {
          call.again = true;
          call.ask();
        }
      });
    };
    worker.addEventListener('error', stopped);
    worker.addEventListener('messageerror', stopped);
    return { worker, remote: wrap<W>(worker) };
  };

  return <T>(work: (remote: Remote<W>) => Promise<T>): Promise<T> =>
    new Promise((resolve, reject) => {
      const call: Call = {
        again: false,
        ask: () => {
          running ??= started();
          waiting.add(call);
          if (waiting.size === 1) watch();
          work(running.remote)
            .finally(() => {
              waiting.delete(call);
              watch();
            })
            .then(resolve, reject);
        },
        giveUp: (why) => reject(new Error(`the worker that ${what} ${why}`)),
      };
      call.ask();
    });
}
