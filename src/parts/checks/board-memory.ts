import { ofClass, type SenseCheck, type SenseFault } from './check.ts';

/** A board cannot use more memory than its slots or banks hold. */
export const boardMemory: SenseCheck = {
  id: 'board-memory',
  check: (parts) =>
    ofClass(parts, 'motherboard').flatMap(({ id, memory, memoryBanks, memoryTotalKb }) => {
      const faults: SenseFault[] = [];
      if (memory?.moduleGb !== undefined && memory.totalGb !== undefined) {
        const most = memory.moduleGb * memory.slots.length;
        const expected = `${most} GB or less, which its ${memory.slots.length} slots hold`;
        if (memory.totalGb > most)
          faults.push({ part: id, path: ['memory', 'totalGb'], actual: `${memory.totalGb} GB`, expected });
      }
      const banks = memoryBanks?.map(({ slots, largestKb }) =>
        largestKb === undefined ? Infinity : slots * largestKb,
      );
      const held = banks?.reduce((sum, kb) => sum + kb, 0) ?? Infinity;
      if (memoryTotalKb !== undefined && banks && banks.length > 0 && memoryTotalKb > held) {
        const expected = `${held} kB or less, which its banks hold`;
        faults.push({ part: id, path: ['memoryTotalKb'], actual: `${memoryTotalKb} kB`, expected });
      }
      return faults;
    }),
};
