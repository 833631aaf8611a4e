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
 * Rails of an ATX supply as a meter reads them at a plug under load, black lead on ground; millivolts.
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
} as const;

/** True when a reading lies within the rail's tolerance, both ends counted in. */
export const isWithin = (id: keyof typeof rails, millivolts: number): boolean =>
  millivolts >= rails[id].lowest && millivolts <= rails[id].highest;

/** What one plug of each kind carries at its own voltage, in watts. */
export const plugRatings = {
  'pcie-6': { name: '6-pin graphics plug', watts: 75, source: 'atx-3-design-guide' },
  'pcie-8': { name: '8-pin graphics plug', watts: 150, source: 'atx-3-design-guide' },
  '12v-2x6': { name: '12V-2x6 plug', watts: 600, source: 'atx-3-design-guide' },
  'eps-4': { name: '4-pin processor plug', watts: 192, source: 'atx-connector-ratings' },
  'eps-8': { name: '8-pin processor plug', watts: 384, source: 'atx-connector-ratings' },
  // From memory: three contacts of 1.5 A at 12 V. Not confirmed in a document.
  'sata-power': { name: 'SATA power plug', watts: 54, source: 'from-memory' },
} as const;
