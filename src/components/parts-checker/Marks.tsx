/** Marks line by line: how many, why, and what would earn the rest. */
import type { Marked } from '../../exercises/types.ts';
import { showMarks } from '../../wording/progress.ts';

export function Marks({ marked }: { marked: Marked }) {
  return (
    <ol class="marks">
      {marked.lines.map(({ line, says, marks, of, why, more }) => (
        <li key={line}>
          <b class="marks-of">{showMarks(marks, of)}</b>
          <div>
            <h3>{says}</h3>
            <p>{why}</p>
            {more && (
              <p>
                <b>{marks === 0 ? 'What earns it' : 'What earns the rest'}:</b> {more}
              </p>
            )}
          </div>
        </li>
      ))}
    </ol>
  );
}
