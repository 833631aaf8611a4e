import type { PartOf } from '../../parts/part.ts';
import type { Attr, Lowered, Need, Place, Resource, Unit, Value } from '../model.ts';
import { namer } from './names.ts';

type Adapter = PartOf<'adapter'>;
type End = NonNullable<Adapter['ins']>[number];
type Out = NonNullable<Adapter['outs']>[number];

/** Attributes that are compared by size: a value that is no number says nothing of them. */
export const measures: ReadonlySet<Attr> = new Set([
  'lengthMm',
  'heightMm',
  'depthMm',
  'stackMm',
  'memoryMm',
  'memoryHeightMm',
  'reachMm',
  'cardRoomMm',
  'sizeGb',
  'lanes',
  'lengthLanes',
  'drawsW',
  'senseW',
]);
/** Beyond its limit a link is slower, not refused. */
const lossy: ReadonlySet<string> = new Set(['busMBps', 'pictureMbps']);

/**
 * Whatever stands between two parts: what it must be joined to may stay in its bag, and what it offers is there once
 * those ends are joined. The attributes of its ends are those of the kind, as other classes are lowered to them; one
 * that the file leaves out is not recorded.
 */
export function lower({ id, part }: Unit<Adapter>): Lowered {
  const name = namer(id);
  const ends = new Map<string, string>();
  const needs = (part.ins ?? []).map(({ id: end, kind, attrs, draws, carries }): Need => {
    const needId = name(end);
    if (!ends.has(end)) ends.set(end, needId);
    return {
      id: needId,
      part: id,
      kind,
      left: 'spare',
      attrs: attrsOf(attrs),
      ...(draws ? { draws } : {}),
      ...(carries ? { carries } : {}),
      ...(kind === 'picture' ? pictureEnd(attrs, draws, carries) : {}),
    };
  });
  const places: Place[] = [];
  const resources: Resource[] = [];
  // Ends that nobody recorded cannot be joined, so nothing can be said to hang on them.
  const outs = part.ins ? (part.outs ?? []) : [];
  const ways = new Map<string, { id: string; kind: Out['kind']; used: Set<string> }>();
  for (const [rank, { id: end, way, kind, attrs, after, limits = {} }] of outs.entries()) {
    const known = ways.get(end);
    const isAnotherWay =
      known !== undefined && way !== undefined && known.kind === kind && known.used.size > 0 && !known.used.has(way);
    const spot = isAnotherWay ? known : { id: name(end), kind, used: new Set<string>() };
    if (!known) ways.set(end, spot);
    if (way !== undefined) spot.used.add(way);
    const meters: Record<string, string[]> = {};
    for (const [quantity, capacity] of Object.entries(limits)) {
      // What passes goes on under the last piece of the name, so that the next place meters the same quantity.
      const limit = `${spot.id}/${way === undefined ? '' : `${way}/`}${quantity}`;
      meters[quantity] = [limit];
      resources.push({ id: limit, capacity, ...(lossy.has(quantity) ? { over: 'lost' as const } : {}) });
    }
    places.push({
      id: spot.id,
      ...(way === undefined ? {} : { way }),
      part: id,
      kind,
      rank,
      attrs: attrsOf(attrs),
      ...(Object.keys(meters).length > 0 ? { meters } : {}),
      after: after ? after.map((one) => ends.get(one) ?? `${id}/${one}`) : needs.map((need) => need.id),
    });
  }
  return { needs, places, resources, unrecorded: [] };
}

/** Whatever shows the picture in the end takes a head of the machine; a passive adapter looks for a dual-mode socket. */
const pictureEnd = (attrs: End['attrs'], draws: End['draws'], carries: End['carries']): Partial<Need> => ({
  carries: [...new Set([...(carries ?? []), 'heads'])],
  ...(attrs['dualMode'] === true ? { draws: { ...draws, dualMode: 1 } } : {}),
});

const attrsOf = (attrs: Readonly<Record<string, Value>>): Record<Attr, Value> =>
  Object.fromEntries(
    Object.entries(attrs).map(([attr, value]) => [
      attr,
      measures.has(attr) && value !== null && typeof value !== 'number' ? undefined : value,
    ]),
  );
