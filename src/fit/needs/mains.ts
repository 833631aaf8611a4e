/** Mains leads and what they go into. They are judged only when the list holds a strip of sockets. */
import { kept } from '../../units/kept.ts';
import type { Lowered, Need, UnitId } from '../model.ts';
import { drawing } from './amounts.ts';

/** The socket in a wall or strip, and the outlet at the back of an older supply. */
export const mainsPlugs = { wall: 'wall-socket', outlet: 'supply-outlet' } as const;

/** A supply's own outlet comes before the sockets of a strip. */
export const outletFirst = 1;

/** `wallDeciwatts` is the most that it may draw from the wall; what is plugged into it is drawn through it. */
export const mainsLead = (id: UnitId, plug: string[], wallDeciwatts: number | undefined): Need => ({
  id: `${id}/mains`,
  part: id,
  kind: 'mains',
  left: 'blocker',
  attrs: { plug, wallDeciwatts },
  ...drawing('wallDeciwatts', wallDeciwatts),
  carries: ['wallDeciwatts'],
});

/** The same part with nothing said of mains sockets. */
export const withoutMains = kept((one: Lowered): Lowered => {
  const isOther = ({ kind }: { kind: string }) => kind !== 'mains';
  return one.needs.every(isOther)
    ? one
    : { ...one, needs: one.needs.filter(isOther), places: one.places.filter(isOther) };
});
