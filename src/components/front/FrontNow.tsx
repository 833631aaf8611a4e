/** Zone A of the front page: what to do first. Without script it is the beginning of the course. */
import '@preact/signals';
import { logbook, progress } from '../device/device.ts';
import { link } from '../link.ts';
import { type FrontCourse, nowFor } from './now.ts';

export function FrontNow({ course }: { course: FrontCourse }) {
  const { where, heading, says, main, others } = nowFor(course, logbook.value?.events ?? [], progress.value);
  return (
    <>
      <p class="front-where">{where}</p>
      <h1>{heading}</h1>
      <p class="front-says">{says}</p>
      {main && (
        <p class="front-main">
          <a class="button button-main" href={link(main.path)}>
            {main.says}
          </a>
        </p>
      )}
      {others.length > 0 && (
        <ul class="front-others">
          {others.map(({ path, says: words, minutes }) => (
            <li key={path}>
              <a href={link(path)}>{words}</a>
              {minutes !== undefined && <span>{minutes} min</span>}
            </li>
          ))}
        </ul>
      )}
    </>
  );
}
