/** What the front page needs of the course, gathered when the site is built. */
import type { Content } from '../../content-types.ts';
import { showDay } from '../../wording/dates.ts';
import type { FrontCard, FrontCourse } from './now.ts';

/** Throws where an evening names something that is not there; the check of the content says where. */
export function frontCourse({ course, lessons, exercises, procedures }: Content): FrontCourse {
  return {
    evenings: course.evenings.map(({ n, title, date, lessons: ids, procedure, until }) => ({
      n,
      title,
      day: showDay(date),
      lessons: ids.map((id) => {
        const { sheet, title: name, minutes, exercises: met } = found(lessons, id);
        return {
          id,
          sheet,
          title: name,
          minutes,
          exercises: met.map((one) => {
            const exercise = found(exercises, one);
            return { id: one, title: exercise.title, minutes: exercise.minutes };
          }),
        };
      }),
      ...(procedure === undefined ? {} : { card: cardOf(found(procedures, procedure), until) }),
    })),
  };
}

function cardOf({ id, steps }: Content['procedures'][number], until: string | undefined): FrontCard {
  const last = until ?? steps.at(-1)?.id;
  if (last === undefined || !steps.some((step) => step.id === last)) throw new Error(`No step ${last} in ${id}.`);
  return { procedure: id, until: last, holds: steps.filter(({ hold }) => hold).map((step) => step.id) };
}

function found<T extends { id: string }>(things: readonly T[], id: string): T {
  const thing = things.find((one) => one.id === id);
  if (!thing) throw new Error(`The course has no ${id}.`);
  return thing;
}
