/** From units to one problem: what they need, what they offer, what they share. */
import type { Part, PartClass, PartOf } from '../../parts/part.ts';
import { kept } from '../../units/kept.ts';
import type { KindName, Lowered, Unit } from '../model.ts';
import { lower as adapter } from './adapter.ts';
import { lower as bankModule } from './bank-module.ts';
import { lower as busCard } from './bus-card.ts';
import { lower as chassis } from './chassis.ts';
import { lower as cooler } from './cooler.ts';
import { lower as coprocessor } from './coprocessor.ts';
import { lower as diskette } from './diskette.ts';
import { lower as expansionCard } from './expansion-card.ts';
import { lower as fan } from './fan.ts';
import { lower as fixedDisk } from './fixed-disk.ts';
import { lower as floppyDrive } from './floppy-drive.ts';
import { lower as graphicsCard } from './graphics-card.ts';
import { lower as keyboard } from './keyboard.ts';
import { asFastAs, fastestCard } from './links.ts';
import { withoutMains } from './mains.ts';
import { lower as memoryModule } from './memory-module.ts';
import { lower as monitor } from './monitor.ts';
import { lower as monitorArm } from './monitor-arm.ts';
import { lower as motherboard } from './motherboard.ts';
import { lower as operatingSystem } from './operating-system.ts';
import { lower as pointer } from './pointer.ts';
import { lower as powerStrip } from './power-strip.ts';
import { lower as powerSupply } from './power-supply.ts';
import { lower as processor } from './processor.ts';
import { lower as processorBoard } from './processor-board.ts';
import { amongOthers } from './radiators.ts';
import { lower as storageDrive } from './storage-drive.ts';
import { isOf } from './units.ts';

export { isOf, unitsOf } from './units.ts';

const byClass: { [C in PartClass]: (unit: Unit<PartOf<C>>) => Lowered } = {
  chassis,
  motherboard,
  processor,
  cooler,
  'memory-module': memoryModule,
  'graphics-card': graphicsCard,
  'storage-drive': storageDrive,
  'power-supply': powerSupply,
  fan,
  monitor,
  'expansion-card': expansionCard,
  'bus-card': busCard,
  'bank-module': bankModule,
  'floppy-drive': floppyDrive,
  'fixed-disk': fixedDisk,
  diskette,
  coprocessor,
  'processor-board': processorBoard,
  keyboard,
  pointer,
  adapter,
  'operating-system': operatingSystem,
  'monitor-arm': monitorArm,
  'power-strip': powerStrip,
};

/** What one unit needs and offers, whatever else is on the list. The same unit gets the same needs, places and resources. */
export const lower = kept(
  (unit: Unit): Lowered =>
    // The class picks the function for exactly that class; the type of the table does not say so of a union.
    (byClass[unit.part.class] as (unit: Unit<Part>) => Lowered)(unit),
);

/** All units together. */
export function lowerAll(units: readonly Unit[]): Lowered {
  return putTogether(lowerEach(units));
}

export function putTogether(each: readonly Lowered[]): Lowered {
  const all: Lowered = { needs: [], places: [], resources: [], unrecorded: [] };
  for (const { needs, places, resources, unrecorded } of each) {
    all.needs.push(...needs);
    all.places.push(...places);
    all.resources.push(...resources);
    all.unrecorded.push(...unrecorded);
  }
  return all;
}

/**
 * One by one, in order, and after them what is open for all. A board's own picture sockets are there only when a
 * processor or a chip of the board draws pictures; its slots are no faster than the cards; leads for the mains are counted
 * only where the list holds a strip of sockets.
 */
export function lowerEach(units: readonly Unit[]): Lowered[] {
  const processors = units.filter(isOf('processor'));
  const draws = processors.some(({ part }) => part.hasGraphics);
  const hasStrip = units.some(isOf('power-strip'));
  const fastest = fastestCard(units);
  const each = units.map((unit) => {
    if (!hasStrip && hasMains.has(unit.part.class)) return withoutMains(lower(unit));
    if (unit.part.class === 'cooler') return amongOthers(lower(unit), units);
    if (unit.part.class !== 'motherboard') return lower(unit);
    return asFastAs(draws || unit.part.hasPictureChip ? lower(unit) : darkened(lower(unit)), fastest);
  });
  const unknown = draws ? [] : processors.filter(({ part }) => part.hasGraphics === undefined);
  if (unknown.length === 0) return each;
  const mayShow = ({ part }: Unit<PartOf<'motherboard'>>) => part.pictureSockets?.length !== 0 && !part.hasPictureChip;
  if (units.filter(isOf('motherboard')).some(mayShow)) {
    const field = ({ id }: Unit) => ({ kind: 'picture', part: id, field: `${id}.hasGraphics`, of: 'places' }) as const;
    each.push({ needs: [], places: [], resources: [], unrecorded: unknown.map(field) });
  }
  return each;
}

/** Beside the parts that have needs or places of a kind: classes that decide, in `lowerEach`, what those are. */
export const readBeside: { readonly [K in KindName]?: readonly PartClass[] } = {
  picture: ['processor'],
  mains: ['power-strip'],
  'radiator-mount': ['memory-module', 'graphics-card', 'expansion-card'],
};

const hasMains: ReadonlySet<PartClass> = new Set(['power-supply', 'monitor']);

const darkened = kept(
  (board: Lowered): Lowered => ({
    ...board,
    places: board.places.filter(({ kind }) => kind !== 'picture'),
    unrecorded: board.unrecorded.filter(({ kind }) => kind !== 'picture'),
  }),
);
