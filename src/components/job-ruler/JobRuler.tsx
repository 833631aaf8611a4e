/** The way along a job card: a tick a step, a flag a hold point, solid as far as it is done, a triangle at the place. */
import './job-ruler.css';

export type JobRulerProps = {
  /** Steps in all, one or more. */
  of: number;
  done: number;
  /** Number of the step the reader is at; absent when all are done. */
  here?: number | undefined;
  /** `at` is the step's number, `n` the hold point's. */
  holds: readonly { at: number; n: number; passed: boolean }[];
  /** What it says to somebody who cannot see it. */
  label: string;
  /** For a row of a table: no ticks, no figures in the flags. */
  small?: boolean;
};

export function JobRuler({ of, done, here, holds, label, small = false }: JobRulerProps) {
  const base = small ? 18 : 32;
  // Positions are percentages and shapes are pixels, so that a wide ruler does not stretch its flags.
  const x = (step: number) => `${((step / of) * 94 + 3).toFixed(2)}%`;
  return (
    <svg class={small ? 'job-ruler job-ruler-small' : 'job-ruler'} role="img" aria-label={label}>
      <line class="job-ruler-base" x1={x(0)} x2={x(of)} y1={base} y2={base} />
      {!small &&
        Array.from({ length: of + 1 }, (_, step) => (
          <line key={x(step)} class="job-ruler-tick" x1={x(step)} x2={x(step)} y1={base - 8} y2={base} />
        ))}
      {done > 0 && <line class="job-ruler-done" x1={x(0)} x2={x(done)} y1={base} y2={base} />}
      {holds.map(({ at, n, passed }) => (
        <svg key={n} x={x(at)} overflow="visible" aria-hidden="true" class={passed ? 'job-ruler-passed' : undefined}>
          <line class="job-ruler-pole" x1="0" x2="0" y1={small ? 8 : 16} y2={base + 5} />
          {small ? (
            <rect class="job-ruler-flag" x="-4" y="2" width="8" height="8" />
          ) : (
            <>
              <rect class="job-ruler-flag" x="-8" y="1" width="16" height="16" />
              <text x="0" y="14" text-anchor="middle">
                {n}
              </text>
            </>
          )}
        </svg>
      ))}
      {here !== undefined && (
        <svg x={x(here - 0.5)} overflow="visible" aria-hidden="true">
          <path class="job-ruler-here" d={`M0 ${base + 4} l6 10 h-12 z`} />
        </svg>
      )}
    </svg>
  );
}
