/** What a part's file records, as a person reads it: the figures that decide a choice, in the order of a data sheet. */
import type { Part, PartOf } from '../parts/part.ts';
import { dataSheetOfMore } from './data-sheet-more.ts';
import { type DataLine, line, measure, named, notRecorded, terms } from './sheet-lines.ts';
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
        line(
          'Room for a card',
          measure(part.cardLengthMm, 'mm long') + roomNote(part.cardLengthMm, part.frontFansTakeCardRoom),
        ),
        line('Card may stand', measure(part.cardHeightMm, 'mm high')),
        line('Room for a cooler', measure(part.coolerHeightMm, 'mm high')),
        line(
          'Supply',
          `${named(part.supplyShape)}, ${part.supplyLengthMm === undefined ? 'length not recorded' : `at most ${part.supplyLengthMm} mm long`}`,
        ),
        line('Drive bays', terms(part.driveBays?.map(({ sizes }) => sizes.map(termName).join(' or ')))),
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
            ? banksOf(part)
            : `${named(part.memory.generation)}, ${part.memory.slots.length} slots, ${measure(part.memory.moduleGb, 'GB')} a module`,
        ),
        ...(part.busSlots
          ? [line('Slots for bus cards', terms(part.busSlots.map(({ buses }) => buses.map(termName).join(' or '))))]
          : []),
        line(
          'Slots for cards',
          terms(part.expansionSlots?.map(({ lengthLanes, lanes }) => `x${lengthLanes} with ${lanes} lanes`)),
        ),
        line(
          'M.2 slots',
          terms(part.moduleSlots?.map(({ key, lengthsMm }) => `${termName(key)}, ${lengthsMm.join(' or ')} mm`)),
        ),
        line('SATA ports', part.sataPorts === undefined ? notRecorded : String(part.sataPorts)),
        line('Picture sockets', terms(part.pictureSockets?.map(({ plug }) => plug))),
      ];
    case 'processor':
      return [
        line('Socket', named(part.socket)),
        line('Family', part.family ?? notRecorded),
        line('Cores', part.cores === undefined ? notRecorded : String(part.cores)),
        line('Heat, steady', measure(part.sustainedW, 'W')),
        line('Power in a burst', measure(part.peakW, 'W')),
        line('Makes a picture', part.hasGraphics === undefined ? notRecorded : part.hasGraphics ? 'yes' : 'no'),
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
        line('Speed', measure(part.speedMts, 'million transfers a second')),
        line('Height', measure(part.heightMm, 'mm')),
      ];
    case 'graphics-card':
      return [
        line('Length', measure(part.lengthMm, 'mm')),
        line('Height', measure(part.heightMm, 'mm')),
        line('Thickness', measure(part.slotsThick, 'slots')),
        line('Power sockets', terms(part.powerSockets ?? [])),
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
            ? `M.2 module, ${part.key === undefined ? 'key not recorded' : part.key.split('+').map(termName).join(' and ')}, ${measure(part.lengthMm, 'mm')} long`
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
        line(
          'Picture',
          part.widthPx === undefined || part.heightPx === undefined
            ? notRecorded
            : `${part.widthPx} by ${part.heightPx}, ${measure(part.refreshHz, 'times a second')}`,
        ),
        line('Sockets', terms(part.sockets?.map(({ plug }) => plug))),
        line('Across', part.diagonalInch === undefined ? notRecorded : `${part.diagonalInch} inches`),
      ];
    default:
      return dataSheetOfMore(part);
  }
}

const banksOf = ({ memoryBanks }: PartOf<'motherboard'>): string =>
  memoryBanks === undefined
    ? notRecorded
    : memoryBanks.map(({ slots, pins }) => `a bank of ${slots} × ${termName(pins)}`).join(', ');

const roomNote = (length: number | undefined, fansTake: boolean | undefined): string => {
  if (length === undefined || fansTake === undefined) return '';
  return fansTake ? ', less the thickness of a front fan' : ', whatever fan is at the front';
};

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
