/** Writes the student's name or bench into the title block. */
import { progress } from '../device/device.ts';

const cell = document.querySelector('[data-bench]');
progress.subscribe((known) => {
  if (cell && known) cell.textContent = known.student ?? 'not named';
});
