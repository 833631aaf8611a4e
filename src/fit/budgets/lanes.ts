/** What each card and each M.2 drive could use of its link, against what the link carries as negotiated. In megabytes a second. */
import { sataGenerations } from '../../standards/drives.ts';
import { pcieSource } from '../../standards/pcie.ts';
import type { KindName, Value } from '../model.ts';
import { linkMBps } from '../needs/amounts.ts';
import type { Budget, WorkingLine } from '../report.ts';
import type { Bench, Rung } from './bench.ts';

const kinds: readonly KindName[] = ['expansion-slot', 'module-slot'];

/** In the order of the list. */
export function lanesBudgets(bench: Bench): Budget[] {
  const rungs = kinds.flatMap((kind) => bench.rungsOf(kind));
  return bench.units.flatMap(({ id }) =>
    rungs.filter(({ need }) => need.part === id).flatMap((rung) => lanesBudget(bench, rung) ?? []),
  );
}

function lanesBudget(bench: Bench, rung: Rung): Budget | undefined {
  const { need, place } = rung;
  const part = bench.unit(need.part)?.part;
  if (part?.class !== 'graphics-card' && part?.class !== 'expansion-card' && part?.class !== 'storage-drive')
    return undefined;
  const budget: Pick<Budget, 'name' | 'of' | 'unit' | 'about'> = {
    name: 'lanes',
    of: need.part,
    unit: 'megabyte-a-second',
    about: [need.part, place.part],
  };
  if (part.class === 'storage-drive' && part.link !== 'pcie') {
    const { megabytes, source } = sataGenerations[3];
    if (part.link === undefined) return undefined;
    return {
      ...budget,
      used: megabytes,
      limit: megabytes,
      unknown: [],
      working: [{ unit: need.part, amount: megabytes, field: 'link' }],
      formula: 'A drive that speaks SATA has the link of one SATA port, whatever lanes its slot has.',
      source,
    };
  }
  const wants = linkMBps(part.lanes, part.generation);
  const links = negotiate(bench, rung);
  const [own] = links;
  const carries = links.map(({ lanes, generation }) => linkMBps(lanes, generation));
  return {
    ...budget,
    used: wants ?? 0,
    ...(carries.every((each) => each !== undefined) ? { limit: Math.min(...carries) } : {}),
    unknown: wants === undefined ? [need.part] : [],
    working: [
      ...figures(need.part, part.lanes, part.generation, ''),
      ...figures(place.part, numberOf(place.attrs['lanes']), numberOf(place.attrs['generation']), 'slot.'),
      ...figures(undefined, own?.lanes, own?.generation, 'negotiated.'),
    ],
    formula:
      'The lesser number of lanes and the lesser generation of the two ends, which is what they settle on, and what so many lanes of that generation carry one way.',
    source: pcieSource,
  };
}

function figures(unit: string | undefined, lanes: number | undefined, generation: number | undefined, of: string) {
  const whose = unit === undefined ? {} : { unit };
  const lines: WorkingLine[] = [];
  if (lanes !== undefined) lines.push({ ...whose, amount: lanes, in: 'lane', field: `${of}lanes` });
  if (generation !== undefined)
    lines.push({ ...whose, amount: generation, in: 'generation', field: `${of}generation` });
  return lines;
}

type Link = { lanes: number | undefined; generation: number | undefined };

/** Undefined where it is not recorded. */
const numberOf = (value: Value): number | undefined => (typeof value === 'number' ? value : undefined);
/** The lesser of the two; null is no limit; undefined where the one that could be less is not recorded. */
const lesser = (a: number | undefined, b: Value): number | undefined =>
  b === null ? a : a === undefined || typeof b !== 'number' ? undefined : Math.min(a, b);

/**
 * The links from a part to the machine, its own first. What passes lanes on, such as a riser, is part of one link; a card
 * with slots of its own ends one and begins the next.
 */
function negotiate(bench: Bench, rung: Rung): Link[] {
  const links: Link[] = [];
  for (const { need, place } of bench.chain(rung, kinds)) {
    const passesOn = bench.unit(need.part)?.part.class === 'adapter';
    const last = links.at(-1);
    const from: Link =
      passesOn && last
        ? last
        : { lanes: numberOf(need.attrs['lanes']), generation: numberOf(need.attrs['generation']) };
    const link: Link = {
      lanes: lesser(from.lanes, place.attrs['lanes']),
      generation: lesser(from.generation, place.attrs['generation']),
    };
    if (passesOn && last) links[links.length - 1] = link;
    else links.push(link);
  }
  return links;
}
