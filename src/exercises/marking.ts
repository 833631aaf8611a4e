/** What marking lists and marking verdicts share: one line earned or not, and how reasons are put into words. */
import type { MarkedLine, RubricLine } from './types.ts';

/** A line earned, and why; with `more`, a line not earned, and what would earn it. */
export type Judged = { why: string; more?: string; findings?: string[] };

export const marked = (line: RubricLine, { why, more, findings }: Judged): MarkedLine => ({
  line: line.id,
  says: line.says,
  marks: more === undefined ? line.marks : 0,
  of: line.marks,
  why,
  ...(more === undefined ? {} : { more }),
  findings: findings ?? [],
});

export const unreadable: Judged = {
  why: 'What was handed in cannot be read as an answer to this exercise.',
  more: 'Open the exercise and hand it in once more.',
};

/** For a line that no answer can earn; the content check refuses such a line. */
export const aboutNothing: Judged = {
  why: 'This line asks for something that is not part of the exercise.',
  more: 'Tell your instructor, who can put the exercise right.',
};
