/** What a part's file records, as a person reads it: the figures that decide a choice, in the order of a data sheet. */
import type { Part, PartOf } from '../parts/part.ts';
import { showAmps, showMts } from '../units/amounts.ts';
import { dataSheetOfMore } from './data-sheet-more.ts';
import { count } from './phrases.ts';
import { banks, type DataLine, line, measure, named, notRecorded, oneOf, shown, terms, yesNo } from './sheet-lines.ts';
import { termName } from './terms.ts';

export type { DataLine } from './sheet-lines.ts';

export function dataSheet(part: Part): DataLine[] {
  switch (part.class) {
    case 'chassis': {
      const fans = part.fittedFans?.map(
        ({ panel, sizeMm, thicknessMm }) => `${sizeMm} × ${thicknessMm} mm at the ${panel}`,
      );
      return [
        line(
          'Size',
          `${measure(part.heightMm, 'mm')} high, ${measure(part.depthMm, 'mm')} deep, ${measure(part.widthMm, 'mm')} wide`,
        ),
        line('Boards', terms(part.formFactors)),
        line('Room for a card', measure(part.cardLengthMm, 'mm long') + roomNote(part)),
        line('Card may stand', measure(part.cardHeightMm, 'mm high')),
        line('Room for a cooler', measure(part.coolerHeightMm, 'mm high')),
        line(
          'Supply',
          `${named(part.supplyShape)}, ${part.supplyLengthMm === undefined ? 'length not recorded' : `at most ${part.supplyLengthMm} mm long`}`,
        ),
        line('Drive bays', terms(part.driveBays?.map(({ sizes }) => oneOf(sizes)))),
        line('Fans in it', fans === undefined ? notRecorded : fans.length === 0 ? 'none' : fans.join(', ')),
      ];
    }
    case 'motherboard':
      return [
        line('Form', named(part.formFactor)),
        line('Socket', named(part.socket)),
        line('Cooler mountings', terms(part.coolerMountings)),
        line('Power for a processor', measure(part.processorPowerW, 'W')),
        line(
          'Firmware',
          part.firmware === undefined
            ? notRecorded
            : `version ${part.firmware.shipped}; knows ${part.firmware.knows.map(({ family, from }) => `${family} from version ${from}`).join(', ')}`,
        ),
        line(
          'Memory',
          part.memory === undefined
            ? shown(part.memoryBanks, banks)
            : `${named(part.memory.generation)}, ${count(part.memory.slots.length, 'slot', 'slots')}, ${measure(part.memory.moduleGb, 'GB')} a module`,
        ),
        ...(part.busSlots ? [line('Slots for bus cards', terms(part.busSlots.map(({ buses }) => oneOf(buses))))] : []),
        ...socketsOf(part),
      ];
    case 'processor':
      return [
        line('Socket', named(part.socket)),
        line('Family', part.family ?? notRecorded),
        // A sheet of about 1990 gives the clock, one of today the cores.
        ...(part.clockMhz === undefined ? [] : [line('Clock', measure(part.clockMhz, 'MHz'))]),
        ...(part.cores === undefined && part.clockMhz !== undefined ? [] : [line('Cores', shown(part.cores, String))]),
        line('Heat, steady', measure(part.sustainedW, 'W')),
        line('Power in a burst', measure(part.peakW, 'W')),
        line('Makes a picture', yesNo(part.hasGraphics)),
        line("The class's trial", measure(part.processingPoints, 'points')),
      ];
    case 'cooler':
      return [
        line('Height', measure(part.heightMm, 'mm')),
        line('Carries away', measure(part.ratedW, 'W')),
        line('Mountings', terms(part.mountings)),
        line(
          'Memory under it',
          part.memoryHeightMm === undefined
            ? notRecorded
            : part.memoryHeightMm === null
              ? 'stands clear of it'
              : `at most ${part.memoryHeightMm} mm high`,
        ),
      ];
    case 'memory-module':
      return [
        line('Kind', `${named(part.generation)}${part.registered ? ', registered' : ''}`),
        line('Capacity', measure(part.capacityGb, 'GB')),
        line('Speed', shown(part.speedMts, showMts)),
        line('Height', measure(part.heightMm, 'mm')),
      ];
    case 'graphics-card':
      return [
        line('Length', measure(part.lengthMm, 'mm')),
        line('Height', measure(part.heightMm, 'mm')),
        line('Thickness', measure(part.slotsThick, part.slotsThick === 1 ? 'slot' : 'slots')),
        line('Power sockets', terms(part.powerSockets)),
        line('Power, steady', measure(part.sustainedW, 'W')),
        line('Power in a burst', measure(part.peakW, 'W')),
        line('Picture sockets', terms(part.outputs?.map(({ plug }) => plug))),
        line("The class's trial", measure(part.graphicsPoints, 'points')),
      ];
    case 'storage-drive':
      return [
        line(
          'Built as',
          part.build === 'm2'
            ? `M.2 module, ${part.key === undefined ? 'key not recorded' : part.key.split('+').map(termName).join(' and ')}, ${part.lengthMm === undefined ? 'length not recorded' : `${part.lengthMm} mm long`}`
            : `${part.build} inch box`,
        ),
        line('Capacity', measure(part.capacityGb, 'GB')),
        line('Link', named(part.link)),
        line('Moving parts', part.isSolidState === undefined ? notRecorded : part.isSolidState ? 'none' : 'yes'),
      ];
    case 'power-supply':
      return [
        line('Shape', named(part.shape)),
        line('Length', measure(part.lengthMm, 'mm')),
        line('Gives', measure(part.ratedW, 'W')),
        line(
          'At each voltage',
          terms(part.rails?.map(({ id, milliamps }) => `${railName(id)} ${showAmps(milliamps)}`)),
        ),
        line('Plugs', terms(part.leads?.flatMap(({ plugs }) => plugs))),
      ];
    case 'fan':
      return [
        line('Size', measure(part.sizeMm, 'mm')),
        line('Thickness', measure(part.thicknessMm, 'mm')),
        line('Draws', measure(part.milliamps, 'mA')),
      ];
    case 'monitor':
      return [
        ...pictureOf(part),
        line('Sockets', terms(part.sockets?.map(({ plug }) => plug))),
        line('Across', part.diagonalInch === undefined ? notRecorded : `${part.diagonalInch} inches`),
      ];
    default:
      return dataSheetOfMore(part);
  }
}

/** On a board with slots for bus cards, what it has none of would only puzzle: nothing of the kind was sold for it. */
function socketsOf({ busSlots, expansionSlots, moduleSlots, sataPorts, pictureSockets }: PartOf<'motherboard'>) {
  const cards = expansionSlots?.map(
    ({ lengthLanes, lanes }) => `x${lengthLanes} with ${count(lanes, 'lane', 'lanes')}`,
  );
  const modules = moduleSlots?.map(({ key, lengthsMm }) => `${termName(key)}, ${oneOf(lengthsMm)} mm`);
  return [
    { says: line('Slots for cards', terms(cards)), has: expansionSlots?.length },
    { says: line('M.2 slots', terms(modules)), has: moduleSlots?.length },
    { says: line('SATA ports', sataPorts === 0 ? 'none' : shown(sataPorts, String)), has: sataPorts },
    { says: line('Picture sockets', terms(pictureSockets?.map(({ plug }) => plug))), has: pictureSockets?.length },
  ].flatMap(({ says, has }) => (busSlots && !has ? [] : [says]));
}

function roomNote({ cardLengthMm, frontFansTakeCardRoom, fanPanels }: PartOf<'chassis'>): string {
  const hasNoFanThere = fanPanels !== undefined && !fanPanels.some(({ id }) => id === 'front');
  if (cardLengthMm === undefined || frontFansTakeCardRoom === undefined || hasNoFanThere) return '';
  return frontFansTakeCardRoom ? ', less the thickness of a front fan' : ', whatever fan is at the front';
}

/** "5 V standby", "−12 V". */
const railName = (id: string): string => (id === '5vsb' ? '5 V standby' : id.replace('-', '−').replace('v', ' V'));

const between = ([from, to]: readonly [number, number], unit: string): string =>
  from === to ? `${from} ${unit}` : `${from} to ${to} ${unit}`;

/** A monitor with dots of its own is told by these, one that follows what it is sent by its rates, some by both. */
function pictureOf({ widthPx, heightPx, refreshHz, horizontalKhz, verticalHz }: PartOf<'monitor'>): DataLine[] {
  const isKnown = widthPx !== undefined && heightPx !== undefined;
  const picture = isKnown ? `${widthPx} by ${heightPx}, ${measure(refreshHz, 'times a second')}` : notRecorded;
  const rates = [
    line(
      'Lines a second',
      shown(horizontalKhz, (khz) => between(khz, 'kHz')),
    ),
    line(
      'Pictures a second',
      shown(verticalHz, (hz) => between(hz, 'Hz')),
    ),
  ];
  if (horizontalKhz === undefined && verticalHz === undefined) return [line('Picture', picture)];
  return isKnown ? [line('Picture', picture), ...rates] : rates;
}

/** A measure a person may take, as the label of a field: "Height of the Skarn Tall". */
const fieldNames: Readonly<Record<string, string>> = {
  heightMm: 'Height',
  lengthMm: 'Length',
  depthMm: 'Depth',
  widthMm: 'Width',
  thicknessMm: 'Thickness',
  sizeMm: 'Size',
  coolerHeightMm: 'Room for a cooler in',
  cardLengthMm: 'Room for a card in',
  cardHeightMm: 'Height of a card in',
  supplyLengthMm: 'Room for a supply in',
  memoryHeightMm: 'Height under',
  ratedW: 'Watts of',
  sustainedW: 'Steady watts of',
  peakW: 'Watts in a burst of',
  processorPowerW: 'Watts for a processor from',
};

/** "Height of the Skarn Tall", "Room for a cooler in the Lodden 30". */
export function fieldName(field: string, partName: string): string {
  const name =
    fieldNames[field] ?? field.replace(/(Mm|W)$/, '').replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`);
  return / (in|from|of)$|^Height under$/.test(name) ? `${name} the ${partName}` : `${name} of the ${partName}`;
}

export const fieldUnit = (field: string): string => (field.endsWith('W') ? 'W' : 'mm');
