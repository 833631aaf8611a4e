/** Plain parts that fit together, and lists made from them: what a rule's examples are written in. */
import { classNames, type Part, type PartClass, type PartOf, partClasses } from '../parts/part.ts';
import type { Verdict } from './model.ts';
import type { FitReport } from './report.ts';
import type { Example, ExampleParts, JudgeInput } from './rule.ts';

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
    grams: 6500,
    heightMm: 450,
    depthMm: 420,
    widthMm: 210,
    formFactors: ['atx', 'micro-atx', 'mini-itx'],
    standoffs: ['B', 'C', 'F', 'H', 'J', 'L', 'M', 'R', 'S'],
    standoffsMove: true,
    standoffScrew: '6-32',
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
    grams: 700,
    formFactor: 'micro-atx',
    depthMm: 244,
    heightMm: 244,
    socket: 'k4',
    coolerMountings: ['square-80'],
    processorPowerW: 125,
    firmware: {
      shipped: 5,
      knows: [{ family: 'quellin-2', from: 1 }],
      updatesWithoutProcessor: false,
      bootModes: ['uefi'],
      bootsFrom: ['nvme', 'sata', 'usb'],
      hasSecurityModule: true,
    },
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
      errorCorrection: false,
      millivolts: 1100,
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
    coprocessorSocket: null,
    inputSockets: [
      { id: 'usb-1', plug: 'usb-a', for: ['keyboard', 'pointer'] },
      { id: 'usb-2', plug: 'usb-a', for: ['keyboard', 'pointer'] },
    ],
    lightPins: [{ id: 'light-1', plug: 'light-5v-3', milliamps: 3000 }],
    pictureSockets: [
      { id: 'hdmi-1', plug: 'hdmi', megabits: 14_400 },
      { id: 'displayport-1', plug: 'displayport', megabits: 25_920 },
    ],
  },
  processor: {
    ...plain('processor'),
    grams: 60,
    socket: 'k4',
    family: 'quellin-2',
    cores: 6,
    sustainedW: 65,
    peakW: 90,
    levels: ['x86-16', 'x86-32', 'x86-64'],
    correctsMemory: false,
    hasGraphics: true,
    processingPoints: 400,
  },
  cooler: {
    ...plain('cooler'),
    grams: 750,
    mountings: ['square-80'],
    heightMm: 150,
    ratedW: 120,
    memoryHeightMm: 45,
    fan: { pins: 4, milliamps: 250 },
  },
  'memory-module': {
    ...plain('memory-module'),
    grams: 35,
    generation: 'ddr5',
    capacityGb: 16,
    speedMts: 5600,
    heightMm: 32,
    registered: false,
    hasErrorCorrection: false,
    millivolts: 1100,
  },
  'graphics-card': {
    ...plain('graphics-card'),
    grams: 800,
    lengthMm: 240,
    heightMm: 120,
    slotsThick: 2,
    lanes: 16,
    generation: 4,
    sustainedW: 120,
    peakW: 160,
    excursionW: 220,
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
    grams: 10,
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
    grams: 1800,
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
    rails: [
      { id: '3.3v', milliamps: 20_000 },
      { id: '5v', milliamps: 20_000 },
      { id: '12v', milliamps: 45_000 },
    ],
    combinedLowW: 110,
    bearsExcursions: true,
    mains: { fromVolts: 100, toVolts: 240 },
  },
  fan: { ...plain('fan'), grams: 150, sizeMm: 120, thicknessMm: 25, pins: 4, milliamps: 150, airflowM3h: 90 },
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
    armHolesMm: [100],
    grams: 3800,
    diagonalInch: 24,
    sustainedW: 25,
  },
  'bank-module': {
    ...plain('bank-module'),
    pins: '30',
    capacityKb: 1024,
    dataBits: 8,
    hasParity: true,
    nanoseconds: 80,
  },
  coprocessor: { ...plain('coprocessor'), socket: 'c-68', clockMhz: 25 },
  'processor-board': {
    ...plain('processor-board'),
    socket: 'p-132',
    family: 'velm-486',
    heightMm: 25,
    sustainedW: 6,
    clockMhz: 50,
    levels: ['x86-16', 'x86-32'],
    leavesProcessorIn: false,
  },
  'bus-card': {
    ...plain('bus-card'),
    roles: ['disk', 'floppy', 'ports'],
    buses: ['isa-16'],
    lengthMm: 175,
    heightMm: 106,
    milliamps5v: 500,
    milliamps12v: 50,
    dataSockets: [
      { id: 'disk', plug: 'ata-40', devices: 2 },
      { id: 'floppy', plug: 'floppy-34', devices: 2, kilobits: 500 },
    ],
    inputSockets: [{ id: 'serial-1', plug: 'serial-9', for: ['pointer'] }],
    lines: ['irq-6', 'irq-14', 'io-3f0', 'io-1f0'],
    settings: [
      {
        id: 'serial',
        says: 'serial port',
        positions: [
          { id: '1', lines: ['irq-4', 'io-3f8'] },
          { id: '2', lines: ['irq-3', 'io-2f8'] },
        ],
      },
    ],
    bootsFrom: ['diskette', 'ata'],
    driver: null,
  },
  'expansion-card': {
    ...plain('expansion-card'),
    role: 'network',
    lengthMm: 120,
    heightMm: 69,
    slotsThick: 1,
    lanes: 1,
    generation: 3,
    sustainedW: 4,
    powerSockets: [],
    driver: 'ostrey-net-1',
  },
  'floppy-drive': {
    ...plain('floppy-drive'),
    size: '3.5',
    format: '3.5-1440',
    plug: 'floppy-pins',
    powerPlug: 'floppy-4',
    milliwatts: 3000,
  },
  'fixed-disk': {
    ...plain('fixed-disk'),
    size: '3.5',
    plug: 'ata-40',
    capacityMb: 120,
    cylinders: 900,
    heads: 15,
    sectorsPerTrack: 17,
    milliwatts: 8000,
    spinUpMilliwatts: 18_000,
  },
  adapter: {
    ...plain('adapter'),
    form: 'splitter',
    lengthMm: 200,
    ins: [{ id: 'in', kind: 'fan-header', attrs: { pins: 4 }, carries: ['milliamps'] }],
    outs: [
      { id: 'out-1', kind: 'fan-header', attrs: { pins: 4 } },
      { id: 'out-2', kind: 'fan-header', attrs: { pins: 4 } },
    ],
  },
  keyboard: { ...plain('keyboard'), plug: 'usb-a' },
  pointer: { ...plain('pointer'), plug: 'usb-a' },
  'monitor-arm': { ...plain('monitor-arm'), holesMm: [75, 100], carriesGrams: 9000 },
  'power-strip': { ...plain('power-strip'), sockets: 4, ratedW: 2300 },
  'operating-system': {
    ...plain('operating-system'),
    bootModes: ['uefi'],
    level: 'x86-64',
    memoryMb: 4096,
    storageMb: 64_000,
    needsSecurityModule: false,
    drivers: ['ostrey-net-1'],
  },
  diskette: { ...plain('diskette'), format: '3.5-1440' },
};

/** Plain parts of about 1990, for examples on the vintage shelf; every other class has one plain part only. */
const vintage: { readonly [C in PartClass]?: PartOf<C> } = {
  chassis: {
    ...plain('chassis'),
    id: 'plain-chassis-1990',
    heightMm: 160,
    depthMm: 410,
    widthMm: 420,
    formFactors: ['baby-at', 'full-at'],
    rearPanel: 'keyboard-hole',
    cutOuts: 8,
    cardLengthMm: 340,
    cardHeightMm: 122,
    supplyShape: 'baby-at',
    supplyLengthMm: 160,
    supplyPlace: 'top',
    driveBays: [
      { id: 'bay-1', sizes: ['5.25'] },
      { id: 'bay-2', sizes: ['5.25'] },
      { id: 'bay-3', sizes: ['3.5-open'] },
      { id: 'bay-4', sizes: ['3.5'] },
    ],
    fanPanels: [],
    fittedFans: [],
    frontLeads: ['reset-button', 'speaker', 'key-lock', 'turbo-button'],
  },
  motherboard: {
    ...plain('motherboard'),
    id: 'plain-motherboard-1990',
    formFactor: 'baby-at',
    depthMm: 330,
    heightMm: 216,
    rearPanel: 'keyboard-hole',
    socket: 'p-132',
    coolerMountings: [],
    processorPowerW: 10,
    dataBusBits: 32,
    coprocessorSocket: 'c-68',
    firmware: {
      shipped: 1,
      knows: [
        { family: 'velm-386', from: 1 },
        { family: 'velm-486', from: 1 },
      ],
      bootModes: ['bios'],
      bootsFrom: ['diskette', 'ata', 'st506'],
      addressing: 'chs',
    },
    memoryBanks: [
      { id: 'bank-0', slots: 4, pins: '30', largestKb: 4096, slowestNs: 80 },
      { id: 'bank-1', slots: 4, pins: '30', largestKb: 4096, slowestNs: 80 },
    ],
    memoryTotalKb: 32_768,
    wantsParity: true,
    expansionSlots: [],
    busSlots: [
      { id: 'long-1', position: 1, buses: ['isa-8', 'isa-16'] },
      { id: 'long-2', position: 2, buses: ['isa-8', 'isa-16'] },
      { id: 'long-3', position: 3, buses: ['isa-8', 'isa-16'] },
      { id: 'short-1', position: 4, buses: ['isa-8'] },
    ],
    takenLines: ['irq-0', 'irq-1', 'irq-2', 'irq-8', 'irq-13'],
    moduleSlots: [],
    sataPorts: 0,
    powerSockets: ['p8', 'p9'],
    fanHeaders: [],
    frontPins: ['reset-button', 'speaker', 'key-lock', 'turbo-button'],
    inputSockets: [{ id: 'keyboard', plug: 'din-5', for: ['keyboard'] }],
    pictureSockets: [],
  },
  processor: {
    ...plain('processor'),
    id: 'plain-processor-1990',
    socket: 'p-132',
    family: 'velm-386',
    sustainedW: 2,
    peakW: 2,
    needsCooler: false,
    dataBusBits: 32,
    clockMhz: 25,
    levels: ['x86-16', 'x86-32'],
    hasCoprocessor: false,
    hasGraphics: false,
  },
  'power-supply': {
    ...plain('power-supply'),
    id: 'plain-power-supply-1990',
    shape: 'baby-at',
    lengthMm: 150,
    ratedW: 200,
    leads: [
      { id: 'board-1', plugs: ['p8'] },
      { id: 'board-2', plugs: ['p9'] },
      { id: 'drives-1', plugs: ['peripheral-4', 'peripheral-4', 'floppy-4'], carriesW: 60 },
      { id: 'drives-2', plugs: ['peripheral-4', 'peripheral-4'], carriesW: 60 },
    ],
    hasSwitch: true,
    rails: [
      { id: '5v', milliamps: 20_000 },
      { id: '12v', milliamps: 8000 },
      { id: '-5v', milliamps: 500 },
      { id: '-12v', milliamps: 500 },
    ],
    hasMonitorOutlet: true,
  },
  monitor: {
    ...plain('monitor'),
    id: 'plain-monitor-1990',
    sockets: [{ id: 'vga-1', plug: 'vga', signal: 'analog' }],
    horizontalKhz: [31.5, 31.5],
    verticalHz: [50, 70],
    diagonalInch: 14,
    sustainedW: 60,
    fitsSupplyOutlet: true,
  },
  keyboard: { ...plain('keyboard'), id: 'plain-keyboard-1990', plug: 'din-5' },
  pointer: { ...plain('pointer'), id: 'plain-pointer-1990', plug: 'serial-9' },
  'operating-system': {
    ...plain('operating-system'),
    id: 'plain-operating-system-1990',
    bootModes: ['bios'],
    level: 'x86-16',
    memoryMb: 1,
    storageMb: 10,
    needsSecurityModule: false,
    comesOn: '3.5-1440',
    drivers: [],
  },
};

/** A plain part of its class, of the current shelf or of that of about 1990. */
export const aPart = <C extends PartClass>(partClass: C, shelf?: Example['shelf']): PartOf<C> =>
  structuredClone((shelf === 'vintage' ? vintage[partClass] : undefined) ?? parts[partClass]) as PartOf<C>;

/**
 * The list an example stands for. Parts with equal changes are one part, several times; unequal ones have ids and
 * names of their own. A field set to undefined is not recorded.
 */
export function exampleList(example: ExampleParts, shelf?: Example['shelf']): JudgeInput {
  return partClasses.flatMap((partClass) => {
    const given = example[partClass];
    if (given === undefined) return [];
    const changes: readonly object[] = Array.isArray(given) ? given : [given as object];
    const counts = new Map<string, { part: Part; quantity: number }>();
    for (const change of changes) {
      const key = JSON.stringify(change, (_, value) => (value === undefined ? 'not recorded' : value));
      const known = counts.get(key);
      if (known) known.quantity += 1;
      else counts.set(key, { part: changed(aPart(partClass, shelf), change, counts.size + 1), quantity: 1 });
    }
    return [...counts.values()];
  });
}

function changed(part: Part, change: object, n: number): Part {
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
