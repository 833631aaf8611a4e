/** Everything in `content/`, compiled: what pages, islands and the command line share. */
import type { Exercise } from './exercises/types.ts';
import type { Listed, Part } from './parts/part.ts';
import type { Procedure } from './procedures/types.ts';

/** A document or practice that facts come from. */
export type Source = {
  id: string;
  title: string;
  /** Who publishes it; "common practice" or "invented" where nobody does. */
  publisher: string;
  kind: 'standard' | 'maker' | 'practice' | 'invented';
  /** Edition, section or year, as one would cite it. */
  where?: string;
};

export type LessonInfo = {
  /** `<unit>/<name>`, from its path. */
  id: string;
  /** Sheet number, `2.1`. */
  sheet: string;
  title: string;
  lead: string;
  minutes: number;
  /** Ids of the questions, in order, each with the index of its right choice. */
  questions: { id: string; right: number }[];
  /** Exercises met in the lesson. */
  exercises: string[];
};

export type Evening = {
  n: number;
  title: string;
  /** ISO date. */
  date: string;
  does: string;
  elevation: 'monitor' | 'drawers' | 'board' | 'case' | 'meter' | 'desk';
  lessons: string[];
  procedure?: string;
  /** The step with which this evening's part of the procedure ends; the last one when absent. */
  until?: string;
};

export type Course = {
  id: string;
  title: string;
  place: string;
  revision: string;
  /** Said on the front page: the scenario is made up. */
  invented: string;
  evenings: Evening[];
};

/** A whole machine that lessons point at and the printed job card builds. */
export type WorkedBuild = { id: string; title: string; says: string; list: Listed[] };

export type Content = {
  course: Course;
  parts: Part[];
  sources: Source[];
  lessons: LessonInfo[];
  exercises: Exercise[];
  procedures: Procedure[];
  workedBuilds: WorkedBuild[];
  /** First 16 hex figures of the SHA-256 of everything above and the core's version. */
  fingerprint: string;
};
