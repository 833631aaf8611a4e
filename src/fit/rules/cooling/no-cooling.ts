import { leftRule } from '../../rule.ts';

export const noCooling = leftRule({
  id: 'cooling/no-cooling',
  title: 'The processor has a cooler on it',
  severity: 'hazard',
  basis: 'maker',
  sources: ['maker-data-sheet'],
  lesson: 'power/before-first-power-on',

  left: 'cooling',

  say: {
    fits: ({ part }) => `${part} has a cooler on it.`,
    doesNotFit: ({ part, reason, waitsFor }) => ({
      headline: 'The processor has no cooler',
      what:
        reason === 'absent' && waitsFor !== null
          ? `${part} has no cooling: the cooler on the list cannot be mounted.`
          : `${part} has no cooling: there is no cooler for it on the list.`,
      why: 'A processor without a cooler overheats within seconds of power-on, and its metal lid burns a finger.',
      remedy:
        reason === 'absent' && waitsFor !== null
          ? "Choose a cooler and a board of which one takes the other's mounting. Do not switch on before the cooler is fitted."
          : 'Choose a cooler with a mounting for the board. Do not switch on before it is fitted.',
    }),
    cannotTell: () => ({
      headline: 'Does a cooler fit the processor?',
      what: 'Not every way of placing the coolers was tried, so the cooling is not judged.',
      findOut: 'See that one cooler on the list has a mounting for the board. Do not switch on before it is fitted.',
    }),
  },

  examples: [
    {
      title: 'a cooler that can be mounted',
      parts: {
        processor: { socket: 'k4' },
        motherboard: { socket: 'k4', coolerMountings: ['square-80'] },
        cooler: { mountings: ['square-80'] },
      },
      verdict: 'fits',
    },
    {
      title: 'no cooler on the list',
      parts: { processor: { socket: 'k4' }, motherboard: { socket: 'k4', coolerMountings: ['square-80'] } },
      verdict: 'does-not-fit',
    },
    {
      title: 'a cooler with another mounting',
      parts: {
        processor: { socket: 'k4' },
        motherboard: { socket: 'k4', coolerMountings: ['square-80'] },
        cooler: { mountings: ['wide-94'] },
      },
      verdict: 'does-not-fit',
    },
    {
      title: 'no processor on the list',
      parts: { motherboard: { coolerMountings: ['square-80'] }, cooler: { mountings: ['square-80'] } },
      verdict: 'does-not-apply',
    },
  ],
});
