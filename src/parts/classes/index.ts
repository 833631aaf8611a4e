/** The classes of part, in the order a student meets them. */
import { z } from 'zod';
import { chassis } from './chassis.ts';
import { cooler } from './cooler.ts';
import { fan } from './fan.ts';
import { graphicsCard } from './graphics-card.ts';
import { memoryModule } from './memory-module.ts';
import { monitor } from './monitor.ts';
import { motherboard } from './motherboard.ts';
import { powerSupply } from './power-supply.ts';
import { processor } from './processor.ts';
import { storageDrive } from './storage-drive.ts';

export const partSchemas = {
  processor,
  motherboard,
  cooler,
  'memory-module': memoryModule,
  'storage-drive': storageDrive,
  'graphics-card': graphicsCard,
  'power-supply': powerSupply,
  chassis,
  fan,
  monitor,
} as const;

export const part = z.discriminatedUnion('class', [
  processor,
  motherboard,
  cooler,
  memoryModule,
  storageDrive,
  graphicsCard,
  powerSupply,
  chassis,
  fan,
  monitor,
]);
