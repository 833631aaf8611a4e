import { cannotTell, doesNotApply, doesNotFit, fits, gathersRule } from '../../rule.ts';

export const mainsSwitch = gathersRule({
  id: 'power/mains-switch',
  title: 'The supply finds the mains voltage by itself',
  severity: 'note',
  basis: 'maker',
  sources: ['maker-data-sheet'],
  lesson: 'safety/static-mains-and-sharp-edges',

  gathers: { 'power-supply': ['mains'] },
  asks: ['mainsVolts'],
  judge({ 'power-supply': supplies }, _, { mainsVolts }) {
    const switched = supplies.filter(({ mains }) => mains?.switchesTo);
    const unknown = supplies.filter(({ mains }) => mains === undefined);
    const [first] = switched;
    if (first?.mains?.switchesTo) {
      const { mains } = first;
      const { switchesTo } = first.mains;
      return doesNotFit(
        {
          supply: first.name,
          volts: mainsVolts ?? null,
          high: `${mains.fromVolts} to ${mains.toVolts} V`,
          low: `${switchesTo.fromVolts} to ${switchesTo.toVolts} V`,
        },
        switched.map(({ unit }) => unit),
      );
    }
    if (unknown.length > 0) {
      // Nobody has asked about the mains, so nothing hangs on a label that was not copied.
      return mainsVolts === undefined ? doesNotApply : cannotTell(...unknown.map(({ unit }) => `${unit}.mains`));
    }
    return fits({ supply: supplies[0]?.name ?? '', volts: mainsVolts ?? null, high: '', low: '' });
  },

  say: {
    fits: ({ supply }) => `${supply} has one range of mains voltage and no switch to set.`,
    doesNotFit: ({ supply, volts, high, low }) => ({
      headline: 'Check the voltage switch before plugging in',
      what: `${supply} has a switch at the back for two mains: ${high} and ${low}.`,
      why: 'Set for the lower mains and plugged into the higher, a supply fails at once, sometimes with smoke.',
      remedy: `Look at the switch before the mains lead goes in, and set it for ${volts === null ? 'the mains of the room; ask whoever runs the room which that is' : `${volts} V`}. Never move it while the lead is in.`,
    }),
    cannotTell: () => ({
      headline: 'Has the supply a voltage switch?',
      what: 'The mains voltages of the supply are not recorded, so it is not said whether a switch is to be set.',
      findOut: 'Look beside its mains socket for a small red or black switch with two figures, such as 115 and 230.',
    }),
  },

  examples: [
    {
      title: 'one wide range',
      parts: { 'power-supply': { mains: { fromVolts: 100, toVolts: 240 } } },
      brief: { mainsVolts: 230 },
      verdict: 'fits',
    },
    {
      title: 'two ranges and a switch',
      parts: {
        'power-supply': { mains: { fromVolts: 200, toVolts: 240, switchesTo: { fromVolts: 100, toVolts: 127 } } },
      },
      brief: { mainsVolts: 230 },
      verdict: 'does-not-fit',
    },
    {
      title: 'two ranges and a switch, wherever it will stand',
      parts: {
        'power-supply': { mains: { fromVolts: 200, toVolts: 240, switchesTo: { fromVolts: 100, toVolts: 127 } } },
      },
      verdict: 'does-not-fit',
    },
    {
      title: "the supply's mains is not recorded",
      parts: { 'power-supply': { mains: undefined } },
      brief: { mainsVolts: 230 },
      verdict: 'cannot-tell',
    },
    { title: 'no supply on the list', parts: { monitor: {} }, brief: { mainsVolts: 230 }, verdict: 'does-not-apply' },
  ],
});
