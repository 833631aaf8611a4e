/** Lists as people make them: parts of the catalogue's sort that differ in what decides, one machine with this and that. */
import fc from 'fast-check';
import { aPart } from '../../src/fit/examples.ts';
import type { JudgeInput } from '../../src/fit/rule.ts';
import type { Part, PartClass, PartOf } from '../../src/parts/part.ts';

/** Plain parts, each with one field changed or left out. */
const changes: { readonly [C in PartClass]?: readonly Partial<PartOf<C>>[] } = {
  chassis: [{ formFactors: ['mini-itx'] }, { coolerHeightMm: 120 }, { driveBays: [] }, { cutOuts: 4 }],
  motherboard: [
    { socket: 'n9' },
    { sataPorts: 1 },
    { formFactor: 'atx' },
    { powerSockets: ['atx-24', 'eps-8', 'eps-8'] },
    { fanHeaders: [{ id: 'cooler-fan', pins: 4, milliamps: 300 }] },
  ],
  processor: [{ socket: 'n9' }, { hasGraphics: false }, { sustainedW: 170 }],
  cooler: [{ mountings: ['wide-94'] }, { heightMm: 170 }],
  'memory-module': [{ generation: 'ddr4' }, { capacityGb: 64 }, { registered: true }],
  'graphics-card': [{ slotsThick: 3 }, { powerSockets: ['pcie-8', 'pcie-8', 'pcie-8'] }, { lengthMm: 400 }],
  'storage-drive': [{ build: '3.5' }, { build: '2.5' }, { key: 'b' }, { lengthMm: 110 }],
  'power-supply': [{ shape: 'sfx' }, { ratedW: 200 }, { leads: [] }],
  fan: [{ sizeMm: 200 }, { milliamps: 900 }],
  monitor: [{ sockets: [{ id: 'dvi-1', plug: 'dvi-d' }] }],
  'expansion-card': [{ lanes: 16 }],
  adapter: [{ lengthMm: 100 }],
  keyboard: [{ plug: 'din-5' }],
};

/** The plain parts of a class, those of 1990 among them, and their changes; fields at random are left out. */
function partsOf(partClass: PartClass): fc.Arbitrary<Part> {
  const bases = [aPart(partClass), aPart(partClass, 'vintage')];
  const [base] = bases as [Part];
  const made = [...bases, ...(changes[partClass] ?? []).map((change) => ({ ...base, ...change }) as Part)];
  const parts = made.map((part, n): Part => ({ ...part, id: `${part.id}-${n}` }));
  const kept = ['class', 'id', 'name', 'maker', 'source', 'build', 'form'];
  const without = fc.tuple(fc.constantFrom(...parts), fc.nat()).map(([part, turn]): Part => {
    const fields = Object.keys(part).filter((field) => !kept.includes(field));
    const gone = fields[turn % fields.length];
    const rest = Object.entries(part).filter(([field]) => field !== gone);
    return { ...(Object.fromEntries(rest) as Part), id: `${part.id}-without-${gone}`.toLowerCase() };
  });
  return fc.oneof({ arbitrary: fc.constantFrom(...parts), weight: 5 }, { arbitrary: without, weight: 1 });
}

const some = (partClass: PartClass, least: number, most: number) =>
  fc.array(fc.record({ part: partsOf(partClass), quantity: fc.integer({ min: 1, max: 2 }) }), {
    minLength: least,
    maxLength: most,
  });

export const likelyList: fc.Arbitrary<JudgeInput> = fc
  .tuple(
    some('chassis', 0, 2),
    some('motherboard', 1, 2),
    some('processor', 1, 1),
    some('cooler', 0, 2),
    some('memory-module', 0, 3),
    some('graphics-card', 0, 2),
    some('storage-drive', 0, 3),
    some('power-supply', 0, 2),
    some('fan', 0, 2),
    some('monitor', 0, 2),
    some('bank-module', 0, 2),
    some('bus-card', 0, 2),
    some('expansion-card', 0, 1),
    some('floppy-drive', 0, 1),
    some('fixed-disk', 0, 1),
    some('adapter', 0, 1),
    some('keyboard', 0, 1),
    some('pointer', 0, 1),
  )
  .map((lines) => lines.flat());
