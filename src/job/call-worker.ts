import { type Remote, wrap } from 'comlink';

/**
 * Calls a worker that is started at the first call, and anew after it stopped. What is wrapped is held on to: a worker
 * whose wrapping is collected takes no more calls.
 * @param what the worker does, for the error where it stops
 */
export function workerCaller<W>(start: () => Worker, what: string) {
  let running: { worker: Worker; remote: Remote<W> } | null = null;
  return <T>(call: (remote: Remote<W>) => Promise<T>): Promise<T> =>
    new Promise((resolve, reject) => {
      if (!running) {
        const worker = start();
        running = { worker, remote: wrap<W>(worker) };
      }
      const { worker, remote } = running;
      const stop = () => {
        worker.terminate();
        if (running?.worker === worker) running = null;
        reject(new Error(`the worker that ${what} stopped`));
      };
      worker.addEventListener('error', stop, { once: true });
      call(remote)
        .then(resolve, reject)
        .finally(() => worker.removeEventListener('error', stop));
    });
}
