/**
 * The hardest problems on record, and the most steps each may take. Steps are the same on every machine; a
 * change that needs more must say why. How many are left over is argued by hand beside each.
 */
import type { Problem } from '../../../src/fit/model.ts';
import { fourteenParts } from '../../bench/hookup-problem.ts';
import { need, place, problem } from './build.ts';

/** Fans of so many mA each, headers of so many, and splitters of so many outlets. */
export function fans(draws: readonly number[], headers: readonly number[], splitters: readonly number[]): Problem {
  const outlet = (cable: number, n: number) =>
    place(`cable-${cable}/out-${n}`, 'fan-header', 9 + n, {}, { after: [`cable-${cable}/in`] });
  return problem({
    needs: [
      ...draws.map((mA, n) => need(`fan-${n + 1}/lead`, 'fan-header', {}, { left: 'limit', draws: { mA } })),
      ...splitters.map((_, n) => need(`cable-${n + 1}/in`, 'fan-header', {}, { left: 'spare', carries: ['mA'] })),
    ],
    places: [
      ...headers.map((_, n) => {
        const id = `motherboard-1/header-${n + 1}`;
        return place(id, 'fan-header', n, {}, { meters: { mA: [`${id}/mA`] } });
      }),
      ...splitters.flatMap((outlets, n) => Array.from({ length: outlets }, (_, at) => outlet(n + 1, at + 1))),
    ],
    resources: headers.map((capacity, n) => ({ id: `motherboard-1/header-${n + 1}/mA`, capacity })),
  });
}

export const rising = (count: number, first: number, by: number) =>
  Array.from({ length: count }, (_, n) => first + n * by);
const ports = rising(16, 1, 1);

export const recorded: { name: string; problem: Problem; left: number; steps: number }[] = [
  {
    name: 'a list of fourteen parts',
    problem: fourteenParts,
    // It was put together so that all of it fits.
    left: 0,
    steps: 8,
  },
  {
    name: 'twenty-four unlike drives on sixteen ports',
    problem: problem({
      needs: rising(24, 1, 1).map((n) =>
        need(`storage-drive-${n}/data`, 'drive-data', { plug: ports.filter((port) => (n * 7 + port * 5) % 3 !== 0) }),
      ),
      places: ports.map((port) => place(`motherboard-1/port-${port}`, 'drive-data', port, { plug: port })),
    }),
    // One drive to a port.
    left: 8,
    steps: 26,
  },
  {
    name: 'six unlike fans, three headers, a splitter',
    problem: fans([300, 450, 600, 250, 500, 700], [1000, 1000, 2000], [3]),
    // Two headers serve one fan each, and the third, through the splitter, three.
    left: 1,
    steps: 14,
  },
  {
    name: 'eight fans of two kinds, three headers, two splitters',
    problem: fans([300, 300, 300, 300, 500, 500, 500, 500], [1000, 1000, 1000], [3, 3]),
    // Seven served: six on two headers, of which two at least draw 500 mA: 2,200 mA from 2,000.
    left: 2,
    steps: 40,
  },
  {
    name: 'eight unlike fans, three headers, two splitters',
    problem: fans(rising(8, 250, 50), [1000, 1000, 1000], [3, 3]),
    // Seven served: six on two headers, which draw 2,250 mA at least.
    left: 2,
    steps: 46,
  },
  {
    name: 'twelve unlike fans, four headers, three splitters',
    problem: fans(rising(12, 200, 37), [1000, 1000, 1000, 1000], [3, 3, 3]),
    // Ten served: nine on three headers, which draw 3,132 mA at least.
    left: 3,
    steps: 148,
  },
  {
    name: 'sixteen fans of two kinds, six headers, four splitters',
    problem: fans([...rising(8, 300, 0), ...rising(8, 500, 0)], [1000, 1000, 1000, 1000, 1000, 1000], [3, 3, 3, 3]),
    // Thirteen served: eleven on four headers, so three fans on three of them. Only three of 300 mA go on one
    // header, which makes nine of the eight that there are.
    left: 4,
    steps: 808,
  },
  {
    name: 'twenty fans alike, six headers, four splitters',
    problem: fans(rising(20, 250, 0), [1000, 1000, 1000, 1000, 1000, 1000], [3, 3, 3, 3]),
    // Twelve outlets and two headers.
    left: 6,
    steps: 126,
  },
  {
    name: 'twelve unlike fans, unlike headers, unlike splitters',
    problem: fans(rising(12, 200, 37), [1000, 2000, 1000, 3000], [3, 4, 2]),
    // Nine outlets and one header.
    left: 2,
    steps: 10_445,
  },
];
