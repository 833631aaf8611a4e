import { showMm } from '../../../units/amounts.ts';
import { refusesRule } from '../../rule.ts';

export const driveLength = refusesRule({
  id: 'clearance/drive-length',
  title: 'The drive is no longer than its bay is deep',
  severity: 'limit',
  basis: 'maker',
  sources: ['maker-data-sheet', 'sff-8301'],
  lesson: 'fit/how-parts-meet',

  refuses: { kind: 'drive-bay', op: 'atMost', need: 'lengthMm', place: 'depthMm' },

  say: {
    fits: ({ part, on, need, offered }) =>
      need === null || offered === null
        ? `The bay for ${part} is deep enough for every drive of its size.`
        : `${part} is ${showMm(Number(need))} long; its bay in ${on} is ${showMm(Number(offered))} deep.`,
    doesNotFit: ({ part, on, need, offered, difference }) => ({
      headline: `The drive is ${showMm(Number(difference))} too long`,
      what: `${part} is ${showMm(Number(need))} long; the bay left in ${on} is ${showMm(Number(offered))} deep, so it is ${showMm(Number(difference))} too long.`,
      why: 'The end with the plugs stands out of the bay into the board or the side panel, and its leads cannot be plugged in.',
      remedy: `Choose a drive of ${showMm(Number(offered))} or less, or a case with a bay ${showMm(Number(need))} deep or more.`,
    }),
    cannotTell: () => ({
      headline: 'How long is the drive?',
      what: "The drive's length is not recorded, and the depth of its bay is limited, so this fit is not judged.",
      findOut: 'Measure the drive from the end with the plugs to the other end; leave room for the plugs.',
    }),
  },

  examples: [
    {
      title: 'exactly as long as the bay is deep',
      parts: {
        'storage-drive': { build: '3.5', lengthMm: 147 },
        chassis: { driveBays: [{ id: 'bay-1', sizes: ['3.5'], depthMm: 147 }] },
      },
      verdict: 'fits',
    },
    {
      title: 'one millimetre longer',
      parts: {
        'storage-drive': { build: '3.5', lengthMm: 148 },
        chassis: { driveBays: [{ id: 'bay-1', sizes: ['3.5'], depthMm: 147 }] },
      },
      verdict: 'does-not-fit',
    },
    {
      title: "the drive's length is not recorded",
      parts: {
        'storage-drive': { build: '3.5', lengthMm: undefined },
        chassis: { driveBays: [{ id: 'bay-1', sizes: ['3.5'], depthMm: 147 }] },
      },
      verdict: 'cannot-tell',
    },
    {
      title: 'an M.2 drive needs no bay',
      parts: {
        'storage-drive': { build: 'm2', lengthMm: 80 },
        chassis: { driveBays: [{ id: 'bay-1', sizes: ['3.5'], depthMm: 147 }] },
      },
      verdict: 'does-not-apply',
    },
  ],
});
