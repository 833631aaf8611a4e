/** Sockets for memory that are filled together. */
import type { Motherboard } from '../../parts/classes/motherboard.ts';
import type { NeedId, Place, UnitId } from '../model.ts';
import type { namer } from './names.ts';

/** One place a bank: as many alike modules as it has sockets, or none. */
export const bankPlaces = (
  id: UnitId,
  banks: NonNullable<Motherboard['memoryBanks']>,
  name: ReturnType<typeof namer>,
  after: readonly NeedId[] = [],
): Place[] =>
  banks.map(
    ({ id: bank, slots, pins, largestKb, slowestNs }, rank): Place => ({
      id: name('bank', bank),
      part: id,
      kind: 'memory-bank',
      rank,
      fill: slots,
      attrs: { pins, largestKb, slowestNs, slots },
      ...(after.length > 0 ? { after: [...after] } : {}),
    }),
  );
