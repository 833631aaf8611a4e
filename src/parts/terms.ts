/**
 * Words of the trade that more than one class of part uses, as zod enums.
 * A value that is not listed here is a slip of the pen, so files name these and nothing else.
 */
import { z } from 'zod';

export const formFactor = z.enum(['atx', 'micro-atx', 'mini-itx', 'e-atx', 'full-at', 'baby-at', 'lpx']);
/** Letters of the mounting holes, as the board specifications name them. */
export const mountingHole = z.enum(['A', 'B', 'C', 'F', 'G', 'H', 'J', 'K', 'L', 'M', 'R', 'S']);
export const memoryGeneration = z.enum(['ddr4', 'ddr5']);
export const supplyShape = z.enum(['atx', 'sfx', 'full-at', 'baby-at']);

/** Sockets for power on boards, cards and drives; the plug of the same name goes into each. */
export const powerPlug = z.enum([
  'atx-24',
  'atx-20',
  'p8',
  'p9',
  'eps-8',
  'eps-4',
  'pcie-6',
  'pcie-8',
  '12v-2x6',
  'sata-power',
  'peripheral-4',
  'floppy-4',
]);
/** Plugs on a supply's leads. `eps-4-4` parts into two of four pins: it goes into one socket, of eight pins or of four. */
export const supplyPlug = z.enum([...powerPlug.options, 'eps-4-4']);

/** `de-9` is the nine-pin socket of digital monitors, `vga` the fifteen-pin one of analog ones. */
export const picturePlug = z.enum(['hdmi', 'displayport', 'dvi-d', 'dvi-i', 'vga', 'de-9']);
export const signal = z.enum(['digital', 'analog']);

/** Leads that come from the front of the case, and the pins on the board they go on. */
export const frontPlug = z.enum([
  'power-button',
  'reset-button',
  'turbo-button',
  'speaker',
  'key-lock',
  'usb-2',
  'usb-3',
  'usb-c',
  'hd-audio',
]);

export const driveBaySize = z.enum(['2.5', '3.5', '5.25', '5.25-full', '3.5-open']);

/** Sockets for lighting: three pins and 5 V, or four pins and 12 V. */
export const lightPlug = z.enum(['light-5v-3', 'light-12v-4']);

/** What a keyboard, mouse or other small thing is plugged into. */
export const inputPlug = z.enum(['usb-a', 'ps2', 'din-5', 'serial-9', 'serial-25']);

/** Sockets and plugs that data to and from drives goes through. */
export const dataPlug = z.enum(['sata', 'ata-40', 'floppy-34', 'floppy-edge', 'floppy-pins', 'st506']);

/** How the data is written on disks of the older pair of ribbons. */
export const diskEncoding = z.enum(['mfm', 'rll']);

/** What cards of about 1990, and the slots that take them, are built for. */
export const bus = z.enum(['isa-8', 'isa-16', 'isa-16-short', 'eisa', 'vlb', 'pci-5v', 'pci-3v', 'agp']);

/** Lines of a bus that only one card may hold: `irq-5`, `dma-1`, `io-300`, `mem-d000`. */
export const busLine = z
  .string()
  .regex(/^(irq-\d{1,2}|dma-[0-7]|io-[0-9a-f]{3}|mem-[0-9a-f]{4})$/)
  .describe('a line such as irq-5, dma-1, io-300 or mem-d000');

/** Formats of diskettes, by size of the disk and kilobytes. */
export const diskette = z.enum(['5.25-360', '5.25-1200', '3.5-720', '3.5-1440', '3.5-2880']);

/** How a machine finds what it starts from. */
export const bootMode = z.enum(['bios', 'uefi']);
/** What a board's firmware can start from. */
export const bootDevice = z.enum(['diskette', 'ata', 'st506', 'sata', 'nvme', 'usb']);
/** How a firmware counts the places on a disk, and so how far it reaches. */
export const diskAddressing = z.enum(['chs', 'chs-large', 'lba-28', 'lba-48']);

export const emissionClass = z.enum(['a', 'b']);
/** Thread of a screw. */
export const screw = z.enum(['6-32', 'm3']);
export const fanPins = z.union([z.literal(2), z.literal(3), z.literal(4)]);

/** A name made of small letters, figures and single dashes: `k4`, `lodden-30`. */
export const slug = z.string().regex(/^[a-z0-9]+(-[a-z0-9]+)*$/, 'expected small letters, figures and dashes');

/** Millimetres, more than nothing. */
export const mm = z.number().positive().max(2000);
/** Watts, more than nothing. */
export const watts = z.number().positive().max(3000);
/** A whole number of one or more. */
export const count = z.number().int().positive().max(100000);
