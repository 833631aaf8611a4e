/** Shapes of a view as SVG, at a scale, with the meaning of each line as its class. */
import { hatchId } from './Hatch.tsx';
import type { Box, Dimension, Point, Shape } from './shapes.ts';
import { textWidth } from './sheet-of.ts';

type Place = { id: string; scale: number; x: number; y: number };

const round = (value: number) => Math.round(value * 10) / 10;

export function Shapes({ shapes, id, scale, x, y }: Place & { shapes: readonly Shape[] }) {
  const at = ([px, py]: Point) => `${round(x + px * scale)},${round(y + py * scale)}`;
  const box = (one: Box) => ({
    x: round(x + one.x * scale),
    y: round(y + one.y * scale),
    width: round(one.w * scale),
    height: round(one.h * scale),
  });
  return (
    <>
      {shapes.map((shape, index) => {
        const key = `${shape.is}-${index}`;
        switch (shape.is) {
          case 'box':
            return <rect key={key} class={classOf(shape.look, shape.clear)} {...box(shape.box)} />;
          case 'line':
            return <polyline key={key} class={classOf(shape.look)} points={shape.points.map(at).join(' ')} />;
          case 'disc':
            return (
              <circle
                key={key}
                class={classOf(shape.look, shape.clear)}
                cx={round(x + shape.at[0] * scale)}
                cy={round(y + shape.at[1] * scale)}
                r={round(shape.r * scale)}
              />
            );
          default:
            return <rect key={key} class="d-hatch" fill={`url(#${hatchId(id)})`} {...box(shape.box)} />;
        }
      })}
    </>
  );
}

const classOf = (look: string, clear?: boolean) => (clear ? `d-${look} d-clear` : `d-${look}`);

/** Slim filled arrowheads, extension lines that start 4 px off, the text in the line. */
export function DimensionLine({ dimension, scale, x, y }: Omit<Place, 'id'> & { dimension: Dimension }) {
  const { from, to, at, way, says, of } = dimension;
  const isLevel = way === 'level';
  const along = (point: Point) => round(isLevel ? x + point[0] * scale : y + point[1] * scale);
  const off = (point: Point) => round(isLevel ? y + point[1] * scale : x + point[0] * scale);
  const line = round((isLevel ? y : x) + at * scale);
  const [a, b] = [along(from), along(to)];
  const point = (u: number, v: number) => (isLevel ? `${u},${v}` : `${v},${u}`);
  const extension = (end: Point) => {
    const start = off(end) + 4 * Math.sign(line - off(end) || 1);
    return point(along(end), start).concat(' ', point(along(end), line + 5 * Math.sign(line - off(end) || 1)));
  };
  const head = (tip: number, way_: 1 | -1) =>
    [point(tip, line), point(tip + 11 * way_, line - 2), point(tip + 11 * way_, line + 2)].join(' ');
  const centre = (a + b) / 2;
  const gap = Math.min(textWidth(says), Math.abs(b - a)) / 2;
  const isShort = Math.abs(b - a) < textWidth(says) + 22;
  const textAt = isLevel ? { x: centre, y: line } : { x: line, y: centre, transform: `rotate(-90 ${line} ${centre})` };
  return (
    <g class={`d-dimension d-of-${of}`}>
      <polyline class="d-extension" points={extension(from)} />
      <polyline class="d-extension" points={extension(to)} />
      <polyline class="d-measure" points={`${point(a, line)} ${point(round(centre - gap), line)}`} />
      <polyline class="d-measure" points={`${point(round(centre + gap), line)} ${point(b, line)}`} />
      <polygon class="d-head" points={head(a, isShort ? -1 : 1)} />
      <polygon class="d-head" points={head(b, isShort ? 1 : -1)} />
      <text class="d-text" text-anchor="middle" dominant-baseline="central" {...textAt}>
        {says}
      </text>
    </g>
  );
}

export function RingMark({ at: [x, y] }: { at: Point }) {
  return (
    <g class="d-ring">
      <circle cx={round(x)} cy={round(y)} r={7} />
      <polyline
        points={`${round(x - 3.2)},${round(y + 0.2)} ${round(x - 0.8)},${round(y + 2.8)} ${round(x + 3.4)},${round(y - 2.6)}`}
      />
    </g>
  );
}
