/** Marks one thing the person the machine is for asks of a class of part. */
import { classNames, type Part } from '../parts/part.ts';
import { tidy } from '../units/amounts.ts';
import { showNumber } from '../units/money.ts';
import { count, list } from '../wording/phrases.ts';
import { asked, type Chosen, type Held, total } from './chosen.ts';
import type { Judged } from './marking.ts';
import type { Demand } from './types.ts';

/** A figure that is not recorded counts for nothing in a sum and decides nothing else: it is never a pass. */
export function markDemand(demand: Demand, chosen: Chosen): Judged {
  const of = classNames[demand.class];
  const strangers = chosen.offShelf.filter((part) => part.class === demand.class).map(({ name }) => name);
  if (strangers.length > 0) {
    return {
      why: `The shelf of this exercise does not hold ${list(strangers)}, so the demand is not judged.`,
      more: `Choose a ${of.one} from the shelf.`,
    };
  }
  const over = chosen.positions.find((place) => place.class === demand.class && place.holds > place.to);
  if (over) {
    return {
      why: `The list holds ${over.holds} for ${over.name}, where the brief asks for ${asked(over)}, so the demand is not judged.`,
      more: `Leave out ${over.holds - over.to} of ${over.name}.`,
    };
  }
  const held = chosen.held.filter(({ part }) => part.class === demand.class);
  if (held.length === 0) {
    return {
      why: `The list holds no ${of.one}; the brief asks for at least ${amount(demand.atLeast, demand)}.`,
      more: `Choose a ${of.one} from the shelf.`,
    };
  }
  return demand.over === 'sum' ? markSum(demand, held) : markEach(demand, held);
}

const amount = (value: number, { unit }: Demand) => `${showNumber(tidy(value))} ${unit}`;

const nameless = (held: readonly Held[], { field }: Demand) =>
  held.filter(({ part }) => measure(part, field) === undefined).map(({ part }) => part.name);

const findOut = ({ class: of }: Demand) =>
  `Find the figure in the data sheet, or choose a ${classNames[of].one} whose figure is recorded.`;

function markSum(demand: Demand, held: readonly Held[]): Judged {
  const { one, many } = classNames[demand.class];
  const reached = tidy(
    held.reduce((sum, { part, quantity }) => sum + (measure(part, demand.field) ?? 0) * quantity, 0),
  );
  const blanks = nameless(held, demand);
  const atLeast = blanks.length > 0 ? 'at least ' : '';
  const given = `${atLeast}${amount(reached, demand)}`;
  const n = total(held);
  const gives = n === 1 ? `The ${one} gives ${given}` : `The ${count(n, one, many)} give ${given} in all`;
  const why = `${gives}; the brief asks for at least ${showNumber(demand.atLeast)}.`;
  if (reached >= demand.atLeast) return { why };
  if (blanks.length > 0) return { why: `${why} The figure of ${list(blanks)} is not recorded.`, more: findOut(demand) };
  return { why, more: `Choose ${many} that give ${amount(demand.atLeast - reached, demand)} more.` };
}

function markEach(demand: Demand, held: readonly Held[]): Judged {
  const [lowest] = held
    .flatMap(({ part }) => {
      const value = measure(part, demand.field);
      return value === undefined ? [] : [{ name: part.name, value }];
    })
    .sort((a, b) => a.value - b.value);
  const asks = `the brief asks for at least ${showNumber(demand.atLeast)}${total(held) > 1 ? ' of each' : ''}`;
  if (lowest && lowest.value < demand.atLeast) {
    return {
      why: `${lowest.name} gives ${amount(lowest.value, demand)}; ${asks}.`,
      more: `Choose a ${classNames[demand.class].one} that gives ${amount(demand.atLeast, demand)} or more.`,
    };
  }
  const blanks = nameless(held, demand);
  if (blanks.length > 0 || !lowest) {
    return {
      why: `The figure of ${list(blanks)} is not recorded; the brief asks for at least ${amount(demand.atLeast, demand)}.`,
      more: findOut(demand),
    };
  }
  return { why: `${lowest.name} gives ${amount(lowest.value, demand)}; ${asks}.` };
}

function measure(part: Part, field: string): number | undefined {
  const value: unknown = Object.hasOwn(part, field) ? part[field as keyof Part] : undefined;
  return typeof value === 'number' ? value : undefined;
}
