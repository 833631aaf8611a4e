import { cannotTell, doesNotApply, doesNotFit, fits, gathersRule } from '../../rule.ts';
import { oneOf } from '../words.ts';

const plugsOf = (value: unknown): string[] =>
  (Array.isArray(value) ? value : [value]).filter((plug) => typeof plug === 'string');

export const adapterDirection = gathersRule({
  id: 'display/adapter-direction',
  title: 'A picture adapter goes from the machine to the monitor',
  severity: 'note',
  basis: 'standard',
  sources: ['hdmi', 'displayport', 'dvi'],
  lesson: 'fit/how-parts-meet',

  gathers: {
    adapter: ['ins', 'outs'],
    monitor: ['sockets'],
    'graphics-card': ['outputs'],
    motherboard: ['pictureSockets'],
  },
  sees: ['picture'],
  judge({ adapter: adapters, monitor: monitors, 'graphics-card': cards, motherboard: boards }, { joints, left }) {
    const dark = monitors.filter(({ unit }) => left.some(({ need }) => need.startsWith(`${unit}/`)));
    const wanted = dark.flatMap(({ sockets }) => (sockets ?? []).map(({ plug }) => plug));
    const offered = [
      ...cards.flatMap(({ outputs }) => outputs ?? []),
      ...boards.flatMap(({ pictureSockets }) => pictureSockets ?? []),
    ].map(({ plug }) => plug);
    const ofPicture = adapters.flatMap(({ unit, name, ins, outs }) => {
      const end = ins?.find(({ kind }) => kind === 'picture');
      const from = plugsOf(end?.attrs['plugs']);
      const to = plugsOf(outs?.find(({ kind }) => kind === 'picture')?.attrs['plug']);
      return from.length > 0 && to.length > 0 ? [{ unit, name, from, to }] : [];
    });

    const isUsed = (unit: string) => joints.some(({ need }) => need.startsWith(`${unit}/`));
    const used = ofPicture.find(({ unit }) => isUsed(unit));
    const reversed = ofPicture.find(
      ({ unit, from, to }) =>
        !isUsed(unit) &&
        from.some((plug) => wanted.includes(plug as never)) &&
        to.some((plug) => offered.includes(plug as never)),
    );
    const told = reversed ?? used;
    const facts = told && { adapter: told.name, from: told.from, to: told.to };
    if (facts && reversed) return doesNotFit(facts, [reversed.unit, ...dark.map(({ unit }) => unit)]);
    if (facts && used) return fits(facts, [used.unit]);
    const unknown = adapters.filter(({ ins, outs }) => ins === undefined || outs === undefined);
    if (dark.length === 0 || unknown.length === 0) return doesNotApply;
    return cannotTell(...unknown.map(({ unit, ins }) => `${unit}.${ins === undefined ? 'ins' : 'outs'}`));
  },

  say: {
    fits: ({ adapter, from, to }) =>
      `${adapter} goes from ${oneOf(from)} on the machine to ${oneOf(to)} on the monitor.`,
    doesNotFit: ({ adapter, from, to }) => ({
      headline: 'The adapter goes the other way',
      what: `${adapter} goes from ${oneOf(from)} on the machine to ${oneOf(to)} on the monitor; here the machine has ${oneOf(to)} and the monitor ${oneOf(from)}.`,
      why: 'A picture adapter works one way. Turned round, both plugs may go in, and the screen stays dark.',
      remedy: `Choose an adapter made to go from ${oneOf(to)} to ${oneOf(from)}.`,
    }),
    cannotTell: () => ({
      headline: 'Which way does the adapter go?',
      what: 'The ends of an adapter are not recorded, so it is not judged whether a monitor can be joined through it.',
      findOut: 'Read its packet: the first name is the end for the machine, the second the end for the monitor.',
    }),
  },

  examples: [
    {
      title: 'from the machine to the monitor',
      parts: {
        'graphics-card': { outputs: [{ id: 'hdmi-1', plug: 'hdmi', megabits: 14_400 }] },
        motherboard: { pictureSockets: [] },
        adapter: {
          form: 'adapter',
          ins: [{ id: 'in', kind: 'picture', attrs: { plugs: ['hdmi'], signals: null, dualMode: null } }],
          outs: [{ id: 'out', kind: 'picture', attrs: { plug: 'displayport', signal: null, megabits: 14_400 } }],
        },
        monitor: { sockets: [{ id: 'dp-1', plug: 'displayport', megabits: 17_280 }] },
      },
      verdict: 'fits',
    },
    {
      title: 'from the monitor to the machine',
      parts: {
        'graphics-card': { outputs: [{ id: 'hdmi-1', plug: 'hdmi', megabits: 14_400 }] },
        motherboard: { pictureSockets: [] },
        adapter: {
          form: 'adapter',
          ins: [{ id: 'in', kind: 'picture', attrs: { plugs: ['displayport'], signals: null, dualMode: null } }],
          outs: [{ id: 'out', kind: 'picture', attrs: { plug: 'hdmi', signal: null, megabits: 14_400 } }],
        },
        monitor: { sockets: [{ id: 'dp-1', plug: 'displayport', megabits: 17_280 }] },
      },
      verdict: 'does-not-fit',
    },
    {
      title: 'its ends are not recorded, and a monitor has no socket',
      parts: {
        'graphics-card': { outputs: [{ id: 'hdmi-1', plug: 'hdmi', megabits: 14_400 }] },
        motherboard: { pictureSockets: [] },
        adapter: { form: 'adapter', ins: undefined, outs: undefined },
        monitor: { sockets: [{ id: 'dp-1', plug: 'displayport', megabits: 17_280 }] },
      },
      verdict: 'cannot-tell',
    },
    {
      title: 'an adapter for fans',
      parts: {
        'graphics-card': { outputs: [{ id: 'hdmi-1', plug: 'hdmi', megabits: 14_400 }] },
        motherboard: { pictureSockets: [] },
        adapter: {},
        monitor: { sockets: [{ id: 'dp-1', plug: 'displayport', megabits: 17_280 }] },
      },
      verdict: 'does-not-apply',
    },
  ],
});
