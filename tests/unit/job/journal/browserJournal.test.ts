import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import { browserJournal } from '../../../../src/job/journal';

const job = (id: string, text: string) => ({ id, draft: { text }, changedAt: 5, revision: 2 });

/** A page's storage with room for so many entries. */
const storageOf = (room: number) => {
  const kept = new Map<string, string>();
  return {
    get length() {
      return kept.size;
    },
    key: (i: number) => [...kept.keys()][i] ?? null,
    getItem: (key: string) => kept.get(key) ?? null,
    setItem: (key: string, text: string) => {
      if (kept.size >= room) throw new DOMException('full', 'QuotaExceededError');
      kept.set(key, text);
    },
    removeItem: (key: string) => void kept.delete(key),
  };
};

beforeEach(() => void vi.stubGlobal('localStorage', storageOf(5)));
afterEach(() => void vi.unstubAllGlobals());

it('gives back what was noted last, job by job', () => {
  const journal = browserJournal();
  journal.note(job('a', 'x'));
  journal.note(job('b', 'y'));
  journal.note(job('a', 'xx'));
  expect(journal.ids().sort()).toEqual(['a', 'b']);
  expect(browserJournal().read('a')).toEqual(job('a', 'xx'));
  journal.clear('a');
  expect(journal.read('a')).toBeNull();
  expect(journal.ids()).toEqual(['b']);
});

it('leaves no older note where there is no room for the new one', () => {
  vi.stubGlobal('localStorage', storageOf(1));
  const journal = browserJournal();
  journal.note(job('a', 'x'));
  expect(journal.read('a')).toEqual(job('a', 'x'));
  journal.note(job('a', 'xx'));
  expect(journal.read('a')).toBeNull();
});

it('notes nothing where the browser gives no storage, and reads nothing that is not its own', () => {
  const journal = browserJournal();
  localStorage.setItem('nookwright-unwritten-a', 'not json');
  localStorage.setItem('other', '1');
  expect(journal.ids()).toEqual(['a']);
  expect(journal.read('a')).toBeNull();
  vi.stubGlobal('localStorage', undefined);
  expect(() => journal.note(job('a', 'x'))).not.toThrow();
  expect(journal.ids()).toEqual([]);
});
