/**
 * `node tests/bench/hookup.ts`: how long the joints of fourteen parts take to find, and why one is left over.
 * Needs, places and resources are the same objects on every call, as the lowering hands them out. Three ways:
 * one list again and again; lists in turn that differ by one part, as when somebody chooses; and parts that
 * were never met before.
 */
import { findHookup } from '../../src/fit/hookup/search.ts';
import { whyLeft } from '../../src/fit/hookup/why.ts';
import type { Problem } from '../../src/fit/model.ts';
import { fourteenParts } from './hookup-problem.ts';

const without = (unit: string): Problem => ({
  ...fourteenParts,
  needs: fourteenParts.needs.filter(({ part }) => part !== unit),
  places: fourteenParts.places.filter(({ part }) => part !== unit),
});

const lists = [
  fourteenParts,
  without('fan-2'),
  without('memory-module-2'),
  without('storage-drive-1'),
  without('graphics-card-1'),
  without('storage-drive-3'),
  without('cooler-1'),
  without('monitor-1'),
];

const runs = 4000;

/** Microseconds of one call with each of these in turn, from the quickest to the slowest, once warm. */
function timesOf<T>(inTurn: readonly T[], work: (one: T) => unknown): number[] {
  const times: number[] = [];
  for (let n = 0; n < 2 * runs; n += 1) {
    const one = inTurn[n % inTurn.length] as T;
    const start = process.hrtime.bigint();
    work(one);
    if (n >= runs) times.push(Number(process.hrtime.bigint() - start) / 1000);
  }
  return times.sort((a, b) => a - b);
}

const stranded = without('chassis-1');
const unmet = Array.from({ length: 2 * runs }, () => {
  const { needs, places, resources, kinds } = fourteenParts;
  return { kinds, ...structuredClone({ needs, places, resources }) };
});
const rows: Record<string, number[]> = {
  'one list': timesOf([fourteenParts], (problem) => findHookup(problem)),
  'eight lists in turn': timesOf(lists, (problem) => findHookup(problem)),
  'parts never met': timesOf(unmet, (problem) => findHookup(problem)),
  'no case, joints': timesOf([stranded], (problem) => findHookup(problem)),
  'no case, joints and why': timesOf([stranded], (problem) => whyLeft(problem, findHookup(problem))),
};

console.log(`${''.padEnd(26)}${'median, µs'.padStart(14)}${'one in ten within'.padStart(20)}`);
for (const [name, times] of Object.entries(rows)) {
  const [median = Number.NaN, tenth = Number.NaN] = [times[runs / 2], times[runs / 10]];
  console.log(`${name.padEnd(26)}${median.toFixed(0).padStart(14)}${tenth.toFixed(0).padStart(20)}`);
}
console.log(`\nOf ${runs} runs, Node ${process.versions.node}.`);
