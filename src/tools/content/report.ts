/** What `npm run check` and `npm run build` print of the content. */
import type { Content } from '../../content-types.ts';
import { type Fault, showFault } from '../../wording/fault.ts';
import { count } from '../../wording/phrases.ts';

/** All faults and how many there are; or, when there is none, what the course holds. */
export function contentReport({ content, faults }: { content?: Content; faults: readonly Fault[] }): string {
  if (!content) {
    const files = new Set(faults.map(({ file }) => file)).size;
    return [
      ...faults.map(showFault),
      `${count(faults.length, 'thing', 'things')} to put right in ${count(files, 'file', 'files')}`,
    ].join('\n');
  }
  const steps = content.procedures.reduce((sum, procedure) => sum + procedure.steps.length, 0);
  const held = [
    count(content.parts.length, 'part', 'parts'),
    count(content.exercises.length, 'exercise', 'exercises'),
    count(steps, 'step', 'steps'),
  ];
  return `${held.join(', ')}: nothing to put right`;
}
