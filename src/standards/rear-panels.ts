/**
 * What shows of a board through the back of the case, by form factor: a row of sockets in an oblong opening that a plate
 * fills, or one round keyboard socket. Null where boards of one form factor differ.
 */
const plate = { shows: 'plate', source: 'micro-atx-interface' } as const;
const hole = { shows: 'keyboard-hole', source: 'common-practice' } as const;

export const rearPanels = {
  atx: plate,
  'micro-atx': plate,
  'mini-itx': plate,
  'e-atx': plate,
  'full-at': hole,
  'baby-at': hole,
  lpx: { shows: null, source: 'common-practice' },
} as const;

/** The opening for the plate, in millimetres. */
export const plateOpening = { widthMm: 158.75, heightMm: 44.45, source: 'micro-atx-interface' } as const;
