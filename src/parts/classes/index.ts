/** The classes of part. Their order, as a student meets them, is that of `partClasses`. */
import { z } from 'zod';
import { adapter } from './adapter.ts';
import { bankModule } from './bank-module.ts';
import { busCard } from './bus-card.ts';
import { chassis } from './chassis.ts';
import { cooler } from './cooler.ts';
import { coprocessor } from './coprocessor.ts';
import { diskettePart } from './diskette.ts';
import { expansionCard } from './expansion-card.ts';
import { fan } from './fan.ts';
import { fixedDisk } from './fixed-disk.ts';
import { floppyDrive } from './floppy-drive.ts';
import { graphicsCard } from './graphics-card.ts';
import { keyboard } from './keyboard.ts';
import { memoryModule } from './memory-module.ts';
import { monitor } from './monitor.ts';
import { monitorArm } from './monitor-arm.ts';
import { motherboard } from './motherboard.ts';
import { operatingSystem } from './operating-system.ts';
import { pointer } from './pointer.ts';
import { powerStrip } from './power-strip.ts';
import { powerSupply } from './power-supply.ts';
import { processor } from './processor.ts';
import { processorBoard } from './processor-board.ts';
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
  'expansion-card': expansionCard,
  'bus-card': busCard,
  'bank-module': bankModule,
  'floppy-drive': floppyDrive,
  'fixed-disk': fixedDisk,
  diskette: diskettePart,
  coprocessor,
  'processor-board': processorBoard,
  keyboard,
  pointer,
  'operating-system': operatingSystem,
  'monitor-arm': monitorArm,
  'power-strip': powerStrip,
  adapter,
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
  expansionCard,
  busCard,
  bankModule,
  floppyDrive,
  fixedDisk,
  diskettePart,
  coprocessor,
  processorBoard,
  keyboard,
  pointer,
  operatingSystem,
  monitorArm,
  powerStrip,
  adapter,
]);
