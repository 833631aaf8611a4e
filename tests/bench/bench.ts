/**
 * `npm run bench`: how long one list of 12 parts takes to judge, and where the time goes. Median microseconds over
 * many runs on this machine; the shares are of the same list, each measured by itself. On a busy machine the quickest
 * tenth tells more of the program, the median more of the machine.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { parse } from 'yaml';
import { budgetsOf } from '../../src/fit/budgets/index.ts';
import { findHookup } from '../../src/fit/hookup/search.ts';
import { whyLeft } from '../../src/fit/hookup/why.ts';
import { judge } from '../../src/fit/judge.ts';
import { kinds } from '../../src/fit/kinds.ts';
import { lowerAll, unitsOf } from '../../src/fit/needs/index.ts';
import type { JudgeInput } from '../../src/fit/rule.ts';
import { sayFinding } from '../../src/fit/say.ts';
import { resolveList } from '../../src/parts/list.ts';
import type { Part } from '../../src/parts/part.ts';

const folder = join(import.meta.dirname, '../../content/parts');
const parts = readdirSync(folder, { recursive: true, withFileTypes: true })
  .filter((entry) => entry.isFile() && entry.name.endsWith('.yaml'))
  .map((entry) => parse(readFileSync(join(entry.parentPath, entry.name), 'utf8')) as Part);

const of = (...ids: string[]): JudgeInput => {
  const { input, unknown } = resolveList(
    ids.map((part) => ({ part, quantity: 1 })),
    parts,
  );
  if (unknown.length > 0) throw new Error(`No part is called ${unknown.join(', ')}`);
  return input;
};

const lists: Record<string, JudgeInput> = {
  'all of it fits': of(
    'lodden-30',
    'orrisk-b2',
    'quellin-5',
    'skarn-mid',
    'tammer-16',
    'tammer-16',
    'brindle-4',
    'marl-1tb',
    'hask-deep-2tb',
    'fennick-550',
    'skarn-120',
    'sollen-24',
  ),
  'full of traps': of(
    'lodden-30',
    'orrisk-b1',
    'quellin-7',
    'skarn-tall',
    'tammer-16-fin',
    'tammer-16-fin',
    'pellam-8',
    'marl-1tb',
    'hask-box-1tb',
    'dray-650',
    'skarn-120',
    'sollen-27',
  ),
};

const runs = 2000;

/** Microseconds of one call, from the quickest to the slowest, after as many calls to warm up. */
function timesOf(work: () => unknown): number[] {
  for (let n = 0; n < runs; n += 1) work();
  const times = Array.from({ length: runs }, () => {
    const start = process.hrtime.bigint();
    work();
    return Number(process.hrtime.bigint() - start) / 1000;
  });
  return times.sort((a, b) => a - b);
}

const median = (work: () => unknown): number => timesOf(work)[runs / 2] ?? Number.NaN;

const rows: Record<string, Record<string, string | number>> = {};
for (const [name, input] of Object.entries(lists)) {
  const units = unitsOf(input);
  const lowered = lowerAll(units);
  const problem = { ...lowered, kinds };
  const hookup = findHookup(problem);
  const report = judge(input);

  const judging = timesOf(() => judge(input));
  const whole = judging[runs / 2] ?? Number.NaN;
  const lowering = median(() => lowerAll(unitsOf(input)));
  const search = median(() => findHookup(problem));
  const why = hookup.left.length > 0 ? median(() => whyLeft(problem, hookup)) : 0;
  const budgets = median(() => budgetsOf(units, {}));
  const saying = median(() => report.findings.map(sayFinding));
  const share = (time: number) => `${time.toFixed(0)} (${((100 * time) / whole).toFixed(0)} %)`;
  rows[name] = {
    units: units.length,
    needs: lowered.needs.length,
    places: lowered.places.length,
    left: hookup.left.length,
    findings: report.findings.length,
    'judge, µs': whole.toFixed(0),
    'one in ten within': (judging[runs / 10] ?? Number.NaN).toFixed(0),
    lowering: share(lowering),
    hookup: share(search),
    'why left': share(why),
    budgets: share(budgets),
    'rules and the rest': share(whole - lowering - search - why - budgets),
    'saying all of it, µs': saying.toFixed(0),
  };
}

const [first, second] = Object.entries(rows);
const cell = (text: unknown) => String(text).padStart(16);
console.log(`${''.padEnd(22)}${cell(first?.[0])}${cell(second?.[0])}`);
for (const key of Object.keys(first?.[1] ?? {})) {
  console.log(`${key.padEnd(22)}${cell(first?.[1][key])}${cell(second?.[1][key])}`);
}
console.log(`\nMedian of ${runs} runs, Node ${process.versions.node}.`);
