import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { mark, readAnswer } from '../../src/exercises/grade.ts';
import type { MarkedLine } from '../../src/exercises/types.ts';
import { choose, misfits, parts } from './bench.ts';

type Line = { part: string; quantity: number };

const plain: Line[] = choose.answer ?? [];
const swap = (from: string, to: string): Line[] =>
  plain.map((line) => (line.part === from ? { ...line, part: to } : line));
const without = (part: string): Line[] => plain.filter((line) => line.part !== part);
const times = (part: string, quantity: number): Line[] =>
  plain.map((line) => (line.part === part ? { part, quantity } : line));

const marksOf = (list: Line[]) => {
  const marked = mark(choose, { kind: 'choose', list }, parts);
  const line = (id: string): MarkedLine => {
    const found = marked.lines.find((one) => one.line === id);
    if (!found) throw new Error(`no line ${id}`);
    return found;
  };
  return { marks: marked.marks, of: marked.of, earned: marked.lines.map(({ marks }) => marks), line };
};

describe('a list for a brief', () => {
  test('a list that fits, is safe, known, affordable and enough has every mark', () => {
    const { marks, of, line } = marksOf(plain);
    expect([marks, of]).toEqual([14, 14]);
    expect(line('complete').why).toBe('The list holds 8 parts: what the brief asks for in each of its 7 places.');
    // 80 + 120 + 150 + 30 + 2 × 50 + 60 + 70 = 610 euro.
    expect(line('budget').why).toBe('The list costs €610.00; the brief allows €650.00.');
    expect(line('memory').why).toBe('The 2 memory modules give 32 GB in all; the brief asks for at least 32.');
    expect(line('points').why).toBe('Quellin Buoy gives 400 points; the brief asks for at least 400.');
    expect(line('fits')).not.toHaveProperty('more');
  });

  test('a cooler 7 mm too tall costs the marks for fitting, and no others', () => {
    const { earned, line } = marksOf(swap('skarn-low', 'skarn-mast'));
    expect(earned).toEqual([2, 0, 2, 2, 2, 2, 1]);
    expect(line('fits').why).toMatch(/165 mm.*158 mm.*7 mm/);
    expect(line('fits').more).toMatch(/158 mm/);
    expect(line('fits').findings).toHaveLength(1);
    expect(line('fits').findings[0]).toMatch(/^clearance\/cooler-height /);
  });

  test('a processor without a cooler costs the marks for safety', () => {
    const { earned, line } = marksOf(without('skarn-low'));
    expect(earned).toEqual([2, 3, 0, 2, 2, 2, 1]);
    expect(line('safe').findings).toHaveLength(1);
    expect(line('safe').findings[0]).toMatch(/^cooling\/no-cooling /);
  });

  test('a height that nobody recorded costs the marks for knowing, and is said beside those for fitting', () => {
    const { earned, line } = marksOf(swap('skarn-low', 'skarn-fog'));
    expect(earned).toEqual([2, 3, 2, 0, 2, 2, 1]);
    expect(line('known').findings[0]).toMatch(/^clearance\/cooler-height /);
    expect(line('known').more).not.toBe('');
    expect(line('fits').why).toMatch(/ 1 check cannot be judged, because something is not recorded\.$/);
  });

  test('a list that costs more than the brief allows says by how much', () => {
    // Four modules in place of two: 610 + 2 × 50 = 710 euro, 60 more than 650.
    const { earned, line } = marksOf(times('tammer-16', 4));
    expect(earned).toEqual([2, 3, 2, 2, 0, 2, 1]);
    expect(line('budget').why).toBe('The list costs €710.00; the brief allows €650.00, so it is €60.00 over.');
    expect(line('budget').more).toBe('Choose parts that cost €60.00 less in all.');
  });

  test('a list that costs what the brief allows to the cent keeps to it, and one cent more does not', () => {
    const exact = { ...choose, brief: { ...choose.brief, budgetCents: 61_000 } };
    const short = { ...choose, brief: { ...choose.brief, budgetCents: 60_999 } };
    const answer = { kind: 'choose', list: plain };
    expect(mark(exact, answer, parts).marks).toBe(14);
    expect(mark(short, answer, parts).marks).toBe(12);
  });

  test('a price that is not recorded is no price of nothing', () => {
    const { earned, line } = marksOf(swap('dray-tide', 'dray-gift'));
    expect(earned).toEqual([2, 3, 2, 2, 0, 2, 1]);
    // 610 less the 70 of the supply.
    expect(line('budget').why).toBe(
      'The list costs at least €540.00 of the €650.00 the brief allows; the price of Dray Gift is not recorded, so the whole is not known.',
    );
  });

  test('too little memory says how much more is asked for', () => {
    const { earned, line } = marksOf(times('tammer-16', 1));
    expect(earned[5]).toBe(0);
    expect(line('memory').why).toBe('The memory module gives 16 GB; the brief asks for at least 32.');
    expect(line('memory').more).toBe('Choose memory modules that give 16 GB more.');
  });

  test('a size that is not recorded adds nothing to a sum', () => {
    const { line } = marksOf([...times('tammer-16', 1), { part: 'tammer-fog', quantity: 1 }]);
    expect(line('memory').marks).toBe(0);
    expect(line('memory').why).toBe(
      'The 2 memory modules give at least 16 GB in all; the brief asks for at least 32. The figure of Tammer Fog is not recorded.',
    );
  });

  test('a size that is not recorded takes nothing from a sum that is enough without it', () => {
    const { line } = marksOf([...plain, { part: 'tammer-fog', quantity: 1 }]);
    expect(line('memory').marks).toBe(2);
  });

  test('one point too few is too few', () => {
    const { line } = marksOf(swap('quellin-buoy', 'quellin-float'));
    expect(line('points').marks).toBe(0);
    expect(line('points').why).toBe('Quellin Float gives 399 points; the brief asks for at least 400.');
    expect(line('points').more).toBe('Choose a processor that gives 400 points or more.');
  });
});

describe('a list that is no answer to the brief', () => {
  test('an empty list earns nothing in any line', () => {
    const { marks, line } = marksOf([]);
    expect(marks).toBe(0);
    expect(line('budget').why).toBe('The list is empty: it costs nothing and fits nothing.');
    expect(line('budget').more).toBe(
      'Choose 1 for “case”, 1 for “board”, 1 for “processor”, 1 to 4 for “memory”, 1 for “system drive” and 1 for “supply”.',
    );
    expect(line('memory').why).toBe('The list holds no memory module; the brief asks for at least 32 GB.');
  });

  test('an empty list earns nothing even where nothing is asked for', () => {
    const free = { ...choose, shelf: choose.shelf.map((position) => ({ ...position, from: 0 })) };
    expect(mark(free, { kind: 'choose', list: [] }, parts).marks).toBe(0);
  });

  test('a list without a supply earns only what it shows of memory and processor', () => {
    const { earned, line } = marksOf(without('dray-tide'));
    expect(earned).toEqual([0, 0, 0, 0, 0, 2, 1]);
    expect(line('fits').why).toBe(
      'The list holds none for “supply”, where the brief asks for 1. A list is judged as a whole, so it earns this only when it is complete.',
    );
    expect(line('fits').more).toBe('Add 1 for “supply”.');
  });

  test('a list with two cases is not judged as a whole', () => {
    const { earned, line } = marksOf(times('lodden-hull', 2));
    expect(earned).toEqual([0, 0, 0, 0, 0, 2, 1]);
    expect(line('complete').more).toBe('Leave out 1 of “case”.');
  });

  test('five modules where four are asked for show nothing of the memory', () => {
    const { earned } = marksOf(times('tammer-16', 5));
    expect(earned).toEqual([0, 0, 0, 0, 0, 0, 1]);
  });

  test('a part that is not in the catalogue is named', () => {
    const { earned, line } = marksOf([...plain, { part: 'skarn-ghost', quantity: 1 }]);
    expect(earned).toEqual([0, 0, 0, 0, 0, 2, 1]);
    expect(line('complete').why).toBe('The catalogue has no part called “skarn-ghost”, so this list is not judged.');
  });

  test('a part that is not on the shelf is named, and shows nothing of what it is for', () => {
    const { earned, line } = marksOf(swap('quellin-buoy', 'velm-back-room'));
    expect(earned).toEqual([0, 0, 0, 0, 0, 2, 0]);
    expect(line('fits').why).toBe(
      'The shelf of this exercise does not hold Velm Back Room, so this list is not judged.',
    );
    expect(line('points').more).toBe('Choose a processor from the shelf.');
  });
});

describe('verdicts on a given list', () => {
  const verdicts = (given: Record<string, unknown>) => mark(misfits, { kind: 'misfits', verdicts: given }, parts);

  test('right verdicts have every mark, and the numbers say why', () => {
    const { marks, of, lines } = verdicts({ room: 'does-not-fit', memory: 'fits' });
    expect([marks, of]).toEqual([6, 6]);
    expect(lines[0]?.why).toMatch(/^“does not fit” is right\. .*165 mm.*158 mm.*7 mm/);
    expect(lines[0]?.findings[0]).toMatch(/^clearance\/cooler-height /);
  });

  test('a wrong verdict is told the numbers and the right one', () => {
    const { marks, lines } = verdicts({ room: 'fits', memory: 'fits' });
    expect(marks).toBe(3);
    expect(lines[0]?.why).toMatch(/^You said “fits”\. .*7 mm/);
    expect(lines[0]?.more).toBe('“does not fit” earns this line.');
  });

  test('a statement without a verdict earns nothing and is not given away', () => {
    const { marks, lines } = verdicts({ memory: 'fits' });
    expect(marks).toBe(2);
    expect(lines[0]?.why).toBe('There is no verdict on this statement.');
    expect(lines[0]?.more).not.toMatch(/165|“/);
    expect(lines[2]?.why).toBe('1 of 2 statements are judged.');
  });

  test('the right answer about a height that nobody recorded is that nobody can tell', () => {
    const list = misfits.list.map((line) => (line.part === 'skarn-mast' ? { ...line, part: 'skarn-fog' } : line));
    const { lines } = mark({ ...misfits, list }, { kind: 'misfits', verdicts: { room: 'cannot-tell' } }, parts);
    expect(lines[0]?.marks).toBe(3);
  });

  test('a verdict under a name that every object has is no verdict', () => {
    const statements = misfits.statements.map((one) => (one.id === 'room' ? { ...one, id: 'constructor' } : one));
    const exercise = {
      ...misfits,
      statements,
      rubric: [{ id: 'room', says: 'The room', marks: 3, for: { statement: 'constructor' } }],
    };
    const [line] = mark(exercise, { kind: 'misfits', verdicts: {} }, parts).lines;
    expect(line?.why).toBe('There is no verdict on this statement.');
  });
});

describe('what is handed in', () => {
  test('an answer to another kind of exercise earns nothing', () => {
    expect(mark(choose, { kind: 'misfits', verdicts: {} }, parts).marks).toBe(0);
    expect(mark(misfits, { kind: 'choose', list: plain }, parts).marks).toBe(0);
  });

  test('marks written into an answer are left behind', () => {
    const answer = { kind: 'choose', list: [{ part: 'lodden-hull', quantity: 1, marks: 14 }], marks: 14 };
    expect(readAnswer(answer)).toEqual({ kind: 'choose', list: [{ part: 'lodden-hull', quantity: 1 }] });
  });

  test('quantities are whole numbers from 1 to 99', () => {
    const read = (quantity: unknown) => readAnswer({ kind: 'choose', list: [{ part: 'lodden-hull', quantity }] });
    expect(read(1)).toBeDefined();
    expect(read(99)).toBeDefined();
    for (const quantity of [0, 100, 1.5, -1, '1', null, Number.NaN, 1e300]) expect(read(quantity)).toBeUndefined();
  });

  test('a list has at most 60 lines, and an id at most 120 characters', () => {
    const lines = (n: number) => ({ kind: 'choose', list: Array.from({ length: n }, () => plain[0]) });
    expect(readAnswer(lines(60))).toBeDefined();
    expect(readAnswer(lines(61))).toBeUndefined();
    const named = (length: number) => ({ kind: 'choose', list: [{ part: 'a'.repeat(length), quantity: 1 }] });
    expect(readAnswer(named(120))).toBeDefined();
    expect(readAnswer(named(121))).toBeUndefined();
  });

  test('a verdict that is none of the three is no answer', () => {
    expect(readAnswer({ kind: 'misfits', verdicts: { room: 'fits' } })).toBeDefined();
    expect(readAnswer({ kind: 'misfits', verdicts: { room: 'does-not-apply' } })).toBeUndefined();
    expect(readAnswer({ kind: 'misfits', verdicts: ['fits'] })).toBeUndefined();
  });

  const ids = fc.oneof(fc.constantFrom(...parts.map(({ id }) => id), '__proto__', 'constructor', ''), fc.string());
  const nearly = fc.oneof(
    fc.record({
      kind: fc.constantFrom('choose', 'misfits', 'other'),
      list: fc.array(fc.record({ part: ids, quantity: fc.oneof(fc.integer({ min: 0, max: 100 }), fc.jsonValue()) })),
    }),
    fc.record({
      kind: fc.constant('misfits'),
      verdicts: fc.dictionary(
        fc.oneof(fc.constantFrom('room', 'memory', '__proto__'), fc.string()),
        fc.constantFrom('fits', 'does-not-fit', 'cannot-tell', 'perhaps'),
      ),
    }),
  );

  test('whatever JSON can hold is marked, with a reason in every line and never more than there is', () => {
    fc.assert(
      fc.property(fc.oneof(fc.jsonValue(), nearly), (value) => {
        const answer: unknown = JSON.parse(JSON.stringify(value));
        for (const exercise of [choose, misfits]) {
          const { lines, marks, of } = mark(exercise, answer, parts);
          expect(marks).toBeLessThanOrEqual(of);
          expect(lines).toHaveLength(exercise.rubric.length);
          for (const line of lines) {
            expect(line.why).toMatch(/\.$/);
            expect(line.more !== undefined).toBe(line.marks < line.of);
          }
        }
      }),
      { numRuns: 300 },
    );
  });

  test('the order of the list and of the catalogue changes nothing', () => {
    const shelf = fc.constantFrom(...choose.shelf.flatMap((position) => position.parts));
    const lists = fc.array(fc.record({ part: shelf, quantity: fc.integer({ min: 1, max: 3 }) }), { maxLength: 10 });
    const shuffled = fc.record({ list: lists, seed: fc.integer() });
    fc.assert(
      fc.property(shuffled, ({ list, seed }) => {
        const turned = <T>(items: readonly T[]): T[] => {
          const at = items.length === 0 ? 0 : Math.abs(seed) % items.length;
          return [...items.slice(at), ...items.slice(0, at)].reverse();
        };
        const straight = mark(choose, { kind: 'choose', list }, parts);
        expect(mark(choose, { kind: 'choose', list: turned(list) }, turned(parts))).toEqual(straight);
      }),
      { numRuns: 100 },
    );
  });

  test('two lines of one part are one line of both', () => {
    const split = [...without('tammer-16'), { part: 'tammer-16', quantity: 1 }, { part: 'tammer-16', quantity: 1 }];
    expect(marksOf(split).marks).toBe(14);
  });
});
