/** Short ways to write a problem by hand and to read what became of it. */
import { findHookup } from '../../../src/fit/hookup/search.ts';
import { whyLeft } from '../../../src/fit/hookup/why.ts';
import type { Hookup, KindName, Need, Place, Problem, Reason, Resource } from '../../../src/fit/model.ts';
import { kinds } from './kinds.ts';

type Lists = { needs: Need[]; places: Place[]; resources?: Resource[] };
type Attrs = Need['attrs'];

/** A need of the unit that its id names. Left over it is a blocker, unless `more` says otherwise. */
export const need = (id: string, kind: KindName, attrs: Attrs = {}, more: Partial<Need> = {}): Need => ({
  id,
  part: id.slice(0, id.indexOf('/')),
  kind,
  left: 'blocker',
  attrs,
  ...more,
});

export const place = (
  id: string,
  kind: KindName,
  rank: number,
  attrs: Attrs = {},
  more: Partial<Place> = {},
): Place => ({ id, part: id.slice(0, id.indexOf('/')), kind, rank, attrs, ...more });

export const problem = ({ needs, places, resources = [] }: Lists): Problem => ({ needs, places, resources, kinds });

/** `joined` by need: `<place>` or `<place> as <way>`. `loss` and `spares`: levels of the cost. */
export function solve(lists: Lists) {
  const asked = problem(lists);
  const hookup = findHookup(asked);
  const reasons: Record<string, Reason[]> = {};
  for (const why of whyLeft(asked, hookup)) reasons[why.need] = why.reasons;
  return {
    joined: readJoints(hookup),
    left: hookup.left.map(({ id }) => id),
    unknown: hookup.joints.filter((joint) => joint.unknown).map((joint) => joint.need),
    loss: hookup.cost[6],
    spares: hookup.cost[7],
    reasons,
  };
}

export const readJoints = ({ joints }: Hookup): Record<string, string> =>
  Object.fromEntries(joints.map(({ need, place, way }) => [need, way === undefined ? place : `${place} as ${way}`]));
