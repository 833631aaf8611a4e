import { cannotTell, doesNotApply, doesNotFit, fits, gathersRule } from '../../rule.ts';
import { scansOf } from '../scans.ts';
import { oneOf } from '../words.ts';

export const socketsAlike = gathersRule({
  id: 'display/sockets-alike',
  title: 'The lead of a fixed-rate monitor goes into one socket of the machine only',
  severity: 'note',
  basis: 'practice',
  sources: ['common-practice', 'scan-rates'],
  lesson: 'fit/how-parts-meet',

  gathers: { monitor: ['horizontalKhz', 'verticalHz'], 'bus-card': ['outputs', 'roles'] },
  sees: ['picture'],
  judge({ monitor: monitors, 'bus-card': cards }, { joints }) {
    const scans = scansOf(monitors, cards, [], joints).filter(
      ({ isFixed, followed }) => isFixed && followed && followed.length > 0,
    );
    const told = scans.map(({ monitor, card }) => {
      const plugs = cards.find(({ unit }) => unit === card.unit)?.outputs?.map(({ plug }) => plug) ?? [];
      const alike = cards.find(
        ({ unit, outputs = [] }) => unit !== card.unit && outputs.some(({ plug }) => plugs.includes(plug)),
      );
      const plug = alike?.outputs?.find((output) => plugs.includes(output.plug))?.plug;
      return { monitor, card, alike, plug };
    });
    const one = told.find(({ alike }) => alike) ?? told[0];
    if (one === undefined) return doesNotApply;
    const { monitor, card, alike, plug } = one;
    const facts = { monitor: monitor.name, card: card.name, other: alike?.name ?? null, plug: plug ?? null };
    if (alike) return doesNotFit(facts, [monitor.unit, card.unit, alike.unit]);
    const open = cards.filter(({ outputs, roles }) => !outputs && (!roles || roles.includes('display')));
    if (open.length > 0) return cannotTell(...open.map(({ unit }) => `${unit}.outputs`));
    return fits(facts, [monitor.unit, card.unit]);
  },

  say: {
    fits: ({ monitor, card }) => `The lead of ${monitor} goes into the socket of ${card} and into no other.`,
    doesNotFit: ({ monitor, card, other, plug }) => ({
      headline: 'Two sockets that look alike',
      what: `${card} and ${other} both have a socket for ${oneOf(plug)}, and ${monitor} is made for what ${card} sends.`,
      why: 'The lead goes into either. On the wrong one a fixed-rate monitor overheats within seconds, even while the screen stays dark.',
      remedy: `A label should stand at both ends: ${monitor} belongs on ${card}. Have somebody else look before the monitor is switched on.`,
    }),
    cannotTell: () => ({
      headline: 'Which socket is whose?',
      what: 'The sockets of the cards are not recorded, so this is not judged.',
      findOut: "Read the names beside the sockets at the back, or the cards' leaflets.",
    }),
  },

  examples: [
    {
      title: 'a card for one colour and a card for many, with one sort of socket',
      shelf: 'vintage',
      parts: {
        monitor: {
          sockets: [{ id: 'in', plug: 'de-9', signal: 'digital' }],
          horizontalKhz: [15.75, 15.75],
          verticalHz: [60, 60],
        },
        'bus-card': [
          {
            roles: ['display'],
            buses: ['isa-8'],
            lines: [],
            settings: [],
            outputs: [
              {
                id: 'de-9-1',
                plug: 'de-9',
                signal: 'digital',
                modes: [{ id: 'mono-350', horizontalKhz: 18.43, verticalHz: 50 }],
              },
            ],
          },
          {
            roles: ['display'],
            buses: ['isa-8'],
            lines: [],
            settings: [],
            outputs: [
              {
                id: 'de-9-1',
                plug: 'de-9',
                signal: 'digital',
                modes: [{ id: 'colour-200', horizontalKhz: 15.75, verticalHz: 60 }],
              },
            ],
          },
        ],
        motherboard: {},
      },
      verdict: 'does-not-fit',
    },
    {
      title: 'two cards, two sorts of socket',
      shelf: 'vintage',
      parts: {
        monitor: {
          sockets: [{ id: 'in', plug: 'de-9', signal: 'digital' }],
          horizontalKhz: [18.43, 18.43],
          verticalHz: [50, 50],
        },
        'bus-card': [
          {
            roles: ['display'],
            buses: ['isa-8'],
            lines: [],
            settings: [],
            outputs: [
              {
                id: 'de-9-1',
                plug: 'de-9',
                signal: 'digital',
                modes: [{ id: 'mono-350', horizontalKhz: 18.43, verticalHz: 50 }],
              },
            ],
          },
          {
            roles: ['display'],
            buses: ['isa-8'],
            lines: [],
            settings: [],
            outputs: [
              {
                id: 'vga-1',
                plug: 'vga',
                signal: 'analog',
                modes: [{ id: 'vga-400', horizontalKhz: 31.47, verticalHz: 70 }],
              },
            ],
          },
        ],
        motherboard: {},
      },
      verdict: 'fits',
    },
    {
      title: 'the sockets of the other card are not recorded',
      shelf: 'vintage',
      parts: {
        monitor: {
          sockets: [{ id: 'in', plug: 'de-9', signal: 'digital' }],
          horizontalKhz: [18.43, 18.43],
          verticalHz: [50, 50],
        },
        'bus-card': [
          {
            roles: ['display'],
            buses: ['isa-8'],
            lines: [],
            settings: [],
            outputs: [
              {
                id: 'de-9-1',
                plug: 'de-9',
                signal: 'digital',
                modes: [{ id: 'mono-350', horizontalKhz: 18.43, verticalHz: 50 }],
              },
            ],
          },
          { roles: ['display'], buses: ['isa-8'], lines: [], settings: [] },
        ],
        motherboard: {},
      },
      verdict: 'cannot-tell',
    },
    {
      title: 'a monitor that follows both',
      shelf: 'vintage',
      parts: {
        monitor: { horizontalKhz: [15, 38], verticalHz: [50, 90] },
        'bus-card': {
          roles: ['display'],
          outputs: [
            {
              id: 'vga-1',
              plug: 'vga',
              signal: 'analog',
              modes: [{ id: 'vga-400', horizontalKhz: 31.47, verticalHz: 70 }],
            },
          ],
        },
        motherboard: {},
      },
      verdict: 'does-not-apply',
    },
  ],
});
