/** Zone C of the front page: when the logbook was last saved here, and the file that outlives this device. */
import '@preact/signals';
import { deviceState, progress, saveFile } from '../device/device.ts';
import { link } from '../link.ts';
import { localTime } from './local-time.ts';

export function FrontLogbook() {
  const known = progress.value;
  const { kind } = deviceState.value;
  const isEmpty = !known || known.entries === 0;
  return (
    <>
      <p role="status">
        {kind === 'no-room'
          ? 'This browser keeps nothing. Keep a file before you close it, or what you do is lost.'
          : isEmpty
            ? 'Nothing is written in it yet. What you read, choose and build is saved on this device as you go.'
            : `Saved on this device ${localTime(known.lastAt)}.`}{' '}
        {!isEmpty && (known.keptAt ? `You last kept a file ${localTime(known.keptAt)}.` : 'You have kept no file yet.')}
      </p>
      <p class="buttons">
        {!isEmpty && (
          <button type="button" class="button" onClick={() => void saveFile()}>
            Keep a file now
          </button>
        )}
        <a class="front-more" href={link('logbook/')}>
          {known?.student ? `The logbook of ${known.student}` : 'Open your logbook'}
        </a>
      </p>
    </>
  );
}
