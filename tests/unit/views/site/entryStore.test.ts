import { describe, expect, it } from 'vitest';
import type { PlannedReading, Unread } from '../../../../src/core';
import { blankJob } from '../../../../src/job/blank';
import { draftOf } from '../../../../src/job/draft';
import { createDraftStore } from '../../../../src/job/draft-store';
import { createEntryStore } from '../../../../src/views/site/survey/entry-store';
import { surveyOf } from '../../../../src/views/site/survey/survey-places';

const left: Unread = { kind: 'tape-to-corner', side: 'left', height: 900 };
const right: Unread = { kind: 'tape-to-corner', side: 'right', height: 900 };
const hung: Unread = { kind: 'plumb', wall: 'back', at: 700, gaps: [{ height: -600 }, { height: 800 }] };

function open(...readings: Unread[]) {
  const draft = createDraftStore(draftOf(blankJob(), 'd'));
  const entry = createEntryStore(draft);
  const plan = readings.map(
    (reading, i): PlannedReading => ({ step: i, reading, round: 1, before: 9, after: 9, settled: 0 }),
  );
  entry.getState().setPlan(plan);
  const job = () => draft.getState().draft.job;
  const say = (text: string) => {
    entry.getState().put({ text, fresh: false });
    entry.getState().submit();
  };
  const values = () =>
    job().readings.map((reading) =>
      reading.kind === 'plumb'
        ? (reading.gaps ?? []).map(({ value }) => value)
        : [reading.value, ...(reading.repeats ?? [])],
    );
  return { draft, entry: () => entry.getState(), job, say, values, places: () => surveyOf(job(), plan).places };
}

const inches = (whole: number, sixteenths = 0) => expect.closeTo((whole + sixteenths / 16) * 25.4, 9);

describe('entry along the plan', () => {
  it('goes from number to number by itself and ends when all are there', () => {
    const { entry, say, values } = open(left, right, hung, left);
    entry().openNext();
    for (const text of ['28 13/16', '29.5 in', '1 1/8"', '1.25', '731 mm']) say(text);
    expect(values()).toEqual([[inches(28, 13), 731], [inches(29, 8)], [inches(1, 4), inches(1, 2)]]);
    expect(entry().active).toBeNull();
    expect(entry().finished).toBe(true);
  });

  it('stays at a text that is no number, with the reason, and keeps it', () => {
    const { draft, entry, say } = open(left, right);
    entry().openNext();
    say('28 13/');
    expect(entry().active?.fault).toMatch(/fraction/);
    expect(entry().active?.place.where).toMatchObject({ side: 'left' });
    entry().skip();
    expect(entry().active?.place.where).toMatchObject({ side: 'right' });
    expect(Object.values(draft.getState().draft.typed)).toEqual(['28 13/']);
  });

  it('takes up again what was typed, and nothing where the number was taken out', () => {
    const { draft, entry, say, places } = open(left, right);
    entry().openNext();
    say('28 13/16');
    const [place] = places();
    for (const text of ['28 1', '']) {
      draft.getState().type(['readings', place!.id!, 'value'], 'length', text);
      draft.getState().leave();
      entry().open(places()[0]!, 0);
      expect(entry().active?.text).toBe(text);
    }
  });

  it('begins no reading before something is entered, and takes one back that is emptied', () => {
    const { entry, job, places } = open(left, right);
    entry().open(places()[0]!);
    entry().skip();
    expect(job().readings).toEqual([]);
    entry().put({ text: '28', fresh: false });
    expect(job().readings).toHaveLength(1);
    entry().close();
    expect(job().readings).toHaveLength(1);
    entry().open(places().find(({ id }) => id === null)!);
    entry().put({ text: '3', fresh: false });
    entry().put({ text: '', fresh: false });
    expect(job().readings).toHaveLength(2);
    entry().close();
    expect(job().readings.map(({ kind }) => kind)).toEqual(['tape-to-corner']);
  });

  it('passes over what is left out', () => {
    const { draft, entry, say } = open(left, right);
    entry().openNext();
    say('28');
    const { id } = draft.getState().draft.job.readings[0]!;
    draft.getState().choose(['readings', id, 'value'], undefined);
    draft.getState().choose(['readings', id, 'off'], true);
    say('29');
    expect(entry().active?.place).toMatchObject({ id: null, where: left });
  });

  it('enters many texts one after the other and stops at one that is no number', () => {
    const { entry, values } = open(left, right, hung);
    entry().enterAll(['28', '29', 'thirty-ish', '30']);
    expect(values().slice(0, 2)).toEqual([[inches(28)], [inches(29)]]);
    expect(entry().active?.text).toBe('thirty-ish');
    expect(entry().active?.fault).not.toBeNull();
  });

  it('shows what stands in a field to be gone over', () => {
    const { entry, say, places } = open(left, right);
    entry().openNext();
    say('28 13/16');
    entry().open(places()[0]!, 0);
    expect(entry().active).toMatchObject({ text: '28 13/16', fresh: true });
  });

  it('an empty repeat goes again when it is left', () => {
    const { entry, say, places, values } = open(left, left);
    entry().openNext();
    say('28');
    expect(entry().active).toMatchObject({ field: 1 });
    entry().put({ text: '2', fresh: false });
    entry().put({ text: '', fresh: false });
    entry().close();
    expect(values()).toEqual([[inches(28)]]);
    expect(places()[0]).toMatchObject({ times: 2 });
  });
});

it('leaves everything as it is while another page edits the job', () => {
  const { draft, entry, job } = open(left);
  entry().openNext();
  draft.getState().lock(true);
  entry().put({ text: '28', fresh: false });
  expect(entry().active).toMatchObject({ text: '', place: { id: null } });
  expect(job().readings).toEqual([]);
});
