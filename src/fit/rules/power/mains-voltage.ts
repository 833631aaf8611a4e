import type { UnitId } from '../../model.ts';
import { cannotTell, doesNotApply, doesNotFit, fits, gathersRule } from '../../rule.ts';

type Range = { fromVolts: number; toVolts: number };
const holds = ({ fromVolts, toVolts }: Range, volts: number): boolean => fromVolts <= volts && volts <= toVolts;

/** "100 to 240 V"; a supply with a switch has two ranges. */
const asRange = ({ fromVolts, toVolts }: Range): string => `${fromVolts} to ${toVolts} V`;

export const mainsVoltage = gathersRule({
  id: 'power/mains-voltage',
  title: 'Everything with a mains lead is made for the mains there is',
  severity: 'hazard',
  basis: 'maker',
  sources: ['maker-data-sheet'],
  lesson: 'safety/static-mains-and-sharp-edges',

  gathers: { 'power-supply': ['mains'], monitor: ['mains'] },
  asks: ['mainsVolts'],
  judge({ 'power-supply': supplies, monitor: monitors }, _, { mainsVolts: volts }) {
    if (volts === undefined) return doesNotApply;
    const all: { unit: UnitId; name: string; ranges: Range[] | undefined }[] = [
      ...supplies.map(({ unit, name, mains }) => ({
        unit,
        name,
        ranges: mains && [mains, ...(mains.switchesTo ? [mains.switchesTo] : [])],
      })),
      ...monitors.map(({ unit, name, mains }) => ({ unit, name, ranges: mains && [mains] })),
    ];
    const wrong = all.filter(({ ranges }) => ranges && !ranges.some((range) => holds(range, volts)));
    const [first] = wrong;
    if (first)
      return doesNotFit(
        { volts, part: first.name, takes: (first.ranges ?? []).map(asRange) },
        wrong.map(({ unit }) => unit),
      );
    const unknown = all.filter(({ ranges }) => ranges === undefined);
    if (unknown.length > 0) return cannotTell(...unknown.map(({ unit }) => `${unit}.mains`));
    return fits(
      { volts, part: all.map(({ name }) => name).join(', '), takes: [] as string[] },
      all.map(({ unit }) => unit),
    );
  },

  say: {
    fits: ({ volts }) => `Everything on the list that goes into the wall takes ${volts} V.`,
    doesNotFit: ({ volts, part, takes }) => ({
      headline: `Not made for ${volts} V mains`,
      what: `The mains here is ${volts} V; ${part} is made for ${takes.join(' or ')}.`,
      why: 'On too high a voltage a supply fails at once, sometimes with smoke; on too low a one it starts badly, or draws more than its lead can bear.',
      remedy: `Do not plug it in. Choose one made for ${volts} V. Nobody opens it to change it; ask a qualified person where the mains itself is in doubt.`,
    }),
    cannotTell: () => ({
      headline: 'Which mains is it made for?',
      what: 'The mains voltage that a part is made for is not recorded, so it is not judged whether it may be plugged in here.',
      findOut: 'Read the label beside its mains socket: volts, in one range or two. Do not plug it in before.',
    }),
  },

  examples: [
    {
      title: 'exactly at the upper end',
      parts: { 'power-supply': { mains: { fromVolts: 100, toVolts: 240 } } },
      brief: { mainsVolts: 240 },
      verdict: 'fits',
    },
    {
      title: 'one volt above the upper end',
      parts: { 'power-supply': { mains: { fromVolts: 100, toVolts: 229 } } },
      brief: { mainsVolts: 230 },
      verdict: 'does-not-fit',
    },
    {
      title: 'a supply with a switch, and its upper range',
      parts: {
        'power-supply': { mains: { fromVolts: 200, toVolts: 240, switchesTo: { fromVolts: 100, toVolts: 127 } } },
      },
      brief: { mainsVolts: 120 },
      verdict: 'fits',
    },
    {
      title: 'a monitor for another mains',
      parts: {
        'power-supply': { mains: { fromVolts: 100, toVolts: 240 } },
        monitor: { mains: { fromVolts: 100, toVolts: 127 } },
      },
      brief: { mainsVolts: 230 },
      verdict: 'does-not-fit',
    },
    {
      title: "the supply's mains is not recorded",
      parts: { 'power-supply': { mains: undefined } },
      brief: { mainsVolts: 230 },
      verdict: 'cannot-tell',
    },
    {
      title: 'nobody asked where it will stand',
      parts: { 'power-supply': { mains: { fromVolts: 100, toVolts: 127 } } },
      verdict: 'does-not-apply',
    },
  ],
});
