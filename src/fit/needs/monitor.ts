import type { PartOf } from '../../parts/part.ts';
import type { Lowered, Unit } from '../model.ts';
import { deciwatts, modeMbps } from './amounts.ts';
import { mainsLead, mainsPlugs } from './mains.ts';
import { pictureSocket, signalOf } from './picture-sockets.ts';
import { scanDraws } from './scans.ts';

/** A socket of the machine comes before the outlet of another monitor. */
const afterMachine = 200;

/**
 * One need that any of its sockets serves. What its own socket of a plug cannot carry is drawn as `beyond-<plug>`,
 * so that the search prefers the socket that shows the whole mode; so it does with rates that it does not follow.
 */
export function lower({ id, part }: Unit<PartOf<'monitor'>>): Lowered {
  const mbps = modeMbps(part);
  const draws: Record<string, number> = {
    heads: 1,
    ...(mbps === undefined ? {} : { pictureMbps: mbps }),
    ...scanDraws(part.horizontalKhz, part.verticalHz),
  };
  const best = new Map<string, number | undefined>();
  for (const { plug, megabits } of part.sockets ?? []) {
    const other = best.get(plug);
    if (!best.has(plug)) best.set(plug, megabits);
    else best.set(plug, megabits === undefined || other === undefined ? undefined : Math.max(other, megabits));
  }
  for (const [plug, megabits] of best) {
    if (mbps !== undefined && megabits !== undefined && mbps > megabits) draws[`beyond-${plug}`] = mbps - megabits;
  }
  const outlet = part.passesOn && pictureSocket(`${id}/passes-on`, id, afterMachine, part.passesOn);
  const signals = signalsOf(part.sockets);
  if (signals?.length === 1 && signals[0] === 'analog') draws['analog'] = 1;
  return {
    needs: [
      {
        id: `${id}/picture`,
        part: id,
        kind: 'picture',
        left: 'blocker',
        attrs: { plugs: part.sockets && [...best.keys()], pictureMbps: mbps, signals },
        draws,
        // What hangs on its outlet is drawn through its own cable, and takes a head of its own.
        ...(outlet ? { carries: ['pictureMbps', 'analog', 'heads'] } : {}),
      },
      mainsLead(
        id,
        part.fitsSupplyOutlet ? [mainsPlugs.wall, mainsPlugs.outlet] : [mainsPlugs.wall],
        part.sustainedW === undefined ? undefined : deciwatts(part.sustainedW),
      ),
    ],
    places: [
      ...(outlet ? [{ ...outlet.place, after: [`${id}/picture`] }] : []),
      {
        id: `${id}/back`,
        part: id,
        kind: 'monitor-mount',
        rank: 0,
        attrs: { armHolesMm: part.armHolesMm, grams: part.grams },
      },
    ],
    resources: outlet?.resources ?? [],
    unrecorded: [],
  };
}

/** The signals it takes; null when it has a socket whose plug alone settles that, undefined when its sockets are not recorded. */
function signalsOf(sockets: PartOf<'monitor'>['sockets']): string[] | null | undefined {
  if (!sockets) return undefined;
  const signals = sockets.map(signalOf).filter((signal) => signal !== null);
  return signals.length < sockets.length || sockets.length === 0 ? null : [...new Set(signals)];
}
