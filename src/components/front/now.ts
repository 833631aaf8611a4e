/** What to do first, and how far each evening is, from what the logbook holds. */
import type { Progress } from '../../logbook/progress.ts';
import type { LogEvent } from '../../logbook/types.ts';
import { capital } from '../../wording/phrases.ts';

/** Of the course, only what the front page needs. */
export type FrontCourse = {
  evenings: {
    n: number;
    title: string;
    /** "Tue 3 Nov". */
    day: string;
    lessons: FrontLesson[];
    card?: FrontCard;
  }[];
};
export type FrontLesson = {
  id: string;
  sheet: string;
  title: string;
  minutes: number;
  exercises: { id: string; title: string; minutes: number }[];
};
/** A procedure, as far as one evening takes it. */
export type FrontCard = {
  procedure: string;
  /** Id of the step that ends this evening's part. */
  until: string;
  /** Ids of all hold points, in order. */
  holds: string[];
};

type Evening = FrontCourse['evenings'][number];
export type EveningState = 'done' | 'here' | 'to-come';

/** One thing to do. `path` is a page of this site. */
export type Task = { path: string; says: string; minutes?: number };

export type Now = {
  /** Number of the evening it belongs to; absent when nothing waits. */
  evening?: number;
  /** That evening in words. */
  where: string;
  heading: string;
  says: string;
  /** Absent when nothing waits. */
  main?: Task;
  /** At most three. */
  others: Task[];
};

const lessonPath = ({ id }: FrontLesson) => `lessons/${id}/`;
const cardPath = ({ procedure }: FrontCard) => `card/${procedure}/`;
const exercisePath = (id: string) => `exercises/${id}/`;

function cardOf(card: FrontCard, known: Progress) {
  const opened = [...known.cards.values()].filter(({ procedure }) => procedure === card.procedure);
  return opened.find((one) => one.card === known.lastCard) ?? opened.at(-1);
}

/** A step that is repeated has a key for each time, `<step>@<what it is about>`. */
const cardIsDone = (card: FrontCard, known: Progress) =>
  [...(cardOf(card, known)?.ticked.keys() ?? [])].some((key) => key === card.until || key.startsWith(`${card.until}@`));

function isDone(evening: Evening, known: Progress): boolean {
  const { lessons, card } = evening;
  if (lessons.length === 0 && !card) return false;
  return (
    lessons.every(({ id, exercises }) => known.read.has(id) && exercises.every((one) => known.handedIn.has(one.id))) &&
    (!card || cardIsDone(card, known))
  );
}

/** The student is at the evening of the next act, else at the first that is not done; before the first entry, at none. */
export function statesOf({ evenings }: FrontCourse, known: Progress | undefined, now?: Now): EveningState[] {
  if (!known || known.entries === 0) return evenings.map(() => 'to-come');
  const at = evenings.findIndex(({ n }) => n === now?.evening);
  const here = at < 0 ? evenings.findIndex((evening) => !isDone(evening, known)) : at;
  return evenings.map((evening, at) => (isDone(evening, known) ? 'done' : at === here ? 'here' : 'to-come'));
}

type Waiting = {
  evening: Evening;
  task: Task;
  of: 'lesson' | 'exercise' | 'card';
  id: string;
  begun: boolean;
  /** False for an exercise whose sheet was never opened. */
  mayBegin: boolean;
  says: string;
};

/** Everything not done, in the order of the course. */
function waiting({ evenings }: FrontCourse, known: Progress): Waiting[] {
  return evenings.flatMap((evening) => {
    const { lessons, card } = evening;
    const tasks: Waiting[] = lessons.flatMap((lesson): Waiting[] => {
      const { id, sheet, title, minutes, exercises } = lesson;
      const begun = known.opened.has(id);
      const read: Waiting = {
        evening,
        of: 'lesson',
        id,
        begun,
        mayBegin: true,
        task: { path: lessonPath(lesson), says: `sheet ${sheet}: ${title}`, minutes },
        says: `About ${minutes} minutes.`,
      };
      const hand = exercises
        .filter((one) => !known.handedIn.has(one.id))
        .map(
          (one): Waiting => ({
            evening,
            of: 'exercise',
            id: one.id,
            begun: known.lists.has(one.id) || known.verdicts.has(one.id),
            mayBegin: begun || known.read.has(id),
            task: { path: exercisePath(one.id), says: one.title, minutes: one.minutes },
            says: `From sheet ${sheet}, not handed in yet. About ${one.minutes} minutes.`,
          }),
        );
      return known.read.has(id) ? hand : [read, ...hand];
    });
    if (!card || cardIsDone(card, known)) return tasks;
    const progress = cardOf(card, known);
    const steps = progress?.ticked.size ?? 0;
    const nextHold = card.holds.findIndex((id) => !progress?.ticked.has(id));
    const looks =
      nextHold < 0 ? '' : ` The instructor looks next at hold point ${nextHold + 1} of ${card.holds.length}.`;
    tasks.push({
      evening,
      of: 'card',
      id: card.procedure,
      begun: progress !== undefined,
      mayBegin: true,
      task: { path: cardPath(card), says: 'your job card' },
      says: `${steps === 0 ? 'No step done yet.' : `${steps} ${steps === 1 ? 'step' : 'steps'} done.`}${looks}`,
    });
    return tasks;
  });
}

/** Where the student left off: what the latest entry about a lesson, an exercise or a card is about. */
function leftOff(events: readonly LogEvent[], known: Progress): Pick<Waiting, 'of' | 'id'> | undefined {
  for (const event of [...events].reverse()) {
    if ('lesson' in event) return { of: 'lesson', id: event.lesson };
    if ('exercise' in event) return { of: 'exercise', id: event.exercise };
    const card = 'card' in event ? known.cards.get(event.card) : undefined;
    if (card) return { of: 'card', id: card.procedure };
  }
  return undefined;
}

/** `events` are the logbook's entries, oldest first, and `known` what they come to. */
export function nowFor(course: FrontCourse, events: readonly LogEvent[], known: Progress | undefined): Now {
  if (!known || known.entries === 0) return begin(course);
  const tasks = waiting(course, known);
  const left = leftOff(events, known);
  const main = tasks.find(({ of, id }) => left?.of === of && left.id === id) ?? tasks[0];
  if (!main) {
    return {
      where: `${course.evenings.length} of ${course.evenings.length} evenings`,
      heading: 'Nothing is waiting for you.',
      says: 'Every sheet is read, every exercise is handed in and the job card is done.',
      others: [],
    };
  }
  const { evening } = main;
  // One job card runs through several evenings; it is named once.
  const others = tasks.filter(
    ({ task, mayBegin }, at) =>
      mayBegin && task.path !== main.task.path && tasks.findIndex((one) => one.task.path === task.path) === at,
  );
  return {
    evening: evening.n,
    where: `Evening ${evening.n} of ${course.evenings.length}, ${evening.day}: ${evening.title}`,
    heading: `${main.begun ? 'Go on with' : main.of === 'exercise' ? 'Now you:' : main.of === 'card' ? 'Open' : 'Read'} ${main.task.says}`,
    says: main.says,
    main: { ...main.task, says: main.begun ? 'Go on' : main.of === 'card' ? 'Open the job card' : 'Begin' },
    others: others.slice(0, 3).map(({ task }) => ({ ...task, says: capital(task.says) })),
  };
}

/** Nobody knows yet who looks, so the other two who may are shown their way as well. */
function begin({ evenings }: FrontCourse): Now {
  const [evening] = evenings;
  const lesson = evening?.lessons[0];
  const card = evenings.find((one) => one.card)?.card;
  if (!evening || !lesson) return { where: '', heading: 'The course has no sheet yet.', says: '', others: [] };
  return {
    evening: evening.n,
    where: `Evening ${evening.n}, ${evening.day}: ${evening.title}`,
    heading: `Begin with sheet ${lesson.sheet}: ${lesson.title}`,
    says: `About ${lesson.minutes} minutes. What you do is kept on this device and nowhere else.`,
    main: { path: lessonPath(lesson), says: `Begin with sheet ${lesson.sheet}` },
    others: [
      ...(card ? [{ path: cardPath(card), says: 'Parts on the bench already? Open the job card' }] : []),
      { path: 'register/', says: 'You teach? Open the register' },
    ],
  };
}
