import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { aPart, exampleList } from '../../src/fit/examples.ts';
import { familiesOf, hookUp } from '../../src/fit/families.ts';
import { judge } from '../../src/fit/judge.ts';
import type { Need } from '../../src/fit/model.ts';
import { lowerAll, unitsOf } from '../../src/fit/needs/index.ts';
import type { ExampleParts, JudgeInput } from '../../src/fit/rule.ts';
import { rules } from '../../src/fit/rules/index.ts';
import { type Part, partClasses } from '../../src/parts/part.ts';
import { anyList } from '../helpers/any-part.ts';
import { likelyList } from '../helpers/likely-list.ts';

const isGrave = ({ left }: Pick<Need, 'left'>): boolean => left === 'hazard' || left === 'blocker';
const partsOf = (list: JudgeInput): Part[] => list.map(({ part }) => part);
const shelf = partClasses.flatMap((partClass) => [aPart(partClass), aPart(partClass, 'vintage')]);
const familyOf = (kind: string, parts: readonly Part[] = shelf) =>
  familiesOf(parts).find(({ kinds }) => kinds.some((one) => one === kind));

/** What `judge` says of the kinds of a family, by the same reckoning as for a whole list. */
function saidOf(kinds: readonly string[], list: JudgeInput) {
  const told = new Set(
    rules.flatMap((rule) => {
      const kind = 'refuses' in rule ? rule.refuses.kind : 'left' in rule ? rule.left : 'at' in rule ? rule.at : '';
      return kinds.includes(kind) ? [rule.id] : [];
    }),
  );
  const { findings } = judge(list);
  const grave = findings.filter(
    ({ rule, severity }) => told.has(rule) && (severity === 'hazard' || severity === 'blocker'),
  );
  return grave.map(({ id, verdict }) => `${verdict} ${id}`).sort();
}

describe('the families of a shelf', () => {
  test('every kind is in one family', () => {
    const kinds = familiesOf(shelf).flatMap((family) => [...family.kinds]);
    expect(new Set(kinds).size).toBe(kinds.length);
    const met = new Set(
      shelf.flatMap((part) => lowerAll(unitsOf([{ part, quantity: 1 }])).needs.map(({ kind }) => kind)),
    );
    for (const kind of met) expect(kinds, kind).toContain(kind);
  });

  test('a port that a slot switches off is in the family of the slot', () => {
    expect(familyOf('module-slot')?.kinds).toContain('drive-data');
  });

  test('what a card offers is in the family of the slot it sits in, which waits for the board in its case', () => {
    expect(familyOf('picture')?.kinds).toEqual(expect.arrayContaining(['expansion-slot', 'board-mount']));
  });

  test('memory shuts out no drive bay', () => {
    expect(familyOf('memory-slot')?.kinds).toEqual(['memory-slot']);
    expect(familyOf('memory-slot')?.classes).toEqual(['motherboard', 'memory-module']);
  });

  test('a shelf whose boards switch nothing off keeps ports and slots apart', () => {
    const board = aPart('motherboard');
    const { moduleSlots = [] } = board;
    const plain: Part = { ...board, moduleSlots: moduleSlots.map(({ switchesOff: _, ...slot }) => slot) };
    expect(familyOf('module-slot', [plain, aPart('storage-drive')])?.kinds).not.toContain('drive-data');
  });

  test('their order does not depend on the order of the shelf', () => {
    expect(familiesOf([...shelf].reverse())).toEqual(familiesOf(shelf));
  });
});

describe('the hookup of a family', () => {
  const verdict = (kind: string, parts: ExampleParts) => {
    const family = familyOf(kind);
    return family && hookUp(family, exampleList(parts)).verdict;
  };

  test('fits when everything that matters is joined', () => {
    expect(verdict('memory-slot', { motherboard: {}, 'memory-module': [{}, {}] })).toBe('fits');
  });

  test('does not fit when one is left over, whatever else is on the list', () => {
    const modules = [{}, {}, {}, {}, {}];
    expect(verdict('memory-slot', { motherboard: {}, 'memory-module': modules, chassis: {} })).toBe('does-not-fit');
  });

  test('cannot tell when what decides is not recorded', () => {
    expect(verdict('memory-slot', { motherboard: { memory: undefined }, 'memory-module': {} })).toBe('cannot-tell');
  });

  test('does not look at other families', () => {
    expect(verdict('memory-slot', { motherboard: { socket: 'n9' }, processor: {}, 'memory-module': {} })).toBe('fits');
  });

  test('a rule at its joints may say that it does not fit', () => {
    expect(verdict('processor-socket', { motherboard: { processorPowerW: 20 }, processor: { sustainedW: 65 } })).toBe(
      'does-not-fit',
    );
  });
});

describe.each([
  ['lists as people make them', likelyList],
  ['whatever a file may hold', anyList(7)],
])('laws, for %s', (_, lists) => {
  test('the whole has a hookup with nothing left over that matters exactly when each family has', () => {
    fc.assert(
      fc.property(lists, (list) => {
        const { left } = judge(list);
        const whole = left.filter(({ severity }) => severity === 'hazard' || severity === 'blocker');
        const each = familiesOf(partsOf(list)).flatMap((family) => hookUp(family, list).hookup.left.filter(isGrave));
        expect(each.map(({ id }) => id).sort()).toEqual(whole.map(({ need }) => need).sort());
      }),
      { numRuns: 200 },
    );
  });

  test('a family is joined as the whole list is, and judged as `judge` judges its kinds', () => {
    fc.assert(
      fc.property(lists, (list) => {
        const { joints } = judge(list);
        for (const family of familiesOf(partsOf(list))) {
          const { hookup, verdict } = hookUp(family, list);
          expect(hookup.joints).toEqual(joints.filter(({ kind }) => family.kinds.includes(kind)));
          const said = saidOf(family.kinds, list);
          const has = (start: string) => said.some((one) => one.startsWith(start));
          if (has('does-not-fit')) expect(verdict).toBe('does-not-fit');
          else if (has('cannot-tell')) expect(verdict).toBe('cannot-tell');
          else if (verdict !== 'fits') expect(hookup.left.some(isGrave) || said.length === 0).toBe(true);
        }
      }),
      { numRuns: 100 },
    );
  });

  test('parts of classes that have no say change nothing', () => {
    fc.assert(
      fc.property(lists, (list) => {
        for (const family of familiesOf(partsOf(list))) {
          const those = list.filter(({ part }) => family.classes.includes(part.class));
          expect(hookUp(family, those)).toEqual(hookUp(family, list));
        }
      }),
      { numRuns: 50 },
    );
  });
});
