/** The logbook: an append-only chain of facts. Marks are never in it. */
import type { Answer, ExerciseId } from '../exercises/types.ts';
import type { PartsList } from '../parts/part.ts';

/** What happened, without when. Each kind keeps its meaning for ever. */
export type Act =
  | { act: 'named'; student: string }
  | { act: 'lesson-opened'; lesson: string }
  | { act: 'lesson-read'; lesson: string }
  | { act: 'question-answered'; lesson: string; question: string; choice: number }
  | { act: 'list-changed'; exercise: ExerciseId; list: PartsList }
  | { act: 'verdict-given'; exercise: ExerciseId; statement: string; verdict: 'fits' | 'does-not-fit' | 'cannot-tell' }
  | { act: 'measure-noted'; exercise: ExerciseId; part: string; field: string; value: number }
  | { act: 'handed-in'; exercise: ExerciseId; answer: Answer }
  | { act: 'card-opened'; card: string; procedure: string; revision: number; list: PartsList }
  | { act: 'step-ticked'; card: string; step: string }
  | { act: 'step-unticked'; card: string; step: string }
  | { act: 'value-measured'; card: string; step: string; value: number }
  | { act: 'hold-passed'; card: string; step: string; by: 'initials' | 'self'; initials?: string }
  | { act: 'file-kept' };

export type LogEvent = Act & {
  /** 1, 2, 3 … */
  n: number;
  /** UTC, ISO 8601 with Z. */
  at: string;
  /** SHA-256 of the canonical JSON of the event before; 64 zeros for the first. */
  before: string;
};

export type Logbook = {
  format: 'benchbook-logbook';
  version: 1;
  /** Random, made once per device: tells two students of one name apart. */
  id: string;
  /** Fingerprint of the content the last event was made with. */
  content: string;
  /** Digest of the last event, so that the last one cannot be changed unseen either. */
  head: string;
  events: LogEvent[];
};

/** Something odd about a logbook, told to a person; the rest of it still counts. */
export type Remark = {
  id:
    | 'not-a-logbook'
    | 'too-large'
    | 'not-opened'
    | 'newer-version'
    | 'cut-short'
    | 'foreign-field'
    | 'unreadable-entry'
    | 'changed-afterwards'
    | 'step-out-of-order'
    | 'unknown-step'
    | 'unknown-part'
    | 'unknown-exercise'
    | 'other-content'
    | 'older-copy'
    | 'parted-copy'
    | 'same-name';
  /** Whole sentences: what is odd, where, and what was done about it. */
  says: string;
  /** 1-based number of the entry it is about. */
  entry?: number;
};
