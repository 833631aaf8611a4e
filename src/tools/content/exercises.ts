/** Reads exercise files, and asks the core whether each can be done. */
import { z } from 'zod';
import { chooseExercise, misfitsExercise } from '../../exercises/exercise.ts';
import { proofSlips, type Slip, senseSlips } from '../../exercises/prove.ts';
import type { ChooseExercise, Exercise } from '../../exercises/types.ts';
import { partSchemas } from '../../parts/classes/index.ts';
import type { Part, PartClass } from '../../parts/part.ts';
import type { Fault } from '../../wording/fault.ts';
import type { ContentFile } from './files.ts';
import { entriesAt, type Reference } from './references.ts';
import { fieldMeant, shown } from './shape.ts';
import { checkThing, isGroup, type Read, readFields } from './things.ts';
import type { YamlFile } from './yaml-file.ts';

export const exerciseReferences: readonly Reference[] = [
  { path: ['lesson'], target: 'lesson' },
  { path: ['procedure'], target: 'procedure' },
  { path: ['shelf', '*', 'parts', '*'], target: 'part' },
  { path: ['answer', '*', 'part'], target: 'part' },
  { path: ['list', '*', 'part'], target: 'part' },
  { path: ['statements', '*', 'rule'], target: 'rule' },
];

const kind = { area: 'exercise', noun: 'exercise' };

export function readExercise(from: ContentFile, faults: Fault[]): Read<Exercise> {
  const yaml = readFields(from, kind, faults);
  if (!yaml) return { from };
  const named = isGroup(yaml.data) ? yaml.data['kind'] : undefined;
  if (named === 'choose') return { from, yaml, ...checkThing(yaml, from, chooseExercise, kind, faults) };
  if (named === 'misfits') return { from, yaml, ...checkThing(yaml, from, misfitsExercise, kind, faults) };
  const id = named === undefined ? 'exercise/missing-field' : 'exercise/unknown-word';
  const actual = named === undefined ? 'exercise without kind' : shown(named);
  const expected = `${named === undefined ? 'kind: ' : ''}choose or misfits`;
  faults.push({ file: from.file, ...yaml.valueAt(['kind']), id, actual, expected });
  return { from, yaml };
}

/** Ids that a rubric uses and the same file must have. */
const rubricNames = [
  { id: 'unknown-demand', used: 'demand', given: ['brief', 'demands', '*', 'id'], what: 'demands of the brief' },
  { id: 'unknown-statement', used: 'statement', given: ['statements', '*', 'id'], what: 'statements' },
];

/** Looks at the data as it stands, so that slips elsewhere in the file hide nothing here. */
export function checkRubric(yaml: YamlFile): Fault[] {
  return rubricNames.flatMap(({ id, used, given, what }) => {
    const ids = entriesAt(yaml.data, given).map(({ value }) => value);
    const expected = `one of the ${what}${ids.length > 0 ? `: ${ids.join(', ')}` : ', of which there are none'}`;
    return entriesAt(yaml.data, ['rubric', '*', 'for', used])
      .filter(({ value }) => typeof value === 'string' && !ids.includes(value))
      .map(({ at, value }) => ({
        file: yaml.file,
        ...yaml.valueAt(at),
        id: `exercise/${id}`,
        actual: shown(value),
        expected,
      }));
  });
}

/**
 * @param classes the class of every part there is a file for, whole or not.
 * @param parts the whole ones; an exercise that names any other is not put to the proof.
 */
export function checkExercise(
  exercise: Exercise,
  yaml: YamlFile,
  classes: ReadonlyMap<string, string>,
  parts: readonly Part[],
): Fault[] {
  const sense = [
    ...senseSlips(exercise),
    ...(exercise.kind === 'choose' ? [...checkClasses(exercise, classes), ...checkDemands(exercise)] : []),
  ];
  const whole = new Set(parts.map(({ id }) => id));
  const isProvable = sense.length === 0 && partsOf(exercise).every((id) => whole.has(id));
  const slips = isProvable ? proofSlips(exercise, parts) : sense;
  return slips.map(({ path, ...slip }) => ({ file: yaml.file, ...yaml.valueAt(path), ...slip }));
}

const partsOf = (exercise: Exercise): string[] =>
  exercise.kind === 'choose'
    ? [...exercise.shelf.flatMap(({ parts }) => parts), ...(exercise.answer ?? []).map(({ part }) => part)]
    : exercise.list.map(({ part }) => part);

function checkClasses({ shelf }: ChooseExercise, classes: ReadonlyMap<string, string>): Slip[] {
  return shelf.flatMap((position, index) =>
    position.parts.flatMap((part, n): Slip[] => {
      const of = classes.get(part);
      if (of === undefined || of === position.class) return [];
      const path = ['shelf', index, 'parts', n];
      const expected = `a part of class ${position.class}`;
      return [{ path, id: 'exercise/part-and-class', actual: `${shown(part)}, a ${of}`, expected }];
    }),
  );
}

/** A demand reads a field that is a number in its class. */
function checkDemands({ brief }: ChooseExercise): Slip[] {
  return brief.demands.flatMap((demand, index): Slip[] => {
    const { shape } = partSchemas[demand.class as PartClass];
    const fields = Object.entries(shape).flatMap(([name, field]) =>
      field instanceof z.ZodOptional && field.unwrap() instanceof z.ZodNumber ? [name] : [],
    );
    if (fields.includes(demand.field)) return [];
    const expected = fieldMeant(demand.field, fields) ?? `a field of ${demand.class} that is a number`;
    return [
      { path: ['brief', 'demands', index, 'field'], id: 'exercise/unknown-field', actual: demand.field, expected },
    ];
  });
}
