/** Outlines of power supplies and what each of their rails may read. */
export const supplyShapes = {
  atx: { name: 'ATX', widthMm: 150, heightMm: 86, shortestMm: 140, source: 'atx12v-design-guide' },
  // The SFX outline is from memory: no published table of it was at hand, and one that was printed the low variant.
  sfx: { name: 'SFX', widthMm: 125, heightMm: 63.5, shortestMm: 100, source: 'from-memory' },
  // From memory: outlines of the older supplies, drawn and never judged.
  'full-at': { name: 'full AT', widthMm: 213, heightMm: 150, shortestMm: 150, source: 'from-memory' },
  'baby-at': { name: 'baby AT', widthMm: 165, heightMm: 150, shortestMm: 150, source: 'from-memory' },
} as const;

/**
 * Rails of a supply as a meter reads them at a plug under load, black lead on ground; millivolts.
 * Limits are the nominal value with the tolerance taken off or added, not the printed two decimals.
 */
const rail = (name: string, nominal: number, percent: number, colour: string) => {
  const slack = (Math.abs(nominal) * percent) / 100;
  return {
    name,
    nominal,
    percent,
    lowest: nominal - slack,
    highest: nominal + slack,
    colour,
    source: 'atx12v-design-guide',
  };
};

export const rails = {
  'plus-12': rail('+12 V', 12000, 5, 'yellow'),
  'plus-5': rail('+5 V', 5000, 5, 'red'),
  'plus-3.3': rail('+3.3 V', 3300, 5, 'orange'),
  'standby-5': rail('+5 V standby', 5000, 5, 'purple'),
  'minus-12': rail('−12 V', -12000, 10, 'blue'),
  // Left out of later supplies.
  'minus-5': rail('−5 V', -5000, 10, 'white'),
} as const;

/** True when a reading lies within the rail's tolerance, both ends counted in. */
export const isWithin = (id: keyof typeof rails, millivolts: number): boolean =>
  millivolts >= rails[id].lowest && millivolts <= rails[id].highest;

/** The wider band of +12 V on a supply of the third ATX generation, in millivolts: +5 % and −7 %, −8 % at a card's plug. */
export const thirdGenerationPlus12 = {
  'card-plug': { lowest: 11040, highest: 12600, source: 'atx-3-bands' },
  'other-plug': { lowest: 11160, highest: 12600, source: 'atx-3-bands' },
} as const;

/** What a two-plug supply of the older kind gives: no 3.3 V, and nothing while the machine is off. */
export const olderRails = {
  rails: ['plus-5', 'plus-12', 'minus-5', 'minus-12'],
  source: 'older-supplies',
} as const satisfies { rails: readonly (keyof typeof rails)[]; source: string };
