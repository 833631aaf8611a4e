import { describe, expect, test } from 'vitest';
import { caseBack } from '../../src/drawings/case-back.ts';
import { drawCase } from '../../src/drawings/case-drawing.ts';
import type { DrawnUnit, Machine } from '../../src/drawings/case-plan.ts';
import { caseSide } from '../../src/drawings/case-side.ts';
import type { Box, Shape } from '../../src/drawings/shapes.ts';
import type { Joint, KindName, Severity } from '../../src/fit/model.ts';
import type { Finding } from '../../src/fit/report.ts';
import type { PartOf } from '../../src/parts/part.ts';

const common = { maker: 'Lodden', source: 'test' } as const;
const tower: PartOf<'chassis'> = {
  ...common,
  class: 'chassis',
  id: 'tower',
  name: 'Tower',
  heightMm: 460,
  depthMm: 430,
  widthMm: 215,
  formFactors: ['atx', 'micro-atx', 'mini-itx'],
  cutOuts: 7,
  coolerHeightMm: 165,
  cardLengthMm: 337,
  cardHeightMm: 163,
  frontFansTakeCardRoom: true,
  supplyShape: 'atx',
  supplyLengthMm: 180,
  supplyPlace: 'bottom',
  driveBays: [{ id: 'bay-1', sizes: ['3.5', '2.5'] }],
};
const board: PartOf<'motherboard'> = {
  ...common,
  class: 'motherboard',
  id: 'board',
  name: 'Board',
  formFactor: 'atx',
  depthMm: 244,
  heightMm: 305,
  memory: {
    slots: [
      { id: 'a2', channel: 'a' },
      { id: 'b2', channel: 'b' },
      { id: 'a1', channel: 'a' },
      { id: 'b1', channel: 'b' },
    ],
  },
  expansionSlots: [{ id: 'x16-1', position: 2, lengthLanes: 16, lanes: 16, generation: 4 }],
  moduleSlots: [],
};
const card: PartOf<'graphics-card'> = {
  ...common,
  class: 'graphics-card',
  id: 'card',
  name: 'Card',
  lengthMm: 336,
  heightMm: 134,
  slotsThick: 2.5,
};
const cooler: PartOf<'cooler'> = {
  ...common,
  class: 'cooler',
  id: 'cooler',
  name: 'Cooler',
  heightMm: 154,
  memoryHeightMm: null,
};
const fan: PartOf<'fan'> = { ...common, class: 'fan', id: 'fan', name: 'Fan', sizeMm: 120, thicknessMm: 25 };
const memory: PartOf<'memory-module'> = {
  ...common,
  class: 'memory-module',
  id: 'module',
  name: 'Module',
  heightMm: 32,
};
const supply: PartOf<'power-supply'> = {
  ...common,
  class: 'power-supply',
  id: 'supply',
  name: 'Supply',
  shape: 'atx',
  lengthMm: 150,
};

const joint = (kind: KindName, need: string, place: string): Joint => ({
  id: `${need} → ${place}`,
  kind,
  need,
  place,
  unknown: false,
});
const finding = (
  rule: string,
  verdict: Finding['verdict'],
  about: string[],
  severity: Severity = 'blocker',
): Finding => ({
  id: `${rule} ${about.join(' ')}`,
  rule,
  verdict,
  severity,
  basis: 'maker',
  about,
  facts: {},
});

function machine(parts: DrawnUnit['part'][], joints: Joint[] = [], findings: Finding[] = []): Machine {
  const counts = new Map<string, number>();
  const units = parts.map((part) => {
    const n = (counts.get(part.class) ?? 0) + 1;
    counts.set(part.class, n);
    return { id: `${part.class}-${n}`, part };
  });
  return {
    units,
    wanted: [],
    isJudged: true,
    report: {
      core: 'test',
      units: units.map(({ id, part }) => ({ id, part: part.id, class: part.class, name: part.name })),
      joints,
      left: [],
      proved: true,
      findings,
      budgets: [],
      unjudged: [],
      overall: 'fits',
    },
  };
}

const hatches = (shapes: readonly Shape[]): Box[] =>
  shapes.flatMap((shape) => (shape.is === 'hatch' ? [shape.box] : []));
const frontFan = joint('fan-mount', 'fan-1/mount', 'chassis-1/front');
const tooLong = finding('clearance/card-length', 'does-not-fit', ['graphics-card-1', 'chassis-1']);

describe('the side view', () => {
  test('the case is as high and as deep as its file says', () => {
    const view = caseSide(machine([tower]));
    expect([view.w, view.h]).toEqual([430, 460]);
  });

  test('behind a front fan of 25 mm there are 312 mm for a card, and the card is 336', () => {
    const view = caseSide(machine([tower, board, card, fan], [frontFan], [tooLong]));
    const says = view.dimensions.map((one) => [one.of, one.says]);
    expect(says).toContainEqual(['room', 'room 312']);
    expect(says).toContainEqual(['part', 'card 336']);
  });

  test('the hatch of a card too long is the 24 mm that do not fit, over the whole thickness of the card', () => {
    const [hatch] = hatches(caseSide(machine([tower, board, card, fan], [frontFan], [tooLong])).shapes);
    expect(hatch?.w).toBeCloseTo(24, 6);
    expect(hatch?.h).toBeCloseTo(50.8, 6);
  });

  test('nothing is hatched when the front is free and the card fits', () => {
    const view = caseSide(machine([tower, board, card], [], []));
    expect(hatches(view.shapes)).toEqual([]);
    expect(view.dimensions.find(({ of }) => of === 'room')?.says).toBe('room 337');
  });

  test('a case whose front fans stand clear of the card keeps its whole room', () => {
    const view = caseSide(machine([{ ...tower, frontFansTakeCardRoom: false }, board, card, fan], [frontFan]));
    expect(view.dimensions.find(({ of }) => of === 'room')?.says).toBe('room 337');
  });

  test('a card stands in the row of its slot, half a pitch above its middle', () => {
    const second = caseSide(machine([tower, board, card]));
    const first = caseSide(
      machine([
        tower,
        { ...board, expansionSlots: [{ id: 'x16-1', position: 1, lengthLanes: 16, lanes: 16, generation: 4 }] },
        card,
      ]),
    );
    const top = (view: typeof first) => view.dimensions.find(({ of }) => of === 'part')?.from[1] ?? 0;
    expect(top(second) - top(first)).toBeCloseTo(20.32, 6);
  });

  test('a supply longer than its room is hatched where it is too long', () => {
    const long = { ...supply, lengthMm: 200 };
    const view = caseSide(
      machine([tower, long], [], [finding('clearance/supply-length', 'does-not-fit', ['power-supply-1', 'chassis-1'])]),
    );
    expect(hatches(view.shapes).map(({ w }) => w)).toEqual([20]);
    expect(view.dimensions.map(({ says }) => says)).toContain('room 180');
  });

  test('a board larger than any the case takes is hatched beyond the largest', () => {
    const small = { ...tower, formFactors: ['micro-atx' as const] };
    const view = caseSide(
      machine([small, board], [], [finding('mounting/board-form', 'does-not-fit', ['motherboard-1', 'chassis-1'])]),
    );
    expect(hatches(view.shapes).map(({ w, h }) => [w, h])).toEqual([[244, 61]]);
  });

  test('a card of unknown length is dashed, has a question mark, and no number', () => {
    const { lengthMm, ...rest } = card;
    expect(lengthMm).toBe(336);
    const view = caseSide(machine([tower, board, rest]));
    expect(view.questions).toHaveLength(1);
    expect(view.dimensions.some(({ of }) => of === 'part')).toBe(false);
    expect(view.shapes.some((shape) => shape.is === 'box' && shape.look === 'unknown')).toBe(true);
  });

  test('a joint that fits has a ring; one in doubt has none', () => {
    const sound = joint('memory-slot', 'memory-module-1/edge', 'motherboard-1/memory-slot-a2');
    const parts = [tower, board, memory];
    const inDoubt = { ...finding('memory/generation', 'cannot-tell', ['memory-module-1']), joint: sound.id };
    expect(caseSide(machine(parts, [sound])).rings.map(({ says }) => says)).toEqual(['Module in slot A2: fits.']);
    expect(caseSide(machine(parts, [sound], [inDoubt])).rings).toEqual([]);
  });

  test('while a student is asked for verdicts, none is drawn', () => {
    const view = caseSide({ ...machine([tower, board, card, fan], [frontFan], [tooLong]), isJudged: false });
    expect(hatches(view.shapes)).toEqual([]);
    expect(view.rings).toEqual([]);
    expect(view.seen.size).toBe(0);
    expect(view.dimensions.some(({ of }) => of === 'room')).toBe(false);
  });

  test('what is still to choose is dotted and named', () => {
    const view = caseSide({ ...machine([]), wanted: ['motherboard', 'power-supply'] });
    expect(view.shapes.every((shape) => shape.is === 'hatch' || shape.look === 'empty')).toBe(true);
    expect(view.words.at(-1)).toBe('Not chosen yet, and dotted: motherboard, power supply.');
  });
});

describe('the back view', () => {
  test('the room for a cooler is measured from the board to the side panel', () => {
    const view = caseBack(machine([tower, board, cooler]));
    const room = view.dimensions.find(({ of }) => of === 'room');
    expect(room?.says).toBe('room 165');
    expect((room?.to[0] ?? 0) - (room?.from[0] ?? 0)).toBe(165);
  });

  test('a cooler too tall is hatched past the panel by as much as it is too tall', () => {
    const tall = { ...cooler, heightMm: 168 };
    const view = caseBack(
      machine(
        [tower, board, tall],
        [],
        [finding('clearance/cooler-height', 'does-not-fit', ['cooler-1', 'chassis-1'])],
      ),
    );
    expect(hatches(view.shapes).map(({ w }) => w)).toEqual([3]);
  });

  test('a cooler of unknown height is dashed with a question mark, and has no number', () => {
    const { heightMm, ...rest } = cooler;
    expect(heightMm).toBe(154);
    const view = caseBack(
      machine([tower, board, rest], [], [finding('clearance/cooler-height', 'cannot-tell', ['cooler-1', 'chassis-1'])]),
    );
    expect(view.questions).toHaveLength(1);
    expect(view.dimensions.map(({ says }) => says)).toEqual(['room 165']);
    expect(hatches(view.shapes)).toEqual([]);
    expect(view.seen.size).toBe(1);
  });
});

describe('one drawing', () => {
  const list = machine([tower, board, cooler, card, fan], [frontFan], [tooLong]);
  const note = {
    n: 1,
    finding: tooLong.id,
    verdict: 'does-not-fit' as const,
    says: 'The graphics card is 24 mm too long.',
  };
  const largest = { w: 470, h: 495, back: 236 };

  test('has a zone for each note in its frame, and none when it has no frame', () => {
    expect(drawCase(list, { width: 660, views: 'both', largest, notes: [note] }).zones.get(tooLong.id)).toBe('D4');
    expect(drawCase(list, { width: 330, views: 'side', largest, notes: [note] }).zones.size).toBe(0);
  });

  test('says in words every dimension and every note, views in the order they stand', () => {
    const { words, label } = drawCase(list, { width: 660, views: 'both', largest, notes: [note] });
    const at = (part: string) => words.findIndex((line) => line.includes(part));
    expect(at('Side, panel off')).toBe(0);
    expect(at('room 312')).toBeGreaterThan(at('card 336'));
    expect(at('Back, cut')).toBeGreaterThan(at('room 312'));
    expect(at('165 mm')).toBeGreaterThan(at('Back, cut'));
    expect(at('Note 1, zone D4: The graphics card')).toBeGreaterThan(at('165 mm'));
    expect(label).toContain('24 mm too long');
  });

  test('keeps one scale whatever case is chosen', () => {
    const scaleOf = (parts: DrawnUnit['part'][]) =>
      drawCase(machine(parts), { width: 660, views: 'both', largest, notes: [] }).sheet.scale;
    expect(scaleOf([{ ...tower, heightMm: 268, depthMm: 372 }])).toBe(scaleOf([tower]));
  });

  test('stays inside the width it is given, on a phone and on a laptop', () => {
    for (const [width, views] of [
      [288, 'side'],
      [330, 'back'],
      [520, 'both'],
      [900, 'both'],
    ] as const) {
      const { sheet } = drawCase(list, { width, views, largest, notes: [] });
      for (const { view, x, y } of sheet.views) {
        expect(x).toBeGreaterThanOrEqual(0);
        expect(x + view.w * sheet.scale).toBeLessThanOrEqual(width);
        expect(y + view.h * sheet.scale).toBeLessThanOrEqual(sheet.height);
      }
    }
  });
});
