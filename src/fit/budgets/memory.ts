/** Memory: how much there is, against how much the board can use; banks filled; what it carries as it runs. */
import { channelMBps } from '../../standards/memory.ts';
import type { Place } from '../model.ts';
import { isOf } from '../needs/index.ts';
import type { Budget, WorkingLine } from '../report.ts';
import type { Bench } from './bench.ts';
import { boundBy, type Total, term } from './total.ts';

/** In mebibytes, of modules that are put in one by one. A board with banks only sets no limit for them. */
export const memory: Total = {
  name: 'memory',
  unit: 'mebibyte',
  adds: [
    term('memory-module', ['capacityGb'], ({ capacityGb }) => [
      { amount: capacityGb === undefined ? undefined : capacityGb * 1024, field: 'capacityGb' },
    ]),
  ],
  bound: boundBy('motherboard', ['memory', 'memoryBanks'], ({ memory: own, memoryBanks }) => {
    if (own?.totalGb !== undefined) return own.totalGb * 1024;
    return own === undefined && memoryBanks !== undefined ? null : undefined;
  }),
  when: 'added',
  formula: 'The sizes of all memory modules, added up, against the most that the board can use.',
  source: 'maker-data-sheet',
};

/** In kibibytes, of modules that are put in by whole banks. What a memory card of its own takes is not limited by the board. */
export const banksMemory: Total = {
  name: 'memory',
  of: 'banks',
  unit: 'kibibyte',
  adds: [term('bank-module', ['capacityKb'], ({ capacityKb }) => [{ amount: capacityKb, field: 'capacityKb' }])],
  bound: boundBy('motherboard', ['memoryTotalKb', 'memoryBanks'], ({ memoryTotalKb, memoryBanks }) =>
    memoryTotalKb === undefined && memoryBanks === undefined ? null : memoryTotalKb,
  ),
  when: 'added',
  formula: 'The sizes of all modules, added up, against the most that the board can use.',
  source: 'maker-data-sheet',
};

/** Banks filled, against banks there are. Absent where memory is not put in by banks. */
export function banksBudget(bench: Bench): Budget | undefined {
  const filled = new Map(bench.rungsOf('memory-bank').map(({ place }) => [place.id, place.part]));
  const banks = new Map(bench.places.filter(({ kind }) => kind === 'memory-bank').map(({ id, part }) => [id, part]));
  if (banks.size === 0) return undefined;
  return {
    name: 'banks',
    unit: 'count',
    used: filled.size,
    limit: banks.size,
    about: [...new Set(banks.values())],
    unknown: [],
    working: [...filled].map(([id, unit]) => ({ unit, amount: 1, field: id.slice(unit.length + 1) })),
    formula:
      'Banks that hold modules, against banks there are. A bank is filled whole, with modules of one sort, or left empty.',
    source: 'memory-banks',
  };
}

/**
 * In megabytes a second, for each board with memory in its slots: what the memory can carry as it runs, against what the
 * board's fastest memory would carry on all its channels.
 */
export const bandwidthBudgets = (bench: Bench): Budget[] =>
  bench.units.filter(isOf('motherboard')).flatMap((board) => {
    const channelsOf = (places: readonly Place[]) =>
      new Set(places.flatMap(({ meters }) => meters?.['channelMib'] ?? [])).size;
    const slots = bench.places.filter(({ kind, part }) => kind === 'memory-slot' && part === board.id);
    const rungs = bench.rungsOf('memory-slot').filter(({ place }) => place.part === board.id);
    const most = board.part.memory?.speedMts;
    if (rungs.length === 0) return [];
    const modules = rungs.map(({ need }) => {
      const part = bench.unit(need.part)?.part;
      return { unit: need.part, speed: part?.class === 'memory-module' ? part.speedMts : undefined };
    });
    const speeds = modules.flatMap(({ speed }) => speed ?? []);
    const channels = channelsOf(rungs.map(({ place }) => place));
    const isKnown = most !== undefined && speeds.length === modules.length;
    const runs = isKnown ? Math.min(most, ...speeds) : undefined;
    return [
      {
        name: 'memory-bandwidth' as const,
        of: board.id,
        unit: 'megabyte-a-second' as const,
        used: runs === undefined ? 0 : channels * channelMBps(runs),
        ...(most === undefined ? {} : { limit: channelsOf(slots) * channelMBps(most) }),
        about: [board.id],
        unknown: [
          ...(most === undefined ? [board.id] : []),
          ...modules.flatMap(({ unit, speed }) => (speed === undefined ? [unit] : [])),
        ],
        working: [
          { unit: board.id, amount: channels, in: 'count' as const, field: 'channels' },
          ...modules.flatMap(({ unit, speed }): WorkingLine[] =>
            speed === undefined ? [] : [{ unit, amount: speed, in: 'megatransfer-a-second', field: 'speedMts' }],
          ),
          ...(most === undefined
            ? []
            : [{ unit: board.id, amount: most, in: 'megatransfer-a-second' as const, field: 'memory.speedMts' }]),
          ...(runs === undefined
            ? []
            : [
                { amount: runs, in: 'megatransfer-a-second' as const, field: 'runs' },
                { amount: channelMBps(runs), in: 'megabyte-a-second' as const, field: 'channel' },
              ]),
        ],
        formula:
          'All modules run at the slowest of them and of the board. Transfers a second times eight bytes is what one channel carries, times the channels that hold a module.',
        source: board.part.memory?.generation === 'ddr4' ? 'jesd79-4' : 'jesd79-5',
      },
    ];
  });
