/** Buses that slots and cards are built for. */
import type { BusCard } from '../../parts/classes/bus-card.ts';
import { type buses, busPeakKBps } from '../../standards/buses.ts';

type Bus = NonNullable<BusCard['buses']>[number];

/** A 16-bit card that also works in a short slot is a card for 8-bit slots as well. */
export const busNames = (listed: readonly Bus[]): string[] => [
  ...new Set(listed.map((bus) => (bus === 'isa-16-short' ? 'isa-8' : bus))),
];

/** AGP as slow as it comes: how fast one is, is not recorded. */
const tables: Record<Bus, keyof typeof buses> = {
  'isa-8': 'isa-8',
  'isa-16': 'isa-16',
  'isa-16-short': 'isa-16',
  eisa: 'eisa',
  vlb: 'vlb',
  'pci-5v': 'pci-32',
  'pci-3v': 'pci-32',
  agp: 'agp-1x',
};

/** Megabytes a second of the fastest of them, whole ones. */
export const busMBps = (listed: readonly Bus[]): number =>
  Math.max(0, ...listed.map((bus) => Math.floor(busPeakKBps(tables[bus]) / 1000)));

/** Slots of these have every line of the bus; the short ISA slot has not. */
export const isShort = (listed: readonly Bus[]): boolean =>
  listed.every((bus) => bus === 'isa-8' || bus === 'isa-16-short');
