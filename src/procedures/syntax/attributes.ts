/** Which attributes each tag takes, checked by zod, with faults at the attribute that slipped. */
import { z } from 'zod';
import { partClasses } from '../../parts/part.ts';
import { slug } from '../../parts/terms.ts';
import { kindNames } from '../graph/coverage.ts';
import { type Place, placeAt, placeOf, type Source, type Tag } from './source.ts';

const words = z.string().transform((value) => value.split(/\s+/).filter((word) => word !== ''));
const text = z.string().trim().min(1, 'some words');
const oneOf = <const T extends readonly [string, ...string[]]>(names: T) =>
  z.enum(names, { error: `one of ${names.join(', ')}` });

const kind = oneOf(kindNames);
const partClass = oneOf(partClasses as readonly [(typeof partClasses)[number], ...(typeof partClasses)[number][]]);
const number = z
  .string()
  .trim()
  .regex(/^-?\d+(\.\d+)?$/, 'a number, such as 4.75')
  .transform(Number);

/** Optimistic, usual and slow, in whole or half minutes, so that sums are exact; none shorter than the one before. */
const minutes = words
  .refine(
    (values) => values.length === 3 && values.every((value) => /^\d+(\.5)?$/.test(value) && Number(value) > 0),
    'three numbers of whole or half minutes: optimistic, usual, slow',
  )
  .transform((values) => values.map(Number) as [number, number, number])
  .refine(
    ([low, usual, slow]) => low <= usual && usual <= slow,
    'optimistic, usual and slow minutes, none less than the one before',
  );

const none = {};

export const attributes = {
  Chapter: { id: slug, title: text },
  Step: {
    id: slug,
    action: text,
    joints: kind.optional(),
    about: kind.optional(),
    also: words.pipe(z.array(kind)).optional(),
    of: partClass.optional(),
    each: partClass.optional(),
    after: words.optional(),
    tools: words.optional(),
    minutes,
    drawing: oneOf(['board', 'module', 'case-side', 'none']).optional(),
  },
  Danger: none,
  Warning: none,
  Caution: none,
  Notice: none,
  Right: { claim: text.max(40, 'a state in a few words, at most 40 characters') },
  IfNot: { sees: text },
  Measure: { quantity: text, unit: text, nominal: number, low: number, high: number, instrument: slug, source: slug },
  Hold: none,
} as const;

export type TagName = keyof typeof attributes;
export const isTagName = (name: string | null): name is TagName => name !== null && Object.hasOwn(attributes, name);

/** What an attribute that slipped is called by; any other is `attribute-value`. */
const faultIds: Record<string, string> = {
  joints: 'unknown-kind',
  about: 'unknown-kind',
  also: 'unknown-kind',
  of: 'unknown-class',
  each: 'unknown-class',
  drawing: 'unknown-drawing',
  minutes: 'minutes',
};

type Values<T extends TagName> = {
  [K in keyof (typeof attributes)[T]]?: (typeof attributes)[T][K] extends z.ZodType
    ? z.infer<(typeof attributes)[T][K]>
    : never;
};

/** The attributes of a tag that are in order, and where each stands. The others have had their fault. */
export type Read<T extends TagName> = {
  values: Values<T>;
  /** Where the attribute begins; the tag when it has none of that name. */
  at(name: string): Place;
  /** Where the character at `offset` of the attribute's value stands. */
  within(name: string, offset: number): Place;
  /** The value as written. */
  raw(name: string): string;
};

export function readAttributes<T extends TagName>(source: Source, tag: Tag, name: T): Read<T> {
  const written = readWritten(source, tag, name);
  const shape: Record<string, z.ZodType> = attributes[name];
  const values: Record<string, unknown> = {};
  const present = new Set(tag.attributes.map((attribute) => ('name' in attribute ? attribute.name : '')));

  for (const [attribute, schema] of Object.entries(shape)) {
    const found = written.get(attribute);
    if (!found) {
      if (present.has(attribute) || schema.safeParse(undefined).success) continue;
      const id = attribute === 'minutes' ? 'missing-minutes' : 'missing-attribute';
      source.fault(id, placeOf(tag), `<${name}> without ${attribute}`, `${attribute}="…"`);
      continue;
    }
    const checked = schema.safeParse(found.value);
    if (checked.success) {
      values[attribute] = checked.data;
      continue;
    }
    const expected = checked.error.issues[0]?.message.replace(/^expected /, '') ?? 'another value';
    source.fault(faultIds[attribute] ?? 'attribute-value', found.at, `${attribute}="${found.value}"`, expected);
  }
  for (const [attribute, { at }] of written) {
    if (Object.hasOwn(shape, attribute)) continue;
    const known = Object.keys(shape);
    const expected = known.length > 0 ? `one of ${known.join(', ')}` : 'none';
    source.fault('unknown-attribute', at, `attribute ${attribute} on <${name}>`, expected);
  }

  return {
    values: values as Values<T>,
    at: (attribute) => written.get(attribute)?.at ?? placeOf(tag),
    within: (attribute, offset) => placeAt(source.text, (written.get(attribute)?.offset ?? 0) + offset),
    raw: (attribute) => written.get(attribute)?.value ?? '',
  };
}

type Written = Map<string, { value: string; at: Place; offset: number }>;

/** Attributes as written in quotes; `offset` is where the value begins in the file. */
function readWritten(source: Source, tag: Tag, name: TagName): Written {
  const written: Written = new Map();
  for (const attribute of tag.attributes) {
    const at = placeOf(attribute);
    if (attribute.type === 'mdxJsxExpressionAttribute') {
      source.fault('attribute-value', at, 'attributes in braces', 'name="value"');
      continue;
    }
    const first = written.get(attribute.name);
    if (typeof attribute.value !== 'string') {
      const what = attribute.value ? 'a value in braces' : `${attribute.name} without a value`;
      source.fault('attribute-value', at, what, `${attribute.name}="…"`);
    } else if (first) {
      const other = { text: 'it was first given here', at: first.at };
      source.fault('repeated-attribute', at, `a second ${attribute.name} on <${name}>`, 'one', other);
    } else {
      const start = attribute.position?.start.offset ?? 0;
      const offset = start + source.text.slice(start).search(/["']/) + 1;
      written.set(attribute.name, { value: attribute.value, at, offset });
    }
  }
  return written;
}
