/**
 * A procedure made into the job card of one parts list: a step for each joint and each part there is,
 * its words filled in, in an order that can be followed as it stands. Pure; runs in a browser.
 */
import type { Joint, JointId, UnitId } from '../fit/model.ts';
import { unitOf } from '../fit/needs/names.ts';
import type { FitReport } from '../fit/report.ts';
import type { Listed, PartsList } from '../parts/part.ts';
import { digestOf } from '../units/digest.ts';
import { byId } from '../units/ids.ts';
import { placeName } from '../wording/places.ts';
import type { CardStep, JobCard, Procedure, Step, StepId } from './types.ts';
import { mayBeDone } from './working.ts';

/** What one repeat of a step is about: a joint with its two parts, one part, or nothing in particular. */
type Subject = { joint?: Joint; unit?: UnitId; words: Record<string, string> };

/**
 * `report` is the fit report of `list`. Steps for kinds of joint and classes of part that the report does
 * not have are left out; what came after them waits for what they waited for. Never throws: a list with
 * left-over needs gives a card without the steps for them, and joints that no step makes are named in `unmade`.
 */
export function tailor(procedure: Procedure, list: PartsList, report: FitReport): JobCard {
  const canonical = sortList(list);
  const toolNames = new Map(procedure.tools.map((tool) => [tool.id, tool.name]));
  const keys = new Map<StepId, string[]>();
  const steps: CardStep[] = [];
  let holds = 0;

  for (const step of procedure.steps) {
    const subjects = subjectsOf(step, report);
    const after = afterKeys(step, keys);
    keys.set(step.id, subjects.length > 0 ? subjects.map((subject) => keyOf(step, subject)) : after);
    for (const subject of subjects) {
      if (step.hold) holds += 1;
      steps.push({
        ...fillIn(step, subject.words),
        key: keyOf(step, subject),
        n: steps.length + 1,
        step: step.id,
        ...(subject.joint ? { joint: subject.joint.id } : {}),
        ...(subject.unit ? { unit: subject.unit } : {}),
        makes: madeBy(step, subject, report),
        after,
        tools: step.tools.map((id) => toolNames.get(id) ?? id),
        ...(step.hold ? { holdNumber: holds } : {}),
      });
    }
  }

  const made = new Set(steps.flatMap(({ makes }) => makes));
  return {
    id: `${procedure.id}-${digestOf(canonical).slice(0, 8)}`,
    procedure: procedure.id,
    revision: procedure.revision,
    title: procedure.title,
    list: canonical,
    chapters: chaptersOf(procedure, steps, report),
    steps,
    holds,
    unmade: report.joints
      .map(({ id }) => id)
      .filter((id) => !made.has(id))
      .sort(byId),
  };
}

/** One line a part, by part id: the same list however it was written down. */
function sortList(list: PartsList): Listed[] {
  const quantities = new Map<string, number>();
  for (const { part, quantity } of list) quantities.set(part, (quantities.get(part) ?? 0) + quantity);
  return [...quantities].map(([part, quantity]) => ({ part, quantity })).sort((a, b) => byId(a.part, b.part));
}

function keyOf(step: Step, subject: Subject): string {
  const about = subject.joint?.id ?? subject.unit;
  return about === undefined ? step.id : `${step.id}@${about}`;
}

function subjectsOf(step: Step, report: FitReport): Subject[] {
  const units = new Map(report.units.map((unit) => [unit.id, unit]));
  const nameOf = (unit: UnitId) => units.get(unit)?.name ?? unit;
  const counted = (subjects: Omit<Subject, 'words'>[], words: (subject: Omit<Subject, 'words'>) => Subject['words']) =>
    subjects.map(
      (subject, index): Subject => ({
        ...subject,
        words: { ...words(subject), n: String(index + 1), of: String(subjects.length) },
      }),
    );

  const kind = step.joints ?? step.about;
  if (kind) {
    const joints = report.joints
      .filter((joint) => joint.kind === kind)
      .filter((joint) => step.of === undefined || units.get(unitOf(joint.need))?.class === step.of)
      .sort((a, b) => byId(a.place, b.place) || byId(a.id, b.id));
    return counted(
      joints.map((joint) => ({ joint, unit: unitOf(joint.need) })),
      ({ joint, unit = '' }) => ({ part: nameOf(unit), place: joint ? placeName(joint.kind, joint.place) : '' }),
    );
  }
  if (step.each) {
    const parts = report.units.filter((unit) => unit.class === step.each).sort((a, b) => byId(a.id, b.id));
    return counted(
      parts.map(({ id }) => ({ unit: id })),
      ({ unit = '' }) => ({ part: nameOf(unit) }),
    );
  }
  return [{ words: {} }];
}

/** The joint itself, and the joints of the kinds in `also` that touch the part joined. */
function madeBy(step: Step, subject: Subject, report: FitReport): JointId[] {
  if (!step.joints || !subject.joint) return [];
  const { unit } = subject;
  const along = report.joints.filter(
    (joint) => step.also?.includes(joint.kind) && (unitOf(joint.need) === unit || unitOf(joint.place) === unit),
  );
  return [subject.joint.id, ...along.map((joint) => joint.id).sort(byId)];
}

/** Every repeat of each step waited for; for a step left out, what that one waited for. */
function afterKeys(step: Step, keys: ReadonlyMap<StepId, string[]>): string[] {
  return [...new Set(step.after.flatMap((id) => keys.get(id) ?? []))];
}

/** The step's texts with each {word} replaced; a word that is not given stays as it is written. */
function fillIn(step: Step, words: Record<string, string>) {
  const fill = (text: string) =>
    text.replace(/\{([a-z]+)\}/g, (written, word: string) =>
      Object.hasOwn(words, word) ? (words[word] ?? written) : written,
    );
  return {
    chapter: step.chapter,
    action: fill(step.action),
    minutes: step.minutes,
    cautions: step.cautions.map(({ signal, text }) => ({ signal, text: fill(text) })),
    right: fill(step.right),
    claim: fill(step.claim),
    ifNot: step.ifNot.map(({ sees, does }) => ({ sees: fill(sees), does: fill(does) })),
    drawing: step.drawing,
    ...(step.measure ? { measure: { ...step.measure, ifOut: fill(step.measure.ifOut) } } : {}),
    ...(step.hold ? { hold: step.hold.map(fill) } : {}),
  };
}

function chaptersOf(procedure: Procedure, steps: readonly CardStep[], report: FitReport): JobCard['chapters'] {
  const joints = new Map(report.joints.map((joint) => [joint.id, joint]));
  const fitted = new Set<UnitId>();
  return procedure.chapters.flatMap((chapter) => {
    const own = steps.filter((step) => step.chapter === chapter.id);
    if (own.length === 0) return [];
    const made = own.flatMap((step) => step.makes.flatMap((id) => joints.get(id) ?? []));
    // A step about a joint that another makes handles a lead or a latch, not the part.
    const handled = [
      ...own.flatMap((step) => (step.joint ? [] : (step.unit ?? []))),
      ...made.flatMap((joint) => [unitOf(joint.need), unitOf(joint.place)]),
    ];
    const mat = report.units.filter((unit) => handled.includes(unit.id) && !fitted.has(unit.id));
    for (const joint of made) fitted.add(unitOf(joint.need));
    return [
      {
        ...chapter,
        mat: countNames(mat.map((unit) => unit.name)),
        tools: [...new Set(own.flatMap((step) => step.tools))],
      },
    ];
  });
}

/** `2 × name` where a name stands twice; in the order they first stand. */
function countNames(names: readonly string[]): string[] {
  const counts = new Map<string, number>();
  for (const name of names) counts.set(name, (counts.get(name) ?? 0) + 1);
  return [...counts].map(([name, count]) => (count > 1 ? `${count} × ${name}` : name));
}

/**
 * The keys of the steps that may be ticked next, in card order. `ticked` holds the keys of steps done; a hold point
 * is among them only once it has been passed, so that nothing that waits for it comes up before.
 */
export function reachable(card: JobCard, ticked: ReadonlySet<string>): string[] {
  return card.steps.filter((step) => !ticked.has(step.key) && mayBeDone(step, ticked)).map((step) => step.key);
}

/** The keys of ticked steps that wait for one that is not ticked, in card order. */
export function faultyTicks(card: JobCard, ticked: ReadonlySet<string>): string[] {
  return card.steps.filter((step) => ticked.has(step.key) && !mayBeDone(step, ticked)).map((step) => step.key);
}
