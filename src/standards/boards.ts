/** The outline, holes and cut-outs of each form factor. `widthMm` runs along the edge with the ports. */
export const formFactors = {
  atx: {
    name: 'ATX',
    widthMm: 305,
    depthMm: 244,
    slots: 7,
    holes: ['A', 'C', 'F', 'G', 'H', 'J', 'K', 'L', 'M'],
    source: 'micro-atx-interface',
  },
  'micro-atx': {
    name: 'microATX',
    widthMm: 244,
    depthMm: 244,
    slots: 4,
    holes: ['B', 'C', 'F', 'H', 'J', 'L', 'M', 'R', 'S'],
    source: 'micro-atx-interface',
  },
  'mini-itx': {
    name: 'Mini-ITX',
    widthMm: 170,
    depthMm: 170,
    slots: 1,
    // The letters are from memory; that there are four and that they line up with ATX holes was read.
    holes: ['C', 'F', 'H', 'J'],
    source: 'mini-itx-addendum',
  },
  // The hole letters of these three are not published in the documents at hand; a board's own file may list them.
  // How many slots they have is from memory.
  'full-at': { name: 'full AT', widthMm: 305, depthMm: 330, slots: 8, holes: [], source: 'board-outlines' },
  'baby-at': { name: 'baby AT', widthMm: 216, depthMm: 330, slots: 8, holes: [], source: 'board-outlines' },
  lpx: { name: 'LPX', widthMm: 330, depthMm: 229, slots: 3, holes: [], source: 'board-outlines' },
  // From memory: the outline of SSI EEB; many boards sold under the name are smaller.
  'e-atx': {
    name: 'extended ATX',
    widthMm: 305,
    depthMm: 330,
    slots: 7,
    holes: ['A', 'C', 'F', 'G', 'H', 'J', 'K', 'L', 'M'],
    source: 'from-memory',
  },
} as const;

/**
 * Where a board is screwed down, by letter: millimetres from its top edge down, then from the edge with the ports
 * towards the front. Source: `atx-specification`; which of R and S is which: `from-memory`.
 */
export const holePositions = {
  A: [288.29, 10.16],
  B: [209.55, 10.16],
  C: [163.83, 10.16],
  F: [6.35, 33.02],
  G: [288.29, 165.1],
  H: [163.83, 165.1],
  J: [6.35, 165.1],
  K: [288.29, 237.49],
  L: [163.83, 237.49],
  M: [6.35, 237.49],
  R: [209.55, 165.1],
  S: [209.55, 237.49],
} as const;

export type Hole = keyof typeof holePositions;

/** Where the standoffs of a case are against a board of a form factor. */
export type Standoffs = {
  /** The board has a hole there. */
  used: Hole[];
  /** The board lies over it and has no hole there: metal under the board may short it. */
  underBoard: Hole[];
  /** Beyond the board's edge, where it does no harm. */
  outside: Hole[];
  /** Holes of the board with no standoff under them. */
  missing: Hole[];
};

/**
 * Sorts a case's standoffs by what a board makes of them. `holes` are the board's own where they differ from its form
 * factor's. Undefined when the board's holes are not known.
 */
export function standoffsUnder(
  form: keyof typeof formFactors,
  standoffs: readonly Hole[],
  holes: readonly Hole[] = formFactors[form].holes,
): Standoffs | undefined {
  if (holes.length === 0) return undefined;
  const { widthMm, depthMm } = formFactors[form];
  const isOver = (letter: Hole): boolean => {
    const [down, front] = holePositions[letter];
    return down <= widthMm && front <= depthMm;
  };
  const free = standoffs.filter((letter) => !holes.includes(letter));
  return {
    used: standoffs.filter((letter) => holes.includes(letter)),
    underBoard: free.filter(isOver),
    outside: free.filter((letter) => !isOver(letter)),
    missing: holes.filter((letter) => !standoffs.includes(letter)),
  };
}

/** From one card's place to the next, in millimetres: 0.8 inch. */
export const slotPitch = { mm: 20.32, source: 'micro-atx-interface' } as const;

/** Length of the connector on the board, in millimetres, by how many lanes wide a card goes in. */
export const slotLengths = { 1: 25, 4: 39, 8: 56, 16: 89, source: 'pci-express-base' } as const;
