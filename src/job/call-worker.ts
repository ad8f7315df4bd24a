import { type Remote, wrap } from 'comlink';

/**
 * Calls a worker that is started at the first call, and anew after it stopped. What is wrapped is held on to: a worker
 * whose wrapping is collected takes no more calls.
 * @param what the worker does, for the error where it stops
 * @param longest a call that takes longer is given up and its worker stopped, ms
 */
export function workerCaller<W>(start: () => Worker, what: string, longest = Number.POSITIVE_INFINITY) {
  let running: { worker: Worker; remote: Remote<W> } | null = null;
  return <T>(call: (remote: Remote<W>) => Promise<T>): Promise<T> =>
    new Promise((resolve, reject) => {
      if (!running) {
        const worker = start();
        running = { worker, remote: wrap<W>(worker) };
      }
      const { worker, remote } = running;
      const giveUp = (why: string) => {
        worker.terminate();
        if (running?.worker === worker) running = null;
        reject(new Error(`the worker that ${what} ${why}`));
      };
      const stop = () => giveUp('stopped');
      const limit = Number.isFinite(longest) ? setTimeout(() => giveUp('took too long'), longest) : undefined;
      worker.addEventListener('error', stop, { once: true });
      call(remote)
        .then(resolve, reject)
        .finally(() => {
          clearTimeout(limit);
          worker.removeEventListener('error', stop);
        });
    });
}
