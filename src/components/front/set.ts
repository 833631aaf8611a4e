/** Inks the evenings of the set as far as they are done. Without script all are dotted. */
import { progress } from '../device/device.ts';
import { type FrontCourse, statesOf } from './now.ts';

const words = { done: 'Done', here: 'You are here', 'to-come': 'To come' } as const;

const set = document.querySelector<HTMLElement>('[data-set]');
const course = JSON.parse(set?.dataset['set'] ?? '{"evenings":[]}') as FrontCourse;
const evenings = [...document.querySelectorAll<HTMLElement>('[data-evening]')];

progress.subscribe((known) => {
  statesOf(course, known).forEach((state, at) => {
    const evening = evenings[at];
    if (!evening) return;
    evening.dataset['state'] = state;
    const says = evening.querySelector('[data-says]');
    if (says) says.textContent = words[state];
    for (const sheet of evening.querySelectorAll<HTMLElement>('[data-sheet]')) {
      const isRead = known?.read.has(sheet.dataset['sheet'] ?? '') ?? false;
      sheet.querySelector('[data-read]')?.toggleAttribute('hidden', !isRead);
    }
  });
});
