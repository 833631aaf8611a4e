import { formFactors } from '../../../standards/boards.ts';
import { capital, withArticle } from '../../../wording/phrases.ts';
import type { Fact } from '../../report.ts';
import { refusesRule } from '../../rule.ts';
import { lacks, oneOf } from '../words.ts';

const outlines: Readonly<Record<string, { widthMm: number; depthMm: number }>> = formFactors;

/** "microATX, 244 by 244 mm". */
const withSize = (form: Fact): string => {
  const outline = outlines[String(form)];
  return outline ? `${oneOf(form)}, ${outline.widthMm} by ${outline.depthMm} mm` : oneOf(form);
};

export const boardForm = refusesRule({
  id: 'mounting/board-form',
  title: 'The case has the standoffs and the room for the board',
  severity: 'blocker',
  basis: 'standard',
  sources: ['micro-atx-interface', 'mini-itx-addendum'],
  lesson: 'fit/how-parts-meet',

  refuses: { kind: 'board-mount', op: 'shares', need: 'formFactor', place: 'formFactors' },

  say: {
    fits: ({ part, on, need }) => `${part} is ${withSize(need)}, and ${on} takes that form.`,
    doesNotFit: ({ part, on, need, offered }) => ({
      headline: `${capital(withArticle(oneOf(need)))} board, case for ${oneOf(offered)}`,
      what: `${part} is ${withSize(need)}; ${on} takes ${oneOf(offered)}.`,
      why: 'The board must be screwed to standoffs under its own holes; in this case it meets the wall or finds no standoffs where its holes are.',
      remedy: `Choose ${withArticle(oneOf(offered))} board, or a case that takes ${oneOf(need)}.`,
    }),
    cannotTell: (missing) =>
      lacks(missing, 'motherboard')
        ? {
            headline: 'Which form has the board?',
            what: "The board's form factor is not recorded, so this fit is not judged.",
            findOut: 'Measure the board: 305 by 244 mm is ATX, 244 by 244 mm microATX, 170 by 170 mm Mini-ITX.',
          }
        : {
            headline: 'Which boards does the case take?',
            what: 'The form factors that the case takes are not recorded, so this fit is not judged.',
            findOut:
              "Read them on the case's box, or count the cut-outs at the back: 7 is usual for ATX, 4 for microATX.",
          },
  },

  examples: [
    {
      title: 'one of the forms of the case',
      parts: { motherboard: { formFactor: 'micro-atx' }, chassis: { formFactors: ['atx', 'micro-atx'] } },
      verdict: 'fits',
    },
    {
      title: 'an ATX board in a smaller case',
      parts: { motherboard: { formFactor: 'atx' }, chassis: { formFactors: ['micro-atx', 'mini-itx'] } },
      verdict: 'does-not-fit',
    },
    {
      title: "the board's form is not recorded",
      parts: { motherboard: { formFactor: undefined }, chassis: { formFactors: ['atx', 'micro-atx'] } },
      verdict: 'cannot-tell',
    },
    {
      title: "the case's forms are not recorded",
      parts: { motherboard: { formFactor: 'atx' }, chassis: { formFactors: undefined } },
      verdict: 'cannot-tell',
    },
    { title: 'a case without a board', parts: { chassis: { formFactors: ['atx'] } }, verdict: 'does-not-apply' },
  ],
});
