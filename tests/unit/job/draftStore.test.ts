import { describe, expect, it } from 'vitest';
import { draftOf } from '../../../src/job/draft';
import { createDraftStore } from '../../../src/job/draft-store';
import { historyAt } from '../../../src/job/history';
import { fieldKey, valueAt } from '../../../src/job/path';
import { usable } from '../../../src/job/usable';
import { testJob } from './testJob';

const value = ['readings', 'r1', 'value'];
const open = () => {
  const store = createDraftStore(draftOf(testJob(), 'one'));
  const at = (path: readonly (string | number)[]) => valueAt(store.getState().draft.job, path);
  const keys = (path: readonly (string | number)[], text: string) => {
    for (let end = 1; end <= text.length; end++) store.getState().type(path, 'length', text.slice(0, end));
  };
  return { store, at, keys, edit: () => store.getState() };
};

describe('typing', () => {
  it('follows every understood text and keeps one that is not', () => {
    const { store, at, edit } = open();
    edit().type(value, 'length', '29 1/2');
    expect(at(value)).toBeCloseTo(749.3, 6);
    edit().type(value, 'length', '29 1/');
    expect(at(value)).toBeCloseTo(749.3, 6);
    expect(store.getState().draft.typed[fieldKey(value)]).toBe('29 1/');
    edit().type(value, 'length', '29 1/4');
    expect(at(value)).toBeCloseTo(742.95, 6);
    expect(store.getState().draft.typed).toEqual({});
  });

  it('takes a number out of range as text, not as a value', () => {
    const { store, at, edit } = open();
    edit().type(['fit', 'bed'], 'length', '99');
    expect(at(['fit', 'bed'])).toBe(2);
    expect(store.getState().draft.typed[fieldKey(['fit', 'bed'])]).toBe('99');
  });

  it('sets a reading aside once its unread text is left, not while it is typed', () => {
    const { edit } = open();
    edit().type(value, 'length', '29 1/');
    expect(usable(edit().draft, edit().typing).setAside).toEqual([]);
    edit().leave();
    expect(usable(edit().draft, edit().typing).setAside).toEqual([
      { list: 'readings', id: 'r1', faults: [{ path: 'value', message: 'is not understood yet' }] },
    ]);
  });
});

describe('undo and redo', () => {
  it('takes back all keystrokes of one visit to a field at once', () => {
    const { at, keys, edit } = open();
    keys(value, '29 1/2');
    edit().leave();
    keys(['fit', 'top'], '38');
    edit().leave();
    edit().undo();
    expect(at(['fit', 'top'])).toBe(980);
    expect(at(value)).toBeCloseTo(749.3, 6);
    edit().undo();
    expect(at(value)).toBe(752.5);
    edit().undo();
    expect(at(value)).toBe(752.5);
    edit().redo();
    edit().redo();
    expect(at(['fit', 'top'])).toBeCloseTo(965.2, 6);
  });

  it('counts two visits to a field as two steps', () => {
    const { at, keys, edit } = open();
    keys(value, '29');
    edit().leave();
    keys(value, '30');
    edit().undo();
    expect(at(value)).toBeCloseTo(736.6, 6);
  });

  it('does not put an edit after an undo into the step before it', () => {
    const { at, keys, edit } = open();
    keys(value, '29');
    edit().undo();
    keys(value, '30');
    expect(at(value)).toBeCloseTo(762, 6);
    edit().undo();
    expect(at(value)).toBe(752.5);
  });

  it('brings back unread text and a removed reading', () => {
    const { at, edit } = open();
    edit().type(value, 'length', 'twen');
    edit().leave();
    edit().remove('readings', 'r1');
    expect(at(['readings', 'r1'])).toBeUndefined();
    expect(edit().draft.typed).toEqual({});
    edit().undo();
    expect(edit().draft.typed[fieldKey(value)]).toBe('twen');
  });

  it('belongs to one job: another has its own steps, and gets back those it had', () => {
    const { store, edit } = open();
    edit().write(['name'], 'Mine');
    edit().leave();
    const { pastStates: past, futureStates: future } = store.temporal.getState();
    const mine = edit().draft;
    edit().take({ ...mine, id: 'two', job: { ...mine.job, name: 'Another' } });
    edit().undo();
    expect(edit().draft).toMatchObject({ id: 'two', job: { name: 'Another' } });
    edit().take(mine, { past, future });
    edit().undo();
    expect(edit().draft).toMatchObject({ id: 'one', job: { name: 'Test alcove' } });
    edit().redo();
    expect(edit().draft.job.name).toBe('Mine');
  });

  it('changes nothing while it is locked', () => {
    const { edit } = open();
    edit().write(['name'], 'Mine');
    edit().leave();
    edit().lock(true);
    const { draft } = edit();
    edit().type(value, 'length', '700');
    edit().leave();
    edit().remove('readings', 'r1');
    edit().undo();
    expect(edit().draft).toBe(draft);
    edit().lock(false);
    edit().undo();
    expect(edit().draft.job.name).toBe('Test alcove');
  });

  it('writes a name in one step and each choice in its own', () => {
    const { at, edit } = open();
    for (const name of ['A', 'Al', 'Alc']) edit().write(['name'], name);
    edit().leave();
    edit().choose(['readings', 'r1', 'side'], 'right');
    edit().choose(['readings', 'r1', 'side'], 'left');
    edit().undo();
    expect(at(['readings', 'r1', 'side'])).toBe('right');
    edit().undo();
    edit().undo();
    expect(at(['name'])).toBe('Test alcove');
  });
});

describe('lists', () => {
  it('adds a reading under a free id that waits until it is filled in', () => {
    const { edit } = open();
    edit().remove('readings', 'r1');
    const id = edit().addReading('span');
    expect(id).toBe('r4');
    const understood = usable(edit().draft);
    expect(understood.setAside.map((entry) => entry.id)).toEqual([id]);
    for (const [field, text] of [
      ['height', '0'],
      ['at', '12'],
      ['value', '60'],
    ] as const) {
      edit().type(['readings', id, field], 'length', text);
    }
    edit().leave();
    const complete = usable(edit().draft);
    expect(complete.setAside).toEqual([]);
    expect(complete.ok && complete.job.readings.find((reading) => reading.id === id)).toMatchObject({
      kind: 'span',
      value: 1524,
    });
  });

  it('adds a reading at a place', () => {
    const { at, edit } = open();
    const reading = { kind: 'tape-to-corner', side: 'right', height: -300 } as const;
    const id = edit().addPlaced(reading);
    expect(at(['readings', id])).toEqual({ id, kind: 'tape-to-corner', side: 'right', height: -300 });
  });

  it('takes a reading again and drops one of the repeats with its text', () => {
    const { store, at, edit } = open();
    edit().type(['readings', 'r1', 'repeats', 0], 'length', '29 1/2');
    edit().type(['readings', 'r1', 'repeats', 1], 'length', '29 3/4');
    edit().type(['readings', 'r1', 'repeats', 2], 'length', 'x');
    expect((at(['readings', 'r1', 'repeats']) as number[]).map((mm) => mm / 25.4)).toEqual([29.5, 29.75]);
    edit().removeRepeat('r1', 0);
    expect((at(['readings', 'r1', 'repeats']) as number[]).map((mm) => mm / 25.4)).toEqual([29.75]);
    expect(store.getState().draft.typed).toEqual({ [fieldKey(['readings', 'r1', 'repeats', 1])]: 'x' });
    edit().removeRepeat('r1', 1);
    edit().removeRepeat('r1', 0);
    expect(at(['readings', 'r1'])).not.toHaveProperty('repeats');
    expect(store.getState().draft.typed).toEqual({});
  });

  it('keeps unread texts with their gaps when one before them goes', () => {
    const { store, at, edit } = open();
    edit().type(['readings', 'r3', 'gaps', 1, 'value'], 'length', 'x');
    edit().type(['readings', 'r3', 'gaps', 2, 'value'], 'length', 'y');
    edit().removeGap('r3', 1);
    expect(at(['readings', 'r3', 'gaps'])).toEqual([
      { height: -600, value: 40 },
      { height: 900, value: 47 },
    ]);
    expect(store.getState().draft.typed).toEqual({ [fieldKey(['readings', 'r3', 'gaps', 1, 'value'])]: 'y' });
  });

  it('moves a fixture to another wall with what still holds there', () => {
    const { at, edit } = open();
    edit().putOnWall('f1', 'back');
    expect(at(['fixtures', 'f1'])).toEqual({
      id: 'f1',
      kind: 'valve',
      wall: 'back',
      aboveRim: 330,
      hole: 95,
      takenAt: 'face',
    });
    edit().undo();
    edit().putOnWall('f1', 'left');
    expect(at(['fixtures', 'f1'])).toMatchObject({ wall: 'left', fromBack: 381, fromBackOf: 'panel' });
  });
});

it('names fixtures after what they are', () => {
  const { edit } = open();
  const ids = [edit().addFixture('shower-head'), edit().addFixture('shower-head'), edit().addFixture('other')];
  expect(ids).toEqual(['shower head', 'shower head 2', 'hole']);
});

describe('history', () => {
  const openAt = () => {
    let minute = 0;
    const store = createDraftStore(draftOf(testJob(), 'one'), () => new Date(Date.UTC(2026, 4, 4, 10, minute++)));
    const history = (path: readonly (string | number)[]) => historyAt(store.getState().draft.job, path);
    return { history, store, edit: () => store.getState() };
  };

  it('keeps each value that another one took the place of, with the time, and no half-typed one', () => {
    const { history, edit } = openAt();
    for (const text of ['2', '29', '29 1/2']) edit().type(value, 'length', text);
    edit().leave();
    edit().type(value, 'length', '29 1/2');
    edit().leave();
    edit().type(value, 'length', '30');
    edit().leave();
    edit().type(value, 'length', '31 1/');
    edit().leave();
    expect(history(value)).toEqual([
      { value: 752.5, until: '2026-05-04T10:00:00.000Z' },
      { value: 749.3, until: '2026-05-04T10:02:00.000Z' },
    ]);
    const gap = ['readings', 'r3', 'gaps', 1, 'value'];
    edit().type(gap, 'length', '2');
    edit().leave();
    expect(history(gap)).toHaveLength(1);
  });

  it('says nothing of the first value', () => {
    const { history, edit } = openAt();
    const id = edit().addPlaced({ kind: 'depth', wall: 'left', height: 0 });
    edit().type(['readings', id, 'value'], 'length', '3');
    edit().type(['readings', id, 'value'], 'length', '30');
    edit().leave();
    expect(history(['readings', id, 'value'])).toEqual([]);
  });

  it('belongs to the step of undo that entered the value', () => {
    const { history, store, edit } = openAt();
    for (const text of ['2', '29', '29 1/2']) edit().type(value, 'length', text);
    edit().leave();
    expect(store.temporal.getState().pastStates).toHaveLength(1);
    edit().undo();
    expect(history(value)).toEqual([]);
    edit().redo();
    expect(history(value)).toHaveLength(1);
  });

  it('is nothing that a job of other fields has', () => {
    const { store, edit } = openAt();
    edit().type(['fit', 'top'], 'length', '38');
    edit().leave();
    expect(store.getState().draft.job.fit).not.toHaveProperty('history');
  });
});

describe('lists and texts', () => {
  const shelf = { corner: 'left', aboveRim: 500, back: 230, side: 230 };

  it('adds to a list and removes from it, texts not understood going with their items', () => {
    const { store, at, edit } = open();
    edit().addTo(['shelves'], shelf);
    edit().addTo(['shelves'], { ...shelf, aboveRim: 900 });
    edit().type(['shelves', 1, 'back'], 'length', 'wide');
    edit().leave();
    edit().removeFrom(['shelves'], 0);
    expect(at(['shelves', 0, 'aboveRim'])).toBe(900);
    expect(store.getState().draft.typed).toEqual({ [fieldKey(['shelves', 0, 'back'])]: 'wide' });
    edit().undo();
    expect(at(['shelves'])).toHaveLength(2);
  });

  it('sets several choices as one step', () => {
    const { at, edit } = open();
    edit().chooseAll([
      [['cutting', 'sheets'], 'least'],
      [['fit', 'bed'], 3],
    ]);
    expect([at(['cutting', 'sheets']), at(['fit', 'bed'])]).toEqual(['least', 3]);
    edit().undo();
    expect([at(['cutting', 'sheets']), at(['fit', 'bed'])]).toEqual(['own', 2]);
  });

  it('keeps a text beside the job', () => {
    const { store, edit } = open();
    edit().jot(['rim', 'gauge'], '0; 0');
    expect(store.getState().draft.typed[fieldKey(['rim', 'gauge'])]).toBe('0; 0');
    expect(usable(edit().draft).ok).toBe(true);
    edit().jot(['rim', 'gauge'], '');
    expect(store.getState().draft.typed).toEqual({});
  });
});

describe('a choice under another name', () => {
  it('stays in its place with what is typed in it, as one step of undo', () => {
    const { store, at, edit } = open();
    for (const id of ['Ribbed', 'Marble']) edit().addTo(['choices'], { id, trim: { width: 40 } });
    edit().type(['choices', 'Ribbed', 'trim', 'width'], 'length', 'two fingers');
    edit().type(['choices', 'Marble', 'trim', 'width'], 'length', 'three');
    edit().leave();
    edit().rename('choices', 'Ribbed', 'Ribs');
    expect(at(['choices'])).toEqual([
      { id: 'Ribs', trim: { width: 40 } },
      { id: 'Marble', trim: { width: 40 } },
    ]);
    expect(store.getState().draft.typed).toEqual({
      [fieldKey(['choices', 'Ribs', 'trim', 'width'])]: 'two fingers',
      [fieldKey(['choices', 'Marble', 'trim', 'width'])]: 'three',
    });
    edit().undo();
    expect(at(['choices', 'Ribbed', 'trim', 'width'])).toBe(40);
    expect(store.getState().draft.typed[fieldKey(['choices', 'Ribbed', 'trim', 'width'])]).toBe('two fingers');
  });
});
