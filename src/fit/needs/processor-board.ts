import type { PartOf } from '../../parts/part.ts';
import type { Lowered, Unit } from '../model.ts';

/** It goes where the processor was; one that leaves the processor in goes into the socket beside it. */
export function lower({ id, part }: Unit<PartOf<'processor-board'>>): Lowered {
  const { socket, leavesProcessorIn } = part;
  const common = { id: `${id}/socket`, part: id, left: 'blocker' } as const;
  return {
    needs: [
      leavesProcessorIn
        ? { ...common, kind: 'coprocessor-socket', attrs: { socket } }
        : { ...common, kind: 'processor-socket', attrs: { socket: null, boardSocket: socket } },
    ],
    places: [],
    resources: [],
    unrecorded: [],
  };
}
