import type { CDPSession, Page } from '@playwright/test';

interface Answer {
  id: number;
  result?: { usedSize?: number; backingStorageSize?: number };
}

/**
 * The heaps of a page's workers, bytes by the worker's name, what has no owner any more collected first.
 * Workers of the same name are added up.
 */
export async function watchWorkers(page: Page): Promise<() => Promise<Record<string, number>>> {
  const session: CDPSession = await page.context().newCDPSession(page);
  const names = new Map<string, string>();
  const waiting = new Map<number, (answer: Answer) => void>();
  let last = 0;
  session.on('Target.attachedToTarget', ({ sessionId, targetInfo }) => {
    if (targetInfo.type === 'worker') names.set(sessionId, targetInfo.title || 'worker');
  });
  session.on('Target.detachedFromTarget', ({ sessionId }) => names.delete(sessionId));
  session.on('Target.receivedMessageFromTarget', ({ message }) => {
    const answer = JSON.parse(message) as Answer;
    waiting.get(answer.id)?.(answer);
    waiting.delete(answer.id);
  });
  await session.send('Target.setAutoAttach', { autoAttach: true, waitForDebuggerOnStart: false, flatten: false });
  const ask = (sessionId: string, method: string) =>
    new Promise<Answer>((done) => {
      const id = ++last;
      waiting.set(id, done);
      void session.send('Target.sendMessageToTarget', { sessionId, message: JSON.stringify({ id, method }) });
    });
  return async () => {
    const heaps: Record<string, number> = {};
    for (const [sessionId, name] of names) {
      await ask(sessionId, 'HeapProfiler.collectGarbage');
      const { result } = await ask(sessionId, 'Runtime.getHeapUsage');
      heaps[name] = (heaps[name] ?? 0) + (result?.usedSize ?? 0) + (result?.backingStorageSize ?? 0);
    }
    return heaps;
  };
}
