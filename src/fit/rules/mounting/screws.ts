import { screws as threads } from '../../../standards/screws.ts';
import { list } from '../../../wording/phrases.ts';
import { cannotTell, doesNotApply, doesNotFit, fits, gathersRule } from '../../rule.ts';
import { lacks } from '../words.ts';

export const screws = gathersRule({
  id: 'mounting/screws',
  title: 'All screws of the machine have one thread',
  severity: 'note',
  basis: 'practice',
  sources: ['common-practice', 'case-screws'],
  lesson: 'fit/how-parts-meet',

  gathers: { chassis: ['standoffScrew'], 'storage-drive': ['screw'] },
  sees: ['drive-bay', 'board-mount'],
  judge({ chassis: cases, 'storage-drive': drives }, { joints }) {
    const boarded = cases.filter(({ unit }) => joints.some(({ place }) => place === `${unit}/tray`));
    const inBays = drives.filter(({ unit }) => joints.some(({ need }) => need === `${unit}/bay`));
    if (boarded.length === 0) return doesNotApply;
    const missing = [
      ...boarded.filter(({ standoffScrew }) => standoffScrew === undefined).map(({ unit }) => `${unit}.standoffScrew`),
      ...inBays.filter(({ screw }) => screw === undefined).map(({ unit }) => `${unit}.screw`),
    ];
    const held = [
      ...boarded.map(({ unit, standoffScrew }) => ({ unit, thread: standoffScrew, what: 'the board' })),
      ...inBays.map(({ unit, name, screw }) => ({ unit, thread: screw, what: name })),
    ];
    const withThread = (thread: '6-32' | 'm3') => [
      ...new Set(held.filter((one) => one.thread === thread).map(({ what }) => what)),
    ];
    const facts = { coarse: withThread('6-32'), fine: withThread('m3') };
    const about = [...new Set(held.map(({ unit }) => unit))];
    if (facts.coarse.length > 0 && facts.fine.length > 0) return doesNotFit(facts, about);
    return missing.length > 0 ? cannotTell(...missing) : fits(facts, about);
  },

  say: {
    fits: ({ coarse }) =>
      `The screws of the board and of the drives in bays all have the thread ${coarse.length > 0 ? threads['6-32'].name : threads.m3.name}.`,
    doesNotFit: ({ coarse, fine }) => ({
      headline: 'Two threads of screw in one machine',
      what: `${threads['6-32'].name} screws hold ${list(coarse)}; ${threads.m3.name} screws hold ${list(fine)}.`,
      why: 'The two look alike. Forced into the other thread, a screw ruins the hole, and the part cannot be fastened again.',
      remedy: `Two dishes should be used, one for each thread. Turn each screw in with your fingers first: the right one goes in easily. ${threads['6-32'].name} is the coarser.`,
    }),
    cannotTell: (missing) =>
      lacks(missing, 'chassis')
        ? {
            headline: 'Which screws do the standoffs take?',
            what: 'The thread of the standoffs is not recorded, so it is not said whether the machine needs two kinds of screw.',
            findOut: "Try a screw from the case's bag in a standoff with your fingers.",
          }
        : {
            headline: 'Which screws does the drive take?',
            what: 'The thread of a drive is not recorded, so it is not said whether the machine needs two kinds of screw.',
            findOut: `Try with your fingers: ${threads.m3.name} is usual in 2.5 inch drives, ${threads['6-32'].name} in 3.5 inch ones.`,
          },
  },

  examples: [
    {
      title: 'one thread for board and drive',
      parts: {
        motherboard: {},
        chassis: { standoffScrew: '6-32' },
        'storage-drive': { build: '3.5', screw: '6-32' },
      },
      verdict: 'fits',
    },
    {
      title: 'a 2.5 inch drive beside coarse standoffs',
      parts: { motherboard: {}, chassis: { standoffScrew: '6-32' }, 'storage-drive': { build: '2.5', screw: 'm3' } },
      verdict: 'does-not-fit',
    },
    {
      title: "the standoffs' thread is not recorded",
      parts: { motherboard: {}, chassis: { standoffScrew: undefined } },
      verdict: 'cannot-tell',
    },
    {
      title: "the drive's thread is not recorded",
      parts: {
        motherboard: {},
        chassis: { standoffScrew: '6-32' },
        'storage-drive': { build: '2.5', screw: undefined },
      },
      verdict: 'cannot-tell',
    },
    { title: 'a case without a board', parts: { chassis: { standoffScrew: '6-32' } }, verdict: 'does-not-apply' },
  ],
});
