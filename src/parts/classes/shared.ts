/** What boards and cards of several classes record in the same way. */
import { z } from 'zod';
import { busLine, count, dataPlug, diskEncoding, inputPlug, picturePlug, signal, slug } from '../terms.ts';

/** Sockets for a keyboard or a mouse, and which of them each takes. */
export const inputSockets = z.array(
  z.strictObject({ id: slug, plug: inputPlug, for: z.array(z.enum(['keyboard', 'pointer'])).min(1) }),
);

/** Sockets that are filled together: so many modules of one sort, or none. */
export const memoryBanks = z.array(
  z.strictObject({
    id: slug,
    slots: z.union([z.literal(1), z.literal(2), z.literal(4), z.literal(8)]),
    pins: z.enum(['30', '72', 'sipp-30']),
    /** The largest module, in kilobytes. */
    largestKb: count.optional(),
    /** The slowest module, in nanoseconds. */
    slowestNs: count.optional(),
  }),
);

/**
 * Sockets that data leaves a board or card by. A ribbon comes with them that serves two drives, of whatever kind goes
 * on it; `devices` says when it serves only one.
 */
export const dataSockets = z.array(
  z.strictObject({
    id: slug,
    plug: dataPlug,
    devices: count.optional(),
    /** Its connectors, when it has not every kind at every place. Empty when no ribbon comes with the socket. */
    ribbon: z.array(z.strictObject({ at: z.enum(['end', 'middle']), plugs: z.array(dataPlug).min(1) })).optional(),
    /** The fastest that it reads or writes, in kilobits a second: floppy controllers differ in this. */
    kilobits: count.optional(),
    /** How it writes disks on the older pair of ribbons: 17 sectors a track, or 26. */
    encodings: z.array(diskEncoding).min(1).optional(),
  }),
);

/** Lines a second and pictures a second of every picture that a socket can send. */
export const pictureModes = z.array(
  z.strictObject({
    id: slug,
    horizontalKhz: z.number().positive().max(300),
    verticalHz: z.number().positive().max(400),
  }),
);

/** Picture sockets of a card of about 1990, each with the pictures it sends. */
export const pictureOutputs = z.array(
  z.strictObject({
    id: slug,
    plug: picturePlug,
    signal: signal.optional(),
    modes: pictureModes.optional(),
  }),
);

/** A block of pins on a card, and what each position of its jumper takes of the bus. The first is how it is sold. */
export const settings = z.array(
  z.strictObject({
    id: slug,
    /** What the block sets, as the manual says it. */
    says: z.string().min(1),
    positions: z.array(z.strictObject({ id: slug, lines: z.array(busLine) })).min(1),
  }),
);
