/** The side view of a case with its panel off, rear at the left: a pure function of parts, hookup and findings. */

import type { KindName, UnitId } from '../fit/model.ts';
import { unitOf } from '../fit/needs/names.ts';
import type { Finding } from '../fit/report.ts';
import { classNames, type PartClass } from '../parts/part.ts';
import { formFactors, slotPitch } from '../standards/boards.ts';
import { placeName } from '../wording/places.ts';
import { rowAt, spotOf } from './board-plan.ts';
import { boardShapes } from './board-shapes.ts';
import { type CasePlan, type Machine, type PlacedUnit, planCase, unitsOf, usual } from './case-plan.ts';
import {
  type Box,
  boxAt,
  type Dimension,
  middle,
  overlap,
  type Point,
  type Ring,
  type Shape,
  type View,
} from './shapes.ts';

const placedUnit = (plan: CasePlan, unit: UnitId) => plan.placed.find((one) => one.unit === unit);
const placedClass = (plan: CasePlan, of: PartClass) => plan.placed.filter((one) => one.class === of);
const isFault = ({ verdict, severity }: Finding) =>
  verdict === 'does-not-fit' && (severity === 'hazard' || severity === 'blocker');

/** `focus`: the class being chosen; its room is measured even before there is a part in it. */
export function caseSide(machine: Machine, focus?: PartClass): View {
  const plan = planCase(machine);
  const { box } = plan;
  const shapes: Shape[] = [...shell(plan, machine), ...boardIn(plan)];
  const questions: Point[] = [];
  if (machine.isJudged) shapes.push(...leads(plan, machine));
  for (const one of plan.placed) shapes.push(...partShapes(one));
  shapes.push(...fanShapes(plan));
  for (const one of placedClass(plan, 'graphics-card')) shapes.push(...cardShapes(one));
  shapes.push(...dotted(plan, machine));
  for (const one of plan.placed) if (one.isUnknown && one.class !== 'cooler') questions.push(middle(one.box));
  const seen = new Map<string, Point>();
  if (machine.isJudged) {
    for (const finding of machine.report.findings) {
      const sight = seeFromSide(finding, plan, machine);
      if (!sight) continue;
      seen.set(finding.id, sight.at);
      if (isFault(finding)) shapes.push(...sight.hatch.map((hatch): Shape => ({ is: 'hatch', box: hatch })));
    }
  }
  const rings = machine.isJudged ? ringsOf(plan, machine) : [];
  return {
    name: 'Side, panel off',
    w: box.w,
    h: box.h,
    shapes,
    questions,
    dimensions: dimensionsOf(plan, machine, focus),
    rings,
    seen,
    words: wordsOf(plan, machine, rings),
  };
}

function shell(plan: CasePlan, machine: Machine): Shape[] {
  const { box, rear, front, chassis } = plan;
  const isDrawn = unitsOf(machine, 'chassis').length > 0;
  const inner = isDrawn ? 'detail' : 'empty';
  const shapes: Shape[] = [
    { is: 'box', box: boxAt(24, box.h, 36, 11), look: isDrawn ? 'texture' : 'empty' },
    { is: 'box', box: boxAt(box.w - 64, box.h, 36, 11), look: isDrawn ? 'texture' : 'empty' },
    { is: 'box', box, look: isDrawn ? (plan.isKnown ? 'wall' : 'unknown') : 'empty', clear: true },
    {
      is: 'line',
      points: [
        [rear, 2],
        [rear, box.h - 2],
      ],
      look: inner,
    },
    {
      is: 'line',
      points: [
        [front, 2],
        [front, box.h - 2],
      ],
      look: !isDrawn ? 'empty' : plan.isFrontKnown ? 'detail' : 'unknown',
    },
  ];
  if (chassis && chassis.supplyPlace !== 'top') {
    const y = plan.supplyBox.y - 5;
    shapes.push({
      is: 'line',
      points: [
        [rear, y],
        [front, y],
      ],
      look: 'detail',
    });
  }
  for (let n = 0; n < (chassis?.cutOuts ?? 0); n += 1) {
    shapes.push({
      is: 'box',
      box: boxAt(0, plan.boardAt[1] + rowAt(n + 1) - 8, rear, 16),
      look: 'detail',
      clear: true,
    });
  }
  for (const { box: bay } of plan.bays) shapes.push({ is: 'box', box: bay, look: 'detail', clear: true });
  return shapes;
}

function boardIn(plan: CasePlan): Shape[] {
  if (!plan.boardUnit) return [];
  const [x, y] = plan.boardAt;
  return boardShapes(plan.board, { x, y }, new Set(plan.placed.flatMap(({ spot }) => spot ?? [])));
}

function partShapes({ class: of, box, isUnknown }: PlacedUnit): Shape[] {
  const look = isUnknown ? 'unknown' : 'outline';
  const { x, y, w, h } = box;
  switch (of) {
    case 'processor':
      return [{ is: 'box', box: boxAt(x + 5, y + 5, w - 10, h - 10), look: 'outline', clear: true }];
    case 'memory-module':
      return [{ is: 'box', box, look: 'solid' }];
    case 'cooler': {
      const fins: Shape[] = Array.from({ length: 8 }, (_, n) => ({
        is: 'line',
        points: [
          [x + 6 + (n * (w - 36)) / 8, y + 4],
          [x + 6 + (n * (w - 36)) / 8, y + h - 4],
        ],
        look: 'texture',
      }));
      const fan = boxAt(x + w - 25, y, 25, h);
      return [
        { is: 'box', box, look, clear: true },
        ...fins,
        { is: 'box', box: fan, look: isUnknown ? 'unknown' : 'detail' },
        ...crossed(fan),
      ];
    }
    case 'storage-drive':
      return [
        { is: 'box', box, look, clear: true },
        { is: 'box', box: boxAt(x + 4, y + h / 2 - 2.5, Math.min(30, w / 2), 5), look: 'texture' },
      ];
    case 'power-supply': {
      const r = Math.min(h, w) / 2 - 9;
      return [
        { is: 'box', box, look, clear: true },
        { is: 'disc', at: middle(box), r, look: 'detail' },
        { is: 'disc', at: middle(box), r: r / 4, look: 'detail' },
      ];
    }
    default:
      return [];
  }
}

const crossed = ({ x, y, w, h }: Box): Shape[] => [
  {
    is: 'line',
    points: [
      [x, y],
      [x + w, y + h],
    ],
    look: 'texture',
  },
  {
    is: 'line',
    points: [
      [x + w, y],
      [x, y + h],
    ],
    look: 'texture',
  },
];

const fanShapes = (plan: CasePlan): Shape[] =>
  plan.fans.flatMap(({ box, isUnknown }): Shape[] => [
    { is: 'box', box, look: isUnknown ? 'unknown' : 'outline', clear: true },
    ...crossed(box),
  ]);

function cardShapes({ box, isUnknown }: PlacedUnit): Shape[] {
  const { x, y, w, h } = box;
  return [
    { is: 'box', box, look: isUnknown ? 'unknown' : 'outline', clear: true },
    // The bracket at the rear, and the edge in its slot.
    { is: 'box', box: boxAt(x - 4, y - 4, 4, h + 6), look: 'solid' },
    {
      is: 'line',
      points: [
        [x, y + slotPitch.mm / 2],
        [x + w, y + slotPitch.mm / 2],
      ],
      look: 'texture',
    },
  ];
}

/** What is still to be chosen, dotted at its usual place. */
function dotted(plan: CasePlan, machine: Machine): Shape[] {
  const [x, y] = plan.boardAt;
  const wanted = new Set(machine.wanted);
  const shapes: Shape[] = [];
  const add = (box: Box) => shapes.push({ is: 'box', box, look: 'empty' });
  if (wanted.has('motherboard')) {
    const room = plan.boardRoom ?? { w: formFactors.atx.depthMm, h: formFactors.atx.widthMm };
    add(boxAt(x, y, room.w, room.h));
  }
  if (wanted.has('processor')) add(boxAt(x + 72.5, y + 57.5, 45, 45));
  if (wanted.has('cooler')) add(boxAt(x + 55, y + 20, 80, 120));
  if (wanted.has('memory-module') && plan.board.memory.length === 0)
    for (const n of [0, 20]) add(boxAt(x + 158 + n, y + 14, 6.5, 133));
  if (wanted.has('graphics-card')) add(boxAt(plan.rear, y + rowAt(1) - 10, usual.card.length, slotPitch.mm * 2));
  if (wanted.has('power-supply')) add(plan.supplyBox);
  if (wanted.has('storage-drive') && plan.bays[0]) add(plan.bays[0].box);
  return shapes;
}

/** Power leads, each from the supply to what it feeds, side by side in front of the board. */
function leads(plan: CasePlan, machine: Machine): Shape[] {
  const from = placedClass(plan, 'power-supply')[0]?.box;
  if (!from) return [];
  const start: Point = plan.supplyFrom === 'rear' ? [from.x + from.w, from.y + 16] : [from.x, from.y + from.h - 16];
  const channel = plan.boardAt[0] + plan.board.w + 10;
  const wanted: readonly KindName[] = ['board-power', 'processor-power', 'card-power'];
  const ends = machine.report.joints.filter(({ kind }) => wanted.includes(kind));
  return ends.flatMap(({ kind, need, place }, index): Shape[] => {
    const to = pointOf(kind, unitOf(need), place, plan, need);
    if (!to) return [];
    const at = channel + 4 * (index % 4);
    const first = start[1] + 5 * index;
    return [{ is: 'line', points: [[start[0], first], [at, first], [at, to[1]], to], look: 'lead' }];
  });
}

/** Where a joint of a kind is seen, or would be: the need's unit, and the place when it has one. */
function pointOf(
  kind: KindName,
  unit: UnitId,
  place: string | undefined,
  plan: CasePlan,
  need = '',
): Point | undefined {
  const placed = placedUnit(plan, unit);
  const onBoard = ([x, y]: Point): Point => [x + plan.boardAt[0], y + plan.boardAt[1]];
  switch (kind) {
    case 'processor-socket':
    case 'cooling':
      return plan.boardUnit || placed ? onBoard(middle(plan.board.socket)) : undefined;
    case 'cooler-mount':
      return placed && [placed.box.x + 18, placed.box.y + 18];
    case 'memory-slot': {
      if (!placed) return undefined;
      const [x, y] = middle(placed.box);
      const index = plan.board.memory.findIndex(({ id }) => id === placed.spot);
      return [x, y + (index % 2 === 0 ? -10 : 10)];
    }
    case 'expansion-slot':
      return placed && [placed.box.x + 34, placed.box.y + placed.box.h / 2];
    case 'card-power':
      return placed && [placed.box.x + Math.min(placed.box.w, usual.card.length) - 26, placed.box.y + 8];
    case 'module-slot':
    case 'drive-bay':
    case 'drive-data':
    case 'drive-power':
    case 'fan-mount':
      return placed && middle(placed.box);
    case 'board-mount': {
      const hole = plan.board.holes.find(([, down]) => down > 100);
      return placed && (hole ? onBoard(hole) : middle(placed.box));
    }
    case 'supply-mount':
      return placed && [placed.box.x + 14, placed.box.y + 14];
    case 'board-power':
    case 'processor-power': {
      const plugs = plan.board.power.filter(({ plug }) => (plug === 'atx-24') === (kind === 'board-power'));
      const spot = spotOf(need, plugs) ?? plugs[0];
      return spot && plan.boardUnit ? onBoard(middle(spot.box)) : undefined;
    }
    case 'fan-header': {
      const spot = place === undefined ? undefined : spotOf(place, plan.board.headers);
      return spot ? onBoard(middle(spot.box)) : placed && middle(placed.box);
    }
    case 'front-panel':
      return plan.boardUnit ? onBoard(middle(plan.board.frontPins)) : undefined;
    default:
      return undefined;
  }
}

const drawnKinds = new Set<KindName>([
  'processor-socket',
  'cooler-mount',
  'memory-slot',
  'expansion-slot',
  'module-slot',
  'drive-bay',
  'board-mount',
  'supply-mount',
  'board-power',
  'processor-power',
  'card-power',
  'fan-mount',
]);

/** Joints that a finding calls in question are left to that finding. */
export function soundJoints({ report }: Machine) {
  const doubted = new Set(
    report.findings.flatMap(({ verdict, severity, joint }) =>
      joint && (verdict === 'cannot-tell' || (verdict === 'does-not-fit' && severity !== 'note')) ? [joint] : [],
    ),
  );
  return report.joints.filter(({ id, unknown }) => !unknown && !doubted.has(id));
}

function ringsOf(plan: CasePlan, machine: Machine): Ring[] {
  const nameOf = new Map(machine.report.units.map(({ id, name }) => [id, name]));
  return soundJoints(machine).flatMap(({ kind, need, place }) => {
    if (!drawnKinds.has(kind)) return [];
    const at = pointOf(kind, unitOf(need), place, plan, need);
    return at ? [{ at, says: `${nameOf.get(unitOf(need)) ?? unitOf(need)} in ${placeName(kind, place)}: fits.` }] : [];
  });
}

type Sight = { at: Point; hatch: Box[] };

/** Where a finding is seen, and what of it is hatched when it does not fit. */
function seeFromSide(finding: Finding, plan: CasePlan, machine: Machine): Sight | undefined {
  const spread = overlapOf(finding, plan);
  if (spread.length > 0) return { at: middle(spread[0] ?? plan.box), hatch: spread };
  const at = pointOfFinding(finding, plan, machine);
  return at && { at, hatch: [boxAt(at[0] - 12, at[1] - 12, 24, 24)] };
}

function overlapOf({ rule, about }: Finding, plan: CasePlan): Box[] {
  const boxes = about.flatMap((unit) => placedUnit(plan, unit) ?? []);
  if (rule === 'clearance/card-length') {
    return boxes.flatMap(({ class: of, box }) => (of === 'graphics-card' ? past(box, plan.cardRoomEnd) : []));
  }
  if (rule === 'clearance/supply-length') {
    const room = plan.chassis?.supplyLengthMm;
    const supply = boxes.find(({ class: of }) => of === 'power-supply')?.box;
    if (room === undefined || !supply || supply.w <= room) return [];
    return plan.supplyFrom === 'rear'
      ? past(supply, plan.rear + room)
      : [boxAt(supply.x, supply.y, supply.w - room, supply.h)];
  }
  if (rule === 'mounting/board-form') {
    const board = boxes.find(({ class: of }) => of === 'motherboard')?.box;
    if (!board || !plan.boardRoom) return [];
    const { w, h } = plan.boardRoom;
    const low = boxAt(board.x, board.y + h, board.w, board.h - h);
    const wide = boxAt(board.x + w, board.y, board.w - w, Math.min(board.h, h));
    return [low, wide].filter((box) => box.w > 0 && box.h > 0);
  }
  if (rule === 'clearance/memory-height') {
    const cooler = placedClass(plan, 'cooler')[0]?.box;
    return boxes.flatMap(({ class: of, box }) =>
      of === 'memory-module' && cooler ? (overlap(box, cooler) ?? []) : [],
    );
  }
  return [];
}

/** The part of a box beyond an upright line. */
const past = (box: Box, x: number): Box[] =>
  box.x + box.w > x ? [boxAt(Math.max(x, box.x), box.y, box.x + box.w - Math.max(x, box.x), box.h)] : [];

function pointOfFinding(finding: Finding, plan: CasePlan, { report }: Machine): Point | undefined {
  if (finding.rule === 'clearance/card-length' || finding.rule === 'clearance/supply-length') {
    const [unit] = finding.about.flatMap((id) => placedUnit(plan, id) ?? []);
    if (unit) return [unit.box.x + unit.box.w - 16, unit.box.y + unit.box.h / 2];
  }
  const joint = finding.joint && report.joints.find(({ id }) => id === finding.joint);
  if (joint) {
    const at = pointOf(joint.kind, unitOf(joint.need), joint.place, plan, joint.need);
    if (at) return at;
  }
  const left = finding.need && report.left.find(({ need }) => need === finding.need);
  if (left) {
    const at = pointOf(left.kind, left.part, undefined, plan, left.need);
    if (at) return at;
  }
  for (const unit of finding.about) {
    const placed = placedUnit(plan, unit);
    if (placed?.class === 'power-supply') return [placed.box.x + placed.box.w - 18, placed.box.y + placed.box.h - 18];
    if (placed?.class === 'cooler') return [placed.box.x + 20, placed.box.y + 30];
    if (placed?.class === 'motherboard') return [placed.box.x + placed.box.w - 30, placed.box.y + placed.box.h - 24];
    if (placed) return middle(placed.box);
  }
  const isAboutCase = finding.about.some((unit) => unit.startsWith('chassis-'));
  return isAboutCase && plan.chassis ? [plan.box.w - 20, 24] : undefined;
}

function dimensionsOf(plan: CasePlan, machine: Machine, focus: PartClass | undefined): Dimension[] {
  const { box, chassis } = plan;
  const dimensions: Dimension[] = [];
  if (chassis?.heightMm !== undefined) {
    dimensions.push({
      from: [0, 0],
      to: [0, box.h],
      at: -28,
      way: 'upright',
      says: `${chassis.heightMm} mm`,
      of: 'whole',
    });
  }
  const card = placedClass(plan, 'graphics-card')[0];
  const cardPart = unitsOf(machine, 'graphics-card').find(({ id }) => id === card?.unit)?.part;
  const isRoomKnown = chassis?.cardLengthMm !== undefined;
  if (card || (focus === 'graphics-card' && isRoomKnown)) {
    const bottom = card ? card.box.y + card.box.h : plan.boardAt[1] + rowAt(3);
    if (card && cardPart?.lengthMm !== undefined) {
      const { x, w } = card.box;
      dimensions.push({
        from: [x, bottom],
        to: [x + w, bottom],
        at: bottom + 17,
        way: 'level',
        says: `card ${cardPart.lengthMm}`,
        of: 'part',
      });
    }
    if (isRoomKnown && machine.isJudged) {
      const room = plan.cardRoomEnd - plan.rear;
      const at = bottom + (card ? 42 : 17);
      dimensions.push({
        from: [plan.rear, bottom],
        to: [plan.cardRoomEnd, bottom],
        at,
        way: 'level',
        says: `room ${room}`,
        of: 'room',
      });
    }
  }
  const supply = placedClass(plan, 'power-supply')[0];
  const supplyPart = unitsOf(machine, 'power-supply')[0]?.part;
  const room = chassis?.supplyLengthMm;
  const isTight = supplyPart?.lengthMm !== undefined && room !== undefined && supplyPart.lengthMm > room;
  if (room !== undefined && machine.isJudged && (focus === 'power-supply' || isTight)) {
    const [a, b] = plan.supplyFrom === 'rear' ? [plan.rear, plan.rear + room] : [plan.box.w - 8 - room, plan.box.w - 8];
    const below = plan.supplyBox.y + plan.supplyBox.h;
    const isTop = chassis?.supplyPlace === 'top';
    const first = isTop ? below + 17 : plan.supplyBox.y - 17;
    const edge = isTop ? below : plan.supplyBox.y;
    if (supply && supplyPart?.lengthMm !== undefined) {
      const { x, w } = supply.box;
      dimensions.push({
        from: [x, edge],
        to: [x + w, edge],
        at: first,
        way: 'level',
        says: `supply ${supplyPart.lengthMm}`,
        of: 'part',
      });
    }
    dimensions.push({
      from: [a, edge],
      to: [b, edge],
      at: first + (isTop ? 25 : -25),
      way: 'level',
      says: `room ${room}`,
      of: 'room',
    });
  }
  return dimensions;
}

function wordsOf(plan: CasePlan, machine: Machine, rings: Ring[]): string[] {
  const { chassis } = plan;
  const [chassisUnit] = unitsOf(machine, 'chassis');
  const words: string[] = [];
  if (!chassis) words.push('No case is chosen yet; a usual one is dotted.');
  else {
    const measures = [
      chassis.heightMm === undefined ? undefined : `${chassis.heightMm} mm high`,
      chassis.depthMm === undefined ? undefined : `${chassis.depthMm} mm deep`,
    ].filter((one) => one !== undefined);
    words.push(
      `Case ${chassisUnit?.part.name}${measures.length > 0 ? `: ${measures.join(', ')}` : ', of no recorded size'}.`,
    );
  }
  for (const { class: of, unit, isUnknown } of plan.placed) {
    const name = machine.units.find(({ id }) => id === unit)?.part.name ?? unit;
    const size = isUnknown ? ', its size not recorded and drawn at a usual one' : '';
    words.push(`${classNames[of].one[0]?.toUpperCase()}${classNames[of].one.slice(1)} ${name}${size}.`);
  }
  for (const { panel, unit } of plan.fans)
    if (unit === undefined) words.push(`A fan of the case's own at the ${panel}.`);
  for (const dimension of dimensionsOf(plan, machine, undefined)) {
    if (dimension.of !== 'whole') words.push(`${dimension.of === 'room' ? 'Room' : 'Size'}: ${dimension.says} mm.`);
  }
  for (const { says } of rings) words.push(says);
  const missing = machine.wanted.map((of) => classNames[of].one);
  if (missing.length > 0) words.push(`Not chosen yet, and dotted: ${missing.join(', ')}.`);
  return words;
}
