import { spelled } from '../../../wording/phrases.ts';
import { cannotTell, doesNotApply, doesNotFit, fits, gathersRule } from '../../rule.ts';
import { lacks } from '../words.ts';

export const noPicture = gathersRule({
  id: 'display/no-picture',
  title: 'Something on the list makes a picture',
  severity: 'blocker',
  basis: 'maker',
  sources: ['maker-data-sheet'],
  lesson: 'fit/choosing-for-a-purpose',

  gathers: {
    'graphics-card': [],
    'bus-card': ['roles', 'outputs'],
    processor: ['hasGraphics'],
    motherboard: ['pictureSockets', 'hasPictureChip'],
  },
  judge({ 'graphics-card': cards, 'bus-card': older, processor: processors, motherboard: boards }) {
    const display = older.find(({ roles, outputs = [] }) => roles?.includes('display') || outputs.length > 0);
    const [card, processor, board] = [cards[0] ?? display, processors[0], boards[0]];
    const by = card ?? (board?.hasPictureChip ? board : processor);
    if (by === undefined || (card === undefined && board === undefined)) return doesNotApply;
    const sockets = board?.pictureSockets;
    const facts = { by: by.name, board: board?.name ?? null, dead: sockets?.length ?? 0 };
    if (card !== undefined) return fits(facts, [card.unit]);
    if (sockets === undefined) return cannotTell('motherboard.pictureSockets');
    if (sockets.length > 0 && board?.hasPictureChip) return fits(facts, [board.unit]);
    if (sockets.length > 0 && processor?.hasGraphics === undefined) return cannotTell('processor.hasGraphics');
    return sockets.length > 0 && processor?.hasGraphics === true ? fits(facts) : doesNotFit(facts);
  },

  say: {
    fits: ({ by }) => `${by} makes the picture.`,
    doesNotFit: ({ by, board, dead }) =>
      dead === 0
        ? {
            headline: 'Nothing has a picture socket',
            what: `There is no graphics card on the list, and ${board} has no picture socket.`,
            why: 'The machine runs, and no monitor can be joined to it.',
            remedy: 'Choose a graphics card, or a board with picture sockets and a processor that makes a picture.',
          }
        : {
            headline: 'Nothing makes a picture',
            what: `There is no graphics card on the list, and ${by} makes no picture, so the ${spelled(dead, 'picture socket', 'picture sockets')} of ${board} ${dead === 1 ? 'is' : 'are'} dead.`,
            why: 'The sockets on a board only pass on what the processor draws. The machine runs, and the screen stays dark.',
            remedy: 'Choose a processor that makes a picture, or a graphics card.',
          },
    cannotTell: (missing) =>
      lacks(missing, 'processor')
        ? {
            headline: 'Does the processor make a picture?',
            what: 'Whether the processor makes a picture is not recorded, so it is not judged whether the machine shows one.',
            findOut: "Read on the processor maker's sheet whether the model has graphics.",
          }
        : {
            headline: 'Which picture sockets has the board?',
            what: "The board's picture sockets are not recorded, so it is not judged whether the machine shows a picture.",
            findOut: 'Look at the edge of the board with the ports, or read the page on ports in its manual.',
          },
  },

  examples: [
    {
      title: 'a processor that makes a picture and a board with a socket',
      parts: {
        processor: { hasGraphics: true },
        motherboard: { pictureSockets: [{ id: 'hdmi-1', plug: 'hdmi' }] },
      },
      verdict: 'fits',
    },
    {
      title: 'a graphics card in place of it',
      parts: {
        processor: { hasGraphics: false },
        motherboard: { pictureSockets: [] },
        'graphics-card': { outputs: [{ id: 'hdmi-1', plug: 'hdmi' }] },
      },
      verdict: 'fits',
    },
    {
      title: 'a chip on the board makes the picture, and the processor none',
      shelf: 'vintage',
      parts: {
        processor: {},
        motherboard: { hasPictureChip: true, pictureSockets: [{ id: 'vga-1', plug: 'vga' }] },
      },
      verdict: 'fits',
    },
    {
      title: 'a display card of about 1990',
      shelf: 'vintage',
      parts: {
        processor: {},
        motherboard: {},
        'bus-card': { roles: ['display'], outputs: [{ id: 'vga-1', plug: 'vga' }] },
      },
      verdict: 'fits',
    },
    {
      title: 'a card of about 1990 that does something else',
      shelf: 'vintage',
      parts: { processor: {}, motherboard: {}, 'bus-card': {} },
      verdict: 'does-not-fit',
    },
    {
      title: 'no card and a processor without graphics',
      parts: {
        processor: { hasGraphics: false },
        motherboard: { pictureSockets: [{ id: 'hdmi-1', plug: 'hdmi' }] },
      },
      verdict: 'does-not-fit',
    },
    {
      title: 'no card and a board without sockets',
      parts: { processor: { hasGraphics: true }, motherboard: { pictureSockets: [] } },
      verdict: 'does-not-fit',
    },
    {
      title: 'not recorded whether the processor makes a picture',
      parts: {
        processor: { hasGraphics: undefined },
        motherboard: { pictureSockets: [{ id: 'hdmi-1', plug: 'hdmi' }] },
      },
      verdict: 'cannot-tell',
    },
    {
      title: 'no board yet',
      parts: { processor: { hasGraphics: false } },
      verdict: 'does-not-apply',
    },
  ],
});
