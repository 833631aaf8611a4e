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

/** From one card's place to the next, in millimetres: 0.8 inch. */
export const slotPitch = { mm: 20.32, source: 'micro-atx-interface' } as const;

/** Length of the connector on the board, in millimetres, by how many lanes wide a card goes in. */
export const slotLengths = { 1: 25, 4: 39, 8: 56, 16: 89, source: 'pci-express-base' } as const;
