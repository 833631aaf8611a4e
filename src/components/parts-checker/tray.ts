/** The scale of an open drawer: each part's number on one line against the limit that decides. Pure. */
import { type Machine, planCase, unitsOf } from '../../drawings/case-plan.ts';
import type { ChooseExercise } from '../../exercises/types.ts';
import type { Budget } from '../../fit/report.ts';
import type { Part, PartClass, PartId } from '../../parts/part.ts';
import { showNumber } from '../../units/money.ts';
import type { Drawer } from './list.ts';
import { showEuro } from './money.ts';

export type TrayScale = {
  /** What the bars show: "length in millimetres". */
  what: string;
  /** A part's number; undefined when it is not recorded. */
  values: Map<PartId, number | undefined>;
  show: (value: number) => string;
  /** The bars are prices, so that a row needs no other. */
  isMoney?: true;
  /** `at-most`: what is past it is hatched. `at-least`: what is missing is hatched. `mark`: only a line. */
  limit?: { value: number; says: string; sort: 'at-most' | 'at-least' | 'mark' };
  /** The longest bar or the limit, whichever is more. */
  end: number;
};

type Measured = Omit<TrayScale, 'values' | 'end'> & { field: (part: Part) => number | undefined };

/** `machine` is the list as drawn; `budgets` those of the list without this drawer's choice. */
export function scaleOf(
  drawer: Drawer,
  exercise: ChooseExercise,
  parts: ReadonlyMap<PartId, Part>,
  machine: Machine,
  budgets: readonly Budget[],
): TrayScale {
  const { field, ...measured } = measureFor(drawer.class, exercise, machine, budgets);
  const values = new Map(drawer.parts.map((id) => [id, ((part) => part && field(part))(parts.get(id))]));
  const known = [...values.values()].filter((value) => value !== undefined);
  return { ...measured, values, end: Math.max(1, measured.limit?.value ?? 0, ...known) };
}

const numberOf =
  (field: string) =>
  (part: Part): number | undefined => {
    const value: unknown = part[field as keyof Part];
    return typeof value === 'number' ? value : undefined;
  };

const plain = (value: number) => showNumber(value);

function measureFor(of: PartClass, exercise: ChooseExercise, machine: Machine, budgets: readonly Budget[]): Measured {
  const chassis = unitsOf(machine, 'chassis')[0]?.part;
  const cooler = unitsOf(machine, 'cooler')[0]?.part;
  const card = unitsOf(machine, 'graphics-card')[0]?.part;
  if (of === 'graphics-card') {
    const plan = planCase(machine);
    const room = Math.round((plan.cardRoomEnd - plan.rear) * 10) / 10;
    return {
      what: 'length in millimetres',
      field: numberOf('lengthMm'),
      show: plain,
      ...(plan.isFrontKnown && chassis
        ? { limit: { value: room, says: `room ${plain(room)} mm`, sort: 'at-most' } as const }
        : {}),
    };
  }
  if (of === 'cooler') {
    const room = chassis?.coolerHeightMm;
    return {
      what: 'height in millimetres',
      field: numberOf('heightMm'),
      show: plain,
      ...(room === undefined
        ? {}
        : { limit: { value: room, says: `room ${plain(room)} mm`, sort: 'at-most' } as const }),
    };
  }
  if (of === 'power-supply') {
    const watts = (budgets.find(({ name }) => name === 'power')?.used ?? 0) / 10;
    return {
      what: 'watts',
      field: numberOf('ratedW'),
      show: plain,
      ...(watts === 0
        ? {}
        : { limit: { value: watts, says: `likely peak ${plain(watts)} W`, sort: 'at-least' } as const }),
    };
  }
  if (of === 'chassis' && card?.lengthMm !== undefined) {
    return {
      what: 'room for a card in millimetres, no front fan',
      field: numberOf('cardLengthMm'),
      show: plain,
      limit: { value: card.lengthMm, says: `card ${plain(card.lengthMm)} mm`, sort: 'at-least' },
    };
  }
  if (of === 'chassis' && cooler?.heightMm !== undefined) {
    return {
      what: 'room for a cooler in millimetres',
      field: numberOf('coolerHeightMm'),
      show: plain,
      limit: { value: cooler.heightMm, says: `cooler ${plain(cooler.heightMm)} mm`, sort: 'at-least' },
    };
  }
  const demand = exercise.brief.demands.find((one) => one.class === of);
  if (demand) {
    const inAll = demand.over === 'sum';
    return {
      what: `${demand.unit}${inAll ? ' each' : ''}`,
      field: numberOf(demand.field),
      show: plain,
      limit: {
        value: demand.atLeast,
        says: `brief: ${plain(demand.atLeast)}${inAll ? ' in all' : ''}`,
        sort: inAll ? 'mark' : 'at-least',
      },
    };
  }
  const money = budgets.find(({ name }) => name === 'money');
  const left = money?.limit === undefined ? undefined : money.limit - money.used;
  return {
    what: 'price in euro',
    field: numberOf('priceCents'),
    show: showEuro,
    isMoney: true,
    ...(left === undefined || left <= 0
      ? {}
      : { limit: { value: left, says: `left ${showEuro(left)}`, sort: 'at-most' } as const }),
  };
}
