import type { Need, Place, Test } from '../model.ts';

/** Whether hands could make this joint, as far as is recorded. */
export type Mating = 'yes' | 'unknown' | 'no';

const listed = (value: string | number | boolean | readonly (string | number)[]) =>
  typeof value === 'object' ? value : [value];

/**
 * One test of one joint. A value of null sets no limit and passes; one not recorded is unknown.
 * Throws a RangeError when `atMost` or `atLeast` is asked of something that is not a number.
 */
export function tryTest({ name, op, ...attr }: Test, need: Need['attrs'], place: Place['attrs']): Mating {
  const wanted = need[attr.need];
  const offered = place[attr.place];
  if (wanted === null || offered === null) return 'yes';
  if (wanted === undefined || offered === undefined) return 'unknown';
  if (op === 'shares') {
    const offers: readonly (string | number | boolean)[] = listed(offered);
    return listed(wanted).some((value) => offers.includes(value)) ? 'yes' : 'no';
  }
  if (typeof wanted !== 'number' || typeof offered !== 'number') {
    throw new RangeError(`${name} compares ${String(wanted)} with ${String(offered)}`);
  }
  return (op === 'atMost' ? wanted <= offered : wanted >= offered) ? 'yes' : 'no';
}

/** Any test failed: no. None failed, one not recorded: unknown. Otherwise yes. */
export function mate(tests: readonly Test[], need: Need['attrs'], place: Place['attrs']): Mating {
  let mating: Mating = 'yes';
  for (const test of tests) {
    const result = tryTest(test, need, place);
    if (result === 'no') return 'no';
    if (result === 'unknown') mating = 'unknown';
  }
  return mating;
}
