/** A few rules with the plainest words there are, one of each form: the runner is tested by them, not by the core's own. */
import {
  budgetRule,
  cannotTell,
  doesNotApply,
  doesNotFit,
  fits,
  gathersRule,
  joinsRule,
  jointRule,
  leftRule,
  refusesRule,
} from '../../../src/fit/rule.ts';

const common = {
  severity: 'blocker' as const,
  basis: 'maker' as const,
  sources: ['maker-data-sheet'],
  lesson: 'fit/how-parts-meet',
  say: {
    fits: () => 'It fits.',
    doesNotFit: () => ({ headline: 'It does not', what: 'It does not fit.', why: 'Because.', remedy: 'Change it.' }),
    cannotTell: () => ({ headline: 'Not known', what: 'It is not judged.', findOut: 'Look it up.' }),
  },
  examples: [],
};

export const socket = refusesRule({
  ...common,
  id: 'test/socket',
  title: 'The sockets agree',
  refuses: { kind: 'processor-socket', op: 'shares', need: 'socket', place: 'socket' },
});

export const generation = refusesRule({
  ...common,
  id: 'test/generation',
  title: 'The generations agree',
  refuses: { kind: 'memory-slot', op: 'shares', need: 'generation', place: 'generation' },
});
export const size = refusesRule({
  ...common,
  id: 'test/size',
  title: 'The module is no larger than the board allows',
  refuses: { kind: 'memory-slot', op: 'atMost', need: 'sizeGb', place: 'sizeGb' },
});
export const slotsFree = leftRule({
  ...common,
  id: 'test/slots-free',
  title: 'There is a slot',
  left: 'memory-slot',
});

export const cooling = leftRule({ ...common, id: 'test/cooling', title: 'There is cooling', left: 'cooling' });
export const mounting = refusesRule({
  ...common,
  id: 'test/mounting',
  title: 'The mountings agree',
  refuses: { kind: 'cooler-mount', op: 'shares', need: 'mountings', place: 'mountings' },
});

export const cardLeads = leftRule({
  ...common,
  id: 'test/card-leads',
  title: 'There is a lead',
  left: 'card-power',
  plugTest: { need: 'plug', place: 'plug' },
});
export const dataPort = leftRule({ ...common, id: 'test/data-port', title: 'There is a port', left: 'drive-data' });
export const cardSlot = leftRule({ ...common, id: 'test/card-slot', title: 'There is a slot', left: 'expansion-slot' });
export const picture = leftRule({ ...common, id: 'test/picture', title: 'There is a picture', left: 'picture' });
export const processorLead = leftRule({
  ...common,
  id: 'test/processor-lead',
  title: 'There is a lead',
  left: 'processor-power',
});

export const linkWidth = jointRule({
  ...common,
  id: 'test/link-width',
  title: 'The link is as wide as the card',
  severity: 'limit',
  at: 'expansion-slot',
  reads: {},
  judge: ({ lost }) => ((lost['busMBps'] ?? 0) > 0 ? doesNotFit({ lost: lost['busMBps'] ?? 0 }) : fits({ lost: 0 })),
});

export const height = joinsRule({
  ...common,
  id: 'test/height',
  title: 'The cooler is low enough',
  joins: { cooler: ['heightMm'], chassis: ['coolerHeightMm'] },
  judge({ cooler, chassis }) {
    if (cooler.heightMm === undefined) return cannotTell('cooler.heightMm');
    if (chassis.coolerHeightMm === undefined) return cannotTell('chassis.coolerHeightMm');
    const facts = { height: cooler.heightMm, limit: chassis.coolerHeightMm };
    return facts.height <= facts.limit ? fits(facts) : doesNotFit(facts);
  },
});

export const total = gathersRule({
  ...common,
  id: 'test/total',
  title: 'The board takes the memory in all',
  gathers: { 'memory-module': ['capacityGb'], motherboard: ['memory'] },
  judge({ 'memory-module': modules, motherboard: boards }) {
    const board = boards[0];
    if (!board || modules.length === 0) return doesNotApply;
    const limit = board.memory?.totalGb;
    if (limit === undefined) return cannotTell('motherboard.memory.totalGb');
    if (modules.some(({ capacityGb }) => capacityGb === undefined)) return cannotTell('memory-module.capacityGb');
    const facts = { inAll: modules.reduce((sum, { capacityGb = 0 }) => sum + capacityGb, 0), limit };
    return facts.inAll <= limit ? fits(facts) : doesNotFit(facts, [board.unit]);
  },
});

export const load = budgetRule({
  ...common,
  id: 'test/load',
  title: 'The supply carries the load',
  budget: 'power',
  judge({ used, limit, about }) {
    if (about.length === 0) return doesNotApply;
    if (limit === undefined) return cannotTell('power-supply.ratedW');
    return used <= limit ? fits({ used, limit }) : doesNotFit({ used, limit });
  },
});
