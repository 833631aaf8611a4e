/** Reads lessons: what they say of themselves, their questions, and the exercises met in them. */
import type { Nodes } from 'mdast';
import { visit } from 'unist-util-visit';
import type { LessonInfo } from '../../content-types.ts';
import { isTag, openSource, type Place, parse, placeOf, type Tag } from '../../procedures/syntax/source.ts';
import type { Fault } from '../../wording/fault.ts';
import type { ContentFile } from './files.ts';
import { expectedId, type KnownIds } from './references.ts';
import { lessonFront } from './schemas.ts';
import { checkShape, shown } from './shape.ts';
import { readYaml } from './yaml-file.ts';

/** The tag that shows an exercise, by the exercise's kind. */
const tags = { PartsChecker: 'choose', Misfits: 'misfits' } as const;
type ExerciseTag = keyof typeof tags;
const isExerciseTag = (name: unknown): name is ExerciseTag => typeof name === 'string' && Object.hasOwn(tags, name);

export type ReadLesson = {
  from: ContentFile;
  id: string;
  /** There only when the file has no slip of its own. */
  value?: LessonInfo;
  shows: { exercise: string; tag: ExerciseTag; at: Place }[];
  sheetAt?: Place;
};

export function readLesson(from: ContentFile, faults: Fault[]): ReadLesson {
  const id = `${from.folder}/${from.name}`;
  const source = openSource(from.file, from.text, 'lesson');
  const root = parse(source);
  const read: ReadLesson = { from, id, shows: [] };
  if (root) {
    const front = readFront(root, from, source.faults);
    const questions: LessonInfo['questions'] = [];
    const firstAsked = new Map<string, Place>();
    visit(root, (node: Nodes) => {
      if (!isTag(node)) return;
      if (node.name === 'Question') {
        const question = readQuestion(node, source.fault);
        if (!question) return;
        const before = firstAsked.get(question.id);
        if (before) {
          const other = { text: 'the question was first named here', at: before };
          source.fault('doubled-id', question.at, `${shown(question.id)} a second time`, 'an id of its own', other);
        } else firstAsked.set(question.id, question.at);
        questions.push({ id: question.id, right: question.right });
      } else if (isExerciseTag(node.name)) {
        const exercise = attribute(node, 'exercise');
        if (exercise?.text) read.shows.push({ exercise: exercise.text, tag: node.name, at: exercise.at });
        else source.fault('missing-exercise', placeOf(node), `<${node.name}> without exercise`, 'exercise="<id>"');
      }
    });
    if (front) {
      read.sheetAt = front.sheetAt;
      const exercises = [...new Set(read.shows.map(({ exercise }) => exercise))];
      if (source.faults.length === 0) read.value = { id, ...front.fields, questions, exercises };
    }
  }
  faults.push(...source.faults);
  return read;
}

type Front = { fields: Pick<LessonInfo, 'title' | 'sheet' | 'lead' | 'minutes'>; sheetAt: Place };

function readFront(root: Extract<Nodes, { type: 'root' }>, from: ContentFile, faults: Fault[]): Front | undefined {
  const node = root.children.find((child) => child.type === 'yaml');
  if (!node) {
    const expected = 'title, sheet, lead and minutes between two lines of ---';
    faults.push({
      file: from.file,
      line: 1,
      column: 1,
      id: 'lesson/no-fields',
      actual: 'a lesson that begins without them',
      expected,
    });
    return undefined;
  }
  const { yaml, faults: slips } = readYaml(from.file, node.value, placeOf(node).line + 1);
  faults.push(...slips);
  if (!yaml) return undefined;
  const { value, faults: shape } = checkShape(yaml, lessonFront, { area: 'lesson', noun: 'lesson' });
  faults.push(...shape);
  return value && { fields: value, sheetAt: yaml.valueAt(['sheet']) };
}

type Telling = ReturnType<typeof openSource>['fault'];

/** The index of the right choice counts the choices from 0, as a logbook does. */
function readQuestion(tag: Tag, fault: Telling): { id: string; right: number; at: Place } | undefined {
  const id = attribute(tag, 'id');
  if (!id?.text) {
    fault('missing-id', placeOf(tag), '<Question> without id', 'id="<small letters, figures and dashes>"');
    return undefined;
  }
  const choices: Tag[] = [];
  visit(tag, (node: Nodes) => {
    if (isTag(node) && node.name === 'Choice') choices.push(node);
  });
  const isRight = (choice: Tag) => attribute(choice, 'right') !== undefined;
  const right = choices.findIndex(isRight);
  const rights = choices.filter(isRight).length;
  if (choices.length < 2) {
    fault(
      'few-choices',
      placeOf(tag),
      `question with ${choices.length === 1 ? 'one choice' : 'no choice'}`,
      'two choices or more',
    );
  } else if (rights !== 1) {
    fault(
      'right-choice',
      placeOf(tag),
      `question with ${rights === 0 ? 'no' : rights} right ${rights < 2 ? 'choice' : 'choices'}`,
      'one <Choice right>',
    );
  }
  return { id: id.text, right, at: id.at };
}

/** An attribute and its words: empty when it stands by itself, and when it is not plain text. */
function attribute(tag: Tag, name: string): { text: string; at: Place } | undefined {
  const found = tag.attributes.find((one) => one.type === 'mdxJsxAttribute' && one.name === name);
  return found && { text: typeof found.value === 'string' ? found.value : '', at: placeOf(found) };
}

/** What only the other files can show: exercises that are not there or of another kind, and a sheet number used twice. */
export function checkLessons(
  lessons: readonly ReadLesson[],
  kinds: ReadonlyMap<string, string | undefined>,
  known: KnownIds,
): Fault[] {
  const faults: Fault[] = [];
  const firstSheet = new Map<string, ReadLesson>();
  for (const lesson of lessons) {
    const { file } = lesson.from;
    for (const { exercise, tag, at } of lesson.shows) {
      const kind = kinds.get(exercise);
      if (!known.exercise.has(exercise)) {
        const expected = expectedId(exercise, 'exercise', known);
        faults.push({ file, ...at, id: 'lesson/unknown-exercise', actual: shown(exercise), expected });
      } else if (kind !== undefined && kind !== tags[tag]) {
        const expected = `an exercise of kind ${tags[tag]}`;
        faults.push({
          file,
          ...at,
          id: 'lesson/exercise-and-tag',
          actual: `${shown(exercise)}, of kind ${kind}`,
          expected,
        });
      }
    }
    const sheet = lesson.value?.sheet;
    if (sheet === undefined || !lesson.sheetAt) continue;
    const before = firstSheet.get(sheet);
    if (!before?.sheetAt) {
      firstSheet.set(sheet, lesson);
      continue;
    }
    const other = { text: 'the sheet was first numbered here', file: before.from.file, ...before.sheetAt };
    const actual = `${shown(sheet)} a second time`;
    faults.push({
      file,
      ...lesson.sheetAt,
      id: 'lesson/doubled-sheet',
      actual,
      expected: 'a sheet number of its own',
      other,
    });
  }
  return faults;
}
