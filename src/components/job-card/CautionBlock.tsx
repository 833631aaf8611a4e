/** One hazard, what happens, what to do. The triangle stands for injury, so a notice has none. */
import type { Caution } from '../../procedures/types.ts';

export function CautionBlock({ signal, text }: Caution) {
  return (
    <div class="caution">
      {signal !== 'notice' && (
        <svg class="caution-triangle" viewBox="0 0 32 28" aria-hidden="true">
          <path d="M16 2 30 26H2Z" />
          <path d="M16 10v8M16 21.5v1" />
        </svg>
      )}
      <p>
        <b class="caution-word">{signal.toUpperCase()}</b>
        {text}
      </p>
    </div>
  );
}
