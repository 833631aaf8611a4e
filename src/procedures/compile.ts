/**
 * A procedure's file, compiled: MDX in, a typed graph of steps out.
 *
 * ```mdx
 * ---
 * title: …
 * revision: 1
 * wholeMachine: true
 * tools:
 *   - id: driver
 *     name: cross-head screwdriver, size 2
 * ---
 *
 * <Chapter id="mat" title="On the mat">
 *   <Step id="fit-memory" action="Push {part} into {place}." joints="memory-slot" minutes="1 2 4" drawing="module">
 *     <Notice>A module forced in the wrong way round breaks the slot. Line up the notch first.</Notice>
 *     <Right claim="Latch closed">The latch has closed by itself and both ends sit level.</Right>
 *     <IfNot sees="The latch stays open">Lift the module out. Compare notch and bridge.</IfNot>
 *   </Step>
 * </Chapter>
 * ```
 *
 * `src/procedures/syntax` reads the file, `src/procedures/graph` checks the graph.
 */
import type { Fault } from '../wording/fault.ts';
import { sortFaults } from '../wording/fault.ts';
import { checkCoverage } from './graph/coverage.ts';
import { resolveOrder } from './graph/order.ts';
import { readBody } from './syntax/body.ts';
import { readFrontMatter } from './syntax/front-matter.ts';
import { openSource, parse } from './syntax/source.ts';
import type { Procedure } from './types.ts';

export type Compiled = { procedure?: Procedure; faults: Fault[] };

/**
 * `file` is the path used in messages; the procedure's id is its name without `.mdx`.
 * Every fault of the file is returned in one run, in the file's order, except that a mistake in the
 * MDX itself hides what comes after it. With any fault there is no procedure.
 */
export function compileProcedure(file: string, text: string): Compiled {
  const source = openSource(file, text);
  const root = parse(source);
  if (!root) return { faults: source.faults };

  const front = readFrontMatter(source, root);
  const { chapters, steps, waits } = readBody(source, root, front?.tools);
  if (steps.length === 0) {
    source.fault('no-step', { line: 1, column: 1 }, 'a procedure without a step', 'a <Chapter> with a <Step>');
  }
  resolveOrder(source, steps, waits);
  checkCoverage(source, steps, front?.whole);

  const faults = sortFaults(source.faults);
  if (faults.length > 0 || !front) return { faults };
  const { title, revision, tools } = front;
  return { procedure: { id: nameOf(file), title, revision, tools, chapters, steps }, faults };
}

const nameOf = (file: string): string => file.slice(file.lastIndexOf('/') + 1).replace(/\.mdx$/, '');
