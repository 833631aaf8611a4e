import type { PartOf } from '../../parts/part.ts';
import type { Lowered, Need, Unit } from '../model.ts';
import { panelUnits } from './amounts.ts';
import { lightLead } from './lights.ts';
import { namer } from './names.ts';

type Cooler = PartOf<'cooler'>;
type Radiator = NonNullable<Cooler['radiator']>;

/** `boxed`: the mountings for which the bracket is in the cooler's box. */
export function lower({ id, part }: Unit<Cooler>): Lowered {
  const { mountings, bracketsApart = [], radiator, light } = part;
  const name = namer(id);
  const mount: Need = {
    id: name('mount'),
    part: id,
    kind: 'cooler-mount',
    left: 'blocker',
    attrs: { mountings: mountings && [...new Set([...mountings, ...bracketsApart])], boxed: boxedOf(part) },
  };
  return {
    needs: [
      mount,
      ...(radiator ? [radiatorNeed(name('radiator'), id, radiator)] : []),
      ...fanLeads(id, part, name),
      ...(light ? [lightLead(name('light'), id, light)] : []),
    ],
    places: [{ id: `${id}/cooling`, part: id, kind: 'cooling', rank: 0, attrs: {}, after: [mount.id] }],
    resources: [],
    unrecorded: part.fan || part.isPassive ? [] : [{ kind: 'fan-header', part: id, field: `${id}.fan`, of: 'needs' }],
  };
}

const boxedOf = ({ mountings, bracketsApart = [] }: Cooler): string[] | undefined =>
  mountings?.filter((mounting) => !bracketsApart.includes(mounting));

/** Along a panel it is as long as its fans, and inwards as thick as its core and they are together. */
const radiatorNeed = (id: string, part: string, radiator: Radiator): Need => ({
  id,
  part,
  kind: 'radiator-mount',
  left: 'blocker',
  attrs: { lengthMm: radiator.lengthMm, stackMm: radiator.thicknessMm + radiator.fanThicknessMm },
  draws: { panelUnits: Math.ceil(radiator.lengthMm / radiator.fanSizeMm) * panelUnits(radiator.fanSizeMm) },
});

/** A board stops at start-up when the first fan of the cooler does not turn; a radiator has more of them. */
function fanLeads(part: string, { fan, radiator }: Cooler, name: ReturnType<typeof namer>): Need[] {
  if (!fan) return [];
  const { pins, milliamps } = fan;
  return Array.from(
    { length: radiator?.fans ?? 1 },
    (_, n): Need => ({
      id: name('fan'),
      part,
      kind: 'fan-header',
      left: n === 0 ? 'blocker' : 'limit',
      attrs: { pins },
      draws: { milliamps, ...(n === 0 ? { ofCooler: 1 } : {}) },
    }),
  );
}
