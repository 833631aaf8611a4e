/** Budgets in words: a title, a row for each line of the working, what it comes to and what sets the limit. */
import { showAmps, showDeciwatts, showGbitps, showMBps, showMts, tidy } from '../../units/amounts.ts';
import { showMoney, showNumber } from '../../units/money.ts';
import { count } from '../../wording/phrases.ts';
import { placeName } from '../../wording/places.ts';
import { termName } from '../../wording/terms.ts';
import type { UnitId } from '../model.ts';
import { unitOf } from '../needs/names.ts';
import type { Budget, BudgetName, FigureUnit, WorkingLine } from '../report.ts';

export type SaidBudget = {
  /** "Power at its likely peak". */
  title: string;
  /** What it is of, and how much: "Brindle 6, in a burst", "160 W". */
  rows: { what: string; amount: string }[];
  /** "313.2 W", "at least 313.2 W". */
  used: string;
  /** "550 W"; absent without a limit. */
  limit?: string;
  /** Parts whose share is not recorded, by name, each once. */
  unknown: string[];
  formula: string;
};

const tenths = (thousandths: number): string => showNumber(Math.round(thousandths / 100) / 10);
const shown = (value: number, unit: string): string => `${showNumber(tidy(value))} ${unit}`;

const units: { readonly [U in FigureUnit]: (amount: number) => string } = {
  deciwatt: showDeciwatts,
  milliamp: showAmps,
  cent: showMoney,
  'cent-a-year': (cents) => `${showMoney(cents)} a year`,
  millikelvin: (kelvins) => `${tenths(kelvins)} °C`,
  millicelsius: (degrees) => `${tenths(degrees)} °C`,
  millibel: (levels) => `${showNumber(Math.round(levels / 10) / 10)} dB`,
  'megabyte-a-second': showMBps,
  'megabit-a-second': showGbitps,
  kibibyte: (kilobytes) =>
    kilobytes % 1024 === 0 ? `${showNumber(kilobytes / 1024)} MB` : `${showNumber(kilobytes)} kB`,
  mebibyte: (megabytes) => shown(megabytes / 1024, 'GB'),
  hertz: (hertz) => (hertz < 1000 ? `${hertz} Hz` : `${showNumber(hertz / 1000)} kHz`),
  millihertz: (hertz) => shown(hertz / 1000, 'Hz'),
  kilohertz: (clock) => `${showNumber(clock / 1000)} MHz`,
  'square-millimetre': (area) => `${showNumber(Math.round(area / 100))} cm²`,
  gram: (grams) => `${showNumber(grams / 1000)} kg`,
  count: showNumber,
  permille: (permille) => shown(permille / 10, '%'),
  'minute-a-day': (minutes) => `${shown(minutes / 60, 'hours')} a day`,
  'tenth-of-a-cent-a-kilowatt-hour': (tariff) => `${showNumber(tariff / 10)} cents a kilowatt-hour`,
  'cubic-metre-an-hour': (flow) => shown(flow, 'm³/h'),
  lane: (lanes) => count(lanes, 'lane', 'lanes'),
  generation: (generation) => `generation ${generation}`,
  'megatransfer-a-second': showMts,
  pixel: (pixels) => count(pixels, 'pixel', 'pixels'),
  line: (lines) => count(lines, 'line', 'lines'),
  bit: (bits) => count(bits, 'bit', 'bits'),
};

/** An amount as people read it, with its unit. */
export const showAmount = (amount: number, unit: FigureUnit): string => units[unit](amount);

const titles: { readonly [N in BudgetName]: (of: string, nameOf: (id: UnitId) => string) => string } = {
  power: () => 'Power at its likely peak',
  'sustained-power': () => 'Power under steady load',
  'idle-power': () => 'Power while it waits',
  excursion: () => 'Power in a short excursion',
  rail: (of) => (of === '3.3v+5v' ? 'The 3.3 V and 5 V rails together' : `The ${of.replace('v', ' V')} rail`),
  lead: (of, nameOf) =>
    `The lead “${of.slice(of.indexOf('/lead-') + 6).replaceAll('-', ' ')}” of ${nameOf(unitOf(of))}`,
  'wall-power': () => 'Power from the wall under steady load',
  'running-cost': () => 'Electricity for a year',
  heat: () => 'Heat for the cooler',
  air: () => 'How much warmer the air leaves the case',
  sound: () => 'Sound with all fans at full speed',
  lanes: (of, nameOf) => `The link of ${nameOf(of)}`,
  picture: (of, nameOf) => `The picture of ${nameOf(of)}`,
  scan: (of, nameOf) => `The scan of ${nameOf(of)}`,
  heads: () => 'Picture sockets in use',
  memory: () => 'Memory',
  banks: () => 'Banks of memory filled',
  'memory-bandwidth': () => 'What the memory carries',
  money: () => 'Money',
  footprint: () => 'Room on the desk',
  weight: (of, nameOf) => (of === 'machine' ? 'Weight of the machine' : `Weight of ${nameOf(of)}`),
};

/** What a field says of the part beside whose name it stands; of no part, the whole of what the row says. */
const fields: Readonly<Record<string, string>> = {
  allowance: 'by allowance',
  peakW: 'in a burst',
  sustainedW: 'under steady load',
  idleW: 'while it waits',
  excursionW: 'in an excursion',
  ratedW: 'rated',
  milliamps: '',
  'fan.milliamps': 'its fan',
  'fittedFans.milliamps': 'a fan in it',
  'light.milliamps': 'its light',
  'lights.milliamps': 'a light in it',
  milliwatts: 'at most',
  idleMilliwatts: 'while it waits',
  spinUpMilliwatts: 'while it starts to turn',
  milliamps5v: 'at 5 V',
  milliamps12v: 'at 12 V',
  priceCents: '',
  'mark-up': 'What the shop adds for its work',
  'sustained-power': 'Steady power of all that is in it',
  given: 'given under steady load',
  loss: 'lost in it',
  efficiency: 'efficiency at this load',
  'efficiency.end': 'efficiency at the nearest load that is recorded',
  'wall-power': 'From the wall',
  'brief.hoursPerDay': 'Time that it is on',
  'brief.tariff': 'Price of electricity',
  'airflowM3h front': 'at the front',
  'airflowM3h rear': 'at the rear',
  'airflowM3h top': 'at the top',
  'fan.airflowM3h front': 'a fan at the front',
  'fan.airflowM3h rear': 'a fan at the rear',
  'fan.airflowM3h top': 'a fan at the top',
  'fittedFans.airflowM3h front': 'a fan in it at the front',
  'fittedFans.airflowM3h rear': 'a fan in it at the rear',
  'fittedFans.airflowM3h top': 'a fan in it at the top',
  'flow in': 'All air in',
  'flow out': 'All air out',
  'air out': 'The air that comes out, at least',
  soundDb: '',
  'fittedFans.soundDb': 'a fan in it',
  lanes: 'its lanes',
  generation: 'its generation',
  'slot.lanes': 'lanes of the slot',
  'slot.generation': 'generation of the slot',
  'negotiated.lanes': 'Both settle on',
  'negotiated.generation': 'Both settle on',
  link: 'its SATA port',
  widthPx: 'across',
  heightPx: 'down',
  refreshHz: 'pictures a second',
  bitsPerColour: 'for each colour',
  'timing.hTotal': 'A line, blanking counted in',
  'timing.vTotal': 'A picture, blanking counted in',
  'timing.pixelClock': 'Pixel clock',
  'carried.bitsPerColour': 'The link carries, for each colour',
  'horizontalKhz.from': 'lines a second, least',
  'horizontalKhz.to': 'lines a second, most',
  'verticalHz.from': 'pictures a second, least',
  'verticalHz.to': 'pictures a second, most',
  picture: '',
  capacityGb: '',
  capacityKb: '',
  channels: 'channels that hold a module',
  speedMts: 'sold for',
  'memory.speedMts': 'its fastest',
  runs: 'All of it runs at',
  channel: 'One channel carries',
  'widthMm × depthMm': 'width times depth',
  'footWidthMm × footDepthMm': 'its foot',
  grams: '',
};

/** Fields that carry a name of their own: of a shop, a package, a part, a link, a mode, a bank, a plug. */
const named: readonly (readonly [RegExp, (of: string, nameOf: (id: string) => string) => string])[] = [
  [/^offers\.(.+)$/, (of) => `at ${words(of.slice(0, of.lastIndexOf('.')))}, ${of.slice(of.lastIndexOf('.') + 1)}`],
  [/^package (.+)$/, (of) => `Package ${of}`],
  [/^shipping (.+)$/, (of) => `One order from ${words(of)}`],
  [/^resale (.+)$/, (of, nameOf) => `Sold: ${nameOf(of)}`],
  [/^trade-in (.+)$/, (of, nameOf) => `Handed in: ${nameOf(of)}`],
  [/^least (.+)$/, (of) => `The least link that carries all of it: ${of}`],
  [/^(.+) lines$/, (of) => `lines a second of ${words(of)}`],
  [/^(.+) pictures$/, (of) => `pictures a second of ${words(of)}`],
];
const words = (id: string): string => id.replaceAll('-', ' ');

function saysField(field: string, nameOf: (id: string) => string): string {
  const own = fields[field];
  if (own !== undefined) return own;
  for (const [shape, say] of named) {
    const of = shape.exec(field)?.[1];
    if (of !== undefined) return say(of, nameOf);
  }
  return termName(field);
}

function rowOf(line: WorkingLine, budget: Budget, nameOf: (id: string) => string) {
  const { unit, amount, field } = line;
  const says = budget.name === 'banks' ? placeName('memory-bank', `${unit}/${field}`) : saysField(field, nameOf);
  const what = unit === undefined ? says : [nameOf(unit), says].filter((text) => text !== '').join(', ');
  return { what, amount: showAmount(amount, line.in ?? budget.unit) };
}

/** `nameOf` gives the name of a unit of the list, and of a part that was on one before. */
export function sayBudget(budget: Budget, nameOf: (id: UnitId) => string): SaidBudget {
  const { name, of = '', unit, used, limit, unknown, working, formula } = budget;
  return {
    title: titles[name](of, nameOf),
    rows: working.map((line) => rowOf(line, budget, nameOf)),
    used: `${unknown.length > 0 ? 'at least ' : ''}${showAmount(used, unit)}`,
    ...(limit === undefined ? {} : { limit: showAmount(limit, unit) }),
    unknown: [...new Set(unknown.map(nameOf))],
    formula,
  };
}
