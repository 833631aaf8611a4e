/**
 * `npm run bench`: how long a list takes to judge and where the time goes, how many random lists a second, and the
 * hardest hookups on record. Lists are of the demo catalogue. On a busy machine the quickest tenth tells more of the
 * program, the median more of the machine.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { setFlagsFromString } from 'node:v8';
import { runInNewContext } from 'node:vm';
import { parse } from 'yaml';
import { budgetsOf } from '../../src/fit/budgets/index.ts';
import { findHookup } from '../../src/fit/hookup/search.ts';
import { whyLeft } from '../../src/fit/hookup/why.ts';
import { judge } from '../../src/fit/judge.ts';
import { openHookupRules } from '../../src/fit/judging/hookup-rules.ts';
import { grade, overallOf } from '../../src/fit/judging/judge-by.ts';
import { judgeBudgets, openJointRules, openPartsRules } from '../../src/fit/judging/parts-rules.ts';
import { planOf, type Told } from '../../src/fit/judging/plan.ts';
import { openDesk } from '../../src/fit/judging/table.ts';
import { lowerEach, putTogether } from '../../src/fit/needs/index.ts';
import { sortOut } from '../../src/fit/needs/units.ts';
import type { JudgeInput } from '../../src/fit/rule.ts';
import { rules } from '../../src/fit/rules/index.ts';
import { sayFinding } from '../../src/fit/say.ts';
import { resolveList } from '../../src/parts/list.ts';
import type { Part, PartClass, PartsList } from '../../src/parts/part.ts';
import { recorded } from '../fit/hookup/recorded.ts';

const content = join(import.meta.dirname, '../../content');
const read = (folder: string): unknown[] =>
  readdirSync(join(content, folder), { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && entry.name.endsWith('.yaml'))
    .map((entry) => parse(readFileSync(join(entry.parentPath, entry.name), 'utf8')));

const parts = (read('parts') as Part[]).sort((a, b) => (a.id < b.id ? -1 : 1));
const ofClass = (partClass: PartClass): Part[] => parts.filter((part) => part.class === partClass);
const builds = new Map((read('worked-builds') as { id: string; list: PartsList }[]).map(({ id, list }) => [id, list]));

function build(id: string): JudgeInput {
  const { input, unknown } = resolveList(builds.get(id) ?? [], parts);
  if (input.length === 0 || unknown.length > 0)
    throw new Error(`No worked build ${id}, or it lacks ${unknown.join(', ')}`);
  return input;
}

const lists: Record<string, JudgeInput> = {
  'today, 14 parts': build('fourteen-of-today'),
  '1990, 14 parts': build('fourteen-of-1990'),
};

const runs = 2000;
type Times = { median: number; tenth: number };

/** Microseconds of one call with each of these in turn, after as many calls to warm up. */
function timesOf<T>(inTurn: readonly T[], work: (one: T) => unknown): Times {
  const times: number[] = [];
  for (let n = 0; n < 2 * runs; n += 1) {
    const one = inTurn[n % inTurn.length] as T;
    const start = process.hrtime.bigint();
    work(one);
    if (n >= runs) times.push(Number(process.hrtime.bigint() - start) / 1000);
  }
  times.sort((a, b) => a - b);
  return { median: times[runs / 2] ?? Number.NaN, tenth: times[runs / 10] ?? Number.NaN };
}

/** The list with one part changed for another of its class, for every such part, drawer by drawer. */
const swapsOf = (list: JudgeInput): JudgeInput[] =>
  list.flatMap(({ part, quantity }, at) =>
    ofClass(part.class)
      .filter(({ id }) => id !== part.id)
      .map((other) => list.with(at, { part: other, quantity })),
  );

/** One for each call, so that no part was met before. */
const clonesOf = (list: JudgeInput): JudgeInput[] => Array.from({ length: 2 * runs }, () => structuredClone(list));

const show = ({ median, tenth }: Times): string => `${median.toFixed(0)} (${tenth.toFixed(0)})`;

function table(rows: Record<string, Record<string, string | number>>): void {
  const entries = Object.entries(rows);
  const cell = (text: unknown) => String(text ?? '').padStart(22);
  console.log(`${''.padEnd(42)}${entries.map(([name]) => cell(name)).join('')}`);
  for (const key of Object.keys(entries[0]?.[1] ?? {})) {
    console.log(`${key.padEnd(42)}${entries.map(([, row]) => cell(row[key])).join('')}`);
  }
}

function rowOf(list: JudgeInput): Record<string, string | number> {
  const plan = planOf(rules);
  const desk = openDesk(plan);
  const words = openHookupRules(plan);
  const atJoints = openJointRules(plan);
  const ofParts = openPartsRules(plan);
  const { groups } = sortOut(list);
  const units = groups.flatMap((group) => group.units);
  const each = lowerEach(units);
  const problem = { ...putTogether(each), kinds: plan.kinds };
  const hookup = findHookup(problem);
  const why = hookup.left.length > 0 ? whyLeft(problem, hookup) : [];
  const onTable = desk.lay(groups, each, hookup, why);
  const budgets = budgetsOf(units, {});
  const told: Told = new Array(plan.count);
  const report = judge(list);
  const same = [list];
  const shares: Record<string, Times> = {
    'sorting out, needs and places': timesOf(same, () =>
      putTogether(lowerEach(sortOut(list).groups.flatMap((one) => one.units))),
    ),
    hookup: timesOf(same, () => findHookup(problem)),
    'why left': hookup.left.length > 0 ? timesOf(same, () => whyLeft(problem, hookup)) : { median: 0, tenth: 0 },
    budgets: timesOf(same, () => budgetsOf(units, {})),
    'laying the table': timesOf(same, () => desk.lay(groups, each, hookup, why)),
    'rules, said before': timesOf(same, () => {
      words(onTable, told);
      atJoints(onTable, told);
      ofParts(onTable, undefined, {}, told);
      judgeBudgets(plan, units, budgets, told);
    }),
    'sorting the findings': timesOf(same, () => overallOf(grade(told), false)),
  };
  const whole = timesOf(same, () => judge(list));
  const percent = (time: Times) => `${show(time)} ${((100 * time.median) / whole.median).toFixed(0)} %`;
  return {
    'needs, places': `${problem.needs.length}, ${problem.places.length}`,
    'joints, left over': `${hookup.joints.length}, ${hookup.left.length}`,
    findings: report.findings.length,
    overall: report.overall,
    'judge, the same list again': show(whole),
    ...Object.fromEntries(Object.entries(shares).map(([name, time]) => [`  ${name}`, percent(time)])),
    'judge, one part changed each time': show(timesOf(swapsOf(list), (one) => judge(one))),
    '  rules, said anew': show(
      timesOf(same, () => {
        openHookupRules(plan)(onTable, told);
        openJointRules(plan)(onTable, told);
        openPartsRules(plan)(onTable, undefined, {}, told);
      }),
    ),
    'judge, parts never met before': show(timesOf(clonesOf(list), (one) => judge(one))),
    'saying all findings': show(timesOf(same, () => report.findings.map(sayFinding))),
  };
}

/** Numbers from 0 up to 1, the same on every machine. */
function chance(seed: number): () => number {
  let state = seed;
  return () => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
    return state / 2 ** 32;
  };
}

const usual: readonly (readonly [PartClass, number, number])[] = [
  ['chassis', 1, 1],
  ['motherboard', 1, 1],
  ['processor', 1, 1],
  ['cooler', 0, 1],
  ['memory-module', 0, 3],
  ['bank-module', 0, 1],
  ['graphics-card', 0, 1],
  ['storage-drive', 0, 3],
  ['power-supply', 1, 1],
  ['fan', 0, 2],
  ['monitor', 0, 1],
  ['bus-card', 0, 2],
  ['expansion-card', 0, 1],
  ['floppy-drive', 0, 1],
  ['fixed-disk', 0, 1],
  ['adapter', 0, 1],
  ['keyboard', 0, 1],
  ['pointer', 0, 1],
  ['operating-system', 0, 1],
];

function randomList(next: () => number): JudgeInput {
  return usual.flatMap(([partClass, least, most]) => {
    const shelf = ofClass(partClass);
    return Array.from({ length: least + Math.floor(next() * (most - least + 1)) }, () => ({
      part: shelf[Math.floor(next() * shelf.length)] as Part,
      quantity: 1 + Math.floor(next() * 2) * Number(partClass === 'memory-module' || partClass === 'bank-module'),
    }));
  });
}

setFlagsFromString('--expose-gc');
const collect = runInNewContext('gc') as () => void;
function heapMb(): number {
  collect();
  return process.memoryUsage().heapUsed / 2 ** 20;
}

console.log(
  `${rules.length} rules, ${parts.length} parts. Microseconds: median (one in ten within) of ${runs} runs.\n`,
);
table(Object.fromEntries(Object.entries(lists).map(([name, list]) => [name, rowOf(list)])));

const inAll = 10_000;
const next = chance(1);
const random = Array.from({ length: inAll }, () => randomList(next));
const rounds = ['first time', 'second time', 'third time'].map((round) => {
  const before = heapMb();
  const start = process.hrtime.bigint();
  for (const list of random) judge(list);
  const seconds = Number(process.hrtime.bigint() - start) / 1e9;
  return [
    round,
    {
      'lists a second': Math.round(inAll / seconds),
      'heap before, MB': before.toFixed(1),
      'heap after, MB': heapMb().toFixed(1),
    },
  ] as const;
});
console.log(
  `\n${inAll.toLocaleString('en')} random lists, ${(random.flat().length / inAll).toFixed(0)} lines each on average:`,
);
table(Object.fromEntries(rounds));
const slowest = random
  .map((list) => {
    const start = process.hrtime.bigint();
    const { proved } = judge(list);
    return { milliseconds: Number(process.hrtime.bigint() - start) / 1e6, proved };
  })
  .sort((a, b) => b.milliseconds - a.milliseconds);
console.log(
  `slowest ${slowest[0]?.milliseconds.toFixed(1)} ms; not proved ${slowest.filter(({ proved }) => !proved).length}`,
);

console.log('\nHardest hookups on record:');
for (const { name, problem } of recorded.toSorted((a, b) => b.steps - a.steps).slice(0, 3)) {
  const start = process.hrtime.bigint();
  const { steps, proved } = findHookup(problem);
  const milliseconds = Number(process.hrtime.bigint() - start) / 1e6;
  console.log(`${name}: ${steps} steps, ${milliseconds.toFixed(0)} ms${proved ? '' : ', not proved'}`);
}
console.log(`\nNode ${process.versions.node}.`);
