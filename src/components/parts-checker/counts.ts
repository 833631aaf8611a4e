/** How each part of a drawer would do with all the other choices as they are. Pure. */
import type { Finding, FitReport } from '../../fit/report.ts';
import type { PartClass, PartId, PartsList } from '../../parts/part.ts';
import { type Drawer, instead, shortDrawers, without } from './list.ts';
import { isFault, isToChoose, isUntold } from './sort-findings.ts';

export type WouldBe = {
  verdict: 'fits' | 'does-not-fit' | 'cannot-tell';
  /** What stands in the way, worst first; empty when it fits. */
  because: Finding[];
};

/**
 * A part would fit when it brings no blocker or hazard that is not there without the drawer's choice. What the
 * other drawers still leave open is not held against it.
 */
export function tryParts(
  drawer: Drawer,
  drawers: readonly Drawer[],
  list: PartsList,
  judgeList: (list: PartsList) => FitReport,
): Map<PartId, WouldBe> {
  const classesShort = (of: PartsList): Set<PartClass> => new Set(shortDrawers(drawers, of).map((one) => one.class));
  const amiss = (of: PartsList) => {
    const report = judgeList(of);
    const missing = classesShort(of);
    return report.findings.filter(
      (finding) => (isFault(finding) || isUntold(finding)) && !isToChoose(finding, report, missing),
    );
  };
  const before = new Set(amiss(without(drawer, list)).map(({ id }) => id));
  const tried = new Map<PartId, WouldBe>();
  for (const part of drawer.parts) {
    const because = amiss(instead(drawer, part, list)).filter(({ id }) => !before.has(id));
    const verdict = because.some(isFault) ? 'does-not-fit' : because.length > 0 ? 'cannot-tell' : 'fits';
    tried.set(part, { verdict, because });
  }
  return tried;
}

export const fitting = (tried: ReadonlyMap<PartId, WouldBe>): number =>
  [...tried.values()].filter(({ verdict }) => verdict === 'fits').length;
