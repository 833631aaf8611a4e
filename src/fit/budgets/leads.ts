/** What each lead of the supply carries, against what its maker lets it carry. In deciwatts. */
import type { NeedId, Place, ResourceId } from '../model.ts';
import type { Budget } from '../report.ts';
import type { Bench, Rung } from './bench.ts';

const quantity = 'leadDeciwatts';

/** One for each lead that something hangs on and whose limit is recorded. */
export function leadBudgets(bench: Bench): Budget[] {
  const rungs = [...bench.rungsOf('board-power'), ...bench.rungsOf('processor-power')];
  rungs.push(...bench.rungsOf('card-power'), ...bench.rungsOf('drive-power'));
  const onLead = new Map<ResourceId, Rung[]>();
  for (const rung of rungs) {
    const lead = rung.place.meters?.[quantity]?.[0];
    if (lead === undefined || bench.unit(rung.place.part)?.part.class !== 'power-supply') continue;
    onLead.set(lead, [...(onLead.get(lead) ?? []), rung]);
  }
  const ids = [...onLead.keys()].sort((a, b) => (a < b ? -1 : 1));
  return ids.flatMap((lead) => {
    const served = onLead.get(lead) ?? [];
    const working = served.flatMap(({ need, place }) => {
      const amount = through(bench, rungs, need.id);
      return amount === 0 ? [] : [{ unit: need.part, amount, field: plugOf(place) }];
    });
    const limit = bench.resources.get(lead);
    const supply = served[0]?.place.part;
    return {
      name: 'lead',
      of: lead.replace(/-deciwatts$/, ''),
      unit: 'deciwatt',
      used: working.reduce((sum, { amount }) => sum + amount, 0),
      ...(limit === undefined ? {} : { limit }),
      about: supply === undefined ? [] : [supply],
      unknown: unknownOn(served),
      working,
      formula:
        'What each plug on the lead may be asked for, added up: a graphics plug for what it is rated, a drive for the most that it draws.',
      source: 'maker-data-sheet',
    } satisfies Budget;
  });
}

/** Of several that it goes into, the plug itself is the first. */
function plugOf({ attrs }: Place): string {
  const plug = attrs['plug'];
  return String(Array.isArray(plug) ? plug[0] : plug);
}

/** What a need takes itself, and what comes through it from beyond, in equal shares, rounded up, of all ways it may come. */
function through(bench: Bench, rungs: readonly Rung[], need: NeedId): number {
  const own = bench.rungOf(need)?.need;
  if (!own) return 0;
  let sum = own.draws?.[quantity] ?? 0;
  if (!own.carries?.includes(quantity)) return sum;
  for (const beyond of rungs) {
    if (!beyond.place.after?.includes(need)) continue;
    const ways = beyond.place.after.filter((id) => bench.rungOf(id)?.need.carries?.includes(quantity));
    sum += Math.ceil(through(bench, rungs, beyond.need.id) / ways.length);
  }
  return sum;
}

/** A part whose draw from its lead is not recorded. Boards and processors are not reckoned by the lead. */
const unknownOn = (served: readonly Rung[]): string[] =>
  served.flatMap(({ need }) =>
    need.draws?.[quantity] === undefined &&
    !need.carries?.includes(quantity) &&
    (need.kind === 'card-power' || need.kind === 'drive-power')
      ? [need.part]
      : [],
  );
