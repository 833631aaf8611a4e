import { describe, expect, test } from 'vitest';
import type { Joint, KindName } from '../../src/fit/model.ts';
import type { FitReport } from '../../src/fit/report.ts';
import { compileProcedure } from '../../src/procedures/compile.ts';
import { faultyTicks, reachable, tailor } from '../../src/procedures/tailor.ts';
import type { Procedure } from '../../src/procedures/types.ts';

const joint = (kind: KindName, need: string, place: string): Joint => ({
  id: `${need} → ${place}`,
  kind,
  need,
  place,
  unknown: false,
});

/** A board, a processor, its cooler with a fan, two modules; slots are filled in the order a2, b2. */
const report: FitReport = {
  core: 'test',
  units: [
    { id: 'cooler-1', part: 'c', class: 'cooler', name: 'Skarn Test' },
    { id: 'memory-module-1', part: 'm', class: 'memory-module', name: 'Tammer Test' },
    { id: 'memory-module-2', part: 'm', class: 'memory-module', name: 'Tammer Test' },
    { id: 'motherboard-1', part: 'b', class: 'motherboard', name: 'Orrisk Test' },
    { id: 'processor-1', part: 'p', class: 'processor', name: 'Quellin Test' },
  ],
  joints: [
    joint('cooler-mount', 'cooler-1/mount', 'motherboard-1/cooler-mount'),
    joint('cooling', 'processor-1/cooling', 'cooler-1/cooling'),
    joint('fan-header', 'cooler-1/fan', 'motherboard-1/header-cooler-fan'),
    joint('memory-slot', 'memory-module-1/edge', 'motherboard-1/memory-slot-b2'),
    joint('memory-slot', 'memory-module-2/edge', 'motherboard-1/memory-slot-a2'),
    joint('processor-socket', 'processor-1/socket', 'motherboard-1/socket'),
  ],
  left: [],
  proved: true,
  findings: [],
  budgets: [],
  unjudged: [],
  overall: 'fits',
};

const list = [
  { part: 'p', quantity: 1 },
  { part: 'm', quantity: 2 },
  { part: 'c', quantity: 1 },
  { part: 'b', quantity: 1 },
];

const procedure = compiled(`---
title: On the mat
revision: 4
tools:
  - { id: driver, name: screwdriver }
  - { id: meter, name: multimeter }
---

<Chapter id="check" title="Check">
  <Step id="board" action="Look at {part}." each="motherboard" minutes="1 2 3"><Right claim="So">It is board {n} of {of}.</Right></Step>
  <Step id="modules" action="Look at {part}." each="memory-module" minutes="1 2 3"><Right claim="So">So.</Right></Step>
  <Step id="card" action="Look at {part}." each="graphics-card" minutes="1 2 3"><Right claim="So">So.</Right></Step>
</Chapter>

<Chapter id="mat" title="On the mat">
  <Step id="processor" action="Lower {part} into {place}." joints="processor-socket" minutes="1 2 3"><Right claim="So">So.</Right></Step>
  <Step id="latch" action="Open {place}." about="memory-slot" minutes="1 2 3"><Right claim="{place} open">So.</Right></Step>
  <Step id="memory" action="Push {part} into {place}." joints="memory-slot" minutes="1 2 3">
    <Notice>{place} breaks.</Notice>
    <Right claim="{n} of {of}">{part} sits in {place}.</Right>
    <IfNot sees="{part} rocks.">Lift {part}.</IfNot>
  </Step>
  <Step id="cooler" action="Tighten {part} at {place}." joints="cooler-mount" also="cooling" tools="driver" minutes="1 2 3"><Right claim="So">So.</Right></Step>
  <Step id="cooler-fan" action="Plug {part} into {place}." joints="fan-header" of="cooler" tools="driver" minutes="1 2 3"><Right claim="So">So.</Right></Step>
  <Step id="look" action="Ask the instructor." minutes="1 2 3">
    <Hold>
      - Everything
    </Hold>
    <Right claim="So">So.</Right>
  </Step>
</Chapter>

<Chapter id="card" title="The card">
  <Step id="fit-card" action="Push {part} into {place}." joints="expansion-slot" minutes="1 2 3"><Right claim="So">So.</Right></Step>
  <Step id="case-fan" action="Plug {part} in." joints="fan-header" of="fan" minutes="1 2 3"><Right claim="So">So.</Right></Step>
</Chapter>

<Chapter id="power" title="Power">
  <Step id="measure" action="Measure." after="case-fan" minutes="1 2 3">
    <Measure quantity="Voltage" unit="V" nominal="12" low="11" high="13" instrument="meter" source="guide">Stop.</Measure>
    <Right claim="So">So.</Right>
  </Step>
  <Step id="tidy" action="Tidy the bench." after="modules" minutes="1 2 3"><Right claim="So">So.</Right></Step>
  <Step id="stop" action="Ask again." after="measure tidy" minutes="1 2 3">
    <Hold>
      - Everything again
    </Hold>
    <Right claim="So">So.</Right>
  </Step>
</Chapter>
`);

function compiled(text: string): Procedure {
  const { procedure: made, faults } = compileProcedure('content/procedures/mat.mdx', text);
  if (!made) throw new Error(JSON.stringify(faults));
  return made;
}

const card = tailor(procedure, list, report);
const stepOf = (key: string) => {
  const step = card.steps.find((one) => one.key === key);
  if (!step) throw new Error(`no step ${key}`);
  return step;
};

const inA2 = 'memory-module-2/edge → motherboard-1/memory-slot-a2';
const inB2 = 'memory-module-1/edge → motherboard-1/memory-slot-b2';
const cooler = 'cooler-1/mount → motherboard-1/cooler-mount';
const coolerFan = 'cooler-1/fan → motherboard-1/header-cooler-fan';

describe('the steps of a card', () => {
  test('stand once for each joint or unit, in the order of places, and not at all where there is none', () => {
    expect(card.steps.map(({ n, key }) => `${n} ${key}`)).toEqual([
      '1 board@motherboard-1',
      '2 modules@memory-module-1',
      '3 modules@memory-module-2',
      '4 processor@processor-1/socket → motherboard-1/socket',
      `5 latch@${inA2}`,
      `6 latch@${inB2}`,
      `7 memory@${inA2}`,
      `8 memory@${inB2}`,
      `9 cooler@${cooler}`,
      `10 cooler-fan@${coolerFan}`,
      '11 look',
      '12 measure',
      '13 tidy',
      '14 stop',
    ]);
  });

  test('have part, place and number filled in wherever they are written', () => {
    const memory = stepOf(`memory@${inB2}`);
    expect(memory.action).toBe('Push Tammer Test into slot B2.');
    expect(memory.cautions).toEqual([{ signal: 'notice', text: 'slot B2 breaks.' }]);
    expect(memory.claim).toBe('2 of 2');
    expect(memory.right).toBe('Tammer Test sits in slot B2.');
    expect(memory.ifNot).toEqual([{ sees: 'Tammer Test rocks.', does: 'Lift Tammer Test.' }]);
    expect(stepOf('board@motherboard-1').right).toBe('It is board 1 of 1.');
  });

  test('say which joints they make: their own, and those of the kinds in also', () => {
    expect(stepOf(`cooler@${cooler}`).makes).toEqual([cooler, 'processor-1/cooling → cooler-1/cooling']);
    expect(stepOf(`memory@${inA2}`).makes).toEqual([inA2]);
    expect(stepOf(`latch@${inA2}`).makes).toEqual([]);
    expect(card.steps.flatMap((step) => step.makes).sort()).toEqual(report.joints.map(({ id }) => id).sort());
  });

  test('know their joint and their unit', () => {
    expect(stepOf(`latch@${inA2}`)).toMatchObject({ step: 'latch', joint: inA2, unit: 'memory-module-2' });
    expect(stepOf('modules@memory-module-2').unit).toBe('memory-module-2');
    expect(stepOf('look')).not.toHaveProperty('unit');
  });

  test('name their tools, the instrument among them', () => {
    expect(stepOf('measure').tools).toEqual(['multimeter']);
    expect(stepOf('measure').measure?.instrument).toBe('multimeter');
    expect(stepOf(`cooler@${cooler}`).tools).toEqual(['screwdriver']);
  });
});

describe('what a step waits for', () => {
  test('is every repeat of the step before it', () => {
    expect(stepOf(`latch@${inA2}`).after).toEqual(['processor@processor-1/socket → motherboard-1/socket']);
    expect(stepOf(`memory@${inA2}`).after).toEqual([`latch@${inA2}`, `latch@${inB2}`]);
    expect(stepOf(`cooler@${cooler}`).after).toEqual([`memory@${inA2}`, `memory@${inB2}`]);
  });

  test('is what a step that was left out waited for, however many were left out in a row', () => {
    expect(stepOf('measure').after).toEqual(['look']);
    expect(stepOf('processor@processor-1/socket → motherboard-1/socket').after).toEqual([
      'modules@memory-module-1',
      'modules@memory-module-2',
    ]);
  });
});

describe('hold points', () => {
  test('are numbered from 1', () => {
    expect(card.holds).toBe(2);
    expect(card.steps.flatMap(({ step, holdNumber }) => (holdNumber ? [`${step} ${holdNumber}`] : []))).toEqual([
      'look 1',
      'stop 2',
    ]);
  });

  test('keep everything that waits for them out of reach until they are passed', () => {
    const upTo = card.steps.slice(0, 10).map(({ key }) => key);
    expect(reachable(card, new Set(upTo))).toEqual(['look', 'tidy']);
    expect(reachable(card, new Set([...upTo, 'look']))).toEqual(['measure', 'tidy']);
  });
});

describe('ticks', () => {
  test('at first only what waits for nothing is in reach', () => {
    expect(reachable(card, new Set())).toEqual(['board@motherboard-1']);
  });

  test('repeats of one step may be ticked in any order', () => {
    const before = card.steps.slice(0, 6).map(({ key }) => key);
    expect(reachable(card, new Set(before))).toEqual([`memory@${inA2}`, `memory@${inB2}`, 'tidy']);
  });

  test('a tick without what it waits for is told, and a tick of an unknown step is passed over', () => {
    expect(faultyTicks(card, new Set(['board@motherboard-1', 'measure', 'nothing']))).toEqual(['measure']);
    expect(faultyTicks(card, new Set(card.steps.map(({ key }) => key)))).toEqual([]);
  });
});

describe('chapters', () => {
  test('that have no step are left out; the others list the parts handled that are not fitted yet, and the tools', () => {
    expect(card.chapters).toEqual([
      { id: 'check', title: 'Check', mat: ['2 × Tammer Test', 'Orrisk Test'], tools: [] },
      {
        id: 'mat',
        title: 'On the mat',
        mat: ['Skarn Test', '2 × Tammer Test', 'Orrisk Test', 'Quellin Test'],
        tools: ['screwdriver'],
      },
      { id: 'power', title: 'Power', mat: [], tools: ['multimeter'] },
    ]);
  });
});

describe('the card as a whole', () => {
  test('has one id however the list was written down', () => {
    const other = [
      { part: 'm', quantity: 1 },
      { part: 'b', quantity: 1 },
      { part: 'c', quantity: 1 },
      { part: 'm', quantity: 1 },
      { part: 'p', quantity: 1 },
    ];
    expect(tailor(procedure, other, report)).toEqual(card);
    expect(card.list.map(({ part, quantity }) => `${quantity} ${part}`)).toEqual(['1 b', '1 c', '2 m', '1 p']);
  });

  test('has the first eight hex figures of the digest of its list in its id', () => {
    // printf '%s' '[{"part":"b","quantity":1},{"part":"c","quantity":1},{"part":"m","quantity":2},{"part":"p","quantity":1}]' | sha256sum
    expect(card.id).toBe('mat-42d59461');
  });

  test('keeps revision, title and procedure', () => {
    expect(card).toMatchObject({ procedure: 'mat', revision: 4, title: 'On the mat' });
  });

  test('is JSON and back again', () => {
    expect(JSON.parse(JSON.stringify(card))).toEqual(card);
  });
});
