import { describe, expect, test } from 'vitest';
import { type FrontCourse, nowFor, statesOf } from '../../../src/components/front/now.ts';
import { append, newLogbook } from '../../../src/logbook/log.ts';
import { progressOf } from '../../../src/logbook/progress.ts';
import type { Act } from '../../../src/logbook/types.ts';

const card = { procedure: 'desktop', holds: ['hold-mat', 'hold-power'] };
const course: FrontCourse = {
  evenings: [
    {
      n: 1,
      title: 'What is it for?',
      day: 'Tue 3 Nov',
      lessons: [{ id: 'parts/parts', sheet: '1.1', title: 'Parts', minutes: 15, exercises: [] }],
    },
    {
      n: 2,
      title: 'Parts that fit',
      day: 'Tue 10 Nov',
      lessons: [
        { id: 'fit/meet', sheet: '2.1', title: 'Meet', minutes: 20, exercises: [] },
        {
          id: 'fit/choose',
          sheet: '2.2',
          title: 'Choose',
          minutes: 30,
          exercises: [{ id: 'museum', title: 'The museum', minutes: 40 }],
        },
      ],
    },
    { n: 3, title: 'On the mat', day: 'Tue 17 Nov', lessons: [], card: { ...card, until: 'hold-mat' } },
    { n: 4, title: 'First power', day: 'Tue 24 Nov', lessons: [], card: { ...card, until: 'fit-panel' } },
    { n: 5, title: 'Take it home', day: 'Tue 1 Dec', lessons: [] },
  ],
};

/** Entries of these acts, a minute apart. */
const entriesOf = (acts: readonly Act[]) =>
  acts.reduce(
    (book, act, minute) => append(book, act, new Date(Date.UTC(2026, 10, 10, 18, minute)).toISOString()),
    newLogbook('aaaaaaaaaa', 'x'),
  ).events;
const having = (...acts: Act[]) => progressOf(entriesOf(acts));
const nowAfter = (...acts: Act[]) => nowFor(course, entriesOf(acts), having(...acts));
const read = (lesson: string): Act => ({ act: 'lesson-read', lesson });
const opened = (lesson: string): Act => ({ act: 'lesson-opened', lesson });
const handedIn: Act = { act: 'handed-in', exercise: 'museum', answer: { kind: 'choose', list: [] } };
const cardOpened: Act = { act: 'card-opened', card: 'desktop-1', procedure: 'desktop', revision: 1, list: [] };
const ticked = (step: string): Act => ({ act: 'step-ticked', card: 'desktop-1', step });
const allRead = [read('parts/parts'), read('fit/meet'), read('fit/choose')];

describe('what to do first', () => {
  test('before the device is read, and with an empty logbook, it is the first sheet', () => {
    for (const now of [nowFor(course, [], undefined), nowAfter()]) {
      expect(now.heading).toBe('Begin with sheet 1.1: Parts');
      expect(now.main).toEqual({ path: 'lessons/parts/parts/', says: 'Begin with sheet 1.1' });
    }
  });

  test('a sheet that was opened and not read is gone on with', () => {
    const now = nowAfter(read('parts/parts'), opened('fit/choose'));
    expect(now.heading).toBe('Go on with sheet 2.2: Choose');
    expect(now.where).toBe('Evening 2 of 5, Tue 10 Nov: Parts that fit');
  });

  test('when the sheet left off at is read, the first one not read comes next', () => {
    const now = nowAfter(opened('parts/parts'), read('parts/parts'));
    expect(now.heading).toBe('Read sheet 2.1: Meet');
    expect(now.main).toEqual({ path: 'lessons/fit/meet/', says: 'Begin', minutes: 20 });
  });

  test('an exercise of a read sheet waits until it is handed in', () => {
    expect(nowAfter(...allRead).main?.path).toBe('exercises/museum/');
    expect(nowAfter(...allRead, handedIn).main?.path).toBe('card/desktop/');
  });

  test('a job card in hand comes before a sheet not read, and says how many steps are done', () => {
    const now = nowAfter(read('parts/parts'), cardOpened, ticked('a'), ticked('b'));
    expect(now.heading).toBe('Go on with your job card');
    expect(now.says).toBe('2 steps done. The instructor looks next at hold point 1 of 2.');
    expect(now.others.map(({ says }) => says)).toEqual(['Sheet 2.1: Meet', 'Sheet 2.2: Choose']);
  });

  test('keeping a file does not change where the student left off', () => {
    const now = nowAfter(opened('parts/parts'), cardOpened, ticked('a'), { act: 'file-kept' });
    expect(now.heading).toBe('Go on with your job card');
  });

  test('a list in hand is gone on with', () => {
    const now = nowAfter(...allRead, { act: 'list-changed', exercise: 'museum', list: [] });
    expect(now.heading).toBe('Go on with The museum');
  });

  test('a hold point that is ticked is not the next one', () => {
    const now = nowAfter(cardOpened, ticked('hold-mat'));
    expect(now.says).toBe('1 step done. The instructor looks next at hold point 2 of 2.');
  });

  test('an exercise is offered once its sheet was opened', () => {
    const offered = (...acts: Act[]) => nowAfter(cardOpened, ...acts).others.map(({ path }) => path);
    expect(offered(read('parts/parts'), read('fit/meet'), ticked('a'))).not.toContain('exercises/museum/');
    expect(offered(read('parts/parts'), read('fit/meet'), opened('fit/choose'), ticked('a'))).toContain(
      'exercises/museum/',
    );
  });

  test('at most three other things are named', () => {
    const now = nowAfter(opened('fit/choose'), cardOpened, ticked('a'));
    expect(now.others.map(({ path }) => path)).toEqual([
      'lessons/parts/parts/',
      'lessons/fit/meet/',
      'lessons/fit/choose/',
    ]);
  });

  test('when all is done nothing waits', () => {
    const now = nowAfter(...allRead, handedIn, cardOpened, ticked('hold-mat'), ticked('fit-panel@chassis'));
    expect(now.main).toBeUndefined();
    expect(now.heading).toBe('Nothing is waiting for you.');
  });
});

describe('how far each evening is', () => {
  test('all are to come before the first entry', () => {
    expect(statesOf(course, having())).toEqual(['to-come', 'to-come', 'to-come', 'to-come', 'to-come']);
  });

  test('the student is at the first evening that is not done', () => {
    expect(statesOf(course, having(read('parts/parts')))).toEqual(['done', 'here', 'to-come', 'to-come', 'to-come']);
  });

  test('who went ahead to the bench is there, though an earlier sheet waits', () => {
    const known = having(cardOpened, ticked('hold-mat'));
    const at = course.evenings.findIndex((evening) => evening.card?.until === 'hold-mat');
    const now = nowFor(course, [], known);
    expect(statesOf(course, known, { ...now, evening: course.evenings[at + 1]?.n ?? 0 })[at + 1]).toBe('here');
    expect(statesOf(course, known, { ...now, evening: course.evenings[at + 1]?.n ?? 0 })[0]).toBe('to-come');
  });

  test('an evening with an exercise is not done before it is handed in', () => {
    expect(statesOf(course, having(...allRead))[1]).toBe('here');
    expect(statesOf(course, having(...allRead, handedIn))[1]).toBe('done');
  });

  test('an evening at the bench is done with its last step, and the next one is not', () => {
    const known = having(...allRead, handedIn, cardOpened, ticked('hold-mat'));
    expect(statesOf(course, known)).toEqual(['done', 'done', 'done', 'here', 'to-come']);
  });

  test('a step that is repeated ends an evening under any of its keys', () => {
    const known = having(...allRead, handedIn, cardOpened, ticked('hold-mat'), ticked('fit-panel@chassis'));
    expect(statesOf(course, known)[3]).toBe('done');
    const other = having(...allRead, handedIn, cardOpened, ticked('hold-mat'), ticked('fit-panels'));
    expect(statesOf(course, other)[3]).toBe('here');
  });
});
