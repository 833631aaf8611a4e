/** Generations of memory module. The notch of one does not meet the bridge of another's slot. */
export const memoryGenerations = {
  ddr4: {
    name: 'DDR4',
    contacts: 288,
    millivolts: 1200,
    /** Megatransfers a second as they are sold. */
    speedsMts: [1600, 1866, 2133, 2400, 2666, 2933, 3200],
    // Contacts on one side to either side of the notch, from memory; a DDR5 notch lies nearer the middle.
    notch: [77, 67],
    source: 'jesd79-4',
  },
  ddr5: {
    name: 'DDR5',
    contacts: 288,
    millivolts: 1100,
    speedsMts: [3200, 3600, 4000, 4800, 5600, 6400, 7200],
    notch: undefined,
    source: 'jesd79-5',
  },
} as const;

/**
 * Whole megabytes a second through one 64-bit channel, rounded.
 * A speed is sold with its thirds cut off (1866 for 1866 2/3), so they are put back first.
 */
export const channelMBps = (speedMts: number): number => {
  const thirds = Math.round((speedMts * 3) / 100) * 100;
  return Math.round((thirds * 8) / 3);
};
