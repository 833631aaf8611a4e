/** Cases where things that seem alike are not, and where what seems too little is enough. Argued by hand, tried by the oracle. */
import { test } from 'vitest';
import type { Need } from '../../../src/fit/model.ts';
import { check } from './agree.ts';
import { need, place } from './build.ts';

const header = (number: number, plug: string, resource: string) =>
  place(`board-1/header-${number}`, 'drive-power', number, { plug }, { meters: { mA: [`board-1/${resource}/mA`] } });

test('headers that share their current are not like one that has its own', () => {
  const fan = (n: number, mA: number) => need(`fan-${n}/lead`, 'drive-power', { plug: 'x' }, { draws: { mA } });
  // Headers 1 and 2 serve one fan between them, so the second is on header 3 and two are left over.
  check(
    {
      needs: [fan(1, 5), fan(2, 5), fan(3, 5), fan(4, 4)],
      places: [header(1, 'x', 'shared'), header(2, 'x', 'shared'), header(3, 'x', 'own')],
      resources: [
        { id: 'board-1/shared/mA', capacity: 5 },
        { id: 'board-1/own/mA', capacity: 5 },
      ],
    },
    { 'fan-1/lead': 'board-1/header-1', 'fan-2/lead': 'board-1/header-3' },
  );
});

test('a fan that no header could serve alone is served by two through an adapter', () => {
  const input = (n: number) =>
    need(`adapter-1/in-${n}`, 'drive-power', { plug: 'x' }, { left: 'spare', carries: ['mA'] });
  check(
    {
      needs: [
        need('fan-1/lead', 'drive-power', { plug: 'x' }, { draws: { mA: 4 } }),
        need('fan-2/lead', 'drive-power', { plug: 'x' }, { draws: { mA: 1 } }),
        input(1),
        input(2),
      ],
      places: [
        header(1, 'x', 'three-1'),
        header(2, 'x', 'three-2'),
        header(3, 'x', 'one-1'),
        header(4, 'x', 'one-2'),
        place('adapter-1/out', 'drive-power', 9, { plug: 'x' }, { after: ['adapter-1/in-1', 'adapter-1/in-2'] }),
      ],
      resources: [
        { id: 'board-1/three-1/mA', capacity: 3 },
        { id: 'board-1/three-2/mA', capacity: 3 },
        { id: 'board-1/one-1/mA', capacity: 1 },
        { id: 'board-1/one-2/mA', capacity: 1 },
      ],
    },
    {
      'adapter-1/in-1': 'board-1/header-1',
      'adapter-1/in-2': 'board-1/header-2',
      'fan-1/lead': 'adapter-1/out',
      'fan-2/lead': 'board-1/header-3',
    },
  );
});

test('of two equal splitters the first takes the second header when what hangs on it needs that one', () => {
  const carries = { left: 'spare' as const, carries: ['mA'] };
  const fan = (n: number, plug: string, mA: number, left: Need['left'] = 'blocker') =>
    need(`fan-${n}/lead`, 'drive-power', { plug }, { left, draws: { mA } });
  const outlet = (cable: number) =>
    place(`cable-${cable}/out`, 'drive-power', 5, { plug: ['lead', 'fan'] }, { after: [`cable-${cable}/in`] });
  // Fan 1 comes before all others. Its adapter chooses before the cables, so it has the first outlet; the fan draws 3,
  // so that cable needs header 2.
  check(
    {
      needs: [
        need('adapter-1/in', 'drive-power', { plug: 'lead' }, carries),
        need('cable-1/in', 'drive-power', { plug: 'header' }, carries),
        need('cable-2/in', 'drive-power', { plug: 'header' }, carries),
        fan(1, 'adapter', 3, 'hazard'),
        fan(2, 'fan', 1),
        fan(3, 'fan', 1),
      ],
      places: [
        header(1, 'header', 'one'),
        header(2, 'header', 'three'),
        outlet(1),
        outlet(2),
        place('adapter-1/out', 'drive-power', 6, { plug: 'adapter' }, { after: ['adapter-1/in'] }),
      ],
      resources: [
        { id: 'board-1/one/mA', capacity: 1 },
        { id: 'board-1/three/mA', capacity: 3 },
      ],
    },
    {
      'adapter-1/in': 'cable-1/out',
      'cable-1/in': 'board-1/header-2',
      'cable-2/in': 'board-1/header-1',
      'fan-1/lead': 'adapter-1/out',
      'fan-2/lead': 'cable-2/out',
    },
  );
});
