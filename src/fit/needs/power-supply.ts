import type { PartOf } from '../../parts/part.ts';
import { leastEfficiency } from '../../standards/efficiency.ts';
import type { KindName, Lowered, Need, Place, Resource, Unit } from '../model.ts';
import { deciwatts } from './amounts.ts';
import { mainsLead, mainsPlugs } from './mains.ts';
import { namer } from './names.ts';

type Lead = NonNullable<PartOf<'power-supply'>['leads']>[number];
type Plug = Lead['plugs'][number];

/** Which kind of need a plug serves. */
export const kindOfPlug: Record<Plug, KindName> = {
  'atx-24': 'board-power',
  'atx-20': 'board-power',
  p8: 'board-power',
  p9: 'board-power',
  'eps-8': 'processor-power',
  'eps-4': 'processor-power',
  'eps-4-4': 'processor-power',
  'pcie-6': 'card-power',
  'pcie-8': 'card-power',
  '12v-2x6': 'card-power',
  'sata-power': 'drive-power',
  'peripheral-4': 'drive-power',
  'floppy-4': 'drive-power',
};
export const powerKinds: readonly KindName[] = [...new Set(Object.values(kindOfPlug))];

/**
 * The 20-pin plug and the first 20 contacts of the 24-pin one are the same: either goes into either socket. A plug of
 * twice four pins serves one socket at a time: its second half hangs beside a socket of four. Card plugs of eight are of
 * six and two, by common practice, and the two hang beside a socket of six.
 */
const sockets: { readonly [P in Plug]?: readonly Plug[] } = {
  'atx-24': ['atx-24', 'atx-20'],
  'atx-20': ['atx-20', 'atx-24'],
  'eps-4-4': ['eps-4-4', 'eps-8', 'eps-4'],
  'pcie-8': ['pcie-8', 'pcie-6'],
};
const goesInto = (plug: Plug): Plug | readonly Plug[] => sockets[plug] ?? plug;

/** The first plug of every lead ranks before the second of any, so that loads are spread over leads. */
export function lower({ id, part }: Unit<PartOf<'power-supply'>>): Lowered {
  const { shape, lengthMm, leads } = part;
  const mount: Need = {
    id: `${id}/mount`,
    part: id,
    kind: 'supply-mount',
    left: 'blocker',
    attrs: { shape, lengthMm },
    stands: true,
  };
  const name = namer(id);
  const places: Place[] = [];
  const resources: Resource[] = [];
  for (const [row, lead] of (leads ?? []).entries()) {
    const leadId = name('lead', lead.id);
    const watts = lead.carriesW === undefined ? undefined : `${leadId}-deciwatts`;
    if (watts && lead.carriesW !== undefined) resources.push({ id: watts, capacity: deciwatts(lead.carriesW) });
    for (const [index, plug] of lead.plugs.entries()) {
      const kind = kindOfPlug[plug];
      places.push({
        id: `${leadId}-plug-${index + 1}`,
        part: id,
        kind,
        rank: index * (leads?.length ?? 0) + row,
        attrs: {
          plug: goesInto(plug),
          ...(kind === 'card-power' ? { senseW: plug === '12v-2x6' ? lead.senseW : null } : {}),
        },
        ...(watts ? { meters: { leadDeciwatts: [watts] } } : {}),
      });
    }
  }
  const mains = mainsLead(id, [mainsPlugs.wall], mostFromWall(part.ratedW));
  if (part.hasMonitorOutlet) {
    places.push({
      id: `${id}/monitor-outlet`,
      part: id,
      kind: 'mains',
      rank: 0,
      attrs: { plug: mainsPlugs.outlet },
      after: [mains.id],
    });
  }
  return {
    needs: [mount, mains],
    places,
    resources,
    unrecorded: leads ? [] : powerKinds.map((kind) => ({ kind, part: id, field: `${id}.leads`, of: 'places' })),
  };
}

/** All that it is rated for, and what is lost on the way. */
const mostFromWall = (ratedW: number | undefined): number | undefined =>
  ratedW === undefined ? undefined : Math.ceil((deciwatts(ratedW) * 1000) / leastEfficiency.permille);

/** What the places of a lead begin with: `power-supply-1/lead-card-1`, then `-plug-2`. */
export const leadPlace = (id: string, lead: string): string => namer(id)('lead', lead);
