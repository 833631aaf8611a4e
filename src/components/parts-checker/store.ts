/** What the checker knows: the list, what the core says of it, and what has been handed in. */
import { content } from 'virtual:benchbook/content';
import { batch, computed, effect, type ReadonlySignal, signal } from '@preact/signals';
import type { Machine } from '../../drawings/case-plan.ts';
import type { Largest } from '../../drawings/sheet-of.ts';
import { mark } from '../../exercises/grade.ts';
import type { Answer, ChooseExercise, Marked } from '../../exercises/types.ts';
import { judgeList } from '../../fit/judge.ts';
import type { Finding, FitReport } from '../../fit/report.ts';
import { sayFinding } from '../../fit/say.ts';
import { listToText } from '../../parts/address.ts';
import { withNoted } from '../../parts/noted.ts';
import type { Listed, Part, PartId, PartsList } from '../../parts/part.ts';
import { logbook, progress, record } from '../device/device.ts';
import { tryParts, type WouldBe } from './counts.ts';
import { type Drawer, drawersOf, isSame, shortDrawers, without } from './list.ts';
import { showEuro } from './money.ts';
import { sayWhole, sortFindings } from './sort-findings.ts';

export type View = 'drawing' | 'notes' | 'drawers' | 'rulers';
export type Checker = ReturnType<typeof openChecker>;

/** Room for the largest case of a shelf, so that cases are compared at one scale. */
export function largestOf(parts: readonly Part[]): Largest {
  const cases = parts.filter((part) => part.class === 'chassis');
  const most = (field: 'depthMm' | 'heightMm' | 'widthMm', least: number) =>
    Math.max(least, ...cases.map((one) => one[field] ?? 0));
  return { w: most('depthMm', 300), h: most('heightMm', 300), back: most('widthMm', 150) };
}

/** Units of a report with their parts, as drawings take them. */
export function unitsOf(report: FitReport, parts: readonly Part[]): Machine['units'] {
  const byId = new Map(parts.map((part) => [part.id, part]));
  return report.units.flatMap(({ id, part }) => {
    const found = byId.get(part);
    return found ? [{ id, part: found }] : [];
  });
}

/** Runs when the browser has nothing more urgent to do. */
const whenIdle = (run: () => void): void => {
  if (typeof requestIdleCallback === 'undefined') setTimeout(run, 1);
  else requestIdleCallback(run, { timeout: 500 });
};

export function openChecker(exercise: ChooseExercise) {
  const { id, brief } = exercise;
  const drawers = drawersOf(exercise);
  const onShelf = new Set(drawers.flatMap(({ parts }) => parts));
  const list = signal<Listed[]>([]);
  const past = signal<Listed[][]>([]);
  const future = signal<Listed[][]>([]);
  /** What changed, for those who do not see it. */
  const said = signal('');
  const open = signal<string | undefined>(undefined);
  const view = signal<View>('drawing');
  const active = signal<number | undefined>(undefined);
  let pending = 0;
  // A page from the server knows no logbook, and the first picture in the browser must be the same one.
  const isBegun = signal(false);
  const known = computed(() => (isBegun.value ? progress.value : undefined));

  // As text, so that an entry about something else does not look like a new measure.
  const notedText = computed(() => JSON.stringify([...(known.value?.noted.get(id) ?? [])]));
  const noted = computed(() => new Map<string, number>(JSON.parse(notedText.value)));
  const parts = computed(() => withNoted(content.parts, noted.value));
  const partOf = computed(() => new Map<PartId, Part>(parts.value.map((part) => [part.id, part])));

  const judged = computed(() => {
    const reports = new Map<string, FitReport>();
    const all = parts.value;
    const allowed = brief.budgetCents === undefined ? {} : { budgetCents: brief.budgetCents };
    return (of: PartsList): FitReport => {
      const key = listToText(of);
      const known = reports.get(key);
      if (known) return known;
      const report = judgeList(of, all, allowed);
      reports.set(key, report);
      return report;
    };
  });
  const report = computed(() => judged.value(list.value));
  const short = computed(() => shortDrawers(drawers, list.value));
  const sorted = computed(() => sortFindings(report.value, new Set(short.value.map((drawer) => drawer.class))));
  const notes = computed(() =>
    sorted.value.notes.map((finding, index) => ({ n: index + 1, finding, words: sayFinding(finding) })),
  );
  const over = computed(() => {
    const money = report.value.budgets.find(({ name }) => name === 'money');
    return money?.limit !== undefined && money.used > money.limit ? showEuro(money.used - money.limit) : undefined;
  });
  const whole = computed(() => sayWhole(sorted.value, list.value.length, short.value.length, over.value));
  const machine = computed(
    (): Machine => ({
      units: unitsOf(report.value, parts.value),
      report: report.value,
      wanted: short.value.map((drawer) => drawer.class),
      isJudged: true,
    }),
  );

  const tried = signal<ReadonlyMap<string, ReadonlyMap<PartId, WouldBe>>>(new Map());

  /** Drawer by drawer, the open one first, and not before the choice is on the screen. */
  function countLater(of: PartsList, judgeList: (list: PartsList) => FitReport): () => void {
    let isStale = false;
    const waiting = [...drawers].sort(
      (a, b) => Number(b.position === open.peek()) - Number(a.position === open.peek()),
    );
    const next = () => {
      const drawer = waiting.shift();
      if (isStale || !drawer) return;
      tried.value = new Map(tried.peek()).set(drawer.position, tryParts(drawer, drawers, of, judgeList));
      whenIdle(next);
    };
    requestAnimationFrame(() => whenIdle(next));
    return () => {
      isStale = true;
    };
  }

  const write = (): void => {
    pending += 1;
    void record({ act: 'list-changed', exercise: id, list: list.value }).finally(() => {
      pending -= 1;
    });
  };

  function show(next: Listed[], what: string): void {
    performance.mark('checker-choice');
    list.value = next;
    write();
    const worst = notes.value[0];
    said.value = `${what} ${worst ? `${worst.words.headline}. ` : ''}${whole.value.says}.`;
  }

  function change(next: Listed[], what: string): void {
    if (isSame(next, list.value)) return;
    batch(() => {
      past.value = [...past.value, list.value];
      future.value = [];
      show(next, what);
    });
  }

  function step(from: typeof past, to: typeof past, what: string, none: string): void {
    const next = from.value.at(-1);
    if (!next) {
      said.value = none;
      return;
    }
    batch(() => {
      from.value = from.value.slice(0, -1);
      to.value = [...to.value, list.value];
      show(next, what);
    });
  }

  /** Takes up what the logbook holds: at the start, and when another page has changed it. */
  const adopt = (): void => {
    const logged = known.value?.lists.get(id);
    if (!logged || pending > 0 || isSame(logged, list.peek())) return;
    const kept = (lines: PartsList) =>
      lines.filter(({ part }) => onShelf.has(part)).map(({ part, quantity }) => ({ part, quantity }));
    const before = (logbook.value?.events ?? []).flatMap((event) =>
      event.act === 'list-changed' && event.exercise === id ? [kept(event.list)] : [],
    );
    batch(() => {
      past.value = [[], ...before.slice(0, -1)].slice(-100);
      future.value = [];
      list.value = kept(logged);
    });
  };

  /** Takes up the logbook and begins to count; to be called once the page stands. Returns what ends it. */
  const begin = (): (() => void) => {
    isBegun.value = true;
    const ends = [effect(adopt), effect(() => countLater(list.value, judged.value))];
    return () => {
      for (const end of ends) end();
    };
  };

  const handedIn = computed(() => known.value?.handedIn.get(id) ?? []);
  // Every entry of the logbook makes the attempts anew; each is marked once for one set of measures.
  const marksOf = computed(() => {
    const marks = new Map<string, Marked>();
    const all = parts.value;
    return (answer: Answer): Marked => {
      const key = JSON.stringify(answer);
      const known = marks.get(key) ?? mark(exercise, answer, all);
      marks.set(key, known);
      return known;
    };
  });
  const last = computed(() => {
    const handed = handedIn.value.at(-1);
    if (handed?.answer.kind !== 'choose') return undefined;
    const best = Math.max(...handedIn.value.map(({ answer }) => marksOf.value(answer).marks));
    return {
      list: handed.answer.list,
      at: handed.at,
      marked: marksOf.value(handed.answer),
      best,
      isThis: isSame(handed.answer.list, list.value),
    };
  });

  return {
    exercise,
    drawers,
    begin,
    isBegun: isBegun as ReadonlySignal<boolean>,
    list: list as ReadonlySignal<Listed[]>,
    canUndo: computed(() => past.value.length > 0),
    canRedo: computed(() => future.value.length > 0),
    said,
    open,
    view,
    active,
    noted,
    parts,
    partOf,
    report,
    short,
    sorted,
    notes,
    whole,
    machine,
    tried: tried as ReadonlySignal<ReadonlyMap<string, ReadonlyMap<PartId, WouldBe>>>,
    last,
    largest: largestOf(content.parts.filter(({ id: part }) => onShelf.has(part))),
    budgetsWithout: (drawer: Drawer) => judged.value(without(drawer, list.value)).budgets,
    change,
    undo: () => step(past, future, 'Undone.', 'There is nothing to undo.'),
    redo: () => step(future, past, 'Done again.', 'There is nothing to do again.'),
    noteMeasure(part: PartId, field: string, value: number): void {
      void record({ act: 'measure-noted', exercise: id, part, field, value });
      said.value = 'Your measure is kept.';
    },
    async handIn(): Promise<void> {
      await record({ act: 'handed-in', exercise: id, answer: { kind: 'choose', list: list.value } });
      const { marked } = last.value ?? {};
      if (marked) said.value = `Handed in: ${marked.marks} of ${marked.of} marks.`;
    },
  };
}

export type NoteOf = { n: number; finding: Finding; words: ReturnType<typeof sayFinding> };
