/** Marks a parts list against its brief. */
import { judge } from '../fit/judge.ts';
import type { Finding, FitReport } from '../fit/report.ts';
import { sayFinding } from '../fit/say.ts';
import type { Listed, Part } from '../parts/part.ts';
import { showMoney } from '../units/money.ts';
import { count, list as series } from '../wording/phrases.ts';
import { asked, type Chosen, sortOut, total } from './chosen.ts';
import { markDemand } from './mark-demand.ts';
import { aboutNothing, type Judged, marked } from './marking.ts';
import type { ChooseExercise, Demand, MarkedLine } from './types.ts';

export function markList(exercise: ChooseExercise, list: readonly Listed[], parts: readonly Part[]): MarkedLine[] {
  const chosen = sortOut(exercise, list, parts);
  const amiss = whatIsAmiss(chosen);
  // A list beyond the shelf is not judged: it is not an answer to the brief, and it could be made to take for ever.
  const report = amiss ? undefined : judge(chosen.held, budgetOf(exercise));
  return exercise.rubric.map((line) => {
    const wanted = line.for;
    if (typeof wanted === 'object') {
      const demand = 'demand' in wanted && exercise.brief.demands.find(({ id }) => id === wanted.demand);
      return marked(line, demand ? markDemand(demand as Demand, chosen) : aboutNothing);
    }
    if (!report) return marked(line, amiss ?? aboutNothing);
    if (wanted === 'complete') return marked(line, complete(chosen));
    if (wanted === 'fits') return marked(line, fits(report));
    if (wanted === 'safe') return marked(line, safe(report));
    if (wanted === 'known') return marked(line, known(report));
    return marked(line, budget(report, exercise.brief.budgetCents));
  });
}

const budgetOf = ({ brief }: ChooseExercise) =>
  brief.budgetCents === undefined ? {} : { budgetCents: brief.budgetCents };

/** Why the list as a whole is not judged; undefined when every place holds what the brief asks and nothing else is there. */
function whatIsAmiss({ held, offShelf, unknown, positions }: Chosen): Judged | undefined {
  if (unknown.length > 0) {
    const ids = series(unknown.map((id) => `“${id}”`));
    return {
      why: `The catalogue has no part called ${ids}, so this list is not judged.`,
      more: `Take ${ids} off the list and choose from the shelf.`,
    };
  }
  if (offShelf.length > 0) {
    const names = series(offShelf.map(({ name }) => name));
    return {
      why: `The shelf of this exercise does not hold ${names}, so this list is not judged.`,
      more: `Take ${names} off the list and choose from the shelf.`,
    };
  }
  const amiss = positions.filter(({ holds, from, to }) => holds < from || holds > to);
  if (held.length === 0) {
    const first = positions.filter(({ from }) => from > 0).map((place) => `${asked(place)} for ${place.name}`);
    return {
      why: 'The list is empty: it costs nothing and fits nothing.',
      more: first.length > 0 ? `Choose ${series(first)}.` : 'Choose parts from the shelf.',
    };
  }
  if (amiss.length === 0) return undefined;
  const gaps = amiss.map(
    (place) => `${place.holds || 'none'} for ${place.name}, where the brief asks for ${asked(place)}`,
  );
  const adds = amiss.filter(({ holds, from }) => holds < from).map((p) => `${p.from - p.holds} for ${p.name}`);
  const drops = amiss.filter(({ holds, to }) => holds > to).map((p) => `${p.holds - p.to} of ${p.name}`);
  return {
    why: `The list holds ${gaps.join('; ')}. A list is judged as a whole, so it earns this only when it is complete.`,
    more: [adds.length > 0 && `Add ${series(adds)}.`, drops.length > 0 && `Leave out ${series(drops)}.`]
      .filter(Boolean)
      .join(' '),
  };
}

const complete = ({ held, positions }: Chosen): Judged => ({
  why: `The list holds ${count(total(held), 'part', 'parts')}: what the brief asks for in each of its ${count(positions.length, 'place', 'places')}.`,
});

const ids = (findings: readonly Finding[]) => findings.map(({ id }) => id);
const whats = (findings: readonly Finding[]) => findings.map((finding) => sayFinding(finding).what).join(' ');
const remedies = (findings: readonly Finding[]) => [...new Set(findings.map((f) => sayFinding(f).remedy))].join(' ');
const failing = (report: FitReport, severity: Finding['severity']) =>
  report.findings.filter((f) => f.verdict === 'does-not-fit' && f.severity === severity);
const untold = (report: FitReport, ...severities: Finding['severity'][]) =>
  report.findings.filter((f) => f.verdict === 'cannot-tell' && severities.includes(f.severity));

/** An unknown measure is no pass: it is said here, and the line about known sizes carries its marks. */
const openEnd = (unknown: readonly Finding[]) =>
  unknown.length === 0
    ? ''
    : ` ${count(unknown.length, 'check', 'checks')} cannot be judged, because something is not recorded.`;

function fits(report: FitReport): Judged {
  const blockers = failing(report, 'blocker');
  if (blockers.length > 0) return { why: whats(blockers), more: remedies(blockers), findings: ids(blockers) };
  const unknown = untold(report, 'blocker');
  const checks = count(report.findings.length, 'check', 'checks');
  return {
    why: `Of ${checks}, none found anything that keeps the machine from going together or starting.${openEnd(unknown)}`,
    findings: ids(unknown),
  };
}

function safe(report: FitReport): Judged {
  const hazards = failing(report, 'hazard');
  if (hazards.length > 0) return { why: whats(hazards), more: remedies(hazards), findings: ids(hazards) };
  const unknown = untold(report, 'hazard');
  const checks = count(report.findings.length, 'check', 'checks');
  return {
    why: `Of ${checks}, none found anything that could hurt someone or damage a part.${openEnd(unknown)}`,
    findings: ids(unknown),
  };
}

function known(report: FitReport): Judged {
  const unknown = untold(report, 'hazard', 'blocker');
  if (unknown.length > 0) return { why: whats(unknown), more: remedies(unknown), findings: ids(unknown) };
  const checks = count(report.findings.length, 'check', 'checks');
  return {
    why: `Every figure that decides whether the machine goes together, starts and is safe is recorded: ${checks} made.`,
  };
}

function budget(report: FitReport, allowed: number | undefined): Judged {
  const money = report.budgets.find(({ name }) => name === 'money');
  if (!money || allowed === undefined) return aboutNothing;
  const { used, unknown } = money;
  if (used > allowed) {
    const over = showMoney(used - allowed);
    return {
      why: `The list costs ${unknown.length > 0 ? 'at least ' : ''}${showMoney(used)}; the brief allows ${showMoney(allowed)}, so it is ${over} over.`,
      more: `Choose parts that cost ${over} less in all.`,
    };
  }
  if (unknown.length > 0) {
    const names = series([...new Set(report.units.filter(({ id }) => unknown.includes(id)).map(({ name }) => name))]);
    return {
      why: `The list costs at least ${showMoney(used)} of the ${showMoney(allowed)} the brief allows; the price of ${names} is not recorded, so the whole is not known.`,
      more: `Ask the shop for the price of ${names}, or choose a part whose price is recorded.`,
    };
  }
  return { why: `The list costs ${showMoney(used)}; the brief allows ${showMoney(allowed)}.` };
}
