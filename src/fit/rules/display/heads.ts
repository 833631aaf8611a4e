import { inWords, spelled } from '../../../wording/phrases.ts';
import { cannotTell, doesNotApply, doesNotFit, fits, gathersRule } from '../../rule.ts';
import { joined, rootOf } from '../ends.ts';
import { lacks } from '../words.ts';

export const pictureHeads = gathersRule({
  id: 'display/heads',
  title: 'Whatever makes the picture drives as many monitors at once as are joined to it',
  severity: 'blocker',
  basis: 'maker',
  sources: ['maker-data-sheet'],
  lesson: 'fit/choosing-for-a-purpose',

  gathers: {
    monitor: [],
    'graphics-card': ['heads'],
    processor: ['heads', 'hasGraphics'],
    motherboard: ['hasPictureChip'],
  },
  sees: ['picture'],
  judge({ monitor: listed, 'graphics-card': cards, processor: processors, motherboard: boards }, { joints }) {
    const monitors = joined(listed, joints);
    const ends = monitors.flatMap(({ unit }) => {
      const joint = joints.find(({ need }) => need.startsWith(`${unit}/`));
      return joint ? [rootOf(joint, joints).place] : [];
    });
    const drawing = processors.find(({ hasGraphics }) => hasGraphics === true);
    const makers = [
      ...cards.map(({ unit, name, heads }) => ({ at: unit, unit, name, heads })),
      ...boards.flatMap(({ unit, name, hasPictureChip }) => {
        if (hasPictureChip) return [{ at: unit, unit, name, heads: 1 }];
        return drawing ? [{ at: unit, unit: drawing.unit, name: drawing.name, heads: drawing.heads }] : [];
      }),
    ].map((maker) => ({ ...maker, monitors: ends.filter((place) => place.startsWith(`${maker.at}/`)).length }));

    const busy = makers.filter((maker) => maker.monitors > 0);
    // Whatever makes a picture drives one monitor.
    const over = busy.find((maker) => maker.heads !== undefined && maker.monitors > maker.heads);
    const [told] = over ? [over] : busy;
    if (told === undefined) return doesNotApply;
    const unknown = busy.filter((maker) => maker.heads === undefined && maker.monitors > 1);
    if (!over && unknown.length > 0) return cannotTell(...unknown.map(({ unit }) => `${unit}.heads`));
    const facts = { maker: told.name, heads: told.heads ?? told.monitors, monitors: told.monitors };
    return over ? doesNotFit(facts, [over.unit, ...monitors.map(({ unit }) => unit)]) : fits(facts);
  },

  say: {
    fits: ({ maker, monitors }) =>
      monitors === 1
        ? `${maker} drives the monitor that is joined to it.`
        : `${maker} drives the ${inWords(monitors)} monitors joined to it at once.`,
    doesNotFit: ({ maker, heads, monitors }) => ({
      headline: `${monitors} monitors, and heads for ${heads}`,
      what: `${maker} drives ${spelled(heads, 'monitor', 'monitors')} at once; ${inWords(monitors)} are joined to what it draws, so ${inWords(monitors - heads)} ${monitors - heads === 1 ? 'stays' : 'stay'} dark.`,
      why: 'Each monitor takes a head, the part that sends a picture out line by line; a board or card may have more sockets than heads.',
      remedy: `Take ${spelled(monitors - heads, 'monitor', 'monitors')} off the list, or choose a card that drives ${inWords(monitors)} at once.`,
    }),
    cannotTell: (missing) =>
      lacks(missing, 'processor')
        ? {
            headline: 'How many monitors does the processor drive?',
            what: "The monitors that the processor's graphics drive at once are not recorded, so this is not judged.",
            findOut: "Read the number of displays supported on the processor maker's sheet.",
          }
        : {
            headline: 'How many monitors does the card drive?',
            what: 'The monitors that the card drives at once are not recorded, so this is not judged.',
            findOut: "Read it on the card maker's sheet; it may be fewer than the sockets.",
          },
  },

  examples: [
    {
      title: 'two sockets on a board whose chip draws one picture',
      parts: {
        monitor: [{}, {}],
        processor: { hasGraphics: false },
        motherboard: {
          hasPictureChip: true,
          pictureSockets: [
            { id: 'hdmi-1', plug: 'hdmi', megabits: 14_400 },
            { id: 'displayport-1', plug: 'displayport', megabits: 25_920 },
          ],
        },
      },
      verdict: 'does-not-fit',
    },
    {
      title: 'exactly as many monitors as the processor drives',
      parts: {
        monitor: [{}, {}],
        processor: { hasGraphics: true, heads: 2 },
        motherboard: {
          pictureSockets: [
            { id: 'hdmi-1', plug: 'hdmi', megabits: 14_400 },
            { id: 'displayport-1', plug: 'displayport', megabits: 25_920 },
          ],
        },
      },
      verdict: 'fits',
    },
    {
      title: 'one monitor more than it drives',
      parts: {
        monitor: [{}, {}],
        processor: { hasGraphics: true, heads: 1 },
        motherboard: {
          pictureSockets: [
            { id: 'hdmi-1', plug: 'hdmi', megabits: 14_400 },
            { id: 'displayport-1', plug: 'displayport', megabits: 25_920 },
          ],
        },
      },
      verdict: 'does-not-fit',
    },
    {
      title: 'the card takes one, and the board the other',
      parts: {
        monitor: [{}, {}],
        processor: { hasGraphics: true, heads: 1 },
        'graphics-card': { heads: 1 },
        motherboard: {},
      },
      verdict: 'fits',
    },
    {
      title: 'not recorded how many the processor drives',
      parts: {
        monitor: [{}, {}],
        processor: { hasGraphics: true, heads: undefined },
        motherboard: {},
      },
      verdict: 'cannot-tell',
    },
    {
      title: 'not recorded how many the card drives',
      parts: {
        monitor: [{}, {}],
        processor: { hasGraphics: false },
        'graphics-card': { heads: undefined },
        motherboard: {},
      },
      verdict: 'cannot-tell',
    },
    {
      title: 'one monitor, and not recorded how many the card drives',
      parts: {
        monitor: {},
        processor: { hasGraphics: false },
        'graphics-card': { heads: undefined },
        motherboard: { pictureSockets: [] },
      },
      verdict: 'fits',
    },
    { title: 'no monitor on the list', parts: { processor: { heads: 1 }, motherboard: {} }, verdict: 'does-not-apply' },
  ],
});
