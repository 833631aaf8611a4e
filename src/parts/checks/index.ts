/** Every check of the catalogue's sense, by hand. */
import { adapterEnds } from './adapter-ends.ts';
import { boardMemory } from './board-memory.ts';
import { boardNames } from './board-names.ts';
import { boardOutline } from './board-outline.ts';
import { cardPower } from './card-power.ts';
import type { SenseCheck } from './check.ts';
import { diskSize } from './disk-size.ts';
import { driveBuild } from './drive-build.ts';
import { fanRoom } from './fan-room.ts';
import { offersPrice } from './offers-price.ts';
import { powerOrder } from './power-order.ts';
import { priceOutlier } from './price-outlier.ts';
import { supplyLeads } from './supply-leads.ts';
import { supplyRails } from './supply-rails.ts';

export const senseChecks: readonly SenseCheck[] = [
  adapterEnds,
  boardMemory,
  boardNames,
  boardOutline,
  cardPower,
  diskSize,
  driveBuild,
  fanRoom,
  offersPrice,
  powerOrder,
  priceOutlier,
  supplyLeads,
  supplyRails,
];
