/** Data sheets of the classes a plain current machine may do without, and of those of about 1990. */
import type { Part } from '../parts/part.ts';
import { type DataLine, line, measure, named, notRecorded, terms, yesNo } from './sheet-lines.ts';
import { termName } from './terms.ts';

export function dataSheetOfMore(part: Part): DataLine[] {
  switch (part.class) {
    case 'bank-module':
      return [
        line('Contacts', named(part.pins)),
        line('Capacity', measure(part.capacityKb, 'kB')),
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
      return [
        line('Does', terms(part.roles)),
        line('Slot', terms(part.buses)),
        line('Length', measure(part.lengthMm, 'mm')),
        line('Picture sockets', terms(part.outputs?.map(({ plug }) => plug) ?? [])),
        line('Sockets for drives', terms(part.dataSockets?.map(({ plug }) => plug) ?? [])),
        line('Lines of the bus', terms(part.lines ?? [])),
        line('To set', terms(part.settings?.map(({ says }) => says) ?? [])),
        line('Draws', `${measure(part.milliamps5v, 'mA')} at 5 V`),
      ];
    case 'expansion-card':
      return [
        line('Does', named(part.role)),
        line('Lanes', measure(part.lanes, `of generation ${part.generation ?? notRecorded}`)),
        line('Length', measure(part.lengthMm, 'mm')),
        line('Height', measure(part.heightMm, 'mm')),
        line('Power, steady', measure(part.sustainedW, 'W')),
        line('Driver', part.driver ?? 'none of its own'),
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
        line('Capacity', measure(part.capacityMb, 'MB')),
        line('Data', named(part.plug)),
        line(
          'Cylinders, heads, sectors',
          [part.cylinders, part.heads, part.sectorsPerTrack].map((value) => value ?? notRecorded).join(', '),
        ),
        line('Draws, steady', measure(part.milliwatts, 'mW')),
      ];
    case 'diskette':
      return [
        line('Format', named(part.format)),
        line('In the box', 'what has to be read, or written'),
        line('Needs', 'a drive that reads it'),
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
        line('Carries', measure(part.carriesGrams, 'g')),
        line('Weight', measure(part.grams, 'g')),
      ];
    case 'power-strip':
      return [
        line('Sockets', part.sockets === undefined ? notRecorded : String(part.sockets)),
        line('Carries', measure(part.ratedW, 'W')),
        line('Maker', part.maker),
      ];
    case 'operating-system':
      return [
        line('Starts by', terms(part.bootModes)),
        line('Instruction level', part.level ?? notRecorded),
        line('Memory', measure(part.memoryMb, 'MB at least')),
        line('Storage', measure(part.storageMb, 'MB at least')),
        line(
          'Security module',
          part.needsSecurityModule === undefined ? notRecorded : part.needsSecurityModule ? 'needed' : 'not needed',
        ),
        line('Comes on', part.comesOn === undefined ? 'a stick or a download' : termName(part.comesOn)),
        line('Brings drivers for', terms(part.drivers ?? [])),
      ];
    default:
      return [];
  }
}

/** "2 × 4-pin fan header". */
function endsOf(ends: readonly { kind: string; attrs: Record<string, unknown> }[] | undefined): string {
  return terms(
    ends?.map(({ kind, attrs }) => {
      const { plug, plugs } = attrs;
      const named =
        typeof plug === 'string'
          ? plug
          : Array.isArray(plugs)
            ? plugs.map((one) => termName(String(one))).join(' or ')
            : '';
      return named === '' ? kind.replaceAll('-', ' ') : termName(named);
    }),
  );
}
