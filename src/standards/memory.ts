/** Generations of memory module. The notch of one does not meet the bridge of another's slot. */

type Generation = {
  name: string;
  /** Contacts of a full-size module, and of the small one for portable machines. */
  contacts: number;
  smallContacts: number;
  millivolts: number;
  /** Megatransfers a second as they are sold. */
  speedsMts: readonly number[];
  /** How many transfers the chips fetch at once. */
  prefetch: number;
  /** Contacts on one side to either side of the notch, where known. */
  notch?: { contacts: readonly [number, number]; source: string };
  source: string;
};

export const memoryGenerations = {
  ddr: {
    name: 'DDR',
    contacts: 184,
    smallContacts: 200,
    millivolts: 2500,
    speedsMts: [200, 266, 333, 400],
    prefetch: 2,
    notch: { contacts: [52, 40], source: 'jesd79' },
    source: 'jesd79',
  },
  ddr2: {
    name: 'DDR2',
    contacts: 240,
    smallContacts: 200,
    millivolts: 1800,
    speedsMts: [400, 533, 667, 800, 1066],
    prefetch: 4,
    notch: { contacts: [64, 56], source: 'from-memory' },
    source: 'jesd79-2',
  },
  ddr3: {
    name: 'DDR3',
    contacts: 240,
    smallContacts: 204,
    millivolts: 1500,
    speedsMts: [800, 1066, 1333, 1600, 1866, 2133],
    prefetch: 8,
    notch: { contacts: [72, 48], source: 'from-memory' },
    source: 'jesd79-3',
  },
  ddr4: {
    name: 'DDR4',
    contacts: 288,
    smallContacts: 260,
    millivolts: 1200,
    speedsMts: [1600, 1866, 2133, 2400, 2666, 2933, 3200],
    prefetch: 8,
    notch: { contacts: [77, 67], source: 'from-memory' },
    source: 'jesd79-4',
  },
  ddr5: {
    name: 'DDR5',
    contacts: 288,
    smallContacts: 262,
    millivolts: 1100,
    speedsMts: [3200, 3600, 4000, 4800, 5600, 6400, 7200],
    prefetch: 16,
    source: 'jesd79-5',
  },
} as const satisfies Record<string, Generation>;

export type MemoryGeneration = keyof typeof memoryGenerations;

/** Voltages besides the generation's own that modules are sold for, in millivolts. */
export const otherMillivolts = { 'ddr-400': 2600, 'ddr3-low': 1350, source: 'jesd79-3' } as const;

/** Three times the exact rate: a speed is sold with its thirds cut off (1866 for 1866 2/3), so they are put back. */
const inThirds = (speedMts: number): number => Math.round((speedMts * 3) / 100) * 100;

/** Whole megabytes a second through one 64-bit channel, rounded: transfers times eight bytes. */
export const channelMBps = (speedMts: number): number => Math.round((inThirds(speedMts) * 8) / 3);

/**
 * The name a module is sold under, such as `PC4-25600`: its bandwidth in megabytes a second, to the nearest hundred for
 * the first generation and down to a whole hundred after it. Source: `memory-module-names`.
 */
export function moduleName(generation: MemoryGeneration, speedMts: number): string {
  const wholeMBps = Math.floor((inThirds(speedMts) * 8) / 3);
  const round = generation === 'ddr' ? Math.round : Math.floor;
  const prefix = generation === 'ddr' ? 'PC' : `PC${generation.slice('ddr'.length)}`;
  return `${prefix}-${round(wholeMBps / 100) * 100}`;
}

/** Nanoseconds from a request to the first data, for a latency counted in clocks. */
export const latencyNs = (clocks: number, speedMts: number): number => (clocks * 6000) / inThirds(speedMts);

/** Data bits of a module; with error correction as well, of the generations before DDR5 and of DDR5. */
export const moduleBits = { plain: 64, corrected: [72], correctedDdr5: [72, 80], source: 'jesd79-5' } as const;
