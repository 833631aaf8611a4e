/** Brings the front page up to the logbook on this device. Without script it stands as for somebody who has not begun. */
import { deviceState, logbook, progress, saveFile } from '../device/device.ts';
import { link } from '../link.ts';
import { localTime } from '../local-time.ts';
import { type FrontCourse, nowFor, statesOf } from './now.ts';

const at = <T extends Element = HTMLElement>(name: string) => document.querySelector<T>(`[data-front="${name}"]`);
const all = (name: string, within: ParentNode = document) => [
  ...within.querySelectorAll<HTMLElement>(`[data-front="${name}"]`),
];

const course = JSON.parse(at('set')?.dataset['course'] ?? '{"evenings":[]}') as FrontCourse;
const stateWords = { done: 'Done', here: 'You are here', 'to-come': 'To come' } as const;

function write(name: string, text: string): void {
  const element = at(name);
  if (element && element.textContent !== text) element.textContent = text;
}

/** One line of the list of other things: a link, and its minutes where they are known. */
function line(path: string, says: string, minutes: number | undefined): HTMLElement {
  const item = document.createElement('li');
  const anchor = document.createElement('a');
  anchor.href = link(path);
  anchor.textContent = says;
  item.append(anchor);
  if (minutes !== undefined) {
    const time = document.createElement('span');
    time.textContent = `${minutes} min`;
    item.append(time);
  }
  return item;
}

function showNow(): void {
  const { where, heading, says, main, others } = nowFor(course, logbook.value?.events ?? [], progress.value);
  write('where', where);
  write('heading', heading);
  write('says', says);
  const button = at<HTMLAnchorElement>('main');
  if (button) {
    button.hidden = main === undefined;
    button.textContent = main?.says ?? '';
    button.href = link(main?.path ?? '');
  }
  const list = at('others');
  if (!list) return;
  list.hidden = others.length === 0;
  list.replaceChildren(...others.map((other) => line(other.path, other.says, other.minutes)));
}

function showSet(): void {
  const now = nowFor(course, logbook.value?.events ?? [], progress.value);
  const states = statesOf(course, progress.value, now);
  all('evening').forEach((evening, index) => {
    const state = states[index] ?? 'to-come';
    evening.dataset['state'] = state;
    for (const says of all('state', evening)) says.textContent = stateWords[state];
    for (const read of all('read', evening)) read.hidden = !progress.value?.read.has(read.dataset['lesson'] ?? '');
  });
}

function showLogbook(): void {
  const known = progress.value;
  const isEmpty = !known || known.entries === 0;
  const kept = known?.keptAt ? `You last kept a file ${localTime(known.keptAt)}.` : 'You have kept no file yet.';
  const saved =
    deviceState.value.kind === 'no-room'
      ? 'This browser keeps nothing. Keep a file before you close it, or what you do is lost.'
      : `Saved on this device ${localTime(known?.lastAt)}.`;
  const button = at('keep');
  if (button) button.hidden = isEmpty;
  if (!isEmpty) write('saved', `${saved} ${kept}`);
  write('logbook', known?.student ? `The logbook of ${known.student}` : 'Open your logbook');
}

progress.subscribe(() => {
  showNow();
  showSet();
  showLogbook();
});
deviceState.subscribe(showLogbook);
at('keep')?.addEventListener('click', () => void saveFile());
