/**
 * A second search, slow and obvious: it tries every hookup in the order of ties and keeps the first
 * with the least cost. It shares no code with the search it judges.
 */
import type { Joint, Need, Place, Problem, Resource, Value } from '../../../src/fit/model.ts';

/** `joined` by need id: `<place id>` or `<place id> as <way>`. Left-over needs are not in it. */
export type Answer = { joined: Record<string, string>; cost: number[]; used: Record<string, number> };

type Hookup = Map<Need, Place>;

export function tryEverything(problem: Problem): Answer {
  const needs = [...problem.needs].sort(byTurn(problem));
  const places = [...problem.places].sort(byPlaceOrder);
  const capacities = shareOut(problem);
  let best: { hookup: Hookup; cost: number[]; used: Map<string, number> } | undefined;

  const decide = (turn: number, hookup: Hookup): void => {
    const need = needs[turn];
    if (need) {
      for (const place of places) {
        const others = [...hookup].filter(([, other]) => other.id === place.id);
        if (mates(problem, need, place) === 'no' || isOwnOutlet(problem, need, place)) continue;
        if (others.length >= (place.fill ?? 1)) continue;
        decide(turn + 1, new Map(hookup).set(need, place));
      }
      decide(turn + 1, hookup);
      return;
    }
    if (!isBuildable(problem, hookup)) return;
    const used = draw(problem, hookup, capacities);
    if (isOverdrawn(problem, used, capacities)) return;
    const cost = costOf(problem, hookup, used, capacities);
    if (!best || isLess(cost, best.cost)) best = { hookup, cost, used };
  };
  decide(0, new Map());

  if (!best) throw new Error('Leaving everything over is always possible');
  const joined = [...best.hookup].map(([need, { id, way }]) => [need.id, way === undefined ? id : `${id} as ${way}`]);
  return { joined: Object.fromEntries(joined), cost: best.cost, used: Object.fromEntries(best.used) };
}

const isLess = (a: number[], b: number[]): boolean => {
  const level = a.findIndex((amount, index) => amount !== b[index]);
  return level >= 0 && (a[level] ?? 0) < (b[level] ?? 0);
};

// Order of ties

/** Digits padded, then by code unit. */
const plain = (text: string): string =>
  text
    .split(/(\d+)/)
    .map((piece) => (/^\d/.test(piece) ? piece.padStart(9, '0') : piece))
    .join('');
const compare = <T extends string | number>(a: T, b: T): number => (a === b ? 0 : a < b ? -1 : 1);

const byTurn = ({ places, kinds }: Problem) => {
  const isHungOn = (need: Need) => places.some(({ after }) => after?.includes(need.id));
  const hunger = (need: Need) => {
    const quantity = kinds[need.kind].hungry;
    return quantity === undefined ? 0 : (need.draws?.[quantity] ?? 0);
  };
  return (a: Need, b: Need): number => {
    if (isHungOn(a) !== isHungOn(b)) return isHungOn(a) ? -1 : 1;
    return hunger(b) - hunger(a) || compare(plain(a.id), plain(b.id));
  };
};

const byPlaceOrder = (a: Place, b: Place): number =>
  a.rank - b.rank || compare(plain(a.id), plain(b.id)) || compare(plain(a.way ?? ''), plain(b.way ?? ''));

// Mating

function mates({ kinds }: Problem, need: Need, place: Place): 'yes' | 'no' | 'unknown' {
  if (need.kind !== place.kind) return 'no';
  const results = kinds[need.kind].tests.map((test) => {
    const wanted = need.attrs[test.need];
    const offered = place.attrs[test.place];
    if (wanted === null || offered === null) return 'yes';
    if (wanted === undefined || offered === undefined) return 'unknown';
    if (test.op === 'atMost') return Number(wanted) <= Number(offered) ? 'yes' : 'no';
    if (test.op === 'atLeast') return Number(wanted) >= Number(offered) ? 'yes' : 'no';
    const all = [wanted].flat();
    return [offered].flat().some((value) => all.includes(value)) ? 'yes' : 'no';
  });
  return results.includes('no') ? 'no' : results.includes('unknown') ? 'unknown' : 'yes';
}

const isOwnOutlet = ({ places }: Problem, need: Need, place: Place): boolean =>
  places.some(({ id, after }) => id === place.id && after?.includes(need.id));

const sameValue = (a: Value, b: Value) => JSON.stringify(a) === JSON.stringify(b);
const looksLike = (a: Need, b: Need): boolean =>
  [...Object.keys(a.attrs), ...Object.keys(b.attrs)].every((attr) => sameValue(a.attrs[attr], b.attrs[attr]));

// What can be built

/** Whether these joints could all be made together. */
export function canBeMade(problem: Problem, joints: readonly Joint[]): boolean {
  const hookup: Hookup = new Map();
  for (const joint of joints) {
    const need = needOf(problem, joint.need);
    const place = problem.places.find(({ id, way }) => id === joint.place && way === joint.way);
    if (!need || !place || hookup.has(need)) return false;
    if (mates(problem, need, place) === 'no' || isOwnOutlet(problem, need, place)) return false;
    hookup.set(need, place);
  }
  const capacities = shareOut(problem);
  return isBuildable(problem, hookup) && !isOverdrawn(problem, draw(problem, hookup, capacities), capacities);
}

function isBuildable(problem: Problem, hookup: Hookup): boolean {
  const joints = [...hookup];
  return joints.every(([need, place]) => {
    const there = joints.filter(([, other]) => other.id === place.id);
    const isFull = there.length === (place.fill ?? 1);
    const isOneWay = there.every(([, other]) => other === place);
    const isAlike = there.every(([other]) => looksLike(other, need));
    return (
      isFull && isOneWay && isAlike && exists(problem, hookup, place) && !hangsOn(problem, hookup, place, need, [])
    );
  });
}

const needOf = ({ needs }: Problem, id: string) => needs.find((need) => need.id === id);

const exists = (problem: Problem, hookup: Hookup, { after = [] }: Place): boolean =>
  after.every((id) => {
    const need = needOf(problem, id);
    return need !== undefined && (hookup.has(need) || need.stands === true);
  });

/** Whether the place hangs on the need, however far up. */
function hangsOn(problem: Problem, hookup: Hookup, { after = [] }: Place, need: Need, passed: string[]): boolean {
  return after.some((id) => {
    if (id === need.id) return true;
    const above = needOf(problem, id);
    const place = above && hookup.get(above);
    return place !== undefined && !passed.includes(id) && hangsOn(problem, hookup, place, need, [...passed, id]);
  });
}

// Resources

const declared = ({ resources }: Problem, id: string): Resource[] => resources.filter((resource) => resource.id === id);
const isLost = (problem: Problem, id: string): boolean => declared(problem, id).every(({ over }) => over === 'lost');

/** The capacity of each resource; members of a group get an even share of all that could be drawn on the group. */
function shareOut(problem: Problem): Map<string, number> {
  const capacities = new Map<string, number>();
  for (const { id } of problem.resources) {
    capacities.set(id, Math.min(...declared(problem, id).map(({ capacity }) => capacity)));
  }
  for (const group of new Set(problem.resources.map(({ even }) => even))) {
    if (group === undefined) continue;
    const members = [...new Set(problem.resources.filter(({ even }) => even === group).map(({ id }) => id))];
    let all = 0;
    for (const need of problem.needs) {
      const drawn = problem.places
        .filter((place) => mates(problem, need, place) !== 'no' && !isOwnOutlet(problem, need, place))
        .map((place) => {
          const reaching = Object.entries(need.draws ?? {}).filter(([quantity]) =>
            place.meters?.[quantity]?.some((id) => members.includes(id)),
          );
          return reaching.reduce((sum, [, amount]) => sum + amount, 0);
        });
      all += Math.max(0, ...drawn);
    }
    for (const id of members) capacities.set(id, Math.ceil(all / members.length));
  }
  return capacities;
}

const isOverdrawn = (problem: Problem, used: Map<string, number>, capacities: Map<string, number>): boolean =>
  [...used].some(([id, amount]) => !isLost(problem, id) && amount > (capacities.get(id) ?? 0));

type Flow = { place: Place; quantity: string; amount: number };

function draw(problem: Problem, hookup: Hookup, capacities: Map<string, number>): Map<string, number> {
  const flows: Flow[] = [];
  for (const [need, place] of hookup) {
    for (const [quantity, amount] of Object.entries(need.draws ?? {})) flows.push({ place, quantity, amount });
  }
  for (const place of new Set(hookup.values())) {
    for (const [quantity, amount] of Object.entries(place.draws ?? {})) flows.push({ place, quantity, amount });
  }

  const used = new Map<string, number>();
  for (let flow = flows.pop(); flow; flow = flows.pop()) {
    const { place, quantity, amount } = flow;
    if (amount === 0) continue;
    const row = place.meters?.[quantity];
    if (row === undefined || row.length === 0) {
      flows.push(...further(problem, hookup, place, quantity, amount));
      continue;
    }
    let rest = amount;
    for (let k = 0; k < row.length; k++) {
      const id = String(row[k]);
      const capacity = capacities.get(id) ?? 0;
      const took = k < row.length - 1 && rest > capacity ? capacity : rest;
      rest -= took;
      if (took === 0) continue;
      used.set(id, (used.get(id) ?? 0) + took);
      const goesOn = isLost(problem, id) && took > capacity ? capacity : took;
      flows.push(...further(problem, hookup, place, id.split('/').at(-1) ?? id, goesOn));
    }
  }
  return used;
}

/** Up through every need that the place waits for and that carries this, in equal shares. */
function further(problem: Problem, hookup: Hookup, from: Place, quantity: string, amount: number): Flow[] {
  const carriers = (from.after ?? [])
    .map((id) => needOf(problem, id))
    .filter((need) => need?.carries?.includes(quantity));
  return carriers.flatMap((need) => {
    const place = need && hookup.get(need);
    return place ? [{ place, quantity, amount: Math.ceil(amount / carriers.length) }] : [];
  });
}

// Cost

function costOf(
  problem: Problem,
  hookup: Hookup,
  used: Map<string, number>,
  capacities: Map<string, number>,
): number[] {
  const left = problem.needs.filter((need) => !hookup.has(need));
  const falling = (severity: Need['left']) => left.filter((need) => !need.stands && need.left === severity).length;
  const joints = [...hookup];
  let loss = 0;
  for (const [id, amount] of used) if (isLost(problem, id)) loss += Math.max(0, amount - (capacities.get(id) ?? 0));
  return [
    left.filter((need) => need.stands).length,
    falling('hazard'),
    falling('blocker'),
    falling('limit'),
    falling('note'),
    joints.filter(([need, place]) => mates(problem, need, place) === 'unknown').length,
    loss,
    joints.filter(([need]) => need.left === 'spare').length,
    joints.reduce((sum, [, place]) => sum + place.rank, 0),
  ];
}
