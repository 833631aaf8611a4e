/** One drawing of a case for one width: everything a component draws and says, as data. */
import type { PartClass } from '../parts/part.ts';
import { caseBack, isSeenFromBack } from './case-back.ts';
import { conventions, type Machine } from './case-plan.ts';
import { caseSide } from './case-side.ts';
import type { Box, Note, View } from './shapes.ts';
import { type Largest, labelBoxes, layOut, type Pinned, pin, type Sheet, zoneOf } from './sheet-of.ts';

export type CaseView = 'both' | 'side' | 'back';
export type CaseDrawingData = {
  sheet: Sheet;
  pinned: Pinned[];
  labels: Box[];
  /** By finding id; empty when the drawing has no frame. */
  zones: Map<string, string>;
  /** The one thing to see. */
  label: string;
  /** Everything in the drawing, in reading order. */
  words: string[];
};

export type CaseDrawingOptions = {
  width: number;
  views: CaseView;
  largest: Largest;
  /** Findings with a note, in the order of their numbers. */
  notes: readonly Note[];
  /** The class being chosen. */
  focus?: PartClass | undefined;
};

export function drawCase(
  machine: Machine,
  { width, views, largest, notes, focus }: CaseDrawingOptions,
): CaseDrawingData {
  const side = caseSide(machine, focus);
  const back = caseBack(machine, focus);
  const shown: View[] = views === 'both' ? [side, back] : views === 'side' ? [side] : [back];
  const sheet = layOut(shown, width, largest);
  const byId = new Map(machine.report.findings.map((finding) => [finding.id, finding]));
  const pinned = pin(sheet, notes, (id) => {
    const finding = byId.get(id);
    return finding !== undefined && isSeenFromBack(finding);
  });
  const zones = new Map<string, string>();
  for (const { note, at } of pinned) {
    const zone = zoneOf(sheet, at);
    if (zone) zones.set(note.finding, zone);
  }
  const noted = notes.map(({ n, finding, says }) => {
    const zone = zones.get(finding);
    return `Note ${n}${zone ? `, zone ${zone}` : ''}: ${says}`;
  });
  const words = [...shown.flatMap((view) => [`${view.name}.`, ...view.words]), ...noted, conventions];
  const isEmpty = machine.units.length === 0;
  return {
    sheet,
    pinned,
    labels: labelBoxes(sheet),
    zones,
    label: isEmpty
      ? 'An empty case, dotted: nothing is chosen yet.'
      : `${shown.map(({ name }) => name).join('; ')}, to scale. ${notes[0]?.says ?? (machine.isJudged ? 'Nothing drawn here stands in the way of another part.' : 'The parts of the list at their places.')}`,
    words,
  };
}
