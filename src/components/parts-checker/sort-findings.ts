/** Which findings become notes, which are only "still to choose", and what the list as a whole comes to. Pure. */
import type { KindName } from '../../fit/model.ts';
import type { Finding, FitReport } from '../../fit/report.ts';
import type { PartClass } from '../../parts/part.ts';

/** Classes that have places of a kind. A need of the kind waits for them while one of them is still to be chosen. */
const offeredBy: Record<KindName, readonly PartClass[]> = {
  'processor-socket': ['motherboard'],
  'cooler-mount': ['motherboard'],
  cooling: ['cooler', 'motherboard'],
  'memory-slot': ['motherboard'],
  'memory-bank': ['motherboard'],
  'expansion-slot': ['motherboard'],
  'module-slot': ['motherboard'],
  'drive-data': ['motherboard'],
  'drive-bay': ['chassis'],
  'board-mount': ['chassis'],
  'supply-mount': ['chassis'],
  'fan-mount': ['chassis'],
  'radiator-mount': ['chassis'],
  'board-power': ['power-supply'],
  'processor-power': ['power-supply'],
  'card-power': ['power-supply'],
  'drive-power': ['power-supply'],
  'fan-header': ['motherboard'],
  'front-panel': ['motherboard'],
  picture: ['motherboard', 'processor'],
  keyboard: ['motherboard'],
  pointer: ['motherboard'],
  mains: ['power-supply'],
  setting: [],
  'coprocessor-socket': ['motherboard'],
  'light-header': ['motherboard'],
  'monitor-mount': ['monitor'],
};

export const isFault = ({ verdict, severity }: Finding): boolean =>
  verdict === 'does-not-fit' && (severity === 'hazard' || severity === 'blocker');

export const isUntold = ({ verdict, severity }: Finding): boolean =>
  verdict === 'cannot-tell' && (severity === 'hazard' || severity === 'blocker');

export const isLess = ({ verdict, severity }: Finding): boolean =>
  verdict === 'does-not-fit' && (severity === 'limit' || severity === 'note');

const kindOfRule: Readonly<Record<string, KindName>> = { 'display/no-picture': 'picture' };

/** True when nothing offers what is needed because the part that would is still to be chosen. */
export function isToChoose(finding: Finding, report: FitReport, missing: ReadonlySet<PartClass>): boolean {
  if (finding.verdict === 'fits' || missing.size === 0) return false;
  const kind = report.left.find(({ need }) => need === finding.need)?.kind ?? kindOfRule[finding.rule];
  if (!kind) return false;
  const { reason } = finding.facts;
  if (reason !== 'none-offered' && reason !== 'absent' && finding.rule !== 'display/no-picture') return false;
  return offeredBy[kind].some((of) => missing.has(of));
}

export type Sorted = {
  /** Worst first: does not fit, cannot tell, works with less. */
  notes: Finding[];
  toChoose: Finding[];
  fits: Finding[];
};

const weight = (finding: Finding): number => {
  if (isFault(finding)) return finding.severity === 'hazard' ? 0 : 1;
  if (finding.verdict === 'cannot-tell') return isUntold(finding) ? 2 : 4;
  return finding.severity === 'limit' ? 3 : 5;
};

/** `missing`: classes of the drawers that hold less than the brief asks for. */
export function sortFindings(report: FitReport, missing: ReadonlySet<PartClass>): Sorted {
  const sorted: Sorted = { notes: [], toChoose: [], fits: [] };
  for (const finding of report.findings) {
    if (finding.verdict === 'fits') sorted.fits.push(finding);
    else if (isToChoose(finding, report, missing)) sorted.toChoose.push(finding);
    else sorted.notes.push(finding);
  }
  // The report is worst first within each weight already.
  sorted.notes = sorted.notes
    .map((finding, index) => ({ finding, index }))
    .sort((a, b) => weight(a.finding) - weight(b.finding) || a.index - b.index)
    .map(({ finding }) => finding);
  return sorted;
}

export type WholeVerdict = 'fits' | 'does-not-fit' | 'cannot-tell' | 'empty' | 'short';
export type Whole = { verdict: WholeVerdict; says: string };

const parts = (n: number, one: string, many = one) => `${n} ${n === 1 ? one : many}`;

/** "Not ready to order: 1 does not fit, 1 cannot tell": the whole list in words. `overCents`: how much dearer than the brief allows. */
export function sayWhole(sorted: Sorted, chosen: number, empty: number, over: string | undefined): Whole {
  if (chosen === 0) return { verdict: 'empty', says: 'Nothing chosen yet. Open any drawer to begin.' };
  const faults = sorted.notes.filter(isFault).length;
  const untold = sorted.notes.filter(isUntold).length;
  const less = sorted.notes.filter(isLess).length;
  const amiss = [
    faults > 0 ? parts(faults, 'does not fit', 'do not fit') : undefined,
    untold > 0 ? parts(untold, 'cannot tell') : undefined,
    over === undefined ? undefined : `${over} over the money`,
  ].filter((one) => one !== undefined);
  if (empty > 0) {
    const verdict = faults > 0 ? 'does-not-fit' : untold > 0 ? 'cannot-tell' : 'short';
    return { verdict, says: [`${parts(empty, 'drawer', 'drawers')} still empty`, ...amiss].join(', ') };
  }
  if (amiss.length > 0) {
    return {
      verdict: faults > 0 || over !== undefined ? 'does-not-fit' : 'cannot-tell',
      says: `Not ready to order: ${amiss.join(', ')}`,
    };
  }
  return {
    verdict: 'fits',
    says:
      less > 0
        ? `Ready to order. ${parts(less, 'thing works', 'things work')} with less`
        : 'Ready to order: everything fits',
  };
}
