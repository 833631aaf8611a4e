/** What a cell says, as the value its column holds. */
import { z } from 'zod';
import { inWordsOf, shown } from '../content/shape.ts';
import type { Shape } from './columns.ts';

type Cell = { value?: unknown; fault?: { actual: string; expected: string } };
type Plain = Extract<Shape, { is: 'value' | 'values' }>;

export function readCell(cell: string, shape: Plain, field: string): Cell {
  if (shape.is === 'value' && shape.mayBeNone && /^none$/i.test(cell)) return { value: null };
  if (shape.is === 'value') return readValue(cell, shape.schema, field);
  // A list that is known to be empty is not one that is not known.
  if (/^none$/i.test(cell)) return { value: [] };
  const cells = cell.split(/[;\n]/).map((entry) => entry.trim());
  const values = cells.filter((entry) => entry !== '').map((entry) => readValue(entry, shape.of, field));
  return values.find(({ fault }) => fault) ?? { value: values.map(({ value }) => value) };
}

function readValue(cell: string, schema: z.core.$ZodType, field: string): Cell {
  const wrong = { fault: { actual: shown(cell), expected: inWordsOf(schema, field) } };
  for (const kind of kindsOf(schema)) {
    if (kind === 'number') {
      const value = readNumber(cell);
      if (value !== undefined) return { value };
    } else if (kind === 'boolean') {
      if (/^(yes|true)$/i.test(cell)) return { value: true };
      if (/^(no|false)$/i.test(cell)) return { value: false };
    } else return { value: cell };
  }
  return wrong;
}

/** Of a choice of several, numbers before words. */
function kindsOf(schema: z.core.$ZodType): ('number' | 'boolean' | 'text')[] {
  if (schema instanceof z.ZodUnion) {
    const all = schema.options.flatMap(kindsOf);
    return (['number', 'boolean', 'text'] as const).filter((kind) => all.includes(kind));
  }
  if (schema instanceof z.ZodNumber) return ['number'];
  if (schema instanceof z.ZodBoolean) return ['boolean'];
  if (schema instanceof z.ZodLiteral) return [typeof [...schema.values][0] === 'number' ? 'number' : 'text'];
  if (schema instanceof z.ZodNullable || schema instanceof z.ZodOptional) return kindsOf(schema.unwrap());
  if (schema instanceof z.ZodArray) return kindsOf(schema.element);
  return ['text'];
}

/** Digits with at most one point or comma; a spreadsheet in another language writes 158,5. Never "158 mm", never 1e3. */
function readNumber(cell: string): number | undefined {
  return /^-?\d+([.,]\d+)?$/.test(cell) ? Number(cell.replace(',', '.')) : undefined;
}
