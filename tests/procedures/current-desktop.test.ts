import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { compileProcedure } from '../../src/procedures/compile.ts';
import type { Step } from '../../src/procedures/types.ts';
import { showFault } from '../../src/wording/fault.ts';

const file = 'content/procedures/current-desktop.mdx';
const { procedure, faults } = compileProcedure(file, readFileSync(file, 'utf8'));
const steps = procedure?.steps ?? [];
const stepOf = (id: string): Step => {
  const step = steps.find((one) => one.id === id);
  if (!step) throw new Error(`no step ${id}`);
  return step;
};

/** Every step that must be done before the step, however far back. */
function priorTo(id: string): Set<string> {
  const seen = new Set<string>();
  const ahead = [...stepOf(id).after];
  for (let next = ahead.pop(); next !== undefined; next = ahead.pop()) {
    if (seen.has(next)) continue;
    seen.add(next);
    ahead.push(...stepOf(next).after);
  }
  return seen;
}

const text = (step: Step): string =>
  [step.action, step.right, step.claim, ...step.cautions.map((one) => one.text), ...(step.hold ?? [])]
    .concat(
      step.ifNot.flatMap(({ sees, does }) => [sees, does]),
      step.measure?.ifOut ?? [],
    )
    .join('\n');

test('the build procedure compiles without a fault', () => {
  expect(faults.map(showFault)).toEqual([]);
  expect(procedure?.id).toBe('current-desktop');
});

test('it has at least 42 steps and four hold points, the last of them on what the screen shows', () => {
  expect(steps.length).toBeGreaterThanOrEqual(42);
  expect(steps.filter(({ hold }) => hold).map(({ id }) => id)).toEqual([
    'hold-mat',
    'hold-case',
    'hold-power',
    'hold-screen',
  ]);
});

describe('nothing that must wait can come first', () => {
  test.each([
    ['the board goes into the case', 'lower-board', ['hold-mat', 'hold-case', 'clear-standoffs', 'fit-cooler']],
    ['mains comes near', 'lead-in', ['hold-power', 'take-off-strap', 'fit-far-panel']],
    ['power is applied', 'press-button', ['fit-cooler', 'plug-cooler-fan', 'lay-out-plug', 'mains-in']],
    ['a hand goes back into the case', 'stow-plug', ['switch-off', 'mains-out', 'discharge']],
  ])('before %s', (_, id, first) => {
    expect([...priorTo(id)]).toEqual(expect.arrayContaining(first));
  });

  test('every joint but the picture is made before the look that comes before mains', () => {
    const makers = steps.filter(({ joints }) => joints && joints !== 'picture').map(({ id }) => id);
    expect(makers.length).toBeGreaterThanOrEqual(17);
    expect([...priorTo('hold-power')]).toEqual(expect.arrayContaining(makers));
  });

  test('between mains in and mains out no step makes or handles a joint', () => {
    const live = steps.filter(
      ({ id }) => priorTo(id).has('mains-in') && (id === 'mains-out' || priorTo('mains-out').has(id)),
    );
    expect(live.length).toBeGreaterThan(10);
    expect(live.filter(({ joints, about }) => joints ?? about)).toEqual([]);
  });

  test('whatever stands below a hold point waits for it, except the case, which can be made ready meanwhile', () => {
    const free = steps.flatMap((step, index) =>
      steps
        .slice(0, index)
        .filter((above) => above.hold && !priorTo(step.id).has(above.id))
        .map((above) => `${step.id} ${above.id}`),
    );
    const meanwhile = steps
      .filter(({ chapter, hold }) => (chapter === 'case' || chapter === 'supply') && !hold)
      .map(({ id }) => `${id} hold-mat`);
    expect(free).toEqual(meanwhile);
  });
});

test('the measured voltage is judged by the limits of the published design guide', () => {
  // ATX12V Power Supply Design Guide, version 2.0, Table 2: +12 V, ±5 %, 11.40 V to 12.60 V.
  const { measure } = stepOf('measure-12v');
  expect(measure).toMatchObject({ unit: 'V', nominal: 12, low: 11.4, high: 12.6, source: 'atx12v-design-guide' });
});

test('the words that do not belong on a job card are not there', () => {
  const banned = /\b(please|simply|just|obviously|oops|invalid|illegal|error|incompatible)\b|!/i;
  expect(steps.filter((step) => banned.test(text(step))).map(({ id }) => id)).toEqual([]);
});

test('every step says what to do when it is not right', () => {
  expect(steps.filter(({ ifNot }) => ifNot.length === 0).map(({ id }) => id)).toEqual([]);
  for (const { sees, does } of steps.flatMap(({ ifNot }) => ifNot)) {
    expect(sees).toMatch(/\.$/);
    expect(does).toMatch(/\.$/);
  }
});

test('an action is one sentence that begins with what to do', () => {
  for (const { action } of steps) expect(action).toMatch(/^[A-Z][a-z]+ [^.]*(M\.2 [^.]*)?\.$/);
});

test('a tool in the list is used by a step', () => {
  const used = new Set(steps.flatMap(({ tools }) => tools));
  expect(procedure?.tools.map(({ id }) => id).filter((id) => !used.has(id))).toEqual([]);
});
