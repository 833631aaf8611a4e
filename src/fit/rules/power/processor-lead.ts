import { capital, inWords, spelled, withArticle } from '../../../wording/phrases.ts';
import { termName } from '../../../wording/terms.ts';
import { leftRule } from '../../rule.ts';

/** "an 8-pin processor plug", "two 8-pin processor plugs". */
const plugs = (n: number, plug: string): string =>
  n === 1 ? withArticle(termName(plug)) : spelled(n, termName(plug), `${termName(plug)}s`);

export const processorLead = leftRule({
  id: 'power/processor-lead',
  title: 'A lead of the supply goes into each processor power socket',
  severity: 'blocker',
  basis: 'maker',
  sources: ['maker-data-sheet', 'atx-connector-ratings'],
  lesson: 'fit/how-parts-meet',

  left: 'processor-power',
  plugTest: { need: 'plug', place: 'plug' },

  say: {
    fits: ({ part, needName }) => `${part} gets its ${termName(needName)} from the supply.`,
    doesNotFit: ({ part, needName, mating, wanting }) => ({
      headline: `${capital(termName(needName))}s: ${wanting} wanted, ${mating} there`,
      what: `${part} has ${wanting === 1 ? 'a socket' : 'sockets'} for ${plugs(wanting, needName)}; the list has ${mating === 0 ? 'none' : inWords(mating)}, so ${spelled(wanting - mating, 'socket is', 'sockets are')} left empty.`,
      why: 'The first of these sockets feeds the processor, and the board does not start without it. A second one is for heavy loads only.',
      remedy:
        wanting === 1
          ? `Choose a supply with ${plugs(wanting, needName)}.`
          : `Choose a supply with ${plugs(wanting, needName)}, or a board with fewer such sockets. Where only the second socket is left empty, the machine works.`,
    }),
    cannotTell: (missing) =>
      missing.some((field) => field.endsWith('.leads'))
        ? {
            headline: 'Which leads come out of the supply?',
            what: "The supply's leads are not recorded, so it is not judged whether one feeds the processor.",
            findOut:
              "Read the table of leads on the supply's box: the plug is marked CPU or EPS. Leave the supply itself closed.",
          }
        : {
            headline: 'Which processor power sockets has the board?',
            what: "The board's power sockets are not recorded, so it is not judged whether a lead goes into them.",
            findOut: 'Look at the corner of the board near the processor: a socket of 4 or 8 square holes.',
          },
  },

  examples: [
    {
      title: 'one socket and one lead',
      parts: {
        motherboard: { powerSockets: ['atx-24', 'eps-8'] },
        'power-supply': {
          leads: [
            { id: 'board', plugs: ['atx-24'] },
            { id: 'processor', plugs: ['eps-8'] },
          ],
        },
      },
      verdict: 'fits',
    },
    {
      title: 'two sockets and one lead',
      parts: {
        motherboard: { powerSockets: ['atx-24', 'eps-8', 'eps-8'] },
        'power-supply': {
          leads: [
            { id: 'board', plugs: ['atx-24'] },
            { id: 'processor', plugs: ['eps-8'] },
          ],
        },
      },
      verdict: 'does-not-fit',
    },
    {
      title: 'a plug that parts into two fours, and a socket of four',
      parts: {
        motherboard: { powerSockets: ['atx-24', 'eps-4'] },
        'power-supply': {
          leads: [
            { id: 'board', plugs: ['atx-24'] },
            { id: 'processor', plugs: ['eps-4-4'] },
          ],
        },
      },
      verdict: 'fits',
    },
    {
      title: 'a plug of eight pins in one piece, and a socket of four',
      parts: {
        motherboard: { powerSockets: ['atx-24', 'eps-4'] },
        'power-supply': {
          leads: [
            { id: 'board', plugs: ['atx-24'] },
            { id: 'processor', plugs: ['eps-8'] },
          ],
        },
      },
      verdict: 'does-not-fit',
    },
    {
      title: 'two sockets of four, and one plug that parts into two',
      parts: {
        motherboard: { powerSockets: ['atx-24', 'eps-4', 'eps-4'] },
        'power-supply': {
          leads: [
            { id: 'board', plugs: ['atx-24'] },
            { id: 'processor', plugs: ['eps-4-4'] },
          ],
        },
      },
      verdict: 'does-not-fit',
    },
    {
      title: 'a card lead does not go into the processor socket',
      parts: {
        motherboard: { powerSockets: ['atx-24', 'eps-8'] },
        'power-supply': {
          leads: [
            { id: 'board', plugs: ['atx-24'] },
            { id: 'card', plugs: ['pcie-8'] },
          ],
        },
      },
      verdict: 'does-not-fit',
    },
    {
      title: "the supply's leads are not recorded",
      parts: { motherboard: { powerSockets: ['atx-24', 'eps-8'] }, 'power-supply': { leads: undefined } },
      verdict: 'cannot-tell',
    },
    {
      title: 'a board that has no such socket',
      parts: {
        motherboard: { powerSockets: ['atx-24'] },
        'power-supply': { leads: [{ id: 'board', plugs: ['atx-24'] }] },
      },
      verdict: 'does-not-apply',
    },
  ],
});
