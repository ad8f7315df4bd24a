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
  const waiting = new Map<number, { sessionId: string; done: (answer: Answer | null) => void }>();
  let last = 0;
  const settle = (id: number, answer: Answer | null) => {
    waiting.get(id)?.done(answer);
    waiting.delete(id);
  };
  session.on('Target.attachedToTarget', ({ sessionId, targetInfo }) => {
    if (targetInfo.type === 'worker') names.set(sessionId, targetInfo.title || 'worker');
  });
  session.on('Target.detachedFromTarget', ({ sessionId }) => {
    names.delete(sessionId);
    for (const [id, asked] of waiting) if (asked.sessionId === sessionId) settle(id, null);
  });
  session.on('Target.receivedMessageFromTarget', ({ message }) => {
    const answer = JSON.parse(message) as Answer;
    settle(answer.id, answer);
  });
  await session.send('Target.setAutoAttach', { autoAttach: true, waitForDebuggerOnStart: false, flatten: false });
  /** Null where the worker is gone. */
  const ask = (sessionId: string, method: string) =>
    new Promise<Answer | null>((done) => {
      const id = ++last;
      waiting.set(id, { sessionId, done });
      const message = JSON.stringify({ id, method });
      session.send('Target.sendMessageToTarget', { sessionId, message }).catch(() => settle(id, null));
    });
  return async () => {
    const heaps: Record<string, number> = {};
    for (const [sessionId, name] of names) {
      await ask(sessionId, 'HeapProfiler.collectGarbage');
      const result = (await ask(sessionId, 'Runtime.getHeapUsage'))?.result;
      if (result) heaps[name] = (heaps[name] ?? 0) + (result.usedSize ?? 0) + (result.backingStorageSize ?? 0);
    }
    return heaps;
  };
}
