/** Kinds of joint. A kind has no code: it is a row of tests, and each test bears the id of the rule that words it. */
import type { Kind, KindName, Kinds, Quantity, Test } from '../model.ts';
import type { Rule } from '../rule.ts';

/** The quantity by which needs of a kind choose first, the greatest draw before the others. */
const hungry: Record<KindName, Quantity | undefined> = {
  'processor-socket': undefined,
  'cooler-mount': undefined,
  cooling: undefined,
  'memory-slot': 'channelMib',
  'memory-bank': 'channelMib',
  'expansion-slot': 'busMBps',
  'module-slot': 'busMBps',
  'drive-data': undefined,
  'drive-bay': undefined,
  'board-mount': undefined,
  'supply-mount': undefined,
  'fan-mount': 'panelUnits',
  'radiator-mount': 'panelUnits',
  'board-power': undefined,
  'processor-power': undefined,
  'card-power': 'leadDeciwatts',
  'drive-power': 'leadDeciwatts',
  'fan-header': 'milliamps',
  'front-panel': undefined,
  picture: 'pictureMbps',
  keyboard: undefined,
  pointer: undefined,
  mains: undefined,
  setting: undefined,
  'coprocessor-socket': undefined,
  'light-header': 'milliamps',
  'monitor-mount': undefined,
};

function testsOf(rule: Rule, kind: KindName): Test[] {
  if ('refuses' in rule && rule.refuses.kind === kind) {
    const { op, need, place } = rule.refuses;
    return [{ name: rule.id, op, need, place }];
  }
  if ('left' in rule && rule.left === kind && rule.plugTest) return [{ name: rule.id, op: 'shares', ...rule.plugTest }];
  return [];
}

/** The kinds that a list of rules makes, tests in the order of the list. */
export function kindsOf(list: readonly Rule[]): Kinds {
  const entries = Object.entries(hungry).map(([name, quantity]): [string, Kind] => [
    name,
    {
      tests: list.flatMap((rule) => testsOf(rule, name as KindName)),
      ...(quantity === undefined ? {} : { hungry: quantity }),
    },
  ]);
  return Object.fromEntries(entries) as Kinds;
}
