/** Data sheets of the classes a plain current machine may do without, and of those of about 1990. */
import type { Part, PartOf } from '../parts/part.ts';
import { showKg, showMemory, showRoom, showWatts } from '../units/amounts.ts';
import { showNumber } from '../units/money.ts';
import { banks, type DataLine, line, measure, named, notRecorded, oneOf, shown, terms, yesNo } from './sheet-lines.ts';
import { termName } from './terms.ts';

export function dataSheetOfMore(part: Part): DataLine[] {
  switch (part.class) {
    case 'bank-module':
      return [
        line('Contacts', named(part.pins)),
        line('Capacity', shown(part.capacityKb, showMemory)),
        line('Width', measure(part.dataBits, 'bits')),
        line('Parity', yesNo(part.hasParity)),
        line('Speed', measure(part.nanoseconds, 'ns')),
      ];
    case 'coprocessor':
      return [
        line('Socket', named(part.socket)),
        line('Clock', measure(part.clockMhz, 'MHz')),
        line('Does', 'sums with fractions'),
      ];
    case 'processor-board':
      return [
        line('Goes into', named(part.socket)),
        line('Family', part.family ?? notRecorded),
        line('Clock', measure(part.clockMhz, 'MHz')),
        line('Stands', measure(part.heightMm, 'mm high')),
        line('Old processor stays in', yesNo(part.leavesProcessorIn)),
      ];
    case 'bus-card':
      return busCard(part);
    case 'expansion-card':
      return [
        line(
          'Does',
          shown(part.role, (role) => roles[role]),
        ),
        line('Lanes', measure(part.lanes, `of generation ${part.generation ?? notRecorded}`)),
        line('Length', measure(part.lengthMm, 'mm')),
        line('Height', measure(part.heightMm, 'mm')),
        line('Power, steady', measure(part.sustainedW, 'W')),
        line('Driver', driver(part.driver)),
      ];
    case 'floppy-drive':
      return [
        line('Size', named(part.size)),
        line('Made for', named(part.format)),
        line('Data', named(part.plug)),
        line('Power', named(part.powerPlug)),
      ];
    case 'fixed-disk':
      return [
        line('Size', named(part.size)),
        line('Capacity', shown(part.capacityMb, showRoom)),
        line('Data', named(part.plug)),
        line('Cylinders', shown(part.cylinders, showNumber)),
        line('Heads', shown(part.heads, showNumber)),
        line('Sectors a track', shown(part.sectorsPerTrack, showNumber)),
        ...(part.plug === 'st506'
          ? [
              line(
                'Recorded as',
                shown(part.encoding, (way) => way.toUpperCase()),
              ),
            ]
          : []),
        line('Draws, steady', shown(part.milliwatts, watts)),
        line('Draws, starting', shown(part.spinUpMilliwatts, watts)),
      ];
    case 'diskette':
      return [
        line(
          'Size',
          shown(part.format, (format) => diskOf(format).size),
        ),
        line(
          'Each holds',
          shown(part.format, (format) => diskOf(format).holds),
        ),
        line('Maker', part.maker),
      ];
    case 'adapter':
      return [
        line('Sort', part.form),
        line('Length', measure(part.lengthMm, 'mm')),
        line('Goes on', endsOf(part.ins)),
        line('Offers', endsOf(part.outs)),
      ];
    case 'keyboard':
    case 'pointer':
      return [
        line('Plug', named(part.plug)),
        line('Maker', part.maker),
        line(
          'Marked for emissions',
          part.emissionClass === undefined ? notRecorded : `class ${part.emissionClass.toUpperCase()}`,
        ),
      ];
    case 'monitor-arm':
      return [
        line('Holes', terms(part.holesMm?.map((mm) => `${mm} mm apart`))),
        line(
          'Carries',
          shown(part.carriesGrams, (grams) => `at most ${showKg(grams)}`),
        ),
        line('Maker', part.maker),
      ];
    case 'power-strip':
      return [
        line('Sockets', shown(part.sockets, showNumber)),
        line(
          'Carries',
          shown(part.ratedW, (most) => `at most ${showWatts(most)}`),
        ),
        line('Maker', part.maker),
      ];
    case 'operating-system':
      return [
        line('Starts by', terms(part.bootModes)),
        line('Instruction level', part.level ?? notRecorded),
        line(
          'Memory',
          shown(part.memoryMb, (least) => `at least ${showMemory(least * 1024)}`),
        ),
        line(
          'Storage',
          shown(part.storageMb, (least) => `at least ${showRoom(least)}`),
        ),
        line('Needs a security module', yesNo(part.needsSecurityModule)),
        line('Comes on', part.comesOn === undefined ? 'a stick or a download' : termName(part.comesOn)),
        line('Brings drivers for', terms(part.drivers)),
      ];
    default:
      return [];
  }
}

/** What a card does for the machine. */
const roles: Readonly<
  Record<NonNullable<PartOf<'bus-card'>['roles']>[number] | NonNullable<PartOf<'expansion-card'>['role']>, string>
> = {
  display: 'makes the picture',
  disk: 'joins disks',
  floppy: 'joins diskette drives',
  ports: 'has ports for a mouse or a printer',
  sound: 'makes sound',
  network: 'joins a network',
  memory: 'adds memory',
  storage: 'joins drives',
  usb: 'has USB sockets',
  capture: 'takes in pictures',
  modules: 'has slots for M.2 drives',
};

/** Rows for what it does alone: a card for sound has no socket for a monitor, and no row to say so. */
function busCard(part: PartOf<'bus-card'>): DataLine[] {
  const does = (...some: typeof part.roles & object) => !part.roles || some.some((role) => part.roles?.includes(role));
  const short = part.buses?.includes('isa-16-short');
  return [
    line('Does', part.roles ? part.roles.map((role) => roles[role]).join(', ') : notRecorded),
    line('Slot', terms(part.buses?.filter((bus) => !(short && bus === 'isa-16')))),
    line('Length', measure(part.lengthMm, 'mm')),
    line('Height', measure(part.heightMm, 'mm')),
    ...(does('display') ? [line('Picture sockets', terms(part.outputs?.map(({ plug }) => plug)))] : []),
    ...(does('disk', 'floppy') ? [line('Sockets for drives', terms(part.dataSockets?.map(({ plug }) => plug)))] : []),
    ...(does('ports') ? [line('Sockets for a mouse', terms(part.inputSockets?.map(({ plug }) => plug)))] : []),
    ...(does('memory') ? [line('Memory', shown(part.memoryBanks, banks))] : []),
    line('Jumpers', terms(part.settings?.map(({ says }) => says))),
    line('Lines no jumper moves', terms(part.lines)),
    line('Draws at 5 V', measure(part.milliamps5v, 'mA')),
    ...(part.milliamps12v === undefined ? [] : [line('Draws at 12 V', measure(part.milliamps12v, 'mA'))]),
    line('Driver', driver(part.driver)),
  ];
}

/** Null: every system can use it as it is. */
const driver = (name: string | null | undefined): string =>
  name === undefined ? notRecorded : name === null ? 'none needed' : `needs ${name}`;

const watts = (milliwatts: number): string => showWatts(milliwatts / 1000);

/** "3.5-1440" is "3.5 inch", "1.44 MB". */
function diskOf(format: string): { size: string; holds: string } {
  const [size = format, holds = notRecorded] = termName(format).split(', ');
  return { size, holds };
}

const endKinds: Readonly<Record<string, string>> = {
  'cooler-mount': 'cooler mounting',
  'drive-bay': 'drive bay',
  'expansion-slot': 'slot for a card',
  'supply-mount': 'bay for a supply',
};

/** "2 × 8-pin card plug", "drive bay, 3.5 inch". */
function endsOf(ends: PartOf<'adapter'>['ins']): string {
  return terms(
    ends?.map(({ kind, attrs: { plug, plugs, bay, bays, shape } }) => {
      const said = plug ?? plugs ?? bay ?? bays ?? shape ?? [];
      const named = oneOf((Array.isArray(said) ? said : [said]).map(String));
      const end = endKinds[kind];
      return [end, named].filter(Boolean).join(', ') || kind.replaceAll('-', ' ');
    }),
  );
}
