// 01-psu-efficiency: table in a review of the 80 PLUS programme, supplies for one machine (basis: read).
// PSU-108: article on the programme (basis: read). PSU-109: arithmetic (basis: computed).
// Levels for supplies that stand in for each other, and for data centres, are not kept.
import { describe, expect, it } from 'vitest';
import { efficiencyLevels, efficiencyLoads, lossW, wallW } from '../../src/standards/efficiency.ts';

/** level, mains, percent at 10 (where asked), 20, 50 and 100 percent of the rating. */
const rows: readonly (readonly [
  keyof typeof efficiencyLevels,
  '115v' | '230v',
  number | undefined,
  number,
  number,
  number,
])[] = [
  ['plain', '115v', undefined, 80, 80, 80],
  ['plain', '230v', undefined, 82, 85, 82],
  ['bronze', '115v', undefined, 82, 85, 82],
  ['bronze', '230v', undefined, 85, 88, 85],
  ['silver', '115v', undefined, 85, 88, 85],
  ['silver', '230v', undefined, 87, 90, 87],
  ['gold', '115v', undefined, 87, 90, 87],
  ['gold', '230v', undefined, 90, 92, 89],
  ['platinum', '115v', undefined, 90, 92, 89],
  ['platinum', '230v', undefined, 92, 94, 90],
  ['titanium', '115v', 90, 92, 94, 90],
  ['titanium', '230v', 90, 94, 96, 94],
];

describe('levels of efficiency', () => {
  it.each(rows)('%s at %s asks the published percentages', (level, mains, ...percents) => {
    const asked = efficiencyLevels[level][mains].map((permille) =>
      permille === undefined ? undefined : permille / 10,
    );
    expect(asked).toEqual([undefined, ...percents]);
  });

  it('are asked at 5, 10, 20, 50 and 100 percent', () => {
    expect(efficiencyLoads).toEqual([5, 10, 20, 50, 100]);
  });

  it('has gold at 90 % at half load on 115 V, not the 92 % of one news page (a row that disagrees)', () => {
    expect(efficiencyLevels.gold['115v'][3]).toBe(900);
  });
});

describe('what a supply turns into heat', () => {
  it('is 100 W when it gives 400 W at 80 % (PSU-108: 500 W in)', () => {
    expect(wallW(400, 800)).toBe(500);
    expect(lossW(400, 800)).toBe(100);
  });

  it('is 33.33 W when it gives 300 W at 90 % (PSU-109)', () => {
    expect(lossW(300, 900)).toBeCloseTo(33.33, 2);
  });
});
