import { describe, expect, test } from 'vitest';
import { judge } from '../../src/fit/judge.ts';
import { append, logbookToText } from '../../src/logbook/log.ts';
import type { Act, Logbook } from '../../src/logbook/types.ts';
import { resolveList } from '../../src/parts/list.ts';
import { tailor } from '../../src/procedures/tailor.ts';
import type { JobCard } from '../../src/procedures/types.ts';
import { makeRegister } from '../../src/register/register.ts';
import type { LogbookFile, Row } from '../../src/register/types.ts';
import { choosing, content } from '../helpers/content.ts';
import { aLogbook } from '../helpers/logbook.ts';

const file = (name: string, text: string): LogbookFile => ({ name, bytes: text.length, text });
const book = (name: string, logbook: Logbook): LogbookFile =>
  file(name, logbookToText({ ...logbook, content: content.fingerprint }));
const only = (files: LogbookFile[]) => {
  const register = makeRegister(files, content);
  expect(register.rows.length).toBe(1);
  const [row] = register.rows;
  if (!row) throw new Error('no row');
  return row;
};

const named: Act = { act: 'named', student: 'Bench 7' };
const right: Act = { act: 'handed-in', exercise: choosing.id, answer: { kind: 'choose', list: choosing.answer } };
const empty: Act = { act: 'handed-in', exercise: choosing.id, answer: { kind: 'choose', list: [] } };
const full = choosing.rubric.reduce((sum, line) => sum + line.marks, 0);

const [procedure] = content.procedures;
const [build] = content.workedBuilds;
if (!procedure || !build) throw new Error('The course has no procedure or no worked build.');
const card: JobCard = tailor(procedure, build.list, judge(resolveList(build.list, content.parts).input));
const opened: Act = {
  act: 'card-opened',
  card: card.id,
  procedure: card.procedure,
  revision: card.revision,
  list: card.list,
};
const tick = (index: number): Act => ({ act: 'step-ticked', card: card.id, step: card.steps[index]?.key ?? '' });

/** What a row says of the choosing exercise. */
const chosen = (row: Row | undefined) => row?.exercises.find((one) => one.exercise === choosing.id);

describe('marks', () => {
  test('a list that the check proved earns full marks again', () => {
    const row = only([book('a.json', aLogbook([named, right]))]);
    expect(chosen(row)).toMatchObject({ attempts: 1, of: full, best: { marks: full } });
    expect(row.remarks).toEqual([]);
  });

  test('of several attempts the best counts, also when it was not the last', () => {
    const row = only([book('a.json', aLogbook([named, right, empty]))]);
    expect(chosen(row)).toMatchObject({ attempts: 2, best: { marks: full } });
  });

  test('a mark written into a file by hand changes nothing', () => {
    const text = logbookToText({ ...aLogbook([named, empty]), content: content.fingerprint });
    const raised = text.replace('"act":"handed-in"', '"act":"handed-in","marks":20');
    expect(raised).not.toBe(text);
    const row = only([file('a.json', raised)]);
    expect(chosen(row)?.best?.marks).toBe(0);
    expect(row.remarks.map((one) => one.id)).toEqual(['foreign-field']);
  });

  test('an answer changed by hand earns nothing', () => {
    const honest = aLogbook([named, empty]);
    const changed = { ...honest, events: aLogbook([named, right]).events };
    const row = only([book('a.json', changed)]);
    expect(chosen(row)).toMatchObject({ attempts: 0 });
    expect(chosen(row)).not.toHaveProperty('best');
    expect(row.remarks.map((one) => one.id)).toEqual(['changed-afterwards']);
  });

  test('a measure the student took is named with its part and its unit; one of no part is passed over', () => {
    const [part] = content.parts.filter((one) => one.class === 'cooler' && one.heightMm === undefined);
    const took = (id: string, field: string): Act => ({
      act: 'measure-noted',
      exercise: choosing.id,
      part: id,
      field,
      value: 155,
    });
    const acts = [
      named,
      took(part?.id ?? '', 'heightMm'),
      took('moon-rocket', 'heightMm'),
      took(part?.id ?? '', 'fan'),
    ];
    const row = only([book('a.json', aLogbook(acts))]);
    expect(chosen(row)?.noted).toEqual([{ what: `Height of the ${part?.name}`, value: 155, unit: 'mm' }]);
  });

  test('an answer to an exercise that is not in the course is named and passed over', () => {
    const row = only([book('a.json', aLogbook([named, { ...right, exercise: 'yacht-club' }, right]))]);
    expect(row.remarks.map((one) => one.says)).toEqual([
      'It has an answer to "yacht-club", which this course does not have.',
    ]);
    expect(chosen(row)?.best?.marks).toBe(full);
  });
});

describe('the job card', () => {
  test('says how far, where now and which hold points', () => {
    const row = only([book('a.json', aLogbook([named, opened, tick(0), tick(1)]))]);
    expect(row.card).toMatchObject({ done: 2, of: card.steps.length, now: { n: 3 } });
    expect(row.card?.holds.length).toBe(card.holds);
    expect(card.holds).toBeGreaterThanOrEqual(3);
    expect(row.card?.holds.every((hold) => hold.passed === undefined)).toBe(true);
  });

  test('a step ticked without the steps before it is not counted and is named', () => {
    const last = card.steps.length - 1;
    const row = only([book('a.json', aLogbook([named, opened, tick(0), tick(last)]))]);
    expect(row.card?.done).toBe(1);
    expect(row.remarks.map((one) => one.id)).toEqual(['step-out-of-order']);
    expect(row.remarks[0]?.says).toContain(`Step ${last + 1} is ticked`);
  });

  test('a step that is on no card is not counted', () => {
    const row = only([book('a.json', aLogbook([named, opened, { ...tick(0), step: 'make-tea' } as Act]))]);
    expect(row.card?.done).toBe(0);
    expect(row.remarks.map((one) => one.id)).toEqual(['unknown-step']);
  });

  test('a list of parts that no course has, or of thousands, is remarked and does not hang', () => {
    const most = content.parts.map((part) => ({ part: part.id, quantity: 99 }));
    const odd: Act = { ...opened, list: [{ part: 'moon-rocket', quantity: 1 }, ...most.slice(0, 59)] } as Act;
    const row = only([book('a.json', aLogbook([named, odd]))]);
    expect(row.remarks.map((one) => one.id)).toEqual(['unknown-part']);
    expect(row.remarks[0]?.says).toContain('moon-rocket');
  });

  test('a hold point ticked without saying who looked is not counted, nor is what rests on it', () => {
    const hold = card.steps.findIndex((step) => step.hold);
    const acts = card.steps.slice(0, hold + 1).map((_, index) => tick(index));
    const row = only([book('a.json', aLogbook([named, opened, ...acts]))]);
    expect(row.card?.done).toBe(hold);
    expect(row.remarks.map((one) => one.says)).toEqual([
      'Hold point 1 is ticked, but nothing says who looked. It is not counted.',
    ]);
  });

  test('a hold point says who looked', () => {
    const hold = card.steps.findIndex((step) => step.hold);
    const acts = card.steps.slice(0, hold + 1).map((_, index) => tick(index));
    const looked: Act = {
      act: 'hold-passed',
      card: card.id,
      step: card.steps[hold]?.key ?? '',
      by: 'initials',
      initials: 'MR',
    };
    const row = only([book('a.json', aLogbook([named, opened, ...acts.slice(0, -1), looked, ...acts.slice(-1)]))]);
    expect(row.card?.holds[0]?.passed).toMatchObject({ by: 'initials', initials: 'MR' });
    expect(row.remarks).toEqual([]);
  });
});

describe('many files', () => {
  test('damaged ones are set aside with a reason and the rest is read', () => {
    const register = makeRegister(
      [
        book('good.json', aLogbook([named, right])),
        file('notes.json', 'not a logbook'),
        file('newer.json', logbookToText(aLogbook([named])).replace('"version":1', '"version":3')),
        { name: 'huge.json', bytes: 50_000_000 },
        file(
          'cut.json',
          logbookToText(aLogbook([{ act: 'named', student: 'Bench 8' }, right], 'cutlogbook1')).slice(0, -60),
        ),
      ],
      content,
    );
    expect(register.rows.map((row) => row.student)).toEqual(['Bench 7', 'Bench 8']);
    expect(register.aside.map(({ file: name, remarks }) => [name, remarks[0]?.id])).toEqual([
      ['huge.json', 'too-large'],
      ['newer.json', 'newer-version'],
      ['notes.json', 'not-a-logbook'],
    ]);
  });

  test('a folder or a file that cannot be opened is told, and the rest is read', () => {
    const register = makeRegister([{ name: 'evening-3', bytes: 4096 }, book('good.json', aLogbook([named]))], content);
    expect(register.rows.length).toBe(1);
    expect(register.aside).toEqual([
      {
        file: 'evening-3',
        remarks: [
          { id: 'not-opened', says: 'The file could not be opened. A folder is not read: drop the files in it.' },
        ],
      },
    ]);
  });

  test('the same student twice gives one row, from the longer copy', () => {
    const early = aLogbook([named, empty]);
    const late = append(early, right, '2026-11-17T19:00:00.000Z');
    const row = only([book('early.json', early), book('late.json', late), book('again.json', late)]);
    expect(row.files[0]).toBe('again.json');
    expect(chosen(row)?.best?.marks).toBe(full);
    expect(row.remarks.map((one) => one.id)).toEqual(['older-copy', 'older-copy']);
  });

  test('a logbook gone on with on two devices gives two rows that name each other', () => {
    const start = aLogbook([named]);
    const one = append(start, right, '2026-11-17T19:00:00.000Z');
    const two = append(start, empty, '2026-11-17T19:05:00.000Z');
    const { rows } = makeRegister([book('one.json', one), book('two.json', two)], content);
    expect(rows.map((row) => row.remarks.map((remark) => remark.id))).toEqual([['parted-copy'], ['parted-copy']]);
    expect(new Set(rows.map((row) => row.key)).size).toBe(2);
  });

  test('two students of one name are both kept and both remarked', () => {
    const { rows } = makeRegister(
      [book('a.json', aLogbook([named], 'logbookaaaa')), book('b.json', aLogbook([named, right], 'logbookbbbb'))],
      content,
    );
    expect(rows.map((row) => row.remarks.map((remark) => remark.id))).toEqual([['same-name'], ['same-name']]);
  });

  test('their order changes nothing, and benches stand in order of their numbers', () => {
    const files = ['10', '9', '2', '1'].map((n) =>
      book(
        `bench-${n}.json`,
        aLogbook([{ act: 'named', student: `Bench ${n}` }, right], `logbook${n.padStart(4, 'x')}`),
      ),
    );
    const register = makeRegister(files, content);
    expect(register.rows.map((row) => row.student)).toEqual(['Bench 1', 'Bench 2', 'Bench 9', 'Bench 10']);
    expect(makeRegister([...files].reverse(), content)).toEqual(register);
  });

  test('two hundred are read', () => {
    const files = Array.from({ length: 200 }, (_, n) =>
      book(
        `b${n}.json`,
        aLogbook([{ act: 'named', student: `Bench ${n}` }, right], `logbook${String(n).padStart(4, '0')}`),
      ),
    );
    const register = makeRegister(files, content);
    expect(register.rows.length).toBe(200);
    expect(register.rows.every((row) => chosen(row)?.best?.marks === full)).toBe(true);
  });
});

test('rules that cost marks are counted by student', () => {
  const { missed } = makeRegister(
    [
      book('a.json', aLogbook([named, right], 'logbookaaaa')),
      book('b.json', aLogbook([{ act: 'named', student: 'Bench 8' }, empty], 'logbookbbbb')),
    ],
    content,
  );
  for (const one of missed) expect(one.students).toEqual(['Bench 8']);
});
