import { expose } from 'comlink';
import { describe, expect, it } from 'vitest';
import { workerCaller } from '../../../src/job/call-worker';

interface Doubler {
  double(n: number): number;
}

/** A worker that runs here; `double` throws for 0, and a worker that is `deaf` answers nothing. */
class TestWorker extends EventTarget {
  ended = false;
  private readonly outside = new MessageChannel();
  constructor(deaf = false) {
    super();
    const { port1, port2 } = this.outside;
    port1.addEventListener('message', ({ data }) => this.dispatchEvent(new MessageEvent('message', { data })));
    port1.start();
    const doubler: Doubler = {
      double: (n) => {
        if (n === 0) throw new RangeError('nothing to double');
        return 2 * n;
      },
    };
    if (!deaf) expose(doubler, port2);
  }
  postMessage(...message: Parameters<MessagePort['postMessage']>) {
    this.outside.port1.postMessage(...message);
  }
  terminate() {
    this.ended = true;
    this.outside.port1.close();
  }
}

function started(...deaf: boolean[]) {
  const workers: TestWorker[] = [];
  const start = () => {
    const worker = new TestWorker(deaf[workers.length] ?? false);
    workers.push(worker);
    return worker as unknown as Worker;
  };
  const stop = () => workers.at(-1)?.dispatchEvent(new Event('error'));
  return { workers, stop, call: workerCaller<Doubler>(start, 'doubles', 50) };
}

describe('a worker', () => {
  it('is started once for many calls', async () => {
    const { workers, call } = started();
    expect(await Promise.all([2, 3].map((n) => call((remote) => remote.double(n))))).toEqual([4, 6]);
    expect(workers).toHaveLength(1);
    workers[0]!.terminate();
  });

  it('that throws rejects that call alone and goes on', async () => {
    const { workers, call } = started();
    await expect(call((remote) => remote.double(0))).rejects.toThrow('nothing to double');
    expect(await call((remote) => remote.double(4))).toBe(8);
    expect(workers).toHaveLength(1);
    workers[0]!.terminate();
  });

  it('that stops is started anew, and everything unanswered is asked again', async () => {
    const { workers, stop, call } = started(true);
    const asked = [5, 6].map((n) => call((remote) => remote.double(n)));
    stop();
    expect(await Promise.all(asked)).toEqual([10, 12]);
    expect(workers.map(({ ended }) => ended)).toEqual([true, false]);
    workers[1]!.terminate();
  });

  it('that stops twice is told of, and the next call starts a third', async () => {
    const { workers, stop, call } = started(true, true);
    const asked = call((remote) => remote.double(5));
    stop();
    stop();
    await expect(asked).rejects.toThrow('the worker that doubles stopped');
    expect(await call((remote) => remote.double(5))).toBe(10);
    expect(workers).toHaveLength(3);
    workers[2]!.terminate();
  });

  it('that never answers is given up with all that waits, not asked again by itself', async () => {
    const { workers, call } = started(true);
    const asked = await Promise.allSettled([1, 2].map((n) => call((remote) => remote.double(n))));
    expect(asked.map((each) => each.status === 'rejected' && each.reason.message)).toEqual([
      'the worker that doubles does not answer',
      'the worker that doubles does not answer',
    ]);
    expect(workers.map(({ ended }) => ended)).toEqual([true]);
    expect(await call((remote) => remote.double(3))).toBe(6);
    workers[1]!.terminate();
  });

  it('that answers now and then is waited for', async () => {
    const { workers, call } = started();
    const slow = (n: number, ms: number) =>
      call(async (remote) => {
        await new Promise((done) => setTimeout(done, ms));
        return remote.double(n);
      });
    expect(await Promise.all([slow(1, 30), slow(2, 60), slow(3, 90)])).toEqual([2, 4, 6]);
    expect(workers).toHaveLength(1);
    workers[0]!.terminate();
  });
});
