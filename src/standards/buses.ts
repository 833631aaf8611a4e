/**
 * Peaks of the buses that cards are plugged into, before PCI Express.
 * Sources: `bus-peaks` for width and clock; the peak follows from them.
 */
type Bus = {
  name: string;
  bits: number;
  clockHz: number;
  /** Transfers in one clock at the very most. */
  transfers: number;
  source: string;
};

export const buses = {
  'isa-8': { name: '8-bit ISA', bits: 8, clockHz: 8_333_333, transfers: 1, source: 'bus-peaks' },
  'isa-16': { name: '16-bit ISA', bits: 16, clockHz: 8_333_333, transfers: 1, source: 'bus-peaks' },
  eisa: { name: 'EISA', bits: 32, clockHz: 8_333_333, transfers: 1, source: 'bus-peaks' },
  vlb: { name: 'VESA local bus', bits: 32, clockHz: 33_333_333, transfers: 1, source: 'bus-peaks' },
  'pci-32': { name: 'PCI, 32-bit, 33 MHz', bits: 32, clockHz: 33_333_333, transfers: 1, source: 'bus-peaks' },
  'pci-64': { name: 'PCI, 64-bit, 66 MHz', bits: 64, clockHz: 66_666_667, transfers: 1, source: 'bus-peaks' },
  'agp-1x': { name: 'AGP 1x', bits: 32, clockHz: 66_666_667, transfers: 1, source: 'bus-peaks' },
  'agp-2x': { name: 'AGP 2x', bits: 32, clockHz: 66_666_667, transfers: 2, source: 'bus-peaks' },
  'agp-4x': { name: 'AGP 4x', bits: 32, clockHz: 66_666_667, transfers: 4, source: 'bus-peaks' },
  'agp-8x': { name: 'AGP 8x', bits: 32, clockHz: 66_666_667, transfers: 8, source: 'bus-peaks' },
} as const satisfies Record<string, Bus>;

/** Thousands of bytes a second at the very most, rounded. ISA cards take two clocks a transfer, so half of it. */
export const busPeakKBps = (bus: keyof typeof buses): number => {
  const { bits, clockHz, transfers } = buses[bus];
  return Math.round((clockHz * transfers * bits) / 8000);
};

/**
 * Lines that only the long part of an ISA slot has: a card that asks for one works in no 8-bit slot. From memory.
 * Interrupt 2 of the short part arrives as 9 on a board with long slots, so 9 is not among them.
 */
export const longSlotLines = {
  lines: ['irq-10', 'irq-11', 'irq-12', 'irq-14', 'irq-15', 'dma-0', 'dma-5', 'dma-6', 'dma-7'],
  source: 'from-memory',
} as const;

/** True of a line such as `irq-10` or `dma-5`. */
export const needsLongSlot = (line: string): boolean => longSlotLines.lines.some((each) => each === line);
