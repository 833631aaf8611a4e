/** What one power plug of each kind carries. */

export type PlugRail = '3.3v' | '5v' | '12v';

type PlugRating = {
  name: string;
  /** Over all its voltages together. */
  watts: number;
  /** Contacts at each voltage, and what each carries, where the plug is rated by its contacts. */
  contacts?: Partial<Record<PlugRail, number>>;
  milliampsEach?: number;
  source: string;
};

/**
 * Graphics plugs are rated by their specification, below what their contacts bear; the others by their contacts.
 * From memory: how many contacts of the 24-pin plug are at which voltage.
 */
export const plugRatings = {
  'pcie-6': { name: '6-pin graphics plug', watts: 75, source: 'atx-3-design-guide' },
  'pcie-8': { name: '8-pin graphics plug', watts: 150, source: 'atx-3-design-guide' },
  '12v-2x6': {
    name: '12V-2x6 plug',
    watts: 600,
    contacts: { '12v': 6 },
    milliampsEach: 9500,
    source: 'atx-3-design-guide',
  },
  'eps-4': {
    name: '4-pin processor plug',
    watts: 192,
    contacts: { '12v': 2 },
    milliampsEach: 8000,
    source: 'atx-connector-ratings',
  },
  'eps-8': {
    name: '8-pin processor plug',
    watts: 384,
    contacts: { '12v': 4 },
    milliampsEach: 8000,
    source: 'atx-connector-ratings',
  },
  'atx-24': {
    name: '24-pin board plug',
    watts: 373.2,
    contacts: { '3.3v': 4, '5v': 5, '12v': 2 },
    milliampsEach: 6000,
    source: 'atx-connector-ratings',
  },
  'atx-20': {
    name: '20-pin board plug',
    watts: 251.4,
    contacts: { '3.3v': 3, '5v': 4, '12v': 1 },
    milliampsEach: 6000,
    source: 'atx-connector-ratings',
  },
  p8: {
    name: 'board plug P8',
    watts: 85,
    contacts: { '5v': 1, '12v': 1 },
    milliampsEach: 5000,
    source: 'atx-connector-ratings',
  },
  p9: {
    name: 'board plug P9',
    watts: 75,
    contacts: { '5v': 3 },
    milliampsEach: 5000,
    source: 'atx-connector-ratings',
  },
  'peripheral-4': {
    name: '4-pin drive plug',
    watts: 187,
    contacts: { '5v': 1, '12v': 1 },
    milliampsEach: 11000,
    source: 'atx-connector-ratings',
  },
  'floppy-4': {
    name: 'small 4-pin drive plug',
    watts: 34,
    contacts: { '5v': 1, '12v': 1 },
    milliampsEach: 2000,
    source: 'atx-connector-ratings',
  },
  'sata-power': {
    name: 'SATA power plug',
    watts: 91.35,
    contacts: { '3.3v': 3, '5v': 3, '12v': 3 },
    milliampsEach: 1500,
    source: 'sata',
  },
} as const satisfies Record<string, PlugRating>;

export type Plug = keyof typeof plugRatings;

/**
 * Milliamps that a plug carries at one voltage; undefined for a graphics plug, whose contacts are not recorded.
 * A plug without a contact at that voltage carries 0.
 */
export function plugMilliamps(plug: Plug, rail: PlugRail): number | undefined {
  const { contacts, milliampsEach }: PlugRating = plugRatings[plug];
  if (contacts === undefined || milliampsEach === undefined) return undefined;
  return (contacts[rail] ?? 0) * milliampsEach;
}

/** Order of the two plugs of the older supply: black leads meet in the middle. */
export const olderBoardPlugs = {
  p8: ['power-good', 'plus-5', 'plus-12', 'minus-12', 'ground', 'ground'],
  p9: ['ground', 'ground', 'minus-5', 'plus-5', 'plus-5', 'plus-5'],
  source: 'older-supplies',
} as const;
