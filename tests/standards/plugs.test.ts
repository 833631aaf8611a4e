// PSU-067 to PSU-069: summary of the ATX 3 Multi Rail Design Guide 2.1a, auxiliary connectors (basis: read).
// PSU-077 to PSU-080: expansion manual quoting card limits (basis: read). PSU-084: encyclopaedia article on the 16-pin
// connector (basis: read). PSU-088, PSU-091: Upgrading and Repairing PCs, Tables 18.14 and 18.15 (basis: read).
// PSU-092 to PSU-094: the same arithmetic (basis: computed). Text of the same chapter (basis: read): P8 and P9 carry 5 A a
// contact; the drive plug 11 A a contact and 187 W in all; the small drive plug 2 A and 34 W. Contacts of P8 and P9: PC
// Hardware in a Nutshell, second edition, Table 26-6 (basis: read). SATA: 1.5 A a contact, as the specification is quoted,
// and three contacts at each voltage, PSU-098 (basis: read).
import { describe, expect, it } from 'vitest';
import { olderBoardPlugs, type Plug, type PlugRail, plugMilliamps, plugRatings } from '../../src/standards/plugs.ts';

/** id, plug, watts. */
const ratings: readonly (readonly [string, Plug, number])[] = [
  ['PSU-067', 'pcie-6', 75],
  ['PSU-068', 'pcie-8', 150],
  ['PSU-069', '12v-2x6', 600],
  ['PSU-088', 'eps-4', 192],
  ['PSU-092', 'atx-20', 251.4],
  ['PSU-093', 'atx-24', 373.2],
  ['PSU-094', 'eps-8', 384],
  ['handbook, text on drive plugs', 'peripheral-4', 187],
  ['handbook, text on drive plugs', 'floppy-4', 34],
];

/** ids, plugs beside the slot, watts for the whole card. */
const cardTotals: readonly (readonly [string, readonly Plug[], number])[] = [
  ['PSU-076', [], 75],
  ['PSU-077', ['pcie-6'], 150],
  ['PSU-078', ['pcie-6', 'pcie-6'], 225],
  ['PSU-079', ['pcie-8', 'pcie-6'], 300],
  ['PSU-080', ['pcie-8', 'pcie-8'], 375],
];

const volts: Readonly<Record<PlugRail, number>> = { '3.3v': 3.3, '5v': 5, '12v': 12 };
const byContacts: readonly Plug[] = [
  'eps-4',
  'eps-8',
  'atx-24',
  'atx-20',
  'p8',
  'p9',
  'peripheral-4',
  'floppy-4',
  'sata-power',
];

describe('plug ratings', () => {
  it.each(ratings)('%s: a %s plug carries %d W', (_id, plug, watts) => {
    expect(plugRatings[plug].watts).toBe(watts);
  });

  it.each(cardTotals)('%s: slot and plugs together give the published total', (_id, plugs, watts) => {
    expect(plugs.reduce((sum, plug) => sum + plugRatings[plug].watts, 75)).toBe(watts);
  });

  it.each(byContacts)('%s carries what its contacts carry at their voltages', (plug) => {
    const rails: readonly PlugRail[] = ['3.3v', '5v', '12v'];
    const watts = rails.reduce((sum, rail) => sum + ((plugMilliamps(plug, rail) ?? 0) * volts[rail]) / 1000, 0);
    expect(plugRatings[plug].watts).toBeCloseTo(watts, 6);
  });

  it('agrees with the total of 443 W for 20-pin and 4-pin plugs together (PSU-091, rounded)', () => {
    expect(Math.floor(plugRatings['atx-20'].watts + plugRatings['eps-4'].watts)).toBe(443);
  });

  it('gives four contacts of 5 A at +5 V to P8 and P9 together, and one at +12 V', () => {
    expect((plugMilliamps('p8', '5v') ?? 0) + (plugMilliamps('p9', '5v') ?? 0)).toBe(20_000);
    expect((plugMilliamps('p8', '12v') ?? 0) + (plugMilliamps('p9', '12v') ?? 0)).toBe(5_000);
    expect(plugMilliamps('p8', '3.3v')).toBe(0);
  });

  it('gives 4.5 A at each voltage of the SATA plug (three contacts of 1.5 A)', () => {
    expect((['3.3v', '5v', '12v'] as const).map((rail) => plugMilliamps('sata-power', rail))).toEqual([
      4500, 4500, 4500,
    ]);
  });

  it('stays below the contacts of the 16-pin plug by a factor of 1.14 (PSU-084: 684 W)', () => {
    const contacts = ((plugMilliamps('12v-2x6', '12v') ?? 0) * 12) / 1000;
    expect(contacts).toBe(684);
    expect(contacts / plugRatings['12v-2x6'].watts).toBeCloseTo(1.14, 2);
  });

  it('puts 8.333 A through each contact of the 16-pin plug at 600 W, below its rating (PSU-086)', () => {
    const contacts = plugRatings['12v-2x6'].contacts['12v'];
    expect((plugRatings['12v-2x6'].watts * 1000) / 12 / contacts).toBeCloseTo(8333, 0);
    expect(plugRatings['12v-2x6'].milliampsEach).toBeGreaterThan(8333);
  });

  it('does not know the contacts of the other graphics plugs', () => {
    expect(plugMilliamps('pcie-8', '12v')).toBeUndefined();
  });
});

describe('the two board plugs of the older supply', () => {
  it('have the published order, ground beside ground in the middle', () => {
    const all = [...olderBoardPlugs.p8, ...olderBoardPlugs.p9];
    expect(all).toHaveLength(12);
    expect(all.slice(4, 8)).toEqual(['ground', 'ground', 'ground', 'ground']);
    expect(all.filter((contact) => contact === 'plus-5')).toHaveLength(4);
    expect(all.filter((contact) => contact === 'plus-12')).toHaveLength(1);
  });
});
