/** A board's own lines: outline, holes, ports, sockets, slots and plugs. */
import type { BoardPlan } from './board-plan.ts';
import { type Box, boxAt, type Point, type Shape } from './shapes.ts';

/** `taken`: ids of slots in which a part is drawn, so that they need no line of their own. */
export function boardShapes(plan: BoardPlan, at: { x: number; y: number }, taken: ReadonlySet<string>): Shape[] {
  const move = (box: Box): Box => boxAt(box.x + at.x, box.y + at.y, box.w, box.h);
  const detail = (box: Box): Shape => ({ is: 'box', box: move(box), look: 'detail', clear: true });
  const texture = (box: Box): Shape => ({ is: 'box', box: move(box), look: 'texture' });
  const hole = ([x, y]: Point): Shape => ({ is: 'disc', at: [x + at.x, y + at.y], r: 2.2, look: 'detail' });
  const free = <S extends { id: string }>(spots: readonly S[]) => spots.filter(({ id }) => !taken.has(id));
  return [
    { is: 'box', box: move(boxAt(0, 0, plan.w, plan.h)), look: plan.isKnown ? 'outline' : 'unknown', clear: true },
    ...plan.holes.map(hole),
    detail(plan.ports),
    ...free(plan.modules).map(({ box }) => texture(box)),
    detail(plan.socket),
    ...free(plan.memory).map(({ box }) => detail(box)),
    ...plan.cards.map(({ box }) => detail(box)),
    ...plan.power.map(({ box }) => detail(box)),
    ...plan.sata.map(({ box }) => texture(box)),
    ...plan.headers.map(({ box }) => texture(box)),
    texture(plan.frontPins),
  ];
}
