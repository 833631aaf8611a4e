import { cannotTell, doesNotApply, doesNotFit, fits, jointRule } from '../../rule.ts';
import { partAs } from '../ends.ts';
import { lacks } from '../words.ts';

export const dualMode = jointRule({
  id: 'display/dual-mode',
  title: 'A passive adapter hangs on a dual-mode socket',
  severity: 'blocker',
  basis: 'standard',
  sources: ['displayport'],
  lesson: 'fit/how-parts-meet',

  at: 'picture',
  reads: { adapter: ['form'] },
  judge({ need, place }) {
    const adapter = partAs(need.unit, 'adapter');
    if (adapter === undefined || place.attrs['plug'] !== 'displayport') return doesNotApply;
    const wants = need.attrs['dualMode'];
    if (wants === null || wants === false) return doesNotApply;
    if (wants === undefined) return cannotTell(`${need.unit.id}.ins`);
    const offers = place.attrs['dualMode'];
    if (typeof offers !== 'boolean') return cannotTell(`${place.unit.id}.isDualMode`);
    const facts = { adapter: adapter.name, form: adapter.form ?? 'adapter', machine: place.unit.part.name };
    return offers ? fits(facts) : doesNotFit(facts);
  },

  say: {
    fits: ({ adapter, form, machine }) => `${adapter} is a passive ${form}, and its socket on ${machine} is dual-mode.`,
    doesNotFit: ({ adapter, form, machine }) => ({
      headline: 'A passive adapter on a plain DisplayPort socket',
      what: `${adapter} is a passive ${form}; the DisplayPort socket of ${machine} that it hangs on is not dual-mode.`,
      why: 'A passive adapter has wires alone: the socket must send the other kind of picture itself, and a plain DisplayPort socket cannot. The screen stays dark.',
      remedy: 'Choose an active adapter, or a card with a dual-mode socket, or a monitor with a DisplayPort socket.',
    }),
    cannotTell: (missing) =>
      lacks(missing, 'adapter')
        ? {
            headline: 'Is the adapter passive or active?',
            what: 'Whether the adapter needs a dual-mode socket is not recorded, so this fit is not judged.',
            findOut: 'Read its packet: an active adapter says so, and most others are passive.',
          }
        : {
            headline: 'Is the DisplayPort socket dual-mode?',
            what: 'Whether the socket is dual-mode is not recorded, so it is not judged whether a passive adapter works on it.',
            findOut: 'Look beside the socket or in the manual for two plus signs after the letters DP.',
          },
  },

  examples: [
    {
      title: 'a passive adapter on a dual-mode socket',
      parts: {
        'graphics-card': { outputs: [{ id: 'dp-1', plug: 'displayport', megabits: 25_920, isDualMode: true }] },
        motherboard: {},
        adapter: {
          form: 'adapter',
          ins: [{ id: 'in', kind: 'picture', attrs: { plugs: ['displayport'], signals: null, dualMode: true } }],
          outs: [{ id: 'out', kind: 'picture', attrs: { plug: 'hdmi', signal: null, megabits: 14_400 } }],
        },
        monitor: { sockets: [{ id: 'hdmi-1', plug: 'hdmi', megabits: 14_400 }] },
      },
      verdict: 'fits',
    },
    {
      title: 'the same adapter on a plain socket',
      parts: {
        'graphics-card': { outputs: [{ id: 'dp-1', plug: 'displayport', megabits: 25_920, isDualMode: false }] },
        motherboard: {},
        adapter: {
          form: 'adapter',
          ins: [{ id: 'in', kind: 'picture', attrs: { plugs: ['displayport'], signals: null, dualMode: true } }],
          outs: [{ id: 'out', kind: 'picture', attrs: { plug: 'hdmi', signal: null, megabits: 14_400 } }],
        },
        monitor: { sockets: [{ id: 'hdmi-1', plug: 'hdmi', megabits: 14_400 }] },
      },
      verdict: 'does-not-fit',
    },
    {
      title: 'of two sockets the dual-mode one is taken',
      parts: {
        'graphics-card': {
          outputs: [
            { id: 'dp-1', plug: 'displayport', megabits: 25_920, isDualMode: false },
            { id: 'dp-2', plug: 'displayport', megabits: 25_920, isDualMode: true },
          ],
        },
        motherboard: {},
        adapter: {
          form: 'adapter',
          ins: [{ id: 'in', kind: 'picture', attrs: { plugs: ['displayport'], signals: null, dualMode: true } }],
          outs: [{ id: 'out', kind: 'picture', attrs: { plug: 'hdmi', signal: null, megabits: 14_400 } }],
        },
        monitor: { sockets: [{ id: 'hdmi-1', plug: 'hdmi', megabits: 14_400 }] },
      },
      verdict: 'fits',
    },
    {
      title: 'an active adapter works on either',
      parts: {
        'graphics-card': { outputs: [{ id: 'dp-1', plug: 'displayport', megabits: 25_920, isDualMode: false }] },
        motherboard: {},
        adapter: {
          form: 'adapter',
          ins: [{ id: 'in', kind: 'picture', attrs: { plugs: ['displayport'], signals: null, dualMode: null } }],
          outs: [{ id: 'out', kind: 'picture', attrs: { plug: 'hdmi', signal: null, megabits: 14_400 } }],
        },
        monitor: { sockets: [{ id: 'hdmi-1', plug: 'hdmi', megabits: 14_400 }] },
      },
      verdict: 'does-not-apply',
    },
    {
      title: 'the socket does not say',
      parts: {
        'graphics-card': { outputs: [{ id: 'dp-1', plug: 'displayport', megabits: 25_920 }] },
        motherboard: {},
        adapter: {
          form: 'adapter',
          ins: [{ id: 'in', kind: 'picture', attrs: { plugs: ['displayport'], signals: null, dualMode: true } }],
          outs: [{ id: 'out', kind: 'picture', attrs: { plug: 'hdmi', signal: null, megabits: 14_400 } }],
        },
        monitor: { sockets: [{ id: 'hdmi-1', plug: 'hdmi', megabits: 14_400 }] },
      },
      verdict: 'cannot-tell',
    },
    {
      title: 'the adapter does not say',
      parts: {
        'graphics-card': { outputs: [{ id: 'dp-1', plug: 'displayport', megabits: 25_920, isDualMode: true }] },
        motherboard: {},
        adapter: {
          form: 'cable',
          ins: [{ id: 'in', kind: 'picture', attrs: { plugs: ['displayport'], signals: null } }],
          outs: [{ id: 'out', kind: 'picture', attrs: { plug: 'hdmi', signal: null, megabits: 14_400 } }],
        },
        monitor: { sockets: [{ id: 'hdmi-1', plug: 'hdmi', megabits: 14_400 }] },
      },
      verdict: 'cannot-tell',
    },
  ],
});
