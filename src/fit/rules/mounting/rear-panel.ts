import { rearPanels } from '../../../standards/rear-panels.ts';
import { cannotTell, doesNotFit, fits, joinsRule } from '../../rule.ts';
import { lacks } from '../words.ts';

type Panel = 'plate' | 'keyboard-hole';

const panelNames: Readonly<Record<Panel, string>> = {
  plate: 'a plate of its own',
  'keyboard-hole': 'one round hole for the keyboard',
};

/** What all of these have; undefined where they differ or their standard settles nothing. */
function usual(forms: readonly (keyof typeof rearPanels)[] | undefined): Panel | undefined {
  const panels = new Set((forms ?? []).map((form) => rearPanels[form].shows));
  const [only] = panels;
  return panels.size === 1 && only !== null ? only : undefined;
}

export const rearPanel = joinsRule({
  id: 'mounting/rear-panel',
  title: 'The sockets of the board show through the back of the case',
  severity: 'blocker',
  basis: 'standard',
  sources: ['micro-atx-interface', 'common-practice'],
  lesson: 'fit/how-parts-meet',

  joins: { motherboard: ['rearPanel', 'formFactor'], chassis: ['rearPanel', 'formFactors'] },
  judge({ motherboard, chassis }) {
    const board = motherboard.rearPanel ?? usual(motherboard.formFactor && [motherboard.formFactor]);
    const back = chassis.rearPanel ?? usual(chassis.formFactors);
    if (board === undefined) return cannotTell('motherboard.rearPanel');
    if (back === undefined) return cannotTell('chassis.rearPanel');
    const facts = { board, back };
    return board === back ? fits(facts) : doesNotFit(facts);
  },

  say: {
    fits: ({ back }) => `The board's sockets need ${panelNames[back]} at the back of the case, and it is there.`,
    doesNotFit: ({ board, back }) => ({
      headline: 'The sockets meet metal at the back',
      what: `The board's sockets need ${panelNames[board]} at the back of the case; the case has ${panelNames[back]}.`,
      why: 'The sockets stand where the back of the case is closed, so the board does not go down on its supports, or no plug reaches it.',
      remedy: `Choose a case with ${panelNames[board]}, or a board for a case with ${panelNames[back]}.`,
    }),
    cannotTell: (missing) =>
      lacks(missing, 'motherboard')
        ? {
            headline: "Which opening do the board's sockets need?",
            what: 'What shows of the board at the back is not recorded, so this fit is not judged.',
            findOut: 'Look at the rear edge of the board: a block of sockets needs a plate, one round socket a hole.',
          }
        : {
            headline: 'Which opening has the case?',
            what: 'The opening at the back of the case is not recorded, so this fit is not judged.',
            findOut: 'Look at the back of the case: an oblong opening of 159 by 45 mm, or one round hole.',
          },
  },

  examples: [
    {
      title: 'a board and a case of one standard',
      parts: { motherboard: { formFactor: 'atx' }, chassis: { formFactors: ['atx', 'micro-atx'] } },
      verdict: 'fits',
    },
    {
      title: 'one keyboard socket and one hole',
      shelf: 'vintage',
      parts: { motherboard: { rearPanel: 'keyboard-hole' }, chassis: { rearPanel: 'keyboard-hole' } },
      verdict: 'fits',
    },
    {
      title: 'a row of sockets and one hole',
      shelf: 'vintage',
      parts: { motherboard: { rearPanel: 'plate' }, chassis: { rearPanel: 'keyboard-hole' } },
      verdict: 'does-not-fit',
    },
    {
      title: 'a case for boards of two standards, its opening not recorded',
      parts: { motherboard: { formFactor: 'atx' }, chassis: { formFactors: ['atx', 'baby-at'] } },
      verdict: 'cannot-tell',
    },
    {
      title: 'a board whose standard leaves it open',
      shelf: 'vintage',
      parts: { motherboard: { formFactor: 'lpx', rearPanel: undefined }, chassis: {} },
      verdict: 'cannot-tell',
    },
    { title: 'a board and no case', parts: { motherboard: {} }, verdict: 'does-not-apply' },
  ],
});
