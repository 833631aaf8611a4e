/** Types of exercises, answers and marks, without zod. */
import type { z } from 'zod';
import type { Listed, PartClass } from '../parts/part.ts';
import type { brief, chooseExercise, demand, misfitsExercise, rubricLine } from './exercise.ts';

export type ExerciseId = string;
/** `answer` is the proof in the file that the exercise can be done; what browsers get does not hold it. */
export type ChooseExercise = Omit<z.infer<typeof chooseExercise>, 'answer'> & { answer?: Listed[] };
export type MisfitsExercise = z.infer<typeof misfitsExercise>;
export type Exercise = ChooseExercise | MisfitsExercise;
export type Brief = z.infer<typeof brief>;
export type Demand = z.infer<typeof demand> & { class: PartClass };
export type RubricLine = z.infer<typeof rubricLine>;

/** What a student hands in. Marks are never part of it. */
export type Answer =
  | { kind: 'choose'; list: Listed[] }
  | { kind: 'misfits'; verdicts: Record<string, 'fits' | 'does-not-fit' | 'cannot-tell'> };

/** One rubric line marked: how many of how many, why, and what would have earned more. */
export type MarkedLine = {
  line: string;
  says: string;
  marks: number;
  of: number;
  why: string;
  /** Absent when the line has full marks. */
  more?: string;
  /** Ids of the findings the mark follows from. */
  findings: string[];
};
export type Marked = { exercise: ExerciseId; marks: number; of: number; lines: MarkedLine[] };
