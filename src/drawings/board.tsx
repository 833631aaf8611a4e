/** A board in plan, and a memory module over its slot: what the job card and the front page show. */
import type { KindName, PlaceId } from '../fit/model.ts';
import type { Motherboard } from '../parts/classes/motherboard.ts';
import { placeName } from '../wording/places.ts';
import { termName } from '../wording/terms.ts';
import { planBoard, type Spot, spotOf } from './board-plan.ts';
import { boardShapes } from './board-shapes.ts';
import { RingMark, Shapes } from './Shapes.tsx';
import { middle, type Shape } from './shapes.ts';
import './drawing.css';

export type BoardDrawingProps = {
  board: Motherboard;
  /** The place the hand goes to, or the board's own need: `motherboard-1/memory-slot-a2`, `motherboard-1/power-1`. */
  mark?: PlaceId;
  /** Places that hold their part already. */
  joints?: readonly { place: PlaceId }[];
};

const margin = 6;

/** The side of the board with the sockets, ports at the left, as it stands in the case. */
export function BoardDrawing({ board, mark, joints = [] }: BoardDrawingProps) {
  const plan = planBoard(board);
  const groups: readonly [KindName, readonly Spot[]][] = [
    ['memory-slot', plan.memory],
    ['expansion-slot', plan.cards],
    ['module-slot', plan.modules],
    ['drive-data', plan.sata],
    ['fan-header', plan.headers],
    [
      'processor-socket',
      [
        { id: 'processor-socket', box: plan.socket },
        { id: 'socket', box: plan.socket },
        { id: 'cooler-mount', box: plan.socket },
      ],
    ],
    ['board-power', plan.power],
    [
      'front-panel',
      [
        { id: 'power-button', box: plan.frontPins },
        { id: 'front-panel', box: plan.frontPins },
      ],
    ],
  ];
  const find = (place: PlaceId) => {
    for (const [kind, spots] of groups) {
      const spot = spotOf(place, spots);
      if (spot) {
        const plug = plan.power.find(({ id }) => kind === 'board-power' && id === spot.id)?.plug;
        return { box: spot.box, says: plug ? `the socket for the ${termName(plug)}` : placeName(kind, place) };
      }
    }
    return undefined;
  };
  const marked = mark === undefined ? undefined : find(mark);
  const shapes: Shape[] = boardShapes(plan, { x: 0, y: 0 }, new Set());
  if (marked) shapes.push({ is: 'box', box: marked.box, look: 'place' });
  const rings = joints.flatMap(({ place }) => find(place) ?? []);
  const label = marked ? `Board ${board.name}: ${marked.says} is marked.` : `Board ${board.name}, ports at the left.`;
  const [w, h] = [plan.w + 2 * margin, plan.h + 2 * margin];
  // Rings are drawn in pixels: at this scale a board is about as wide as a phone.
  const scale = 1.3;
  return (
    <svg class="drawing-picture board-drawing" viewBox={`0 0 ${w * scale} ${h * scale}`} role="img" aria-label={label}>
      <Shapes shapes={shapes} id="board" scale={scale} x={margin * scale} y={margin * scale} />
      {rings.map(({ box }) => {
        const [x, y] = middle(box);
        return <RingMark key={`${x},${y}`} at={[(x + margin) * scale, (y + margin) * scale]} />;
      })}
    </svg>
  );
}

/** A module over its slot, notch over bridge. Not to scale: what lines up with what is the whole of it. */
export function ModuleDrawing() {
  const notch = 142;
  return (
    <svg
      class="drawing-picture module-drawing"
      viewBox="0 0 320 250"
      role="img"
      aria-label="A memory module over its slot, not to scale: the notch stands over the bridge, the latch at the end is open, both thumbs press straight down."
    >
      {[44, 246].map((x) => (
        <g key={x} class="module-push">
          <polyline class="d-place" points={`${x + 15},6 ${x + 15},40`} />
          <polygon class="module-head" points={`${x + 15},52 ${x + 9},38 ${x + 21},38`} />
        </g>
      ))}
      <text class="d-text" x="160" y="26" text-anchor="middle">
        straight down
      </text>
      <polygon
        class="module-body"
        points={`30,58 290,58 290,138 ${notch + 10},138 ${notch + 10},126 ${notch - 4},126 ${notch - 4},138 30,138`}
      />
      {[44, 76, 108, 172, 204, 236].map((x) => (
        <rect key={x} class="d-detail" x={x} y="72" width="24" height="34" />
      ))}
      <polyline class="module-line" points={`${notch + 3},120 ${notch + 3},206`} />
      <polygon
        class="module-slot"
        points={`24,196 ${notch - 2},196 ${notch - 2},186 ${notch + 8},186 ${notch + 8},196 296,196 296,214 24,214`}
      />
      <polyline class="module-latch" points="296,212 312,168 304,166" />
      <text class="d-text" x={notch + 18} y="166">
        notch over bridge
      </text>
      <text class="d-text" x="296" y="238" text-anchor="end">
        latch open
      </text>
      <text class="d-text" x="24" y="238">
        Not to scale
      </text>
    </svg>
  );
}
