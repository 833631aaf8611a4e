import { showDeciwatts } from '../../../units/amounts.ts';
import { firstSocket } from '../../needs/power-strip.ts';
import { cannotTell, doesNotApply, doesNotFit, fits, jointRule } from '../../rule.ts';
import { lacks } from '../words.ts';

export const stripLoad = jointRule({
  id: 'power/strip-load',
  title: 'The mains strip carries the most that everything in it may draw',
  severity: 'limit',
  basis: 'practice',
  sources: ['common-practice', 'efficiency-levels'],
  lesson: 'safety/static-mains-and-sharp-edges',

  at: 'mains',
  reads: { 'power-strip': ['ratedW'], 'power-supply': ['ratedW'], monitor: ['sustainedW'] },
  judge({ joint, need, place, lost }) {
    const { part } = need.unit;
    const strip = place.unit.part;
    if (strip.class !== 'power-strip') return doesNotApply;
    const over = lost['wallDeciwatts'] ?? 0;
    // Every socket of a strip loses what the strip loses; the first speaks for all.
    if (over > 0 && joint.place !== firstSocket(place.unit.id)) return doesNotApply;
    if (strip.ratedW === undefined) return cannotTell(`${place.unit.id}.ratedW`);
    const rated = Math.round(strip.ratedW * 10);
    const facts = { part: part.name, strip: strip.name, rated, over, draws: 0 };
    if (over > 0) return doesNotFit(facts, [place.unit.id]);
    if (part.class === 'power-supply' && part.ratedW === undefined) return cannotTell(`${need.unit.id}.ratedW`);
    if (part.class === 'monitor' && part.sustainedW === undefined) return cannotTell(`${need.unit.id}.sustainedW`);
    return fits({ ...facts, draws: Number(need.attrs['wallDeciwatts']) });
  },

  say: {
    fits: ({ part, strip, rated, draws }) =>
      `${part} may draw ${showDeciwatts(draws)} from the wall at the very most; ${strip} carries ${showDeciwatts(rated)} in all.`,
    doesNotFit: ({ strip, rated, over }) => ({
      headline: `The mains strip may be ${showDeciwatts(over)} short`,
      what: `${strip} carries ${showDeciwatts(rated)}; what is plugged into it may draw ${showDeciwatts(rated + over)}, with every supply at its full rating and a quarter more for what it loses, so ${showDeciwatts(over)} too much.`,
      why: 'A strip loaded beyond its rating heats at its contacts and along its lead, most of all where the lead is coiled or covered.',
      remedy: `The strip should carry ${showDeciwatts(rated + over)} or more, or a machine be plugged into a wall socket of its own. Choose a stronger strip; never plug one into another. Switch off and unplug a strip that grows warm.`,
    }),
    cannotTell: (missing) =>
      lacks(missing, 'power-strip')
        ? {
            headline: 'How much does the mains strip carry?',
            what: 'What the strip carries is not recorded, so its load is not judged.',
            findOut:
              'Read the watts on its underside, with the strip unplugged; amperes times the volts of the mains are watts.',
          }
        : {
            headline: 'How much may it draw?',
            what: 'What something in the strip may draw is not recorded, so the load of the strip is not judged.',
            findOut: 'Read the watts on the label beside its mains socket.',
          },
  },

  // A supply of 400 W draws 500 W at the wall when it gives all it is rated for and loses a fifth of what it takes.
  examples: [
    {
      title: 'exactly what the strip carries',
      parts: { 'power-supply': { ratedW: 400 }, monitor: { sustainedW: 25 }, 'power-strip': { ratedW: 525 } },
      verdict: 'fits',
    },
    {
      title: 'one watt over',
      parts: { 'power-supply': { ratedW: 400 }, monitor: { sustainedW: 26 }, 'power-strip': { ratedW: 525 } },
      verdict: 'does-not-fit',
    },
    {
      title: "a monitor on the supply's own outlet goes through the strip too",
      shelf: 'vintage',
      parts: {
        'power-supply': { ratedW: 200 },
        monitor: { sustainedW: 61 },
        'power-strip': { ratedW: 310 },
      },
      verdict: 'does-not-fit',
    },
    {
      title: 'two supplies on a strip that carries one',
      parts: { 'power-supply': [{ ratedW: 400 }, { ratedW: 400 }], 'power-strip': { ratedW: 500 } },
      verdict: 'does-not-fit',
    },
    {
      title: 'two supplies, each on a strip that carries one',
      parts: {
        'power-supply': [{ ratedW: 400 }, { ratedW: 400 }],
        'power-strip': [{ ratedW: 500 }, { ratedW: 500 }],
      },
      verdict: 'fits',
    },
    {
      title: "the strip's rating is not recorded",
      parts: { 'power-supply': { ratedW: 400 }, 'power-strip': { ratedW: undefined } },
      verdict: 'cannot-tell',
    },
    {
      title: "a supply's rating is not recorded",
      parts: { 'power-supply': { ratedW: undefined }, 'power-strip': { ratedW: 2300 } },
      verdict: 'cannot-tell',
    },
    {
      title: "a monitor's power is not recorded",
      parts: { monitor: { sustainedW: undefined }, 'power-strip': { ratedW: 2300 } },
      verdict: 'cannot-tell',
    },
    { title: 'no strip', parts: { 'power-supply': {}, monitor: {} }, verdict: 'does-not-apply' },
  ],
});
