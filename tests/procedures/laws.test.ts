import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Joint, KindName } from '../../src/fit/model.ts';
import type { FitReport } from '../../src/fit/report.ts';
import type { PartClass } from '../../src/parts/part.ts';
import { faultyTicks, reachable, tailor } from '../../src/procedures/tailor.ts';
import type { JobCard, Procedure, Step } from '../../src/procedures/types.ts';

const classes: PartClass[] = ['fan', 'memory-module', 'monitor'];
const kinds: KindName[] = ['fan-header', 'fan-mount', 'memory-slot', 'picture'];

const about = fc.oneof(
  fc.constant({}),
  fc.constantFrom(...classes).map((each): Partial<Step> => ({ each })),
  fc.constantFrom(...kinds).map((joints): Partial<Step> => ({ joints })),
  fc.constantFrom(...kinds).map((kind): Partial<Step> => ({ about: kind })),
  fc
    .tuple(fc.constantFrom(...kinds), fc.constantFrom(...classes))
    .map(([joints, of]): Partial<Step> => ({ joints, of })),
);

/** Up to a dozen steps, each waiting for some of those above it. */
const procedures = fc
  .array(fc.record({ about, after: fc.array(fc.nat(), { maxLength: 3 }), isHold: fc.boolean() }), { maxLength: 12 })
  .map(
    (drafts): Procedure => ({
      id: 'any',
      title: 'Any',
      revision: 1,
      tools: [],
      chapters: [
        { id: 'one', title: 'One' },
        { id: 'two', title: 'Two' },
      ],
      steps: drafts.map((draft, index) => ({
        id: `step-${index}`,
        chapter: index < drafts.length / 2 ? 'one' : 'two',
        action: 'Do {part} at {place}, {n} of {of}.',
        ...draft.about,
        after: index === 0 ? [] : [...new Set(draft.after.map((above) => `step-${above % index}`))],
        tools: [],
        minutes: [1, 2, 3],
        cautions: [],
        right: 'So.',
        claim: 'So',
        ifNot: [],
        drawing: 'none',
        ...(draft.isHold && Object.keys(draft.about).length === 0 ? { hold: ['All'] } : {}),
      })),
    }),
  );

/** Up to twelve units of a class, some of them joined. */
const reports = fc
  .array(fc.record({ class: fc.constantFrom(...classes), joined: fc.subarray(kinds) }), { maxLength: 12 })
  .map((drafts): FitReport => {
    const units = drafts.map((draft, index) => ({
      id: `${draft.class}-${index + 1}`,
      part: draft.class,
      class: draft.class,
      name: draft.class,
    }));
    const joints = drafts.flatMap((draft, index) =>
      draft.joined.map((kind): Joint => {
        const need = `${units[index]?.id}/${kind}`;
        const place = `motherboard-1/${kind}-${drafts.length - index}`;
        return { id: `${need} → ${place}`, kind, need, place, unknown: false };
      }),
    );
    return {
      core: '',
      units,
      joints,
      left: [],
      proved: true,
      findings: [],
      budgets: [],
      unjudged: [],
      overall: 'fits',
    };
  });

const without = (report: FitReport, gone: PartClass): FitReport => ({
  ...report,
  units: report.units.filter((unit) => unit.class !== gone),
  joints: report.joints.filter((joint) => !joint.need.startsWith(`${gone}-`)),
});

/** For each key all the keys it waits for, however far back. */
function waitedFor(card: JobCard): Map<string, Set<string>> {
  const all = new Map<string, Set<string>>();
  for (const step of card.steps) {
    all.set(step.key, new Set(step.after.flatMap((key) => [key, ...(all.get(key) ?? [])])));
  }
  return all;
}

describe('whatever the procedure and the machine', () => {
  test('no key stands twice', () => {
    fc.assert(
      fc.property(procedures, reports, (procedure, report) => {
        const keys = tailor(procedure, [], report).steps.map(({ key }) => key);
        expect(new Set(keys).size).toBe(keys.length);
      }),
    );
  });

  test('a step waits only for steps of the card that stand above it, so there is no loop', () => {
    fc.assert(
      fc.property(procedures, reports, (procedure, report) => {
        const above = new Set<string>();
        for (const step of tailor(procedure, [], report).steps) {
          for (const key of step.after) expect(above).toContain(key);
          above.add(step.key);
        }
      }),
    );
  });

  test('steps stand in the order they are written in, numbered from 1', () => {
    fc.assert(
      fc.property(procedures, reports, (procedure, report) => {
        const { steps } = tailor(procedure, [], report);
        const places = steps.map((one) => procedure.steps.findIndex(({ id }) => id === one.step));
        expect(places).toEqual([...places].sort((a, b) => a - b));
        expect(steps.map(({ n }) => n)).toEqual(steps.map((_, index) => index + 1));
      }),
    );
  });

  test('taking a class of part away leaves the order of all other steps as it was', () => {
    fc.assert(
      fc.property(procedures, reports, fc.constantFrom(...classes), (procedure, report, gone) => {
        const whole = waitedFor(tailor(procedure, [], report));
        const fewer = waitedFor(tailor(procedure, [], without(report, gone)));
        for (const [key, before] of fewer) {
          const still = [...(whole.get(key) ?? [])].filter((one) => fewer.has(one));
          expect([...before].sort()).toEqual(still.sort());
        }
      }),
    );
  });

  test('each joint of a kind that a step makes is made once', () => {
    fc.assert(
      fc.property(procedures, reports, (procedure, report) => {
        const once = procedure.steps.filter(
          (step, index) => procedure.steps.findIndex((other) => other.joints === step.joints) === index && !step.of,
        );
        const made = tailor(
          { ...procedure, steps: once.map((step) => ({ ...step, after: [] })) },
          [],
          report,
        ).steps.flatMap((step) => step.makes);
        const expected = report.joints.filter(({ kind }) => once.some((step) => step.joints === kind));
        expect(made.sort()).toEqual(expected.map(({ id }) => id).sort());
      }),
    );
  });

  test('ticking whatever is in reach, in any order, comes to the end with no tick out of order', () => {
    fc.assert(
      fc.property(procedures, reports, fc.infiniteStream(fc.nat()), (procedure, report, choices) => {
        const card = tailor(procedure, [], report);
        const ticked = new Set<string>();
        for (let open = reachable(card, ticked); open.length > 0; open = reachable(card, ticked)) {
          const choice: number = choices.next().value ?? 0;
          const key = open[choice % open.length];
          if (key !== undefined) ticked.add(key);
          expect(faultyTicks(card, ticked)).toEqual([]);
        }
        expect(ticked.size).toBe(card.steps.length);
      }),
    );
  });

  test('the order in which the report lists units and joints changes nothing', () => {
    fc.assert(
      fc.property(procedures, reports, (procedure, report) => {
        const turned = { ...report, joints: [...report.joints].reverse() };
        expect(tailor(procedure, [], turned)).toEqual(tailor(procedure, [], report));
      }),
    );
  });
});
