/** The drawing a step asks for, made from the parts on the list. */
import { content } from 'virtual:benchbook/content';
import { BoardDrawing, ModuleDrawing } from '../../drawings/board.tsx';
import type { Motherboard } from '../../parts/classes/motherboard.ts';
import type { CardStep, JobCard } from '../../procedures/types.ts';

export function StepDrawing({ card, step }: { card: JobCard; step: CardStep }) {
  if (step.drawing === 'none') return null;
  const ids = new Set(card.list.map((listed) => listed.part));
  const board = content.parts.find((part): part is Motherboard => part.class === 'motherboard' && ids.has(part.id));
  if (!board) return null;
  // The end of the joint that is on the board: a place of its own, or its need for a lead of the supply.
  const place = step.joint
    ?.split(' → ')
    .reverse()
    .find((end) => end.startsWith('motherboard-'));
  return (
    <div class="card-drawings">
      <BoardDrawing board={board} {...(place === undefined ? {} : { mark: place })} />
      {step.drawing === 'module' && <ModuleDrawing />}
    </div>
  );
}
