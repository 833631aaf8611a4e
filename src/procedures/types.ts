/** The typed step graph a procedure is compiled to, and the job card it is tailored into. */
import type { JointId, KindName, UnitId } from '../fit/model.ts';
import type { PartClass, PartsList } from '../parts/part.ts';

export type StepId = string;
export type SignalWord = 'danger' | 'warning' | 'caution' | 'notice';
export type Caution = { signal: SignalWord; text: string };

/** A value read off an instrument; outside `low`..`high` the card stops. */
export type Measure = {
  quantity: string;
  unit: string;
  nominal: number;
  low: number;
  high: number;
  instrument: string;
  source: string;
  /** What an out-of-tolerance value means, and where to go. */
  ifOut: string;
};

/** Drawings a step may ask for; made from the parts on the list. */
export type StepDrawing = 'board' | 'module' | 'case-side' | 'none';

export type Step = {
  id: StepId;
  chapter: string;
  /** One action, imperative. May hold {part}, {place}, {n}, {of}, filled in when tailored. */
  action: string;
  /** The kind of joint this step makes. Repeated for each joint of the kind; dropped when there is none. */
  joints?: KindName;
  /** Repeated for each joint of this kind, which another step makes: opening, routing, fastening. */
  about?: KindName;
  /** Kinds of joint that come about by the same act, on the part this step joins. Not repeated for. */
  also?: KindName[];
  /** Of those joints, only the ones whose need's part is of this class. */
  of?: PartClass;
  /** Repeated for each unit of this class (unpacking, checking); dropped when there is none. */
  each?: PartClass;
  after: StepId[];
  /** Ids of the procedure's tools; on a card, their names. */
  tools: string[];
  /** Optimistic, usual, slow. */
  minutes: [number, number, number];
  cautions: Caution[];
  /** What it must look like when right. */
  right: string;
  /** The state to be true, as on the button: "Latch closed". */
  claim: string;
  ifNot: { sees: string; does: string }[];
  drawing: StepDrawing;
  measure?: Measure;
  /** Where work stops until the instructor has looked: what is looked at. */
  hold?: string[];
  /** Where it stands in its file, for messages; what browsers get does not hold it. */
  at?: { file: string; line: number; column: number };
};

export type Chapter = { id: string; title: string };
export type Procedure = {
  id: string;
  title: string;
  revision: number;
  tools: { id: string; name: string }[];
  chapters: Chapter[];
  /** In authored order; `after` already resolved (default: the step above). */
  steps: Step[];
};

/** One step of one card: the step, for one joint or unit, its words filled in. `key` is stable for one list. */
export type CardStep = Omit<Step, 'id' | 'after' | 'joints' | 'about' | 'also' | 'each' | 'of' | 'at'> & {
  key: string;
  n: number;
  step: StepId;
  /** The joint made, or the joint this step is about. */
  joint?: JointId;
  /** The joints that are made when this step is done. */
  makes: JointId[];
  unit?: UnitId;
  /** Keys that must be ticked before this one. */
  after: string[];
  /** 1, 2, 3… when this is a hold point. */
  holdNumber?: number;
};

export type JobCard = {
  /** `<procedure>-<first eight hex figures of the list's digest>`. */
  id: string;
  procedure: string;
  revision: number;
  title: string;
  /** Sorted by part id, one line a part. */
  list: PartsList;
  /** Only chapters that have a step. `mat`: names of the parts handled that no chapter before has fitted. */
  chapters: (Chapter & { mat: string[]; tools: string[] })[];
  steps: CardStep[];
  holds: number;
  /** Joints of the hookup that no step of the procedure makes: a card with any is no card to build by. */
  unmade: JointId[];
};
