/**
 * A budget as a ruler: the solid bar is used, the tall line is the limit, hatched is over it, dashed is not known.
 * Positions are percentages and shapes are pixels, so that a wide ruler does not stretch its lines.
 */
import { scaleTo } from './ruler.ts';
import './ruler.css';

export type RulerProps = {
  /** "Power". */
  name: string;
  /** What is measured and in what: "likely peak, watts". */
  unit: string;
  used: number;
  /** How much more it may be, where a part's figure is missing. */
  unknown?: number | undefined;
  limit?: number | undefined;
  /** The ruler reaches at least this far; it always holds what is used and the limit. */
  max?: number | undefined;
  /** "468 W". */
  usedSays: string;
  /** "supply 550". */
  limitSays?: string | undefined;
  /** The same in words: "468 of 550 watts; 82 left". */
  label: string;
};

const top = 30;
const high = 30;
const inset = 2;

export function Ruler({ name, unit, used, unknown = 0, limit, max = 0, usedSays, limitSays, label }: RulerProps) {
  const { end, ticks, figures } = scaleTo(Math.max(used + unknown, limit ?? 0, max, 1));
  const x = (value: number) => inset + (value / end) * (100 - 2 * inset);
  const percent = (value: number) => `${value.toFixed(2)}%`;
  const at = (value: number) => percent(x(value));
  const wide = (from: number, to: number) => percent(Math.max(0, x(to) - x(from)));
  // A figure is left out where it would run over the end or the limit, which says its own number.
  const isClear = (figure: number) => {
    const half = 1 + figure.toLocaleString('en-GB').length * 2.2;
    return x(figure) + half < 100 && (limit === undefined || Math.abs(x(figure) - x(limit)) > half);
  };
  const isOver = limit !== undefined && used > limit;
  const solid = isOver ? limit : used;
  return (
    <figure class="ruler">
      <figcaption>
        <b>{name}</b> {unit}
      </figcaption>
      <svg role="img" aria-label={`${name}: ${label}`}>
        <svg x={at(0)} width={wide(0, end)} y={top} height={high} aria-hidden="true">
          {limit !== undefined && (
            <svg x={percent((limit / end) * 100)} width="100%" aria-hidden="true">
              <line class="ruler-past" x1="-60" x2="2000" y1={high / 2} y2={high / 2} transform="skewX(-45)" />
            </svg>
          )}
        </svg>
        <rect class="ruler-body" x={at(0)} width={wide(0, end)} y={top} height={high} />
        {ticks.map((tick) => (
          <line
            key={tick}
            class="ruler-tick"
            x1={at(tick)}
            x2={at(tick)}
            y1={top}
            y2={top + (figures.includes(tick) ? 10 : 6)}
          />
        ))}
        {figures.filter(isClear).map((figure) => (
          <text
            key={figure}
            class="ruler-figure"
            x={at(figure)}
            dx={figure === 0 ? 5 : 0}
            y={top + 25}
            text-anchor={figure === 0 ? 'start' : 'middle'}
          >
            {figure.toLocaleString('en-GB')}
          </text>
        ))}
        <rect class="ruler-used" x={at(0)} width={wide(0, solid)} y={top - 7} height="7" />
        {isOver && (
          <svg x={at(limit)} width={wide(limit, used)} y={top - 13} height="13" aria-hidden="true">
            <line class="ruler-over" x1="-60" x2="2000" y1="6.5" y2="6.5" transform="skewX(-45)" />
            <rect class="ruler-edge" width="100%" height="13" />
          </svg>
        )}
        {unknown > 0 && (
          <rect class="ruler-unknown" x={at(used)} width={wide(used, used + unknown)} y={top - 10} height="10" />
        )}
        <line class="ruler-end" x1={at(used)} x2={at(used)} y1={top - 16} y2={top} />
        <text
          class="ruler-says"
          x={at(used)}
          dx={x(used) > 40 ? -6 : 6}
          y={top - 15}
          text-anchor={x(used) > 40 ? 'end' : 'start'}
        >
          {usedSays}
          {unknown > 0 && ' and more'}
        </text>
        {limit !== undefined && (
          <>
            <line class="ruler-limit" x1={at(limit)} x2={at(limit)} y1={top - 13} y2={top + high + 6} />
            <text
              class="ruler-says"
              x={at(limit)}
              dx={x(limit) > 40 ? 4 : -4}
              y={top + high + 21}
              text-anchor={x(limit) > 40 ? 'end' : 'start'}
            >
              {limitSays}
            </text>
          </>
        )}
      </svg>
    </figure>
  );
}
