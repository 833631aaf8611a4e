import { cannotTell, doesNotApply, doesNotFit, fits, jointRule } from '../../rule.ts';
import { partAs } from '../ends.ts';
import { lacks } from '../words.ts';

export const processorFamily = jointRule({
  id: 'firmware/processor-family',
  title: 'The firmware on the board as sold knows the processor',
  severity: 'blocker',
  basis: 'maker',
  sources: ['maker-data-sheet'],
  lesson: 'fit/how-parts-meet',

  at: 'processor-socket',
  reads: { processor: ['family'], motherboard: ['firmware'] },
  judge({ need, place }) {
    const processor = partAs(need.unit, 'processor');
    const firmware = partAs(place.unit, 'motherboard')?.firmware;
    if (processor === undefined) return doesNotApply;
    if (processor.family === undefined) return cannotTell(`${need.unit.id}.family`);
    if (firmware === undefined) return cannotTell(`${place.unit.id}.firmware`);

    const from = firmware.knows.find(({ family }) => family === processor.family)?.from ?? null;
    const facts = {
      processor: processor.name,
      board: place.unit.part.name,
      shipped: firmware.shipped,
      from,
      writesAlone: firmware.updatesWithoutProcessor ?? null,
    };
    return from !== null && from <= firmware.shipped ? fits(facts) : doesNotFit(facts);
  },

  say: {
    fits: ({ processor, board, shipped, from }) =>
      `${board} is sold with firmware ${shipped}; ${processor} needs ${from} or later.`,
    doesNotFit: ({ processor, board, shipped, from, writesAlone }) =>
      from === null
        ? {
            headline: 'No firmware for this board knows the processor',
            what: `${board} is sold with firmware ${shipped}; its maker lists no version that knows ${processor}.`,
            why: 'The processor goes into the socket, but the board does not start with it: the screen stays dark.',
            remedy: "Choose a processor from the list on the board maker's page, or a board whose list names this one.",
          }
        : {
            headline: `Firmware ${shipped} on the board, ${from} needed`,
            what: `${board} is sold with firmware ${shipped}; ${processor} needs ${from} or later, so the firmware is too old.`,
            why: 'The processor goes into the socket, but the board does not start with it until newer firmware is on it.',
            remedy:
              writesAlone === true
                ? `Write firmware ${from} to the board from a memory stick first; this board can do that with no processor in it. Or choose a processor it knows already.`
                : `Have the shop write firmware ${from} before you take the board home, or borrow an older processor to write it with, or choose a processor the board knows already.${
                    writesAlone === null
                      ? ' Some boards also write firmware with no processor in them; read in the manual whether this is one.'
                      : ''
                  }`,
          },
    cannotTell: (missing) =>
      lacks(missing, 'processor')
        ? {
            headline: 'Which family is the processor of?',
            what: "The processor's family is not recorded, so it is not judged whether the board's firmware knows it.",
            findOut: "Look for the processor's model in the list of supported processors on the board maker's page.",
          }
        : {
            headline: 'Which firmware has the board?',
            what: "The board's firmware is not recorded, so it is not judged whether the board starts this processor.",
            findOut:
              "Read the version on the sticker on the board or its box, and compare it with the list of processors on the board maker's page.",
          },
  },

  examples: [
    {
      title: 'sold with exactly the version needed',
      parts: {
        processor: { socket: 'k4', family: 'quellin-3' },
        motherboard: { socket: 'k4', firmware: { shipped: 12, knows: [{ family: 'quellin-3', from: 12 }] } },
      },
      verdict: 'fits',
    },
    {
      title: 'one version behind',
      parts: {
        processor: { socket: 'k4', family: 'quellin-3' },
        motherboard: { socket: 'k4', firmware: { shipped: 11, knows: [{ family: 'quellin-3', from: 12 }] } },
      },
      verdict: 'does-not-fit',
    },
    {
      title: 'one version behind, and the board writes firmware without a processor',
      parts: {
        processor: { socket: 'k4', family: 'quellin-3' },
        motherboard: {
          socket: 'k4',
          firmware: { shipped: 11, knows: [{ family: 'quellin-3', from: 12 }], updatesWithoutProcessor: true },
        },
      },
      verdict: 'does-not-fit',
    },
    {
      title: 'no version knows the family',
      parts: {
        processor: { socket: 'k4', family: 'quellin-3' },
        motherboard: { socket: 'k4', firmware: { shipped: 12, knows: [{ family: 'quellin-2', from: 1 }] } },
      },
      verdict: 'does-not-fit',
    },
    {
      title: "the processor's family is not recorded",
      parts: {
        processor: { socket: 'k4', family: undefined },
        motherboard: { socket: 'k4', firmware: { shipped: 12, knows: [{ family: 'quellin-3', from: 12 }] } },
      },
      verdict: 'cannot-tell',
    },
    {
      title: "the board's firmware is not recorded",
      parts: {
        processor: { socket: 'k4', family: 'quellin-3' },
        motherboard: { socket: 'k4', firmware: undefined },
      },
      verdict: 'cannot-tell',
    },
    { title: 'a board without a processor', parts: { motherboard: { socket: 'k4' } }, verdict: 'does-not-apply' },
  ],
});
