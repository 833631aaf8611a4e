import { showMm } from '../../../units/amounts.ts';
import { refusesRule } from '../../rule.ts';

export const driveHeight = refusesRule({
  id: 'clearance/drive-height',
  title: 'The drive is no taller than its bay',
  severity: 'limit',
  basis: 'maker',
  sources: ['maker-data-sheet', 'sff-8301', 'drive-bays'],
  lesson: 'fit/how-parts-meet',

  refuses: { kind: 'drive-bay', op: 'atMost', need: 'heightMm', place: 'heightMm' },

  say: {
    fits: ({ part, on, need, offered }) =>
      need === null || offered === null
        ? `The bay for ${part} takes every drive of its size.`
        : `${part} is ${showMm(Number(need))} tall; its bay in ${on} takes ${showMm(Number(offered))}.`,
    doesNotFit: ({ part, on, need, offered, difference }) => ({
      headline: `The drive is ${showMm(Number(difference))} too tall`,
      what: `${part} is ${showMm(Number(need))} tall; the bay left in ${on} takes ${showMm(Number(offered))}, so it is ${showMm(Number(difference))} too tall.`,
      why: 'The top of the drive meets the wall of the bay, or the drive above it, before its screws meet their holes.',
      remedy: `Choose a drive of ${showMm(Number(offered))} or less, or a case with a bay of ${showMm(Number(need))} or more.`,
    }),
    cannotTell: () => ({
      headline: 'How tall is the drive?',
      what: "The drive's height is not recorded, and its bay does not take every drive of its size, so this fit is not judged.",
      findOut: "Measure the drive's thinnest side, or read it on the maker's sheet.",
    }),
  },

  examples: [
    {
      title: 'exactly as tall as the bay',
      parts: {
        'storage-drive': { build: '2.5', heightMm: 9.5 },
        chassis: { driveBays: [{ id: 'bay-1', sizes: ['2.5'], heightMm: 9.5 }] },
      },
      verdict: 'fits',
    },
    {
      title: 'half a millimetre taller',
      parts: {
        'storage-drive': { build: '2.5', heightMm: 10 },
        chassis: { driveBays: [{ id: 'bay-1', sizes: ['2.5'], heightMm: 9.5 }] },
      },
      verdict: 'does-not-fit',
    },
    {
      title: 'a disk of half height in a wide bay of 41.3 mm',
      shelf: 'vintage',
      parts: {
        'fixed-disk': { size: '5.25' },
        chassis: { driveBays: [{ id: 'wide-1', sizes: ['5.25'], heightMm: 41.3 }] },
      },
      verdict: 'fits',
    },
    {
      title: 'a diskette drive of half height in a wide bay of 41 mm',
      shelf: 'vintage',
      parts: {
        'floppy-drive': { size: '5.25', format: '5.25-1200', plug: 'floppy-edge', powerPlug: 'peripheral-4' },
        chassis: { driveBays: [{ id: 'wide-1', sizes: ['5.25'], heightMm: 41 }] },
      },
      verdict: 'does-not-fit',
    },
    {
      title: 'the tall drive has the tall bay, though it comes second',
      parts: {
        'storage-drive': [
          { build: '2.5', heightMm: 15 },
          { build: '2.5', heightMm: 7 },
        ],
        chassis: {
          driveBays: [
            { id: 'bay-1', sizes: ['2.5'], heightMm: 9.5 },
            { id: 'bay-2', sizes: ['2.5'], heightMm: 15 },
          ],
        },
      },
      verdict: 'fits',
    },
    {
      title: "the drive's height is not recorded",
      parts: {
        'storage-drive': { build: '2.5', heightMm: undefined },
        chassis: { driveBays: [{ id: 'bay-1', sizes: ['2.5'], heightMm: 9.5 }] },
      },
      verdict: 'cannot-tell',
    },
    {
      title: 'an M.2 drive needs no bay',
      parts: {
        'storage-drive': { build: 'm2' },
        chassis: { driveBays: [{ id: 'bay-1', sizes: ['2.5'], heightMm: 9.5 }] },
      },
      verdict: 'does-not-apply',
    },
  ],
});
