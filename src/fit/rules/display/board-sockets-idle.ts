import { list } from '../../../wording/phrases.ts';
import { cannotTell, doesNotApply, doesNotFit, fits, gathersRule } from '../../rule.ts';
import { rootOf } from '../ends.ts';

export const boardSocketsIdle = gathersRule({
  id: 'display/board-sockets-idle',
  title: 'With a graphics card in the machine, every monitor is joined to it',
  severity: 'note',
  basis: 'practice',
  sources: ['common-practice'],
  lesson: 'fit/how-parts-meet',

  gathers: { monitor: [], 'graphics-card': ['outputs'], motherboard: [] },
  sees: ['picture'],
  judge({ monitor: monitors, 'graphics-card': cards, motherboard: boards }, { joints }) {
    const [card] = cards;
    const ends = monitors.flatMap(({ unit, name }) => {
      const joint = joints.find(({ need }) => need.startsWith(`${unit}/`));
      return joint ? [{ unit, name, place: rootOf(joint, joints).place }] : [];
    });
    if (card === undefined || ends.length === 0) return doesNotApply;
    const onBoard = ends.filter(({ place }) => boards.some(({ unit }) => place.startsWith(`${unit}/`)));
    const facts = {
      card: card.name,
      onBoard: [...new Set(onBoard.map(({ name }) => name))],
      all: onBoard.length === ends.length,
    };
    if (onBoard.length === 0) return fits(facts);
    const unknown = cards.filter(({ outputs }) => outputs === undefined);
    if (unknown.length > 0) return cannotTell(...unknown.map(({ unit }) => `${unit}.outputs`));
    return doesNotFit(facts, [...onBoard.map(({ unit }) => unit), card.unit]);
  },

  say: {
    fits: ({ card }) => `Every monitor is joined to ${card}, not to the sockets of the board.`,
    doesNotFit: ({ card, onBoard, all }) => ({
      headline: 'A monitor on the sockets of the board',
      what: `${list(onBoard)} ${onBoard.length === 1 ? 'is' : 'are'} joined to the board, though ${card} is in the machine${all ? ' and has no monitor' : ''}.`,
      why: 'What is joined to the board is drawn by the processor or by a chip on the board; the card does nothing for it. Some boards also switch their own sockets off when a card is in.',
      remedy: `Every monitor should be joined to the card. Choose a monitor with a plug for a socket of ${card} that is free, or add an adapter, or leave it as it is.`,
    }),
    cannotTell: () => ({
      headline: 'Which sockets has the card?',
      what: "The card's picture sockets are not recorded, so it is not judged whether a monitor on the board could be joined to the card.",
      findOut: 'Look at the bracket of the card; the kind is printed beside each socket.',
    }),
  },

  examples: [
    {
      title: 'the monitor is joined to the card',
      parts: {
        monitor: {},
        'graphics-card': { outputs: [{ id: 'hdmi-1', plug: 'hdmi', megabits: 14_400 }] },
        processor: { hasGraphics: true },
        motherboard: {},
      },
      verdict: 'fits',
    },
    {
      title: 'only the board has a socket for it',
      parts: {
        monitor: { sockets: [{ id: 'hdmi-1', plug: 'hdmi', megabits: 14_400 }] },
        'graphics-card': { outputs: [{ id: 'displayport-1', plug: 'displayport', megabits: 25_920 }] },
        processor: { hasGraphics: true },
        motherboard: { pictureSockets: [{ id: 'hdmi-1', plug: 'hdmi', megabits: 14_400 }] },
      },
      verdict: 'does-not-fit',
    },
    {
      title: 'a second monitor finds its socket on the board',
      parts: {
        monitor: [
          { sockets: [{ id: 'hdmi-1', plug: 'hdmi', megabits: 14_400 }] },
          { sockets: [{ id: 'hdmi-1', plug: 'hdmi', megabits: 14_400 }] },
        ],
        'graphics-card': { outputs: [{ id: 'hdmi-1', plug: 'hdmi', megabits: 14_400 }] },
        processor: { hasGraphics: true },
        motherboard: { pictureSockets: [{ id: 'hdmi-1', plug: 'hdmi', megabits: 14_400 }] },
      },
      verdict: 'does-not-fit',
    },
    {
      title: "the card's sockets are not recorded",
      parts: {
        monitor: { sockets: [{ id: 'hdmi-1', plug: 'hdmi', megabits: 14_400 }] },
        'graphics-card': { outputs: undefined },
        processor: { hasGraphics: true },
        motherboard: { pictureSockets: [{ id: 'hdmi-1', plug: 'hdmi', megabits: 14_400 }] },
      },
      verdict: 'cannot-tell',
    },
    {
      title: 'no card',
      parts: { monitor: {}, processor: { hasGraphics: true }, motherboard: {} },
      verdict: 'does-not-apply',
    },
  ],
});
