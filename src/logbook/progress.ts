/** What a logbook says of one student, gathered from its entries. */
import type { Answer, ExerciseId } from '../exercises/types.ts';
import type { PartsList } from '../parts/part.ts';
import type { LogEvent } from './types.ts';

export type CardProgress = {
  card: string;
  procedure: string;
  revision: number;
  list: PartsList;
  /** Keys of ticked steps, in the order they were ticked, each with when. */
  ticked: Map<string, string>;
  measured: Map<string, number>;
  /** Passed hold points by step key: who says so, and when. */
  holds: Map<string, { by: 'initials' | 'self'; initials?: string; at: string }>;
  openedAt: string;
  lastAt: string;
};

export type Progress = {
  student?: string;
  opened: Set<string>;
  read: Set<string>;
  /** Last choice for each `<lesson>#<question>`. */
  answers: Map<string, number>;
  /** The list last chosen in each exercise. */
  lists: Map<ExerciseId, PartsList>;
  /** The verdict last given to each statement, by exercise, then statement. */
  verdicts: Map<ExerciseId, Map<string, 'fits' | 'does-not-fit' | 'cannot-tell'>>;
  /** Measures the student took where the maker gives none, by exercise, then `<part>.<field>`. */
  noted: Map<ExerciseId, Map<string, number>>;
  handedIn: Map<ExerciseId, { answer: Answer; at: string }[]>;
  /** By card id, in the order they were first opened. */
  cards: Map<string, CardProgress>;
  lastLesson?: string;
  lastCard?: string;
  keptAt?: string;
  lastAt?: string;
  entries: number;
};

/** Gathers progress from entries, oldest first. Entries about a card that was never opened are passed over. */
export function progressOf(events: readonly LogEvent[]): Progress {
  const progress: Progress = {
    opened: new Set(),
    read: new Set(),
    answers: new Map(),
    lists: new Map(),
    verdicts: new Map(),
    noted: new Map(),
    handedIn: new Map(),
    cards: new Map(),
    entries: events.length,
  };
  for (const event of events) {
    progress.lastAt = event.at;
    take(progress, event);
  }
  return progress;
}

/** Every measure the student took, whatever the exercise; of two of one kind the one of the later exercise. */
export const allNoted = (progress: Progress | undefined): Map<string, number> =>
  new Map([...(progress?.noted.values() ?? [])].flatMap((noted) => [...noted]));

function take(progress: Progress, event: LogEvent): void {
  switch (event.act) {
    case 'named':
      progress.student = event.student;
      return;
    case 'lesson-opened':
      progress.opened.add(event.lesson);
      progress.lastLesson = event.lesson;
      return;
    case 'lesson-read':
      progress.read.add(event.lesson);
      return;
    case 'question-answered':
      progress.answers.set(`${event.lesson}#${event.question}`, event.choice);
      return;
    case 'list-changed':
      progress.lists.set(event.exercise, event.list);
      return;
    case 'verdict-given': {
      const given = progress.verdicts.get(event.exercise) ?? new Map();
      progress.verdicts.set(event.exercise, given.set(event.statement, event.verdict));
      return;
    }
    case 'measure-noted': {
      const noted = progress.noted.get(event.exercise) ?? new Map<string, number>();
      progress.noted.set(event.exercise, noted.set(`${event.part}.${event.field}`, event.value));
      return;
    }
    case 'handed-in': {
      const before = progress.handedIn.get(event.exercise) ?? [];
      progress.handedIn.set(event.exercise, [...before, { answer: event.answer, at: event.at }]);
      return;
    }
    case 'file-kept':
      progress.keptAt = event.at;
      return;
    case 'card-opened': {
      progress.lastCard = event.card;
      if (progress.cards.has(event.card)) return;
      progress.cards.set(event.card, {
        card: event.card,
        procedure: event.procedure,
        revision: event.revision,
        list: event.list,
        ticked: new Map(),
        measured: new Map(),
        holds: new Map(),
        openedAt: event.at,
        lastAt: event.at,
      });
      return;
    }
    default: {
      const card = progress.cards.get(event.card);
      if (!card) return;
      card.lastAt = event.at;
      progress.lastCard = event.card;
      if (event.act === 'step-ticked') card.ticked.set(event.step, event.at);
      if (event.act === 'step-unticked') {
        card.ticked.delete(event.step);
        card.holds.delete(event.step);
      }
      if (event.act === 'value-measured') card.measured.set(event.step, event.value);
      if (event.act === 'hold-passed') {
        card.holds.set(event.step, {
          by: event.by,
          at: event.at,
          ...(event.initials === undefined ? {} : { initials: event.initials }),
        });
      }
    }
  }
}
