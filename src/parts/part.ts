/**
 * The types of a part, without zod: what the core, the components and the register import.
 * A schema is only loaded where files are read.
 */
import type { z } from 'zod';
import type { part } from './classes/index.ts';

export type Part = z.infer<typeof part>;
export type PartClass = Part['class'];
export type PartId = string;
export type PartOf<C extends PartClass> = Extract<Part, { class: C }>;

/** The classes in the order a student meets them; drawers, lists and exports follow it. */
export const partClasses: readonly PartClass[] = [
  'chassis',
  'motherboard',
  'processor',
  'cooler',
  'memory-module',
  'graphics-card',
  'storage-drive',
  'power-supply',
  'fan',
  'monitor',
  'bank-module',
  'coprocessor',
  'processor-board',
  'bus-card',
  'expansion-card',
  'floppy-drive',
  'fixed-disk',
  'adapter',
  'keyboard',
  'pointer',
  'monitor-arm',
  'power-strip',
  'operating-system',
  'diskette',
];

/** The classes without which nothing can be built; the rest depends on the purpose. */
export const neededClasses: readonly PartClass[] = [
  'chassis',
  'motherboard',
  'processor',
  'cooler',
  'memory-module',
  'storage-drive',
  'power-supply',
];

/** What people read for a class: "case", where code says `chassis`. */
export const classNames: Record<PartClass, { one: string; many: string; short: string }> = {
  chassis: { one: 'case', many: 'cases', short: 'Case' },
  motherboard: { one: 'motherboard', many: 'motherboards', short: 'Board' },
  processor: { one: 'processor', many: 'processors', short: 'Processor' },
  cooler: { one: 'cooler', many: 'coolers', short: 'Cooler' },
  'memory-module': { one: 'memory module', many: 'memory modules', short: 'Memory' },
  'graphics-card': { one: 'graphics card', many: 'graphics cards', short: 'Graphics' },
  'storage-drive': { one: 'storage drive', many: 'storage drives', short: 'Drive' },
  'power-supply': { one: 'power supply', many: 'power supplies', short: 'Supply' },
  fan: { one: 'fan', many: 'fans', short: 'Fans' },
  monitor: { one: 'monitor', many: 'monitors', short: 'Monitor' },
  'bank-module': { one: 'memory module for a bank', many: 'memory modules for banks', short: 'Bank memory' },
  coprocessor: { one: 'coprocessor', many: 'coprocessors', short: 'Coprocessor' },
  'processor-board': { one: 'processor board', many: 'processor boards', short: 'Plug-in' },
  'bus-card': { one: 'bus card', many: 'bus cards', short: 'Bus card' },
  'expansion-card': { one: 'expansion card', many: 'expansion cards', short: 'Card' },
  'floppy-drive': { one: 'diskette drive', many: 'diskette drives', short: 'Diskettes' },
  'fixed-disk': { one: 'fixed disk', many: 'fixed disks', short: 'Fixed disk' },
  adapter: { one: 'cable or adapter', many: 'cables and adapters', short: 'Cable' },
  keyboard: { one: 'keyboard', many: 'keyboards', short: 'Keyboard' },
  pointer: { one: 'mouse', many: 'mice', short: 'Mouse' },
  'monitor-arm': { one: 'monitor arm', many: 'monitor arms', short: 'Arm' },
  'power-strip': { one: 'mains strip', many: 'mains strips', short: 'Mains' },
  'operating-system': { one: 'operating system', many: 'operating systems', short: 'System' },
  diskette: { one: 'box of diskettes', many: 'boxes of diskettes', short: 'Diskette' },
};

/** One line of a parts list: a part and how many of it, one or more. */
export type Listed = { part: PartId; quantity: number };
export type PartsList = readonly Listed[];
