/** Parts that the schemas let through, sensible or not: for laws that hold of every list. */
import fc from 'fast-check';
import type { z } from 'zod';
import { partSchemas } from '../../src/parts/classes/index.ts';
import { type Part, type PartClass, partClasses } from '../../src/parts/part.ts';

/** Figures a measure may have: small and plain, halves, and as large as schemas allow. */
const figures = fc.oneof(
  fc.constantFrom(1, 2, 2.5, 3, 4, 5, 6, 8, 12, 16, 32, 75, 80, 120, 140, 150, 400, 1920, 2000, 3000, 100_000),
  fc.double({ min: 0.1, max: 3000, noNaN: true }),
);
const words = fc.constantFrom(
  'irq-5',
  'io-300',
  '2026-02-28',
  'a',
  'a-2',
  'b',
  'k4',
  'hdmi-1',
  'sata-1',
  'sata-2',
  'square-80',
  'quellin-2',
);

type Def = {
  type: string;
  shape?: Record<string, z.ZodType>;
  innerType?: z.ZodType;
  element?: z.ZodType;
  options?: z.ZodType[];
  entries?: Record<string, string>;
  values?: unknown[];
  items?: z.ZodType[];
};

/** Values of a schema, made from its own description. Throws on a sort of schema that no part uses. */
function valuesOf(schema: z.ZodType): fc.Arbitrary<unknown> {
  const def = schema.def as unknown as Def;
  const passes = (value: unknown) => schema.safeParse(value).success;
  switch (def.type) {
    case 'object':
      return fc
        .record(Object.fromEntries(Object.entries(def.shape ?? {}).map(([key, field]) => [key, valuesOf(field)])))
        .map((record) => Object.fromEntries(Object.entries(record).filter(([, value]) => value !== undefined)));
    case 'optional':
      return fc.option(valuesOf(def.innerType as z.ZodType), { nil: undefined, freq: 4 });
    case 'nullable':
      return fc.option(valuesOf(def.innerType as z.ZodType), { nil: null });
    case 'array':
      return fc.array(valuesOf(def.element as z.ZodType), { maxLength: 4 }).filter(passes);
    case 'union':
      return fc.oneof(...(def.options ?? []).map(valuesOf));
    case 'enum':
      return fc.constantFrom(...Object.values(def.entries ?? {}));
    case 'literal':
      return fc.constantFrom(...(def.values ?? []));
    case 'boolean':
      return fc.boolean();
    case 'number':
      return figures.map((figure) => (passes(figure) ? figure : Math.ceil(figure))).filter(passes);
    case 'string':
      return words.filter(passes);
    case 'tuple':
      return fc.tuple(...(def.items ?? []).map(valuesOf));
    case 'null':
      return fc.constant(null);
    case 'record':
      return fc.constantFrom({}, { plug: 'hdmi' }, { milliamps: 300 }).filter(passes);
    default:
      throw new Error(`no values for a schema of type ${def.type}`);
  }
}

const arbitraries = new Map<PartClass, fc.Arbitrary<unknown>>(
  partClasses.map((partClass) => [partClass, valuesOf(partSchemas[partClass])]),
);

export const anyPartOf = (partClass: PartClass): fc.Arbitrary<Part> => arbitraries.get(partClass) as fc.Arbitrary<Part>;

export const anyPart: fc.Arbitrary<Part> = fc.constantFrom(...partClasses).chain(anyPartOf);

/** Lists of one to `most` lines, each with a part id of its own, one or two of each part. */
export const anyList = (most: number): fc.Arbitrary<{ part: Part; quantity: number }[]> =>
  fc
    .array(fc.record({ part: anyPart, quantity: fc.integer({ min: 1, max: 2 }) }), { minLength: 1, maxLength: most })
    .map((lines) => lines.map(({ part, quantity }, n) => ({ part: { ...part, id: `${part.class}-p${n}` }, quantity })));
