import { ofClass, type SenseCheck, type SenseFault } from './check.ts';

/** What a board's file names must be on the board: the ports a slot switches off, the slot another shares lanes with. */
export const boardNames: SenseCheck = {
  id: 'board-names',
  check: (parts) =>
    ofClass(parts, 'motherboard').flatMap(({ id, moduleSlots = [], expansionSlots = [], sataPorts }) => {
      const faults: SenseFault[] = [];
      const ports = new Set(Array.from({ length: sataPorts ?? 0 }, (_, n) => `sata-${n + 1}`));
      const slots = new Set(expansionSlots.map((slot) => slot.id));
      for (const [n, { switchesOff = [] }] of moduleSlots.entries()) {
        for (const [m, port] of switchesOff.entries()) {
          if (ports.has(port) || sataPorts === undefined) continue;
          const expected = `one of the board's data ports, sata-1 to sata-${sataPorts}`;
          faults.push({ part: id, path: ['moduleSlots', n, 'switchesOff', m], actual: `"${port}"`, expected });
        }
      }
      for (const [n, { id: own, shares }] of expansionSlots.entries()) {
        if (!shares || (slots.has(shares.slot) && shares.slot !== own)) continue;
        const expected = 'the id of another slot of this board';
        faults.push({ part: id, path: ['expansionSlots', n, 'shares', 'slot'], actual: `"${shares.slot}"`, expected });
      }
      return faults;
    }),
};
