/**
 * Levels of efficiency of a supply at 5, 10, 20, 50 and 100 percent of its rating, in permille; undefined where the
 * level asks nothing. `115v` is for mains of 115 V, `230v` for 230 V, both for one supply in one machine.
 */
export const efficiencyLoads = [5, 10, 20, 50, 100] as const;

type Curve = readonly [at5: number | undefined, at10: number | undefined, at20: number, at50: number, at100: number];
type Level = { name: string; '115v'?: Curve; '230v'?: Curve; source: string };

const none = undefined;

export const efficiencyLevels = {
  plain: {
    name: '80 PLUS',
    '115v': [none, none, 800, 800, 800],
    '230v': [none, none, 820, 850, 820],
    source: 'efficiency-levels',
  },
  bronze: {
    name: '80 PLUS Bronze',
    '115v': [none, none, 820, 850, 820],
    '230v': [none, none, 850, 880, 850],
    source: 'efficiency-levels',
  },
  silver: {
    name: '80 PLUS Silver',
    '115v': [none, none, 850, 880, 850],
    '230v': [none, none, 870, 900, 870],
    source: 'efficiency-levels',
  },
  gold: {
    name: '80 PLUS Gold',
    '115v': [none, none, 870, 900, 870],
    '230v': [none, none, 900, 920, 890],
    source: 'efficiency-levels',
  },
  platinum: {
    name: '80 PLUS Platinum',
    '115v': [none, none, 900, 920, 890],
    '230v': [none, none, 920, 940, 900],
    source: 'efficiency-levels',
  },
  titanium: {
    name: '80 PLUS Titanium',
    '115v': [none, 900, 920, 940, 900],
    '230v': [none, 900, 940, 960, 940],
    source: 'efficiency-levels',
  },
} as const satisfies Record<string, Level>;

/** Watts from the wall for watts given to the machine. */
export const wallW = (outputW: number, permille: number): number => (outputW * 1000) / permille;

/** Watts that the supply itself turns into heat. */
export const lossW = (outputW: number, permille: number): number => wallW(outputW, permille) - outputW;

/** At full load, the least that the lowest level asks for at either mains. Older supplies lose more. */
export const leastEfficiency = { permille: 800, source: 'efficiency-levels' } as const;
