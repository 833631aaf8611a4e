/**
 * Marks. An answer is what a student chose, never what it earned: its marks follow from the fit report
 * wherever they are shown, so that the same answer has the same marks everywhere.
 */
import { isCount, longestId, mostLines } from '../parts/limits.ts';
import type { Part } from '../parts/part.ts';
import { markList } from './mark-list.ts';
import { markVerdicts } from './mark-verdicts.ts';
import { marked, unreadable } from './marking.ts';
import type { Answer, Exercise, Marked } from './types.ts';

const verdicts = ['fits', 'does-not-fit', 'cannot-tell'] as const;

/**
 * The answer a value holds, with anything else it carries left behind; undefined when it holds none.
 * A list has at most 60 lines of 1 to 99 each, and an id at most 120 characters, as in a logbook.
 */
export function readAnswer(value: unknown): Answer | undefined {
  if (!isRecord(value)) return undefined;
  if (value['kind'] === 'choose' && Array.isArray(value['list'])) {
    const lines = value['list'].map(readListed);
    const list = lines.filter((line) => line !== undefined);
    return list.length === lines.length && list.length <= mostLines ? { kind: 'choose', list } : undefined;
  }
  if (value['kind'] === 'misfits' && isRecord(value['verdicts'])) {
    const given = Object.entries(value['verdicts']);
    const read = given.flatMap(([id, verdict]) => verdicts.filter((one) => one === verdict).map((one) => [id, one]));
    return read.length === given.length ? { kind: 'misfits', verdicts: Object.fromEntries(read) } : undefined;
  }
  return undefined;
}

const isRecord = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

function readListed(line: unknown): { part: string; quantity: number } | undefined {
  if (!isRecord(line)) return undefined;
  const { part, quantity } = line;
  if (typeof part !== 'string' || part.length > longestId) return undefined;
  return typeof quantity === 'number' && isCount(quantity) ? { part, quantity } : undefined;
}

/**
 * Marks an answer by rubric line. Takes any value as the answer: one that cannot be read earns nothing, and
 * the marks say so. Never throws on an answer; the order of the list and of the catalogue changes nothing.
 */
export function mark(exercise: Exercise, answer: unknown, parts: readonly Part[]): Marked {
  const read = readAnswer(answer);
  const lines =
    exercise.kind === 'choose' && read?.kind === 'choose'
      ? markList(exercise, read.list, parts)
      : exercise.kind === 'misfits' && read?.kind === 'misfits'
        ? markVerdicts(exercise, read.verdicts, parts)
        : exercise.rubric.map((line) => marked(line, unreadable));
  const sum = (numbers: number[]) => numbers.reduce((total, number) => total + number, 0);
  return {
    exercise: exercise.id,
    marks: sum(lines.map((line) => line.marks)),
    of: sum(lines.map((line) => line.of)),
    lines,
  };
}
