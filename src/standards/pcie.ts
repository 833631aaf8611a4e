/**
 * How much a PCI Express link carries in one direction, before packets take their share.
 * Source: `pci-express-base`: megatransfers a second for one lane, and the line code of each generation.
 */
type Generation = {
  megatransfers: number;
  /** Data bits to bits on the wire. */
  code: readonly [data: number, wire: number];
};

export const pcieGenerations: Readonly<Record<number, Generation>> = {
  1: { megatransfers: 2500, code: [8, 10] },
  2: { megatransfers: 5000, code: [8, 10] },
  3: { megatransfers: 8000, code: [128, 130] },
  4: { megatransfers: 16000, code: [128, 130] },
  5: { megatransfers: 32000, code: [128, 130] },
  6: { megatransfers: 64000, code: [242, 256] },
  7: { megatransfers: 128000, code: [242, 256] },
};
export const pcieSource = 'pci-express-base';

/**
 * Whole megabytes a second (1 MB = 1,000,000 bytes), rounded down.
 * @throws RangeError for a generation that is not in the table.
 */
export const pcieMBps = (lanes: number, generation: number): number => {
  const row = pcieGenerations[generation];
  if (row === undefined) throw new RangeError(`no PCI Express generation ${generation}`);
  const [data, wire] = row.code;
  return Math.floor((row.megatransfers * data * lanes) / (wire * 8));
};

/**
 * What a slot gives a card through its own contacts, in watts, by how many lanes wide the card is: at power-up, and once
 * it has been set up. A card of half height keeps to `lowW`. Only a graphics card is given 75 W.
 */
export const slotPower = {
  1: { startW: 10, setUpW: 25, lowW: 10 },
  4: { startW: 25, setUpW: 25, lowW: 25 },
  8: { startW: 25, setUpW: 25, lowW: 25 },
  16: { startW: 25, setUpW: 75, lowW: 25 },
  source: 'pci-express-cem',
} as const;

/** The most one card may take, from slot and plugs together. */
export const cardPower = { watts: 600, source: 'pci-express-cem-5' } as const;
