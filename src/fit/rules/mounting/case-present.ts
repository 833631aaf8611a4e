import { count, spelled } from '../../../wording/phrases.ts';
import { leftRule } from '../../rule.ts';

export const casePresent = leftRule({
  id: 'mounting/case-present',
  title: 'The board has a case of its own',
  severity: 'blocker',
  basis: 'maker',
  sources: ['maker-data-sheet'],
  lesson: 'parts/what-the-parts-are',

  left: 'board-mount',

  say: {
    fits: ({ part }) => `${part} has a place in the case.`,
    doesNotFit: ({ part, reason, wanting, places }) =>
      reason === 'taken'
        ? {
            headline: `${count(wanting, 'board', 'boards')}, ${count(places, 'place', 'places')} in the case`,
            what: `The list has ${spelled(wanting, 'board', 'boards')} and ${spelled(places, 'place', 'places')} for one, so ${part} is left over.`,
            why: 'A case holds one board.',
            remedy: 'Take one board off the list, or add a case for it.',
          }
        : {
            headline: 'The board has no case',
            what: `${part} has nothing to be screwed to: there is no case on the list.`,
            why: 'A bare board lies open to touch, and anything of metal that falls on it shorts it.',
            remedy: "Choose a case that takes the board's form.",
          },
    cannotTell: () => ({
      headline: 'Is there a case for the board?',
      what: 'Not every way of placing the boards was tried, so this is not judged.',
      findOut: 'Count the boards and the cases on the list.',
    }),
  },

  examples: [
    {
      title: 'one board and one case',
      parts: { motherboard: { formFactor: 'atx' }, chassis: { formFactors: ['atx'] } },
      verdict: 'fits',
    },
    { title: 'a board and no case', parts: { motherboard: { formFactor: 'atx' } }, verdict: 'does-not-fit' },
    {
      title: 'two boards and one case',
      parts: { motherboard: [{ formFactor: 'atx' }, { formFactor: 'atx' }], chassis: { formFactors: ['atx'] } },
      verdict: 'does-not-fit',
    },
    { title: 'no board on the list', parts: { chassis: { formFactors: ['atx'] } }, verdict: 'does-not-apply' },
  ],
});
