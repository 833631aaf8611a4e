/** Plain parts that fit together, and lists made from them: what a rule's examples are written in. */
import { classNames, type Part, type PartClass, type PartOf, partClasses } from '../parts/part.ts';
import type { Verdict } from './model.ts';
import type { FitReport } from './report.ts';
import type { ExampleParts, JudgeInput } from './rule.ts';

const plain = <C extends PartClass>(partClass: C) => ({
  class: partClass,
  id: `plain-${partClass}`,
  name: `Plain ${classNames[partClass].one}`,
  maker: 'Net Loft',
  source: 'demo-catalogue',
  priceCents: 10_000,
});

const parts: { readonly [C in PartClass]: PartOf<C> } = {
  chassis: {
    ...plain('chassis'),
    heightMm: 450,
    depthMm: 420,
    widthMm: 210,
    formFactors: ['atx', 'micro-atx', 'mini-itx'],
    cutOuts: 7,
    coolerHeightMm: 160,
    cardLengthMm: 320,
    cardHeightMm: 160,
    frontFansTakeCardRoom: false,
    supplyShape: 'atx',
    supplyLengthMm: 180,
    supplyPlace: 'bottom',
    driveBays: [
      { id: 'bay-1', sizes: ['3.5', '2.5'] },
      { id: 'bay-2', sizes: ['3.5', '2.5'] },
    ],
    fanPanels: [
      { id: 'front', sizesMm: [120, 140], units: 6 },
      { id: 'rear', sizesMm: [120], units: 2 },
    ],
    fittedFans: [{ id: 'rear-1', panel: 'rear', sizeMm: 120, thicknessMm: 25, pins: 3, milliamps: 200 }],
    frontLeads: ['power-button', 'usb-2', 'usb-3', 'hd-audio'],
  },
  motherboard: {
    ...plain('motherboard'),
    formFactor: 'micro-atx',
    depthMm: 244,
    heightMm: 244,
    socket: 'k4',
    coolerMountings: ['square-80'],
    processorPowerW: 125,
    firmware: { shipped: 5, knows: [{ family: 'quellin-2', from: 1 }], updatesWithoutProcessor: false },
    memory: {
      generation: 'ddr5',
      slots: [
        { id: 'a2', channel: 'a' },
        { id: 'b2', channel: 'b' },
        { id: 'a1', channel: 'a' },
        { id: 'b1', channel: 'b' },
      ],
      moduleGb: 32,
      totalGb: 128,
      speedMts: 5600,
      registered: false,
    },
    expansionSlots: [
      { id: 'x16-1', position: 1, lengthLanes: 16, lanes: 16, generation: 4 },
      { id: 'x4-1', position: 4, lengthLanes: 4, lanes: 4, generation: 3 },
    ],
    moduleSlots: [
      { id: 'm2-1', key: 'm', lengthsMm: [60, 80], links: ['pcie', 'sata'], lanes: 4, generation: 4 },
      {
        id: 'm2-2',
        key: 'm',
        lengthsMm: [60, 80],
        links: ['pcie', 'sata'],
        lanes: 4,
        generation: 3,
        switchesOff: ['sata-4'],
      },
    ],
    sataPorts: 4,
    powerSockets: ['atx-24', 'eps-8'],
    fanHeaders: [
      { id: 'cooler-fan', pins: 4, milliamps: 1000 },
      { id: 'case-1', pins: 4, milliamps: 1000 },
      { id: 'case-2', pins: 4, milliamps: 1000 },
      { id: 'case-3', pins: 4, milliamps: 1000 },
    ],
    frontPins: ['power-button', 'usb-2', 'usb-3', 'hd-audio'],
    pictureSockets: [
      { id: 'hdmi-1', plug: 'hdmi', megabits: 14_400 },
      { id: 'displayport-1', plug: 'displayport', megabits: 25_920 },
    ],
  },
  processor: {
    ...plain('processor'),
    socket: 'k4',
    family: 'quellin-2',
    cores: 6,
    sustainedW: 65,
    peakW: 90,
    hasGraphics: true,
    processingPoints: 400,
  },
  cooler: {
    ...plain('cooler'),
    mountings: ['square-80'],
    heightMm: 150,
    ratedW: 120,
    memoryHeightMm: 45,
    fan: { pins: 4, milliamps: 250 },
  },
  'memory-module': {
    ...plain('memory-module'),
    generation: 'ddr5',
    capacityGb: 16,
    speedMts: 5600,
    heightMm: 32,
    registered: false,
  },
  'graphics-card': {
    ...plain('graphics-card'),
    lengthMm: 240,
    heightMm: 120,
    slotsThick: 2,
    lanes: 16,
    generation: 4,
    sustainedW: 120,
    peakW: 160,
    powerSockets: ['pcie-8'],
    outputs: [
      { id: 'hdmi-1', plug: 'hdmi', megabits: 14_400 },
      { id: 'displayport-1', plug: 'displayport', megabits: 25_920 },
    ],
    memoryGb: 8,
    graphicsPoints: 300,
  },
  'storage-drive': {
    ...plain('storage-drive'),
    build: 'm2',
    capacityGb: 1000,
    key: 'm',
    lengthMm: 80,
    link: 'pcie',
    lanes: 4,
    generation: 4,
    milliwatts: 6000,
    isSolidState: true,
  },
  'power-supply': {
    ...plain('power-supply'),
    shape: 'atx',
    lengthMm: 150,
    ratedW: 550,
    leads: [
      { id: 'board', plugs: ['atx-24'] },
      { id: 'processor', plugs: ['eps-8'] },
      { id: 'card-1', plugs: ['pcie-8'], carriesW: 150 },
      { id: 'card-2', plugs: ['pcie-8'], carriesW: 150 },
      { id: 'drives-1', plugs: ['sata-power', 'sata-power', 'sata-power'], carriesW: 54 },
    ],
    hasSwitch: true,
  },
  fan: { ...plain('fan'), sizeMm: 120, thicknessMm: 25, pins: 4, milliamps: 150, airflowM3h: 90 },
  monitor: {
    ...plain('monitor'),
    widthPx: 1920,
    heightPx: 1080,
    refreshHz: 60,
    bitsPerColour: 8,
    sockets: [
      { id: 'hdmi-1', plug: 'hdmi', megabits: 8160 },
      { id: 'displayport-1', plug: 'displayport', megabits: 17_280 },
    ],
    diagonalInch: 24,
    sustainedW: 25,
  },
};

/** A plain part of its class. One of each fits together. */
export const aPart = <C extends PartClass>(partClass: C): PartOf<C> => structuredClone(parts[partClass]) as PartOf<C>;

/**
 * The list an example stands for. Parts with equal changes are one part, several times; unequal ones have ids and
 * names of their own. A field set to undefined is not recorded.
 */
export function exampleList(example: ExampleParts): JudgeInput {
  return partClasses.flatMap((partClass) => {
    const given = example[partClass];
    if (given === undefined) return [];
    const changes: readonly object[] = Array.isArray(given) ? given : [given as object];
    const counts = new Map<string, { part: Part; quantity: number }>();
    for (const change of changes) {
      const key = JSON.stringify(change, (_, value) => (value === undefined ? 'not recorded' : value));
      const known = counts.get(key);
      if (known) known.quantity += 1;
      else counts.set(key, { part: changed(partClass, change, counts.size + 1), quantity: 1 });
    }
    return [...counts.values()];
  });
}

function changed(partClass: PartClass, change: object, n: number): Part {
  const part = aPart(partClass);
  const own = n === 1 ? {} : { id: `${part.id}-${n}`, name: `${part.name} ${n}` };
  const fields = Object.entries({ ...part, ...own, ...change }).filter(([, value]) => value !== undefined);
  // Every field is one that the class has, so what comes out is a part of the class again.
  return Object.fromEntries(fields) as unknown as Part;
}

const worstFirst: readonly Verdict[] = ['does-not-fit', 'cannot-tell', 'fits'];

/** The worst verdict of a rule in a report; does not apply when it has none. */
export const verdictOf = (report: FitReport, ruleId: string): Verdict =>
  worstFirst.find((verdict) => report.findings.some((one) => one.rule === ruleId && one.verdict === verdict)) ??
  'does-not-apply';
