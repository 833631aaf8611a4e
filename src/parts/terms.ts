/**
 * Words of the trade that more than one class of part uses, as zod enums.
 * A value that is not listed here is a slip of the pen, so files name these and nothing else.
 */
import { z } from 'zod';

export const formFactor = z.enum(['atx', 'micro-atx', 'mini-itx']);
export const memoryGeneration = z.enum(['ddr4', 'ddr5']);
export const supplyShape = z.enum(['atx', 'sfx']);

/** Plugs on a supply's leads, and the sockets on boards, cards and drives they go into. */
export const powerPlug = z.enum([
  'atx-24',
  'eps-8',
  'eps-4',
  'pcie-6',
  'pcie-8',
  '12v-2x6',
  'sata-power',
  'peripheral-4',
]);

export const picturePlug = z.enum(['hdmi', 'displayport', 'dvi-d', 'vga']);

/** Leads that come from the front of the case, and the pins on the board they go on. */
export const frontPlug = z.enum(['power-button', 'usb-2', 'usb-3', 'usb-c', 'hd-audio']);

export const driveBaySize = z.enum(['2.5', '3.5']);

/** A name made of small letters, figures and single dashes: `k4`, `lodden-30`. */
export const slug = z.string().regex(/^[a-z0-9]+(-[a-z0-9]+)*$/, 'expected small letters, figures and dashes');

/** Millimetres, more than nothing. */
export const mm = z.number().positive().max(2000);
/** Watts, more than nothing. */
export const watts = z.number().positive().max(3000);
/** A whole number of one or more. */
export const count = z.number().int().positive().max(100000);
