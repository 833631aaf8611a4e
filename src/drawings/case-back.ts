/** The case from the back, cut through the cooler: how far things stand out from the board. A pure function. */

import type { UnitId } from '../fit/model.ts';
import type { Finding } from '../fit/report.ts';
import type { PartClass } from '../parts/part.ts';
import { supplyShapes } from '../standards/supplies.ts';
import { type CasePlan, type Machine, planCase, unitsOf, usual } from './case-plan.ts';
import { type Box, boxAt, type Dimension, middle, overlap, type Point, type Shape, type View } from './shapes.ts';

const panel = 3;

/** Rules whose finding is best seen from the back. */
const seenFromBack = new Set(['clearance/cooler-height', 'clearance/card-height', 'clearance/memory-height']);

export function caseBack(machine: Machine, focus?: PartClass): View {
  const plan = planCase(machine);
  const isDrawn = plan.chassis !== undefined;
  const shapes: Shape[] = [];
  const questions: Point[] = [];
  const dimensions: Dimension[] = [];
  const words: string[] = [];
  const seen = new Map<string, Point>();
  const height = plan.box.h;
  const room = plan.chassis?.coolerHeightMm;
  const isWidthKnown = plan.chassis === undefined || plan.chassis.widthMm !== undefined;
  /** Face of the board; everything on it stands to the right. */
  const face = Math.max(
    12,
    plan.width - panel - Math.max(room ?? usual.case.coolerRoom, plan.chassis?.cardHeightMm ?? 0),
  );
  const look = !isDrawn ? 'empty' : isWidthKnown && plan.isKnown ? 'wall' : 'unknown';
  shapes.push(
    { is: 'box', box: boxAt(12, height, 26, 11), look: isDrawn ? 'texture' : 'empty' },
    { is: 'box', box: boxAt(plan.width - 38, height, 26, 11), look: isDrawn ? 'texture' : 'empty' },
    { is: 'box', box: boxAt(0, 0, plan.width, height), look, clear: true },
  );
  shapes.push(...supplyIn(plan, machine));
  const boardUnit = plan.boardUnit;
  const board = boxAt(face - 2, plan.boardAt[1], 2, plan.board.h);
  if (boardUnit) {
    shapes.push(
      {
        is: 'line',
        points: [
          [face - 10, 3],
          [face - 10, height - 3],
        ],
        look: 'detail',
      },
      { is: 'box', box: board, look: 'solid' },
    );
  } else if (machine.wanted.includes('motherboard')) shapes.push({ is: 'box', box: board, look: 'empty' });

  const hatches: Shape[] = [];
  const judged = (rule: string, unit: UnitId) =>
    machine.isJudged ? machine.report.findings.filter((one) => one.rule === rule && one.about.includes(unit)) : [];
  const mark = (findings: Finding[], at: Point, hatch: Box | undefined) => {
    for (const finding of findings) {
      seen.set(finding.id, at);
      if (hatch && finding.verdict === 'does-not-fit') hatches.push({ is: 'hatch', box: hatch });
    }
  };

  for (const { id, part } of unitsOf(machine, 'graphics-card')) {
    const placed = plan.placed.find(({ unit }) => unit === id);
    if (!placed) continue;
    const stands = part.heightMm ?? usual.card.height;
    const box = boxAt(face, placed.box.y, stands, placed.box.h);
    shapes.push({ is: 'box', box, look: part.heightMm === undefined ? 'unknown' : 'outline', clear: true });
    const limit = plan.chassis?.cardHeightMm;
    const excess =
      limit !== undefined && stands > limit ? boxAt(face + limit, box.y, stands - limit, box.h) : undefined;
    mark(
      judged('clearance/card-height', id),
      excess ? middle(excess) : [face + stands - 14, box.y + box.h / 2],
      excess,
    );
    if (part.heightMm === undefined) questions.push(middle(box));
    if (excess && limit !== undefined) {
      const bottom = box.y + box.h;
      dimensions.push(
        {
          from: [face, bottom],
          to: [face + stands, bottom],
          at: bottom + 17,
          way: 'level',
          says: `card ${stands}`,
          of: 'part',
        },
        {
          from: [face, bottom],
          to: [face + limit, bottom],
          at: bottom + 42,
          way: 'level',
          says: `room ${limit}`,
          of: 'room',
        },
      );
    }
  }

  const [x, y] = [face, plan.boardAt[1] + middle(plan.board.socket)[1]];
  const [cooler] = unitsOf(machine, 'cooler');
  const modules = unitsOf(machine, 'memory-module');
  if (cooler) {
    const stands = cooler.part.heightMm ?? usual.cooler.height;
    const box = boxAt(x, y - 60, stands, 120);
    const isUnknown = cooler.part.heightMm === undefined;
    shapes.push({ is: 'box', box, look: isUnknown ? 'unknown' : 'outline', clear: true });
    if (isUnknown) questions.push(middle(box));
    else shapes.push(...coolerFins(box));
    const excess = room !== undefined && stands > room ? boxAt(x + room, box.y, stands - room, box.h) : undefined;
    mark(
      judged('clearance/cooler-height', cooler.id),
      excess ? middle(excess) : [x + stands, y - 10],
      isUnknown ? undefined : excess,
    );
    if (!isUnknown && machine.isJudged) {
      dimensions.push({
        from: [x, y - 60],
        to: [x + stands, y - 60],
        at: y - 71,
        way: 'level',
        says: `cooler ${stands}`,
        of: 'part',
      });
    }
    words.push(
      isUnknown
        ? `Cooler ${cooler.part.name}: its height is not recorded; drawn dashed at a usual one.`
        : `Cooler ${cooler.part.name}: ${stands} mm high.`,
    );
    for (const { id, part } of modules) {
      const findings = judged('clearance/memory-height', id).filter(({ verdict }) => verdict !== 'fits');
      if (findings.length === 0) continue;
      const under = cooler.part.memoryHeightMm ?? 0;
      const module = boxAt(x, y - 66, part.heightMm ?? usual.memory.height, 133);
      shapes.push({ is: 'box', box: module, look: part.heightMm === undefined ? 'unknown' : 'detail' });
      const clash = overlap(module, boxAt(x + under, box.y, Math.max(0, stands - under), box.h));
      mark(findings, clash ? middle(clash) : middle(module), clash);
    }
  } else if (machine.wanted.includes('cooler')) {
    shapes.push({ is: 'box', box: boxAt(x, y - 60, usual.cooler.height, 120), look: 'empty' });
  }
  if (room !== undefined && machine.isJudged && (cooler || focus === 'cooler')) {
    const at = Math.max(12, y - (cooler ? 96 : 71));
    dimensions.push({ from: [x, y - 60], to: [x + room, y - 60], at, way: 'level', says: `room ${room}`, of: 'room' });
    words.push(`Room from the board to the side panel: ${room} mm.`);
  }
  shapes.push(...hatches);
  if (plan.chassis?.widthMm !== undefined) words.push(`Case: ${plan.chassis.widthMm} mm wide.`);
  return {
    name: 'Back, cut at the cooler',
    w: plan.width,
    h: height,
    shapes,
    questions,
    dimensions,
    rings: [],
    seen,
    words,
  };
}

/** Findings of one list that the back view shows better than the side view. */
export const isSeenFromBack = ({ rule }: Finding): boolean => seenFromBack.has(rule);

function supplyIn(plan: CasePlan, machine: Machine): Shape[] {
  const [supply] = unitsOf(machine, 'power-supply');
  const isWanted = machine.wanted.includes('power-supply');
  if (!supply && !isWanted) return [];
  const face = supplyShapes[supply?.part.shape ?? plan.chassis?.supplyShape ?? 'atx'];
  const w = Math.min(face.widthMm, plan.width - 10);
  const box = boxAt((plan.width - w) / 2, plan.supplyBox.y, w, plan.supplyBox.h);
  if (!supply) return [{ is: 'box', box, look: 'empty' }];
  return [
    { is: 'box', box, look: 'outline', clear: true },
    { is: 'box', box: boxAt(box.x + 8, box.y + 12, Math.min(40, w / 3), 26), look: 'texture' },
    {
      is: 'box',
      box: boxAt(box.x + w - Math.min(70, w / 2) - 6, box.y + 10, Math.min(70, w / 2), box.h - 20),
      look: 'texture',
    },
  ];
}

function coolerFins({ x, y, w, h }: Box): Shape[] {
  if (w < 80)
    return [
      {
        is: 'line',
        points: [
          [x + w * 0.55, y],
          [x + w * 0.55, y + h],
        ],
        look: 'texture',
      },
    ];
  const fins: Shape[] = [];
  for (let at = x + 45; at < x + w - 4; at += 9)
    fins.push({
      is: 'line',
      points: [
        [at, y + 4],
        [at, y + h - 4],
      ],
      look: 'texture',
    });
  return fins;
}
