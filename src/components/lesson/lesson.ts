/** What script adds to a lesson: answering its questions, and writing in the logbook that it was opened and read. */
import type { Progress } from '../../logbook/progress.ts';
import { deviceState, progress, record } from '../device/device.ts';

const lesson = document.querySelector<HTMLElement>('[data-lesson]')?.dataset['lesson'] ?? '';
const questions = [...document.querySelectorAll<HTMLFormElement>('[data-question]')].map(setUp);

type Question = { id: string; show: (choice: number, aloud: boolean) => void };

function setUp(form: HTMLFormElement): Question {
  const id = form.dataset['question'] ?? '';
  const choices = [...form.querySelectorAll<HTMLElement>('.choice')];
  const radios = [...form.querySelectorAll<HTMLInputElement>('input[type=radio]')];
  const button = form.querySelector('button');
  const status = form.querySelector('[role=status]');

  function setButton(says: string, isReady: boolean): void {
    if (!button) return;
    button.textContent = says;
    button.classList.toggle('button-dotted', !isReady);
    button.classList.toggle('button-main', isReady);
  }

  function show(chosen: number, aloud: boolean): void {
    choices.forEach((choice, index) => {
      const why = choice.querySelector('details');
      if (why) why.open = index === chosen;
    });
    const radio = radios[chosen];
    const choice = choices[chosen];
    if (!radio || !choice) return;
    radio.checked = true;
    const isRight = choice.dataset['right'] !== undefined;
    if (button) button.hidden = isRight;
    setButton('Choose another', false);
    if (aloud && status) status.textContent = choice.querySelector('.choice-why')?.textContent?.trim() ?? '';
  }

  form.addEventListener('change', () => {
    if (button) button.hidden = false;
    setButton('Answer', true);
  });
  form.addEventListener('submit', (event) => {
    event.preventDefault();
    const choice = radios.findIndex((radio) => radio.checked);
    if (choice < 0 || button?.classList.contains('button-dotted')) {
      radios[Math.max(0, choice)]?.focus();
      return;
    }
    show(choice, true);
    void record({ act: 'question-answered', lesson, question: id, choice }).then(readWhenAnswered);
  });
  // Chosen before the script had come.
  if (radios.some((radio) => radio.checked)) setButton('Answer', true);
  return { id, show };
}

async function setRead(): Promise<void> {
  if (progress.value && !progress.value.read.has(lesson)) await record({ act: 'lesson-read', lesson });
}

function readWhenAnswered(): void {
  const answers = progress.value?.answers;
  if (answers && questions.every(({ id }) => answers.has(`${lesson}#${id}`))) void setRead();
}

async function begin(known: Progress): Promise<void> {
  for (const { id, show } of questions) {
    const choice = known.answers.get(`${lesson}#${id}`);
    if (choice !== undefined) show(choice, false);
  }
  if (known.lastLesson !== lesson) await record({ act: 'lesson-opened', lesson });
  const end = document.querySelector('[data-lesson-end]');
  if (!end) return;
  const observer = new IntersectionObserver((seen) => {
    if (!seen.some((one) => one.isIntersecting)) return;
    observer.disconnect();
    void setRead();
  });
  observer.observe(end);
}

let hasBegun = false;
progress.subscribe((known) => {
  if (!known || hasBegun) return;
  hasBegun = true;
  // The signal that has just changed must not be written to before its other readers have seen it.
  queueMicrotask(() => void begin(known));
});

const noRoom = document.querySelector<HTMLElement>('[data-no-room]');
deviceState.subscribe(({ kind }) => {
  if (noRoom) noRoom.hidden = kind === 'ok';
});
