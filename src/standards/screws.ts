/** Screws of cases and drives. The two threads look alike; forced into the other's hole, each ruins it. */
export const screws = {
  '6-32': {
    name: '#6-32 UNC',
    diameterMm: 3.5052,
    pitchMm: 0.79375,
    for: ['power supply', '3.5 inch drive', 'slot cover', 'case panel', 'standoff'],
    source: 'case-screws',
  },
  // The diameter is its name; the pitch is from memory.
  m3: {
    name: 'M3',
    diameterMm: 3,
    pitchMm: 0.5,
    for: ['5.25 inch optical drive', '3.5 inch floppy drive', '2.5 inch drive'],
    source: 'case-screws',
  },
} as const;
