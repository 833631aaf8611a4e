/** A slip in a content file: what stands there, what should, and where. */
export type Fault = {
  /** Path from the project's top, with forward slashes. */
  file: string;
  /** From 1. Both are 1 when the fault is about the file as a whole. */
  line: number;
  column: number;
  /** `<area>/<what is checked>`, kebab-case; never changes meaning. */
  id: string;
  actual: string;
  expected: string;
  /** Another place that matters: "the step was first named here". */
  other?: { text: string; file: string; line: number; column: number };
};

/** `file:line:column  id  Unexpected <actual>, expected <expected>`, and a second line when another place matters. */
export function showFault(fault: Fault): string {
  const first = `${fault.file}:${fault.line}:${fault.column}  ${fault.id}  Unexpected ${fault.actual}, expected ${fault.expected}`;
  if (!fault.other) return first;
  return `${first}\n  ${fault.other.file}:${fault.other.line}:${fault.other.column}  ${fault.other.text}`;
}

/** By file, then line, then column, then id: the order in which all faults of a run are printed. */
export function sortFaults(faults: readonly Fault[]): Fault[] {
  const key = (f: Fault) =>
    `${f.file}\u0000${String(f.line).padStart(7, '0')}\u0000${String(f.column).padStart(5, '0')}\u0000${f.id}`;
  return [...faults].sort((a, b) => (key(a) < key(b) ? -1 : key(a) > key(b) ? 1 : 0));
}
