/** Which diskette drive of a list reads which diskettes, and whether its controller reads as fast as that needs. */
import type { BusCard } from '../../parts/classes/bus-card.ts';
import type { FloppyDrive } from '../../parts/classes/floppy-drive.ts';
import { type DisketteFormat, disketteUse } from '../../standards/floppies.ts';
import type { Joint, UnitId } from '../model.ts';
import { nameOf } from '../needs/names.ts';
import { rootOf } from './ends.ts';

type Named = { readonly unit: UnitId; readonly name: string };
type Drive = Named & { readonly format: FloppyDrive['format'] };
type Controller = Named & { readonly dataSockets: BusCard['dataSockets'] };

export type Reading = {
  /** A drive that reads them, on a controller that is fast enough or on none. */
  reader: Drive | undefined;
  /** Without a reader: a drive that would read them on a faster controller, and both rates in kilobits a second. */
  slow: { drive: Drive; controller: Controller; wants: number; reads: number } | undefined;
  /** Fields that are not recorded and could give them a reader, as `<unit>.<field>`. */
  open: string[];
};

/** A drive that is joined to no controller is taken by itself: what it lacks is told elsewhere. */
export function readingOf(
  disk: DisketteFormat,
  drives: readonly Drive[],
  controllers: readonly Controller[],
  joints: readonly Joint[],
): Reading {
  const reading: Reading = { reader: undefined, slow: undefined, open: [] };
  for (const drive of drives) {
    if (drive.format === undefined) {
      reading.open.push(`${drive.unit}.format`);
      continue;
    }
    const { reads, kilobits: wants } = disketteUse(drive.format, disk);
    if (!reads || wants === undefined) continue;
    const at = controllerAt(drive, controllers, joints);
    if (at === undefined || (at.kilobits ?? 0) >= wants) reading.reader ??= drive;
    else if (at.kilobits === undefined) reading.open.push(`${at.controller.unit}.dataSockets`);
    else reading.slow ??= { drive, controller: at.controller, wants, reads: at.kilobits };
  }
  return reading;
}

const places = ['end', 'middle', 'socket'] as const;

function controllerAt({ unit }: Drive, controllers: readonly Controller[], joints: readonly Joint[]) {
  const joint = joints.find(({ need }) => need === `${unit}/data`);
  if (joint === undefined) return undefined;
  const { place } = rootOf(joint, joints);
  return controllers
    .flatMap((controller) => (controller.dataSockets ?? []).map(({ id, kilobits }) => ({ controller, id, kilobits })))
    .find(({ controller, id }) => places.some((at) => place === nameOf(controller.unit, 'data', `${id}-${at}`)));
}
