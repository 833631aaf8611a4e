/** Reads everything in `content/` and says all that is amiss with it in one run. */
import { statSync } from 'node:fs';
import type { Content, Course, Source, WorkedBuild } from '../content-types.ts';
import type { Exercise } from '../exercises/types.ts';
import { rules } from '../fit/rules/index.ts';
import { type Part, partClasses } from '../parts/part.ts';
import { compileProcedure } from '../procedures/compile.ts';
import type { Procedure } from '../procedures/types.ts';
import { byId } from '../units/ids.ts';
import { type Fault, sortFaults } from '../wording/fault.ts';
import { fingerprintOf } from './content/bundle.ts';
import { checkExercise, checkRubric, exerciseReferences, readExercise } from './content/exercises.ts';
import { type ContentFile, findFiles, type Kind } from './content/files.ts';
import { checkLessons, readLesson } from './content/lessons.ts';
import { checkClassFolders, checkSense, partReferences, readPart } from './content/parts.ts';
import { checkReferences, expectedId, type KnownIds, type Reference } from './content/references.ts';
import { course, source, workedBuild } from './content/schemas.ts';
import { checkDoubledIds, type Read, readThing } from './content/things.ts';

const courseReferences: readonly Reference[] = [
  { path: ['evenings', '*', 'lessons', '*'], target: 'lesson' },
  { path: ['evenings', '*', 'procedure'], target: 'procedure' },
];
const workedBuildReferences: readonly Reference[] = [{ path: ['list', '*', 'part'], target: 'part' }];

/**
 * @param dir the content folder, `content` when run from the project's top. Whatever it is called, faults name
 *   its files as `content/…`.
 * @returns content when there is no fault; otherwise every fault of every file, sorted.
 */
export function loadContent(dir: string): { content?: Content; faults: Fault[] } {
  if (!statSync(dir, { throwIfNoEntry: false })?.isDirectory()) {
    const nowhere = { file: 'content', line: 1, column: 1, id: 'file/no-content', actual: 'no folder', expected: dir };
    return { faults: [nowhere] };
  }
  const { files, faults } = findFiles(dir);
  const of = (kind: Kind): ContentFile[] => files.filter((file) => file.kind === kind);

  checkClassFolders(of('parts'), faults);
  const parts = of('parts').map((file) => readPart(file, faults));
  const sources = of('sources').map((file) => readThing<Source>(file, source, thing('source'), faults));
  const courses = of('courses').map((file) => readThing<Course>(file, course, thing('course'), faults));
  const builds = of('worked-builds').map((file) =>
    readThing<WorkedBuild>(file, workedBuild, thing('worked-build'), faults),
  );
  const exercises = of('exercises').map((file) => readExercise(file, faults));
  const lessons = of('lessons').map((file) => readLesson(file, faults));
  const procedures = of('procedures').map((file) => readProcedure(file, faults));

  checkDoubledIds(parts, 'part', faults);
  checkDoubledIds(exercises, 'exercise', faults);
  checkOneCourse(courses, faults);

  // A file's name is the id of what it holds, so that a slip inside a file does not spread to those that name it.
  const known: KnownIds = {
    part: namesOf(of('parts')),
    source: namesOf(of('sources')),
    lesson: new Set(lessons.map(({ id }) => id)),
    procedure: namesOf(of('procedures')),
    exercise: namesOf(of('exercises')),
    rule: new Set(rules.map(({ id }) => id)),
  };
  const refer = (reads: readonly Read<unknown>[], area: string, references: readonly Reference[]) => {
    for (const { yaml } of reads) if (yaml) faults.push(...checkReferences(yaml, area, references, known));
  };
  refer(parts, 'part', partReferences);
  checkSense(parts, faults);
  refer(exercises, 'exercise', exerciseReferences);
  for (const { yaml } of exercises) if (yaml) faults.push(...checkRubric(yaml));
  refer(courses, 'course', courseReferences);
  refer(builds, 'worked-build', workedBuildReferences);
  faults.push(...checkLessons(lessons, new Map(exercises.map(({ from, value }) => [from.name, value?.kind])), known));
  faults.push(...checkMeasures(procedures, known));

  const goodParts = valuesOf(parts);
  const classes = new Map(of('parts').map(({ name, folder }) => [name, folder]));
  const wrong = new Set(faults.map(({ file }) => file));
  for (const { from, value, yaml } of exercises) {
    if (value && yaml) faults.push(...checkExercise(value, yaml, classes, wrong.has(from.file) ? [] : goodParts));
  }

  const [theCourse] = valuesOf(courses);
  if (faults.length > 0 || !theCourse) return { faults: sortFaults(oneForEach(faults)) };
  const goodLessons = lessons.flatMap(({ value }) => (value ? [value] : [])).sort((a, b) => byId(a.sheet, b.sheet));
  const met = goodLessons.flatMap((lesson) => lesson.exercises);
  const content = {
    course: theCourse,
    parts: goodParts.sort(byClass),
    sources: valuesOf(sources),
    lessons: goodLessons,
    exercises: valuesOf(exercises).sort(byMeeting(met)),
    procedures: procedures.filter((procedure) => procedure !== undefined),
    workedBuilds: valuesOf(builds),
  };
  return { content: { ...content, fingerprint: fingerprintOf(content) }, faults };
}

/** An id that is no id at all is told once, as the unknown id that it is. */
const oneForEach = (faults: readonly Fault[]) =>
  faults.filter(
    (fault) =>
      !fault.id.endsWith('/wrong-form') ||
      !faults.some((other) => other.id.includes('/unknown-') && showPlace(other) === showPlace(fault)),
  );
const showPlace = ({ file, line, column }: Fault) => `${file}:${line}:${column}`;

const thing = (area: string) => ({ area, noun: area.replaceAll('-', ' ') });
const namesOf = (files: readonly ContentFile[]) => new Set(files.map(({ name }) => name));
const valuesOf = <T>(reads: readonly Read<T>[]): T[] =>
  reads.flatMap(({ value }) => (value === undefined ? [] : [value]));

const byClass = (a: Part, b: Part) => partClasses.indexOf(a.class) - partClasses.indexOf(b.class) || byId(a.id, b.id);

/** In the order in which lessons show them; those that no lesson shows come last. */
const byMeeting = (met: readonly string[]) => (a: Exercise, b: Exercise) => {
  const order = ({ id }: Exercise) => (met.includes(id) ? met.indexOf(id) : met.length);
  return order(a) - order(b) || byId(a.id, b.id);
};

function readProcedure({ file, text }: ContentFile, faults: Fault[]): Procedure | undefined {
  const compiled = compileProcedure(file, text);
  faults.push(...compiled.faults);
  return compiled.procedure;
}

function checkOneCourse(courses: readonly Read<Course>[], faults: Fault[]): void {
  const id = 'course/one-course';
  const [first, ...more] = courses;
  if (!first) {
    const expected = 'one file with the course';
    faults.push({ file: 'content/courses', line: 1, column: 1, id, actual: 'no course', expected });
  }
  for (const { from } of more) {
    const expected = 'one file in content/courses';
    const other = { text: 'the first course is here', file: first?.from.file ?? '', line: 1, column: 1 };
    faults.push({ file: from.file, line: 1, column: 1, id, actual: 'a second course', expected, other });
  }
}

/** The file a measure's limits come from; the step's place is the nearest that is known. */
function checkMeasures(procedures: readonly (Procedure | undefined)[], known: KnownIds): Fault[] {
  return procedures.flatMap((procedure) =>
    (procedure?.steps ?? []).flatMap(({ measure, at }): Fault[] => {
      if (!measure || !at || known.source.has(measure.source)) return [];
      const expected = expectedId(measure.source, 'source', known);
      return [{ ...at, id: 'procedure/unknown-source', actual: `"${measure.source}"`, expected }];
    }),
  );
}
