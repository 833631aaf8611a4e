import type { UnitId } from '../../model.ts';
import { cannotTell, doesNotApply, doesNotFit, fits, gathersRule, type Judgement } from '../../rule.ts';

type Range = { fromVolts: number; toVolts: number };
const meet = (some: readonly Range[], others: readonly Range[]): boolean =>
  some.some((a) => others.some((b) => a.fromVolts <= b.toVolts && b.fromVolts <= a.toVolts));
const holds = ({ fromVolts, toVolts }: Range, volts: number): boolean => fromVolts <= volts && volts <= toVolts;

/** `volts` is null where nobody asked: then two parts are told that no mains serves. */
type Told = { volts: number | null; part: string; takes: string[]; other: string | null; otherTakes: string[] };
const alone = { other: null, otherTakes: [] };

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
  judge({ 'power-supply': supplies, monitor: monitors }, _, { mainsVolts: volts }): Judgement<Told> {
    const all: { unit: UnitId; name: string; ranges: Range[] | undefined }[] = [
      ...supplies.map(({ unit, name, mains }) => ({
        unit,
        name,
        ranges: mains && [mains, ...(mains.switchesTo ? [mains.switchesTo] : [])],
      })),
      ...monitors.map(({ unit, name, mains }) => ({ unit, name, ranges: mains && [mains] })),
    ];
    if (volts === undefined) {
      const pair = all.flatMap((one, index) =>
        all
          .slice(index + 1)
          .filter((other) => one.ranges && other.ranges && !meet(one.ranges, other.ranges))
          .map((other) => [one, other] as const),
      )[0];
      if (pair === undefined) return doesNotApply;
      const [one, other] = pair;
      return doesNotFit(
        {
          volts: null,
          part: one.name,
          takes: (one.ranges ?? []).map(asRange),
          other: other.name,
          otherTakes: (other.ranges ?? []).map(asRange),
        },
        [one.unit, other.unit],
      );
    }
    const wrong = all.filter(({ ranges }) => ranges && !ranges.some((range) => holds(range, volts)));
    const [first] = wrong;
    if (first)
      return doesNotFit(
        { volts, part: first.name, takes: (first.ranges ?? []).map(asRange), ...alone },
        wrong.map(({ unit }) => unit),
      );
    const unknown = all.filter(({ ranges }) => ranges === undefined);
    if (unknown.length > 0) return cannotTell(...unknown.map(({ unit }) => `${unit}.mains`));
    return fits(
      { volts, part: all.map(({ name }) => name).join(', '), takes: [], ...alone },
      all.map(({ unit }) => unit),
    );
  },

  say: {
    fits: ({ volts }) => `Everything on the list that goes into the wall takes ${volts} V.`,
    doesNotFit: ({ volts, part, takes, other, otherTakes }) => ({
      headline: volts === null ? 'Made for two different mains' : `Not made for ${volts} V mains`,
      what:
        volts === null
          ? `${part} is made for ${takes.join(' or ')}, ${other} for ${otherTakes.join(' or ')}; no mains serves both.`
          : `The mains here is ${volts} V; ${part} is made for ${takes.join(' or ')}.`,
      why: 'On too high a voltage a supply fails at once, sometimes with smoke; on too low a one it starts badly, or draws more than its lead can bear.',
      remedy: `${volts === null ? 'Do not plug them in. Choose parts made for the mains of the room' : `Do not plug it in. Choose one made for ${volts} V`}. Nobody opens ${volts === null ? 'one' : 'it'} to change it; ask a qualified person where the mains itself is in doubt.`,
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
      title: 'nobody asked where it will stand, and no mains serves both',
      parts: {
        'power-supply': { mains: { fromVolts: 100, toVolts: 130 } },
        monitor: { mains: { fromVolts: 220, toVolts: 240 } },
      },
      verdict: 'does-not-fit',
    },
    {
      title: 'nobody asked, and a switch makes both fit',
      parts: {
        'power-supply': { mains: { fromVolts: 100, toVolts: 130, switchesTo: { fromVolts: 200, toVolts: 240 } } },
        monitor: { mains: { fromVolts: 220, toVolts: 240 } },
      },
      verdict: 'does-not-apply',
    },
    {
      title: 'nobody asked where it will stand',
      parts: { 'power-supply': { mains: { fromVolts: 100, toVolts: 127 } } },
      verdict: 'does-not-apply',
    },
  ],
});
