import { list } from '../../../wording/phrases.ts';
import { cannotTell, doesNotApply, doesNotFit, fits, gathersRule } from '../../rule.ts';
import { lacks } from '../words.ts';

export const cardDriver = gathersRule({
  id: 'expansion/driver',
  title: 'The operating system brings a driver for every card',
  severity: 'limit',
  basis: 'maker',
  sources: ['maker-data-sheet'],
  lesson: 'fit/how-parts-meet',

  gathers: { 'expansion-card': ['driver'], 'bus-card': ['driver'], 'operating-system': ['drivers'] },
  judge({ 'expansion-card': cards, 'bus-card': older, 'operating-system': systems }) {
    const system = systems[0];
    const asking = [...cards, ...older].filter(({ driver }) => driver !== null);
    if (system === undefined || asking.length === 0) return doesNotApply;
    if (system.drivers === undefined) return cannotTell(`${system.unit}.drivers`);

    const without = asking.filter(
      ({ driver }) => typeof driver === 'string' && system.drivers?.includes(driver) === false,
    );
    const facts = {
      system: system.name,
      cards: [...new Set((without.length > 0 ? without : asking).map(({ name }) => name))],
    };
    if (without.length > 0) return doesNotFit(facts, [...without.map(({ unit }) => unit), system.unit]);
    const unknown = asking.filter(({ driver }) => driver === undefined);
    if (unknown.length > 0) return cannotTell(...unknown.map(({ unit }) => `${unit}.driver`));
    return fits(facts, [...asking.map(({ unit }) => unit), system.unit]);
  },

  say: {
    fits: ({ system, cards }) => `${system} brings a driver for ${list(cards)}.`,
    doesNotFit: ({ system, cards }) => ({
      headline: 'A card without a driver',
      what: `${system} brings no driver for ${list(cards)}.`,
      why: 'A driver is the part of a system that knows how to speak to one sort of card. Without it the card is in its slot, has power and does nothing.',
      remedy: `Ask the maker for a driver made for ${system} and have it on a disk or stick before you begin, or choose another card, or a system that brings one.`,
    }),
    cannotTell: (missing) =>
      lacks(missing, 'operating-system')
        ? {
            headline: 'Which drivers does the system bring?',
            what: 'The drivers that the operating system brings are not recorded, so it is not judged whether it can use the cards.',
            findOut: "Look for the card in the list of supported cards on the system maker's page.",
          }
        : {
            headline: 'Which driver does the card need?',
            what: 'The driver that a card needs is not recorded, so it is not judged whether the system can use it.',
            findOut: "Read it on the card's box or on its maker's page.",
          },
  },

  examples: [
    {
      title: 'the system brings the driver of the card',
      parts: { 'expansion-card': { driver: 'ostrey-net-1' }, 'operating-system': { drivers: ['ostrey-net-1'] } },
      verdict: 'fits',
    },
    {
      title: 'it brings that of another card',
      parts: { 'expansion-card': { driver: 'ostrey-net-2' }, 'operating-system': { drivers: ['ostrey-net-1'] } },
      verdict: 'does-not-fit',
    },
    {
      title: 'a card of about 1990 and a system that brings no driver',
      shelf: 'vintage',
      parts: { 'bus-card': { driver: 'ostrey-sound-1' }, 'operating-system': { drivers: [] } },
      verdict: 'does-not-fit',
    },
    {
      title: 'not recorded what the card needs',
      parts: { 'expansion-card': { driver: undefined }, 'operating-system': { drivers: ['ostrey-net-1'] } },
      verdict: 'cannot-tell',
    },
    {
      title: 'not recorded what the system brings',
      parts: { 'expansion-card': { driver: 'ostrey-net-1' }, 'operating-system': { drivers: undefined } },
      verdict: 'cannot-tell',
    },
    {
      title: 'a card that every system can use',
      parts: { 'expansion-card': { driver: null }, 'operating-system': { drivers: [] } },
      verdict: 'does-not-apply',
    },
  ],
});
