/**
 * What the two sense pins of the 16-pin plug announce to a card, in watts, by edition of the specification.
 * `initialW` may be drawn at power-up, `maxW` once the card has been set up.
 */
export type SenseState = 'open' | 'ground' | 'together';
export type SenseEdition = 'first' | 'revised' | '12v-2x6';
export type SensePower = { initialW: number; maxW: number };

type SenseRow = { sense0: SenseState; sense1: SenseState } & Record<SenseEdition, SensePower | undefined>;

/** `together`: the two pins are joined to each other and not to ground; the two older editions do not define it. */
export const sensePins = [
  {
    sense0: 'open',
    sense1: 'open',
    first: { initialW: 225, maxW: 450 },
    revised: { initialW: 100, maxW: 150 },
    '12v-2x6': { initialW: 0, maxW: 0 },
  },
  {
    sense0: 'together',
    sense1: 'together',
    first: undefined,
    revised: undefined,
    '12v-2x6': { initialW: 100, maxW: 150 },
  },
  {
    sense0: 'ground',
    sense1: 'open',
    first: { initialW: 375, maxW: 600 },
    revised: { initialW: 150, maxW: 300 },
    '12v-2x6': { initialW: 150, maxW: 300 },
  },
  {
    sense0: 'open',
    sense1: 'ground',
    first: { initialW: 225, maxW: 450 },
    revised: { initialW: 225, maxW: 450 },
    '12v-2x6': { initialW: 225, maxW: 450 },
  },
  {
    sense0: 'ground',
    sense1: 'ground',
    first: { initialW: 375, maxW: 600 },
    revised: { initialW: 375, maxW: 600 },
    '12v-2x6': { initialW: 375, maxW: 600 },
  },
] as const satisfies readonly SenseRow[];
export const sensePinsSource = 'pci-express-cem-5';

/** What a card of the edition may draw with the pins so; undefined when the edition does not say. */
export const sensePower = (edition: SenseEdition, sense0: SenseState, sense1: SenseState): SensePower | undefined =>
  sensePins.find((row) => row.sense0 === sense0 && row.sense1 === sense1)?.[edition];

/** The row by which a 12V-2x6 lead announces 150, 300, 450 or 600 W; undefined for any other figure. */
export const senseCodingOf = (maxW: number): (typeof sensePins)[number] | undefined =>
  maxW === 0 ? undefined : sensePins.find((row) => row['12v-2x6'].maxW === maxW);
