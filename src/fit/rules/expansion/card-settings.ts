import { capital, list } from '../../../wording/phrases.ts';
import { termName } from '../../../wording/terms.ts';
import { blocksOf } from '../../needs/bus-lines.ts';
import { doesNotApply, doesNotFit, fits, gathersRule } from '../../rule.ts';

type Moves = { of: string[]; blocks: string[]; to: string[]; lines: string[] };

/** "serial port of the card to position second (interrupt 3 and port address 2F8)". */
const movesOf = ({ of, blocks, to, lines }: Moves, withLines: boolean): string[] =>
  of.map((name, index) => {
    const taken = (lines[index] ?? '').split(' ').filter((line) => line !== '');
    const told = withLines && taken.length > 0 ? ` (${list(taken.map(termName))})` : '';
    return `${blocks[index]} of ${name} to position ${to[index]}${told}`;
  });

export const cardSettings = gathersRule({
  id: 'expansion/card-settings',
  title: 'The jumpers can stay as the cards are sold',
  severity: 'note',
  basis: 'maker',
  sources: ['maker-data-sheet'],
  lesson: 'fit/how-parts-meet',

  gathers: { 'bus-card': ['settings'] },
  sees: ['setting'],
  judge({ 'bus-card': cards }, { joints }) {
    const set = cards.flatMap(({ unit, name, settings = [] }) =>
      blocksOf(unit, { settings }).flatMap(({ need, says, positions }) => {
        const place = joints.find((joint) => joint.need === need)?.place;
        const at = positions.findIndex((position) => position.place === place);
        const position = positions[at];
        return position ? [{ unit, name, says: says ?? '', at, position }] : [];
      }),
    );
    if (set.length === 0) return doesNotApply;
    const moved = set.filter(({ at }) => at > 0);
    const facts = {
      cards: [...new Set(set.map(({ name }) => name))],
      // One entry each for every jumper that moves.
      of: moved.map(({ name }) => name),
      blocks: moved.map(({ says }) => says),
      to: moved.map(({ position }) => position.says),
      lines: moved.map(({ position }) => position.lines.join(' ')),
    };
    return moved.length === 0
      ? fits(facts)
      : doesNotFit(
          facts,
          moved.map(({ unit }) => unit),
        );
  },

  say: {
    fits: ({ cards }) => `The jumpers of ${list(cards)} can stay as they are sold.`,
    doesNotFit: (facts) => ({
      headline: facts.of.length === 1 ? 'One jumper is to be moved' : `${facts.of.length} jumpers are to be moved`,
      what: `As they are sold, the cards want lines that others have. This works: ${list(movesOf(facts, true))}.`,
      why: 'A line of the bus serves one card; with two on it, the machine hangs or one card does nothing.',
      remedy: `${capital(list(movesOf(facts, false).map((move) => `set the ${move}`)))}, before the card goes into its slot.`,
    }),
    cannotTell: () => ({
      headline: 'How are the jumpers to be set?',
      what: 'The jumpers of a card are not recorded, so their setting is not worked out.',
      findOut: "Read the table of jumpers in the card's leaflet.",
    }),
  },

  examples: [
    {
      title: 'no clash as sold',
      shelf: 'vintage',
      parts: { 'bus-card': {}, motherboard: {} },
      verdict: 'fits',
    },
    {
      title: 'two serial ports that are both sold as the first',
      shelf: 'vintage',
      parts: {
        'bus-card': [
          {
            buses: ['isa-8'],
            lines: [],
            settings: [
              {
                id: 'serial',
                says: 'serial port',
                positions: [
                  { id: 'first', lines: ['irq-4', 'io-3f8'] },
                  { id: 'second', lines: ['irq-3', 'io-2f8'] },
                ],
              },
            ],
          },
          { buses: ['isa-8'], lines: ['irq-4', 'io-3f8'], settings: [] },
        ],
        motherboard: {},
      },
      verdict: 'does-not-fit',
    },
    {
      title: 'a card without jumpers',
      shelf: 'vintage',
      parts: { 'bus-card': { settings: [] }, motherboard: {} },
      verdict: 'does-not-apply',
    },
  ],
});
