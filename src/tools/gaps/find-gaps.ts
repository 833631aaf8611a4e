/** Which measures that a catalogue does not record keep verdicts from being given, and how often. */
import type { Content } from '../../content-types.ts';
import { judge } from '../../fit/judge.ts';
import type { JudgeInput } from '../../fit/rule.ts';
import { resolveList } from '../../parts/list.ts';
import type { Part, PartClass, PartId } from '../../parts/part.ts';
import { byId } from '../../units/ids.ts';

/** `lists` is in how many of the judged lists the measure was missed; `field` without the unit, as in the part's file. */
export type Gap = { partClass: PartClass; field: string; lists: number; parts: PartId[] };

/**
 * Judges each part in the place of its like in each worked build: all parts of its class on the list are taken off
 * and one of it is put on, or it is added when there is none. Most often missed first.
 */
export function findGaps({ parts, workedBuilds }: Pick<Content, 'parts' | 'workedBuilds'>): {
  gaps: Gap[];
  judged: number;
} {
  const missed = new Map<string, Gap>();
  let judged = 0;
  for (const { list } of workedBuilds) {
    const { input } = resolveList(list, parts);
    for (const part of parts) {
      const { findings, units } = judge(withPart(input, part));
      judged += 1;
      const partOf = new Map(units.map((unit) => [unit.id, unit]));
      const fields = new Map<string, Gap>();
      for (const { verdict, missing = [] } of findings) {
        if (verdict !== 'cannot-tell') continue;
        for (const path of missing) {
          const dot = path.indexOf('.');
          const unit = partOf.get(path.slice(0, dot));
          // A build has gaps of its own; those are counted when its own part is the one tried.
          if (!unit || unit.part !== part.id) continue;
          const field = path.slice(dot + 1);
          fields.set(field, { partClass: unit.class, field, lists: 1, parts: [part.id] });
        }
      }
      for (const [field, gap] of fields) add(missed, `${gap.partClass}.${field}`, gap);
    }
  }
  const gaps = [...missed.values()].sort(
    (a, b) => b.lists - a.lists || byId(`${a.partClass}.${a.field}`, `${b.partClass}.${b.field}`),
  );
  return { gaps, judged };
}

function add(missed: Map<string, Gap>, key: string, gap: Gap): void {
  const known = missed.get(key);
  if (!known) missed.set(key, gap);
  else {
    known.lists += gap.lists;
    known.parts = [...new Set([...known.parts, ...gap.parts])].sort(byId);
  }
}

function withPart(input: JudgeInput, part: Part): JudgeInput {
  const ofClass = input.filter((one) => one.part.class === part.class);
  const quantity = ofClass.reduce((sum, one) => sum + one.quantity, 0) || 1;
  return [...input.filter((one) => one.part.class !== part.class), { part, quantity }];
}
