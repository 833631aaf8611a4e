/** `npm run gaps`: measures that are not recorded, those that most often make a verdict "cannot tell" first. */
import { showFault } from '../wording/fault.ts';
import { count } from '../wording/phrases.ts';
import { findGaps, type Gap } from './gaps/find-gaps.ts';
import { loadContent } from './load-content.ts';

const most = 40;

function table(gaps: readonly Gap[]): string {
  const rows = gaps.map(({ partClass, field, lists, parts }) => [
    String(lists),
    `${partClass}.${field}`,
    parts.length > 4 ? `${parts.slice(0, 4).join(', ')} and ${parts.length - 4} more` : parts.join(', '),
  ]);
  const all = [['lists', 'not recorded', 'parts'], ...rows];
  const width = (column: number) => Math.max(...all.map((row) => row[column]?.length ?? 0));
  const widths = [width(0), width(1)];
  return all
    .map(
      ([lists = '', field = '', parts = '']) =>
        `${lists.padStart(widths[0] ?? 0)}  ${field.padEnd(widths[1] ?? 0)}  ${parts}`,
    )
    .join('\n');
}

const { content, faults } = loadContent('content');
if (content) {
  const { gaps, judged } = findGaps(content);
  console.log(`${count(judged, 'list', 'lists')} judged: every part in the place of its like in every worked build.`);
  console.log(
    gaps.length === 0 ? 'No measure that is not recorded makes a verdict "cannot tell".' : table(gaps.slice(0, most)),
  );
  if (gaps.length > most) console.log(`and ${gaps.length - most} more`);
} else {
  console.error(faults.map(showFault).join('\n'));
  process.exitCode = 1;
}
