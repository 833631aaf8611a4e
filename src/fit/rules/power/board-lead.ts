import { inWords, withArticle } from '../../../wording/phrases.ts';
import { termName } from '../../../wording/terms.ts';
import { leftRule } from '../../rule.ts';

export const boardLead = leftRule({
  id: 'power/board-lead',
  title: 'A lead of the supply goes into the large socket of the board',
  severity: 'blocker',
  basis: 'maker',
  sources: ['maker-data-sheet', 'atx12v-design-guide'],
  lesson: 'fit/how-parts-meet',

  left: 'board-power',
  plugTest: { need: 'plug', place: 'plug' },

  say: {
    fits: ({ part, needName }) => `A lead goes into the large socket of ${part}, made for the ${termName(needName)}.`,
    doesNotFit: ({ part, needName, mating }) => ({
      headline: `No ${termName(needName)} for the board`,
      what:
        mating === 0
          ? `${part} needs ${withArticle(termName(needName))}; nothing on the list has one.`
          : `${part} needs ${withArticle(termName(needName))}; the list has ${inWords(mating)}, for another board.`,
      why: 'The board itself runs on this plug; without it nothing starts.',
      remedy: `Choose a supply with ${withArticle(termName(needName))}.`,
    }),
    cannotTell: (missing) =>
      missing.some((field) => field.endsWith('.leads'))
        ? {
            headline: 'Which leads come out of the supply?',
            what: "The supply's leads are not recorded, so it is not judged whether one goes into the board.",
            findOut:
              "Read the table of leads on the supply's box, or lay its leads out on the bench. Leave the supply itself closed.",
          }
        : {
            headline: 'Which power sockets has the board?',
            what: "The board's power sockets are not recorded, so it is not judged whether a lead goes into them.",
            findOut: 'Count the contacts of the large socket at the edge of the board: 24 is usual.',
          },
  },

  examples: [
    {
      title: 'a 24-pin socket and a 24-pin lead',
      parts: {
        motherboard: { powerSockets: ['atx-24'] },
        'power-supply': { leads: [{ id: 'board', plugs: ['atx-24'] }] },
      },
      verdict: 'fits',
    },
    {
      title: 'a 24-pin socket and a 20-pin lead',
      parts: {
        motherboard: { powerSockets: ['atx-24'] },
        'power-supply': { leads: [{ id: 'board', plugs: ['atx-20'] }] },
      },
      verdict: 'fits',
    },
    {
      title: 'a supply without that lead',
      parts: {
        motherboard: { powerSockets: ['atx-24'] },
        'power-supply': { leads: [{ id: 'processor', plugs: ['eps-8'] }] },
      },
      verdict: 'does-not-fit',
    },
    { title: 'a board and no supply', parts: { motherboard: { powerSockets: ['atx-24'] } }, verdict: 'does-not-fit' },
    {
      title: "the supply's leads are not recorded",
      parts: { motherboard: { powerSockets: ['atx-24'] }, 'power-supply': { leads: undefined } },
      verdict: 'cannot-tell',
    },
    {
      title: 'no board on the list',
      parts: { 'power-supply': { leads: [{ id: 'board', plugs: ['atx-24'] }] } },
      verdict: 'does-not-apply',
    },
  ],
});
