/** Everything that is heard, added up as levels are. In hundredths of a decibel. */
import { soundSumDb } from '../../standards/heat.ts';
import type { Unit } from '../model.ts';
import type { Budget, WorkingLine } from '../report.ts';

/** Absent when nothing on the list turns. A graphics card's own fans have no figure, so with one it is a floor. */
export function soundBudget(units: readonly Unit[]): Budget | undefined {
  const working: WorkingLine[] = [];
  const unknown: string[] = [];
  const hear = (unit: string, level: number | undefined, field: string): void => {
    if (level !== undefined) working.push({ unit, amount: Math.round(level * 100), in: 'millibel', field });
    else if (!unknown.includes(unit)) unknown.push(unit);
  };
  for (const { id, part } of units) {
    if (part.class === 'fan' || part.class === 'power-supply') hear(id, part.soundDb, 'soundDb');
    if (part.class === 'cooler' && part.fan) hear(id, part.soundDb, 'soundDb');
    if (part.class === 'chassis') {
      for (const { soundDb } of part.fittedFans ?? [{ soundDb: undefined }]) hear(id, soundDb, 'fittedFans.soundDb');
    }
    if (part.class === 'graphics-card') unknown.push(id);
  }
  if (working.length === 0 && unknown.length === 0) return undefined;
  // In order of loudness, so that the order of the list does not change the last figure.
  const levels = working.map(({ amount }) => amount / 100).sort((a, b) => a - b);
  return {
    name: 'sound',
    unit: 'millibel',
    used: Math.max(0, Math.round((soundSumDb(levels) ?? 0) * 100)),
    about: [],
    unknown,
    working,
    formula:
      'Ten times the logarithm of the sum of ten to the power of a tenth of each level: two equal sources together are 3 dB louder than one. All fans at full speed, at one metre.',
    source: 'adding-decibels',
  };
}
