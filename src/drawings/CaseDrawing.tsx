/** A case drawn from its data: the picture, balloons that lead to notes, and the same in words. */
import type { CaseDrawingData } from './case-drawing.ts';
import { HatchPattern } from './Hatch.tsx';
import { type Leader, placeBalloons } from './leaders.ts';
import { DimensionLine, RingMark, Shapes } from './Shapes.tsx';
import { onSheet, zoneMarks } from './sheet-of.ts';
import './drawing.css';

export type CaseDrawingProps = {
  /** Unique on the page. */
  id: string;
  data: CaseDrawingData;
  /** Leaders to notes beside the drawing; their notes have no balloon in it. */
  leaders?: readonly Leader[];
  /** The note pointed at. */
  active?: number | undefined;
  /** What a balloon leads to; without it balloons are drawn and lead nowhere. */
  noteHref?: (n: number) => string;
  onNote?: (n: number) => void;
  /** The page that explains lines, hatches and marks. */
  keyHref?: string;
};

export function CaseDrawing({ id, data, leaders = [], active, noteHref, onNote, keyHref }: CaseDrawingProps) {
  const { sheet, pinned, labels } = data;
  const led = new Set(leaders.map(({ n }) => n));
  const balloons = placeBalloons(
    pinned.filter(({ note }) => !led.has(note.n)),
    labels,
    sheet.frame ?? { x: 0, y: 0, w: sheet.width, h: sheet.height },
    leaders,
  );
  const spots = [
    ...balloons.map(({ n, at }) => ({ n, at })),
    ...pinned.filter(({ note }) => led.has(note.n)).map(({ note, at }) => ({ n: note.n, at })),
  ];
  const marks = sheet.frame && zoneMarks(sheet);
  const barEnd = sheet.bar.x + sheet.bar.mm * sheet.scale;
  return (
    <figure class="drawing">
      <div class="drawing-sheet">
        <svg
          class="drawing-picture"
          // The width on paper: one to five.
          width={`${(sheet.width / sheet.scale / 5).toFixed(1)}mm`}
          viewBox={`0 0 ${sheet.width} ${sheet.height}`}
          role="img"
          aria-label={data.label}
        >
          <defs>
            <HatchPattern id={id} />
          </defs>
          {sheet.frame && marks && (
            <g class="d-frame">
              <rect class="d-frame-out" x="0.75" y="0.75" width={sheet.width - 1.5} height={sheet.height - 1.5} />
              <rect
                class="d-frame-in"
                x={sheet.frame.x}
                y={sheet.frame.y}
                width={sheet.frame.w}
                height={sheet.frame.h}
              />
              {marks.columns.map(({ name, x, edge }) => (
                <g key={name}>
                  <text class="d-zone" x={x} y={11} text-anchor="middle" dominant-baseline="central">
                    {name}
                  </text>
                  {edge > 0 && <polyline class="d-frame-tick" points={`${edge},0 ${edge},20`} />}
                  {edge > 0 && (
                    <polyline class="d-frame-tick" points={`${edge},${sheet.height - 20} ${edge},${sheet.height}`} />
                  )}
                </g>
              ))}
              {marks.rows.map(({ name, y, edge }) => (
                <g key={name}>
                  <text class="d-zone" x={10.5} y={y} text-anchor="middle" dominant-baseline="central">
                    {name}
                  </text>
                  {edge > 0 && <polyline class="d-frame-tick" points={`0,${edge} 20,${edge}`} />}
                  {edge > 0 && (
                    <polyline class="d-frame-tick" points={`${sheet.width - 20},${edge} ${sheet.width},${edge}`} />
                  )}
                </g>
              ))}
            </g>
          )}
          <g class="d-bar">
            <polyline points={`${sheet.bar.x},${sheet.bar.y} ${barEnd},${sheet.bar.y}`} />
            {[sheet.bar.x, (sheet.bar.x + barEnd) / 2, barEnd].map((x, n) => (
              <polyline
                key={x}
                points={`${x},${sheet.bar.y - (n === 1 ? 3 : 6)} ${x},${sheet.bar.y + (n === 1 ? 3 : 6)}`}
              />
            ))}
            <text class="d-text" x={barEnd + 8} y={sheet.bar.y} dominant-baseline="central">
              {sheet.bar.mm} mm
            </text>
          </g>
          {sheet.views.map(({ view, x, y, nameAt, nameEnds }) => (
            <g key={view.name}>
              <text
                class="d-text"
                x={nameAt}
                y={sheet.nameY}
                text-anchor={nameEnds ? 'end' : 'start'}
                dominant-baseline="central"
              >
                {view.name}
              </text>
              <Shapes shapes={view.shapes} id={id} scale={sheet.scale} x={x} y={y} />
              {view.questions.map((at) => (
                <text
                  key={at.join()}
                  class="d-question"
                  x={x + at[0] * sheet.scale}
                  y={y + at[1] * sheet.scale}
                  text-anchor="middle"
                  dominant-baseline="central"
                >
                  ?
                </text>
              ))}
              {view.rings.map((ring) => (
                <RingMark key={ring.says} at={onSheet(sheet, { x, y }, ring.at)} />
              ))}
              {view.dimensions.map((dimension) => (
                <DimensionLine
                  key={`${dimension.says} ${dimension.of}`}
                  dimension={dimension}
                  scale={sheet.scale}
                  x={x}
                  y={y}
                />
              ))}
            </g>
          ))}
          {leaders.map(({ n, points }) => (
            <g key={n} class={n === active ? 'd-leader d-active' : 'd-leader'}>
              <polyline points={points.map((point) => point.join()).join(' ')} />
              <circle cx={points[0][0]} cy={points[0][1]} r="3.6" />
            </g>
          ))}
          {balloons.map(({ n, at, dot, isDashed }) => (
            <g key={n} class={n === active ? 'd-leader d-active' : 'd-leader'}>
              <polyline points={`${dot.join()} ${at.join()}`} />
              <circle cx={dot[0]} cy={dot[1]} r="3.6" />
              <circle class={isDashed ? 'd-balloon d-balloon-dashed' : 'd-balloon'} cx={at[0]} cy={at[1]} r="15.5" />
              <text class="d-number" x={at[0]} y={at[1]} text-anchor="middle" dominant-baseline="central">
                {n}
              </text>
            </g>
          ))}
        </svg>
        {noteHref &&
          spots.map(({ n, at }) => (
            // biome-ignore lint/a11y/useAnchorContent: its label is its content; the number is drawn in the picture
            <a
              key={n}
              id={`${id}-${n}`}
              class="drawing-hit"
              href={noteHref(n)}
              aria-label={`Note ${n}`}
              style={{ left: `${(at[0] / sheet.width) * 100}%`, top: `${(at[1] / sheet.height) * 100}%` }}
              onClick={(event) => {
                if (!onNote) return;
                event.preventDefault();
                onNote(n);
              }}
            />
          ))}
      </div>
      {keyHref && (
        <a class="drawing-key" href={keyHref}>
          How to read this
        </a>
      )}
      <details class="drawing-words">
        <summary>In words</summary>
        <ol>
          {data.words.map((line) => (
            <li key={line}>{line}</li>
          ))}
        </ol>
      </details>
    </figure>
  );
}
