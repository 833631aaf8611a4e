/** Patterns of holes on the back of monitors, in millimetres across and down. Limits are for the two small patterns. */
export const monitorMounts = {
  patterns: [
    { acrossMm: 75, downMm: 75, screw: 'M4' },
    { acrossMm: 100, downMm: 100, screw: 'M4' },
    { acrossMm: 200, downMm: 100, screw: 'M4' },
  ],
  smallPatternKg: 14,
  source: 'vesa-mounting',
} as const;
