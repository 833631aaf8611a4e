/** Measures a student took themselves, where the maker gives none. */
import type { Part } from './part.ts';

/** Only plain measures can be noted: a length in millimetres or a power in watts. */
export const canBeNoted = (field: string): boolean => /^[a-z][A-Za-z]*(Mm|W)$/.test(field);

/**
 * The parts with the student's measures filled in where, and only where, a measure is not recorded.
 * `noted` maps `<part id>.<field>` to a number more than nothing. The parts given are not changed.
 */
export function withNoted(parts: readonly Part[], noted: ReadonlyMap<string, number>): Part[] {
  if (noted.size === 0) return [...parts];
  return parts.map((part) => {
    const missing: Record<string, number> = {};
    for (const [key, value] of noted) {
      const dot = key.lastIndexOf('.');
      const field = key.slice(dot + 1);
      if (key.slice(0, dot) !== part.id || !canBeNoted(field) || !(value > 0)) continue;
      if (part[field as keyof Part] === undefined) missing[field] = value;
    }
    return Object.keys(missing).length === 0 ? part : { ...part, ...missing };
  });
}
