/** The register: what an instructor sees of a class, made from logbooks and marked again. */
import type { Marked } from '../exercises/types.ts';
import type { Remark } from '../logbook/types.ts';
import type { PartsList } from '../parts/part.ts';

/** One file as it was dropped. `text` is absent when the file is too large to be opened, or could not be. */
export type LogbookFile = { name: string; bytes: number; text?: string };

export type LessonRow = {
  lesson: string;
  sheet: string;
  title: string;
  opened: boolean;
  read: boolean;
  /** Questions answered right, by the last answer to each. */
  right: number;
  of: number;
};

export type ExerciseRow = {
  exercise: string;
  title: string;
  attempts: number;
  of: number;
  /** The attempt with the most marks, the first of equals; absent before the first hand-in. */
  best?: Marked & { at: string };
  /** Rules that the list or answer last handed in lost marks by, by id. */
  missed: string[];
  /** Measures the student took, on which the marks rest: "Height of the Skarn Tall", 155, "mm". */
  noted: { what: string; value: number; unit: string }[];
};

export type CardRow = {
  card: string;
  procedure: string;
  title: string;
  revision: number;
  list: PartsList;
  /** Steps ticked with everything before them ticked too. */
  done: number;
  of: number;
  /** The first step not done, in the order of the card; absent when all are. */
  now?: { n: number; action: string; hold: boolean };
  /** `at` is the number of the step, `n` of the hold point. */
  holds: {
    at: number;
    n: number;
    action: string;
    passed?: { by: 'initials' | 'self'; initials?: string; at: string };
  }[];
  measured: { n: number; quantity: string; value: number; unit: string; within: boolean }[];
};

export type Row = {
  /** Unique in a register: the logbook's id, with `-2`, `-3` … for copies that parted. */
  key: string;
  /** The name or bench number typed by the student; "no name" when none was. */
  student: string;
  /** The file the row was made from, then older copies of it. */
  files: string[];
  remarks: Remark[];
  lessons: LessonRow[];
  exercises: ExerciseRow[];
  card?: CardRow;
  lastAt?: string;
};

export type Register = {
  /** Fingerprint of the content that marked it. */
  content: string;
  /** By student, then key. */
  rows: Row[];
  /** Files that gave no row, each with why. */
  aside: { file: string; remarks: Remark[] }[];
  /** Rules that answers last handed in lost marks by, most students first. */
  missed: { rule: string; title: string; lesson: string; students: string[] }[];
};
