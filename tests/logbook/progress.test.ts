import { expect, test } from 'vitest';
import { allNoted, progressOf } from '../../src/logbook/progress.ts';
import { aLogbook } from '../helpers/logbook.ts';

test('a step ticked and taken back is not done', () => {
  const { events } = aLogbook([
    { act: 'card-opened', card: 'c', procedure: 'p', revision: 1, list: [] },
    { act: 'step-ticked', card: 'c', step: 'a' },
    { act: 'step-ticked', card: 'c', step: 'b' },
    { act: 'step-unticked', card: 'c', step: 'a' },
  ]);
  expect([...(progressOf(events).cards.get('c')?.ticked.keys() ?? [])]).toEqual(['b']);
});

test('opening a card again keeps what was ticked', () => {
  const { events } = aLogbook([
    { act: 'card-opened', card: 'c', procedure: 'p', revision: 1, list: [] },
    { act: 'step-ticked', card: 'c', step: 'a' },
    { act: 'card-opened', card: 'c', procedure: 'p', revision: 1, list: [] },
  ]);
  expect(progressOf(events).cards.get('c')?.ticked.size).toBe(1);
});

test('a step of a card that was never opened is passed over', () => {
  expect(progressOf(aLogbook([{ act: 'step-ticked', card: 'c', step: 'a' }]).events).cards.size).toBe(0);
});

test('every hand-in is kept, the last list is the one on the bench', () => {
  const choose = (part: string) => ({ kind: 'choose' as const, list: [{ part, quantity: 1 }] });
  const progress = progressOf(
    aLogbook([
      { act: 'list-changed', exercise: 'e', list: [{ part: 'a', quantity: 1 }] },
      { act: 'handed-in', exercise: 'e', answer: choose('a') },
      { act: 'list-changed', exercise: 'e', list: [{ part: 'b', quantity: 2 }] },
      { act: 'handed-in', exercise: 'e', answer: choose('b') },
    ]).events,
  );
  expect(progress.handedIn.get('e')?.map((one) => one.answer)).toEqual([choose('a'), choose('b')]);
  expect(progress.lists.get('e')).toEqual([{ part: 'b', quantity: 2 }]);
});

test('the verdict given last to a statement is the one that stands', () => {
  const progress = progressOf(
    aLogbook([
      { act: 'verdict-given', exercise: 'e', statement: 'a', verdict: 'fits' },
      { act: 'verdict-given', exercise: 'e', statement: 'b', verdict: 'fits' },
      { act: 'verdict-given', exercise: 'e', statement: 'a', verdict: 'cannot-tell' },
    ]).events,
  );
  expect([...(progress.verdicts.get('e') ?? [])]).toEqual([
    ['a', 'cannot-tell'],
    ['b', 'fits'],
  ]);
});

test('measures of all exercises come together, and before the first entry there are none', () => {
  const noted = (exercise: string, part: string, value: number) =>
    ({ act: 'measure-noted', exercise, part, field: 'heightMm', value }) as const;
  const { events } = aLogbook([noted('e', 'skarn-tall', 155), noted('f', 'corrow-32', 44)]);
  expect([...allNoted(progressOf(events))]).toEqual([
    ['skarn-tall.heightMm', 155],
    ['corrow-32.heightMm', 44],
  ]);
  expect([...allNoted(undefined)]).toEqual([]);
});
