/**
 * Where things stand in a case, in millimetres from the top left corner of its side view (rear at the left).
 * A pure function of the parts and the hookup. Where a part's file gives no position, the one in `conventions` is used.
 */

import type { UnitId } from '../fit/model.ts';
import { unitOf } from '../fit/needs/names.ts';
import type { FitReport } from '../fit/report.ts';
import type { Chassis } from '../parts/classes/chassis.ts';
import type { Part, PartClass, PartOf } from '../parts/part.ts';
import { formFactors, slotPitch } from '../standards/boards.ts';
import { driveBoxes } from '../standards/outlines.ts';
import { supplyShapes } from '../standards/supplies.ts';
import { type BoardPlan, planBoard, rowAt, spotOf } from './board-plan.ts';
import { type Box, boxAt, middle, overlap, type Point } from './shapes.ts';

export type DrawnUnit = { id: UnitId; part: Part };

/** What is drawn: the units of one list and what the core said of it. */
export type Machine = {
  units: readonly DrawnUnit[];
  report: FitReport;
  /** Classes still to be chosen: drawn dotted. */
  wanted: readonly PartClass[];
  /** Verdicts are shown. False while a student is asked to find them. */
  isJudged: boolean;
};

export const conventions = [
  'Where a maker gives a size and no position, the drawing uses one usual position for all:',
  'the board 30 mm below the top of the case, or under a supply that sits at the top;',
  'bays at the bottom of the front; front fans at the height of the card; memory slots in the order of their names.',
].join(' ');

/** Sizes of things whose maker gives none, in millimetres: drawn dashed, never with a number. */
export const usual = {
  case: { height: 450, depth: 420, width: 210, coolerRoom: 165, front: 64 },
  card: { length: 240, height: 120, slots: 2 },
  cooler: { height: 155 },
  supply: { length: 150 },
  memory: { height: 32 },
} as const;

const wall = 6;
const bayGap = 2;

export type PlacedUnit = {
  unit: UnitId;
  class: PartClass;
  box: Box;
  isUnknown: boolean;
  /** Id of the slot or bay it is drawn in. */
  spot?: string;
};

export type CasePlan = {
  chassis: Chassis | undefined;
  /** Outside of the case, at 0, 0. */
  box: Box;
  width: number;
  isKnown: boolean;
  /** Inner face of the rear wall. */
  rear: number;
  /** Sheet that a card meets first when no fan is at the front. */
  front: number;
  isFrontKnown: boolean;
  board: BoardPlan;
  boardAt: Point;
  boardUnit: UnitId | undefined;
  /** Largest board the case takes, from `boardAt`. */
  boardRoom: { w: number; h: number } | undefined;
  supplyBox: Box;
  /** The side the supply's room is measured from. */
  supplyFrom: 'rear' | 'front';
  placed: PlacedUnit[];
  fans: { unit?: UnitId; id: string; panel: 'front' | 'rear' | 'top'; box: Box; isUnknown: boolean }[];
  bays: { id: string; box: Box; isLarge: boolean; isTaken: boolean }[];
  /** End of the card room: the front sheet, or the thickest fan before it. */
  cardRoomEnd: number;
};

export function unitsOf<C extends PartClass>(machine: Machine, of: C): { id: UnitId; part: PartOf<C> }[] {
  return machine.units.filter((unit): unit is { id: UnitId; part: PartOf<C> } => unit.part.class === of);
}

export function planCase(machine: Machine): CasePlan {
  const [chassisUnit] = unitsOf(machine, 'chassis');
  const chassis = chassisUnit?.part;
  const height = chassis?.heightMm ?? usual.case.height;
  const depth = chassis?.depthMm ?? usual.case.depth;
  const rear = wall;
  const front = chassis?.cardLengthMm === undefined ? depth - usual.case.front : rear + chassis.cardLengthMm;
  const [boardUnit] = unitsOf(machine, 'motherboard');
  const board = planBoard(boardUnit?.part);
  const boardRoom = roomForBoard(chassis);
  const supply = placeSupply(chassis, machine, boardRoom, height, depth);
  const boardAt: Point = [rear, supply.boardTop];
  const fansFirst = placeFans(machine, chassis, { rear, front, height, depth, boardTop: supply.boardTop });
  const inWay = fansFirst.filter(({ panel }) => panel === 'front' && chassis?.frontFansTakeCardRoom !== false);
  const cardRoomEnd = front - Math.max(0, ...inWay.map(({ box }) => box.w));
  const bays = placeBays(chassis, machine, {
    height,
    depth,
    front,
    rear,
    boardTop: supply.boardTop,
    supply: supply.box,
  });
  const plan: CasePlan = {
    chassis,
    box: boxAt(0, 0, depth, height),
    width: chassis?.widthMm ?? usual.case.width,
    isKnown: chassis === undefined || (chassis.heightMm !== undefined && chassis.depthMm !== undefined),
    rear,
    front,
    isFrontKnown: chassis?.cardLengthMm !== undefined,
    board,
    boardAt,
    boardUnit: boardUnit?.id,
    boardRoom,
    supplyBox: supply.box,
    supplyFrom: supply.from,
    placed: [],
    fans: fansFirst,
    bays,
    cardRoomEnd,
  };
  plan.placed = placeUnits(machine, plan, supply.unit);
  return plan;
}

function roomForBoard(chassis: Chassis | undefined): { w: number; h: number } | undefined {
  const forms = chassis?.formFactors ?? [];
  if (forms.length === 0) return undefined;
  return {
    w: Math.max(...forms.map((form) => formFactors[form].depthMm)),
    h: Math.max(...forms.map((form) => formFactors[form].widthMm)),
  };
}

function placeSupply(
  chassis: Chassis | undefined,
  machine: Machine,
  boardRoom: { h: number } | undefined,
  height: number,
  depth: number,
): { box: Box; from: 'rear' | 'front'; boardTop: number; unit: UnitId | undefined } {
  const [supply] = unitsOf(machine, 'power-supply');
  const face = supplyShapes[supply?.part.shape ?? chassis?.supplyShape ?? 'atx'];
  const bay = supplyShapes[chassis?.supplyShape ?? 'atx'];
  const length = supply?.part.lengthMm ?? usual.supply.length;
  const rows = rowAt(chassis?.cutOuts ?? 1) + slotPitch.mm / 2;
  const need = Math.max(boardRoom?.h ?? formFactors.atx.widthMm, rows);
  const unit = supply?.id;
  if (chassis?.supplyPlace !== 'top') {
    const boardTop = Math.max(8, Math.min(30, height - 8 - bay.heightMm - need));
    return { box: boxAt(wall, height - 4 - face.heightMm, length, face.heightMm), from: 'rear', boardTop, unit };
  }
  const under = 4 + bay.heightMm + 4;
  if (under + need <= height - 8) {
    return { box: boxAt(wall, 4, length, face.heightMm), from: 'rear', boardTop: under, unit };
  }
  // Too low a case to stack them: the supply stands before the board.
  const boardTop = Math.max(8, Math.min(30, height - 8 - need));
  return { box: boxAt(depth - 8 - length, 4, length, face.heightMm), from: 'front', boardTop, unit };
}

type Inside = { rear: number; front: number; height: number; depth: number; boardTop: number };

function placeFans(machine: Machine, chassis: Chassis | undefined, inside: Inside): CasePlan['fans'] {
  const fitted = (chassis?.fittedFans ?? []).map((fan) => ({ ...fan, isUnknown: false, unit: undefined }));
  const added = machine.report.joints.flatMap((joint) => {
    if (joint.kind !== 'fan-mount') return [];
    const unit = unitsOf(machine, 'fan').find(({ id }) => id === unitOf(joint.need));
    const panel = (['front', 'rear', 'top'] as const).find(
      (name) => joint.place.includes(`/${name}`) || joint.place.includes(`-${name}`),
    );
    if (!unit || !panel) return [];
    const { sizeMm, thicknessMm } = unit.part;
    return [
      {
        id: unit.id,
        unit: unit.id,
        panel,
        sizeMm: sizeMm ?? 120,
        thicknessMm: thicknessMm ?? 25,
        isUnknown: sizeMm === undefined || thicknessMm === undefined,
      },
    ];
  });
  const gap = 2;
  const fans: CasePlan['fans'] = [];
  for (const panel of ['front', 'rear', 'top'] as const) {
    const here = [...fitted, ...added].filter((fan) => fan.panel === panel);
    const long = here.reduce((sum, { sizeMm }) => sum + sizeMm + gap, -gap);
    const about = panel === 'front' ? inside.boardTop + rowAt(1) : inside.boardTop + 80;
    let at = panel === 'top' ? inside.rear + 50 : Math.max(8, Math.min(about - long / 2, inside.height - 8 - long));
    for (const { id, unit, sizeMm, thicknessMm, isUnknown } of here) {
      const x =
        panel === 'rear'
          ? inside.rear
          : chassis?.frontFansTakeCardRoom === false
            ? inside.front
            : inside.front - thicknessMm;
      const box = panel === 'top' ? boxAt(at, 4, sizeMm, thicknessMm) : boxAt(x, at, thicknessMm, sizeMm);
      fans.push({ id, panel, box, isUnknown, ...(unit === undefined ? {} : { unit }) });
      at += sizeMm + gap;
    }
  }
  return fans;
}

function placeBays(chassis: Chassis | undefined, machine: Machine, inside: Inside & { supply: Box }): CasePlan['bays'] {
  const taken = new Set(machine.report.joints.filter(({ kind }) => kind === 'drive-bay').map(({ place }) => place));
  const bays = chassis?.driveBays ?? [];
  const sizes = bays.map(({ sizes: fits }) => (fits.includes('3.5') ? driveBoxes['3.5'] : driveBoxes['2.5']));
  const tall = sizes.reduce((sum, size) => sum + size.height + bayGap, 0);
  const long = Math.max(0, ...sizes.map((size) => size.length));
  const isTopSupply = chassis?.supplyPlace === 'top';
  const limit = chassis?.supplyLengthMm ?? 160;
  const from = isTopSupply
    ? inside.depth - 8 - long
    : Math.max(inside.rear + limit + 8, inside.rear + inside.supply.w + 8);
  const flat = boxAt(from, inside.height - 6 - tall, long, tall);
  const rows = Math.min(chassis?.cutOuts ?? 1, 3);
  const cards = boxAt(inside.rear, inside.boardTop + rowAt(1) - 10, inside.front - inside.rear, slotPitch.mm * rows);
  const stands = isTopSupply && overlap(flat, cards) !== undefined;
  let along = 0;
  return bays.map(({ id, sizes: fits }, index) => {
    const size = sizes[index] ?? driveBoxes['2.5'];
    const box = stands
      ? boxAt(inside.front + 4 + along, inside.height - 10 - size.length, size.height, size.length)
      : boxAt(flat.x, flat.y + along, size.length, size.height);
    along += size.height + bayGap;
    const isTaken = [...taken].some((place) => place.endsWith(`/${id}`) || place.endsWith(`-${id}`));
    return { id, box, isLarge: fits.includes('3.5'), isTaken };
  });
}

function placeUnits(machine: Machine, plan: CasePlan, supplyUnit: UnitId | undefined): PlacedUnit[] {
  const { board, boardAt } = plan;
  const onBoard = (box: Box): Box => boxAt(box.x + boardAt[0], box.y + boardAt[1], box.w, box.h);
  const placeOf = (unit: UnitId, kind: string) =>
    machine.report.joints.find((joint) => joint.kind === kind && unitOf(joint.need) === unit)?.place;
  const placed: PlacedUnit[] = [];
  const add = (one: PlacedUnit) => placed.push(one);
  const used = new Set<string>();
  /** The slot a unit is joined to, else the first nobody took. */
  const slotFor = (unit: UnitId, kind: string, spots: readonly { id: string; box: Box }[]) => {
    const place = placeOf(unit, kind);
    const spot =
      (place === undefined ? undefined : spotOf(place, spots)) ?? spots.find(({ id }) => !used.has(id)) ?? spots[0];
    if (spot) used.add(spot.id);
    return spot;
  };

  if (plan.boardUnit) {
    add({
      unit: plan.boardUnit,
      class: 'motherboard',
      box: boxAt(boardAt[0], boardAt[1], board.w, board.h),
      isUnknown: !board.isKnown,
    });
  }
  for (const { id } of unitsOf(machine, 'processor').slice(0, 1)) {
    add({ unit: id, class: 'processor', box: onBoard(board.socket), isUnknown: false });
  }
  for (const { id } of unitsOf(machine, 'memory-module')) {
    const spot = slotFor(id, 'memory-slot', board.memory);
    const box = spot?.box ?? boxAt(148, 14, 6.5, 133);
    add({ unit: id, class: 'memory-module', box: onBoard(box), isUnknown: false, ...(spot ? { spot: spot.id } : {}) });
  }
  for (const { id, part } of unitsOf(machine, 'storage-drive').filter(({ part }) => part.build === 'm2')) {
    const spot = slotFor(id, 'module-slot', board.modules);
    const at = spot?.box ?? boxAt(50, 125, 84, 22);
    add({
      unit: id,
      class: 'storage-drive',
      box: onBoard({ ...at, w: part.lengthMm ?? 80 }),
      isUnknown: part.lengthMm === undefined,
      ...(spot ? { spot: spot.id } : {}),
    });
  }
  for (const { id, part } of unitsOf(machine, 'cooler').slice(0, 1)) {
    const [x, y] = middle(onBoard(board.socket));
    const reach = part.memoryHeightMm === null || part.memoryHeightMm === undefined ? 40 : 95;
    add({
      unit: id,
      class: 'cooler',
      box: boxAt(x - 40, y - 60, 40 + reach, 120),
      isUnknown: part.heightMm === undefined,
    });
  }
  for (const { id, part } of unitsOf(machine, 'graphics-card')) {
    const spot = slotFor(id, 'expansion-slot', board.cards);
    const row = spot ? middle(spot.box)[1] : rowAt(1);
    const thick = (part.slotsThick ?? usual.card.slots) * slotPitch.mm;
    add({
      unit: id,
      class: 'graphics-card',
      box: boxAt(plan.rear, boardAt[1] + row - slotPitch.mm / 2, part.lengthMm ?? usual.card.length, thick),
      isUnknown: part.lengthMm === undefined,
      ...(spot ? { spot: spot.id } : {}),
    });
  }
  const bays = plan.bays;
  for (const { id, part } of unitsOf(machine, 'storage-drive').filter(({ part }) => part.build !== 'm2')) {
    const place = placeOf(id, 'drive-bay');
    const bay =
      (place === undefined ? undefined : plan.bays.find(({ id }) => spotOf(place, [{ id, box: plan.box }]))) ??
      bays.find((one) => !used.has(one.id) && !one.isTaken) ??
      bays.at(-1);
    if (!bay) continue;
    used.add(bay.id);
    const size = part.build === '3.5' ? driveBoxes['3.5'] : driveBoxes['2.5'];
    const stands = bay.box.h > bay.box.w;
    add({
      unit: id,
      class: 'storage-drive',
      box: stands
        ? boxAt(bay.box.x, bay.box.y, size.height, size.length)
        : boxAt(bay.box.x, bay.box.y + bay.box.h - size.height, size.length, size.height),
      isUnknown: false,
      spot: bay.id,
    });
  }
  if (supplyUnit) {
    const [supply] = unitsOf(machine, 'power-supply');
    add({
      unit: supplyUnit,
      class: 'power-supply',
      box: plan.supplyBox,
      isUnknown: supply?.part.lengthMm === undefined,
    });
  }
  for (const fan of plan.fans) {
    if (fan.unit) add({ unit: fan.unit, class: 'fan', box: fan.box, isUnknown: fan.isUnknown });
  }
  return placed;
}
