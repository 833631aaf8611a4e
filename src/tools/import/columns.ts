/**
 * The columns of a class: one for each plain value of its schema. A group's fields are joined by full stops, and
 * entries of a list of groups are numbered from 1: `leads.2.carriesW`. A list of plain values is one cell, its entries
 * set apart by semicolons.
 */
import { z } from 'zod';
import { partSchemas } from '../../parts/classes/index.ts';
import type { PartClass } from '../../parts/part.ts';

export type Column = {
  /** As in the first row of the table. */
  name: string;
  /** The value itself, without "optional". */
  schema: z.core.$ZodType;
  isNeeded: boolean;
  /** The group it is needed in, when any of that group is given: `fan`, `leads.1`. */
  within: string;
  mayBeNone: boolean;
  /** Of a list, what one entry is. */
  of?: z.core.$ZodType;
};

export type Shape =
  | { is: 'group'; fields: ReadonlyMap<string, Shape> }
  | { is: 'groups'; entry: Shape }
  | { is: 'record'; value: Shape }
  | { is: 'values'; schema: z.core.$ZodType; of: z.core.$ZodType; isNeeded: boolean }
  | { is: 'value'; schema: z.core.$ZodType; isNeeded: boolean; mayBeNone: boolean };

function shapeOf(schema: z.core.$ZodType, isNeeded = true, mayBeNone = false): Shape {
  if (schema instanceof z.ZodOptional || schema instanceof z.ZodExactOptional) {
    return shapeOf(schema.unwrap(), false, mayBeNone);
  }
  if (schema instanceof z.ZodNullable) return shapeOf(schema.unwrap(), isNeeded, true);
  if (schema instanceof z.ZodObject) {
    const fields = Object.entries(schema.shape as Record<string, z.core.$ZodType>);
    return { is: 'group', fields: new Map(fields.map(([name, field]) => [name, shapeOf(field)])) };
  }
  if (schema instanceof z.ZodRecord) return { is: 'record', value: shapeOf(schema.valueType) };
  if (schema instanceof z.ZodArray) {
    const entry = shapeOf(schema.element);
    return entry.is === 'group' ? { is: 'groups', entry } : { is: 'values', schema, of: schema.element, isNeeded };
  }
  if (schema instanceof z.ZodTuple) {
    const of = schema.def.items[0] as z.core.$ZodType;
    return { is: 'values', schema, of, isNeeded };
  }
  return { is: 'value', schema, isNeeded, mayBeNone };
}

export const classShape = (of: PartClass): Shape => shapeOf(partSchemas[of]);

/** How many entries of a list of groups a template has room for; the numbers may go on. */
const roomFor = 2;

export function columnsOf(of: PartClass): Column[] {
  const columns: Column[] = [];
  const walk = (shape: Shape, name: string, within = ''): void => {
    switch (shape.is) {
      case 'group':
        for (const [field, inner] of shape.fields) walk(inner, name === '' ? field : `${name}.${field}`, name);
        break;
      case 'groups':
        for (let n = 1; n <= roomFor; n += 1) walk(shape.entry, `${name}.${n}`);
        break;
      case 'record':
        // The attribute that most ends have; a sheet may have columns for others beside it.
        if (name.endsWith('.attrs')) walk(shape.value, `${name}.plug`, name);
        break;
      case 'values':
        columns.push({
          ...{ name, within },
          schema: shape.schema,
          isNeeded: shape.isNeeded,
          mayBeNone: false,
          of: shape.of,
        });
        break;
      case 'value':
        columns.push({
          ...{ name, within },
          schema: shape.schema,
          isNeeded: shape.isNeeded,
          mayBeNone: shape.mayBeNone,
        });
        break;
    }
  };
  walk(classShape(of), '');
  return columns;
}

/**
 * The shape at the end of a column's name; or else the first step that leads nowhere, and what could have stood there.
 * Lists take any number from 1.
 */
export function shapeAt(shape: Shape, steps: readonly string[]): { at?: Shape; lost: number; known: string[] } {
  let at: Shape = shape;
  for (const [lost, step] of steps.entries()) {
    const next = insideOf(at, step);
    if (!next) return { lost, known: namesIn(at) };
    at = next;
  }
  const lost = steps.length;
  return at.is === 'value' || at.is === 'values' ? { at, lost, known: [] } : { lost, known: namesIn(at) };
}

function insideOf(shape: Shape, step: string): Shape | undefined {
  if (shape.is === 'group') return shape.fields.get(step);
  if (shape.is === 'groups') return /^[1-9]\d?$/.test(step) ? shape.entry : undefined;
  return shape.is === 'record' ? shape.value : undefined;
}

const namesIn = (shape: Shape): string[] =>
  shape.is === 'group' ? [...shape.fields.keys()] : shape.is === 'groups' ? ['1', '2'] : [];
