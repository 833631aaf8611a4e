/** From units to one problem: what they need, what they offer, what they share. */
import { type Part, type PartClass, type PartOf, partClasses } from '../../parts/part.ts';
import { byId } from '../../units/ids.ts';
import type { Lowered, Unit } from '../model.ts';
import type { JudgeInput } from '../rule.ts';
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
import { lower as storageDrive } from './storage-drive.ts';

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

/** What one unit needs and offers, whatever else is on the list. */
export const lower = (unit: Unit): Lowered =>
  // The class picks the function for exactly that class; the type of the table does not say so of a union.
  (byClass[unit.part.class] as (unit: Unit<Part>) => Lowered)(unit);

/** The things on the bench, by class as a student meets them, then by part id; `n` counts within the class. */
export function unitsOf(input: JudgeInput): Unit[] {
  const order = new Map(partClasses.map((partClass, index) => [partClass, index]));
  const sorted = [...input].sort(
    (a, b) => (order.get(a.part.class) ?? 0) - (order.get(b.part.class) ?? 0) || byId(a.part.id, b.part.id),
  );
  const counts = new Map<PartClass, number>();
  return sorted.flatMap(({ part, quantity }) =>
    Array.from({ length: quantity }, (): Unit => {
      const n = (counts.get(part.class) ?? 0) + 1;
      counts.set(part.class, n);
      return { id: `${part.class}-${n}`, part };
    }),
  );
}

/** All units together. A board's own picture sockets are there only when a processor draws pictures. */
export function lowerAll(units: readonly Unit[]): Lowered {
  const all: Lowered = { needs: [], places: [], resources: [], unrecorded: [] };
  const processors = units.filter(isOf('processor'));
  const draws = processors.some(({ part }) => part.hasGraphics);
  const unknown = draws ? [] : processors.filter(({ part }) => part.hasGraphics === undefined);
  for (const unit of units) {
    const { needs, places, resources, unrecorded } = lower(unit);
    const isDark = isOf('motherboard')(unit) && !draws;
    all.needs.push(...needs);
    all.places.push(...(isDark ? places.filter(({ kind }) => kind !== 'picture') : places));
    all.resources.push(...resources);
    all.unrecorded.push(...(isDark ? unrecorded.filter(({ kind }) => kind !== 'picture') : unrecorded));
  }
  if (units.some((unit) => isOf('motherboard')(unit) && unit.part.pictureSockets?.length !== 0)) {
    const field = ({ id }: Unit) => ({ kind: 'picture', part: id, field: `${id}.hasGraphics`, of: 'places' }) as const;
    all.unrecorded.push(...unknown.map(field));
  }
  return all;
}

export const isOf =
  <C extends PartClass>(partClass: C) =>
  (unit: Unit): unit is Unit<PartOf<C>> =>
    unit.part.class === partClass;
