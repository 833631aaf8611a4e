/** Money: the prices of everything on the list, against what the brief allows. In cents. */
import { type Part, type PartId, partClasses } from '../../parts/part.ts';
import type { Unit } from '../model.ts';
import type { Budget, WorkingLine } from '../report.ts';
import type { JudgeBrief, MoneyTerms } from '../rule.ts';
import { type Total, term } from './total.ts';

/** Money when no terms are named: one price a part, with no shop in it. */
export const money: Total = {
  name: 'money',
  unit: 'cent',
  adds: partClasses.map((partClass) =>
    term(partClass, ['priceCents'], ({ priceCents }) => [{ amount: priceCents, field: 'priceCents' }]),
  ),
  bound: { asks: 'budgetCents' },
  when: 'always',
  formula: 'The prices of all parts on the list, added up.',
  source: 'common-practice',
};

/** More ways than these are not tried; what is left out is said. */
const mostWays = 1024;
const mostShops = 8;

type Offer = { cents: number; from: number; shop?: string; shipping: number; field: string; isTaxUnknown: boolean };
type Wanted = { id: PartId; units: readonly Unit[]; offers: readonly Offer[] };
/** What each shop charges for an order. */
type Charges = ReadonlyMap<string, number>;
type Package = NonNullable<MoneyTerms['packages']>[number];
type Way = { cost: number; unknown: string[]; working: WorkingLine[]; packages: number };

/**
 * What the list costs on these terms: the way of buying it that leaves fewest prices unknown, then the cheapest, then
 * the one of fewest packages. It is exact: every choice of packages is tried with every choice of shops to order from,
 * up to 1,024 choices of packages and eight shops that charge for an order; the formula says so where there are more.
 *
 * A package is taken only for parts that are all on the list. Of several prices of one shop the newest counts, and of
 * several charges for an order the highest. `used` is less than 0 when what is taken out brings more than the list costs.
 */
export function moneyOnTerms(units: readonly Unit[], { budgetCents }: JudgeBrief, terms: MoneyTerms): Budget {
  const wanted = wantedOf(units, terms);
  const { ways, isCut: isPackageCut } = packageWays(wanted, terms.packages ?? []);
  const charges = chargesOf(wanted);
  const { orders, isCut: isShopCut } = ordersOf(charges);
  let best: Way | undefined;
  for (const taken of ways) {
    for (const shops of orders) {
      const way = buy(wanted, taken, charges, shops);
      if (!best || isBetter(way, best)) best = way;
    }
  }
  const { cost, unknown, working } = best ?? { cost: 0, unknown: [], working: [] };
  const lines = [...working, ...afterwards(working, terms)];
  return {
    name: 'money',
    unit: 'cent',
    used: lines.slice(working.length).reduce((sum, { amount }) => sum + amount, cost),
    ...(budgetCents === undefined ? {} : { limit: budgetCents }),
    about: [],
    unknown,
    working: lines,
    formula: [
      'Each part at its price, packages where they cost less than their parts, one charge for each order, and what the shop adds for its work; less what is sold or handed in.',
      ...(isPackageCut ? ['There are too many packages to try them all, so some were left out.'] : []),
      ...(isShopCut
        ? ['There are too many shops to try every choice, so each part is bought where it costs least.']
        : []),
    ].join(' '),
    source: 'common-practice',
  };
}

/** Each part once, in the order of the list, with its prices. */
function wantedOf(units: readonly Unit[], terms: MoneyTerms): Wanted[] {
  const byPart = new Map<PartId, { part: Part; units: Unit[] }>();
  for (const unit of units) {
    const known = byPart.get(unit.part.id);
    if (known) known.units.push(unit);
    else byPart.set(unit.part.id, { part: unit.part, units: [unit] });
  }
  return [...byPart.values()].map(({ part, units: own }) => ({
    id: part.id,
    units: own,
    offers: offersOf(part, terms),
  }));
}

/** Those of the shop that is named, or of all; without any, the price in the part's file. */
function offersOf(part: Part, { shop, salesTaxPermille }: MoneyTerms): Offer[] {
  const newest = new Map<string, NonNullable<Part['offers']>[number]>();
  for (const offer of part.offers ?? []) {
    if (shop !== undefined && offer.shop !== shop) continue;
    const key = `${offer.shop} ${offer.from ?? 1}`;
    const known = newest.get(key);
    if (!known || offer.date > known.date || (offer.date === known.date && offer.priceCents < known.priceCents))
      newest.set(key, offer);
  }
  const taxed = (cents: number, withoutTax: boolean | undefined) =>
    withoutTax && salesTaxPermille !== undefined ? cents + share(cents, salesTaxPermille) : cents;
  const offers = [...newest.values()].map((offer) => ({
    cents: taxed(offer.priceCents, offer.withoutTax),
    shop: offer.shop,
    shipping: taxed(offer.shippingCents ?? 0, offer.withoutTax),
    field: `offers.${offer.shop}.${offer.date}`,
    isTaxUnknown: offer.withoutTax === true && salesTaxPermille === undefined,
    from: offer.from ?? 1,
  }));
  // What is sold only in larger lots is not for sale one at a time: the file's own price stands for that.
  if (part.priceCents === undefined || offers.some(({ from }) => from === 1)) return offers;
  return [...offers, { cents: part.priceCents, shipping: 0, field: 'priceCents', isTaxUnknown: false, from: 1 }];
}

/** So many thousandths, to the nearest cent, a half upwards. */
const share = (cents: number, permille: number): number => Math.floor((cents * permille + 500) / 1000);

/** How many of each package: every way of taking them from what the list has. */
function packageWays(wanted: readonly Wanted[], packages: readonly Package[]) {
  const listed = new Map(wanted.map(({ id, units }) => [id, units.length]));
  const sorted = [...packages].sort((a, b) => (a.id < b.id ? -1 : a.id > b.id ? 1 : a.priceCents - b.priceCents));
  let ways: { packages: Package[]; left: ReadonlyMap<PartId, number> }[] = [{ packages: [], left: listed }];
  let isCut = false;
  for (const one of sorted) {
    const next = ways.flatMap((way) => {
      const more = [way];
      for (let last = take(way, one); last; last = take(last, one)) more.push(last);
      return more;
    });
    if (next.length > mostWays) isCut = true;
    else ways = next;
  }
  return { ways, isCut };
}

function take(way: { packages: Package[]; left: ReadonlyMap<PartId, number> }, one: Package) {
  if (one.parts.length === 0) return undefined;
  const left = new Map(way.left);
  for (const part of one.parts) {
    const rest = (left.get(part) ?? 0) - 1;
    if (rest < 0) return undefined;
    left.set(part, rest);
  }
  return { packages: [...way.packages, one], left };
}

const chargesOf = (wanted: readonly Wanted[]): Charges => {
  const charges = new Map<string, number>();
  for (const { offers } of wanted) {
    for (const { shop, shipping } of offers) {
      if (shop !== undefined) charges.set(shop, Math.max(charges.get(shop) ?? 0, shipping));
    }
  }
  return charges;
};

/** Which of the shops that charge for an order are left out: every choice of them. */
function ordersOf(charges: Charges) {
  const shops = [...charges].flatMap(([shop, charge]) => (charge > 0 ? [shop] : [])).sort();
  const none: ReadonlySet<string> = new Set();
  if (shops.length > mostShops) return { orders: [none], isCut: true };
  const orders = Array.from(
    { length: 2 ** shops.length },
    (_, bits): ReadonlySet<string> => new Set(shops.filter((_shop, n) => (bits & (1 << n)) !== 0)),
  );
  return { orders, isCut: false };
}

/** Everything that no package holds where it costs least, at any shop that is not left out. */
function buy(
  wanted: readonly Wanted[],
  { packages, left }: { packages: readonly Package[]; left: ReadonlyMap<PartId, number> },
  charges: Charges,
  leftOut: ReadonlySet<string>,
): Way {
  const way: Way = { cost: 0, unknown: [], working: [], packages: packages.length };
  const shops = new Set<string>();
  const pay = (line: WorkingLine) => {
    way.working.push(line);
    way.cost += line.amount;
  };
  for (const { id, units, offers } of wanted) {
    const loose = left.get(id) ?? 0;
    let cheapest: Offer | undefined;
    for (const offer of offers) {
      if (offer.from > loose || (offer.shop !== undefined && leftOut.has(offer.shop))) continue;
      if (!cheapest || isCheaper(offer, cheapest)) cheapest = offer;
    }
    for (const unit of units.slice(0, loose)) {
      if (cheapest) pay({ unit: unit.id, amount: cheapest.cents, field: cheapest.field });
      if (!cheapest || cheapest.isTaxUnknown) way.unknown.push(unit.id);
    }
    if (cheapest?.shop !== undefined) shops.add(cheapest.shop);
  }
  for (const { id, priceCents } of packages) pay({ amount: priceCents, field: `package ${id}` });
  for (const shop of [...shops].sort()) {
    const amount = charges.get(shop) ?? 0;
    if (amount > 0) pay({ amount, field: `shipping ${shop}` });
  }
  return way;
}

/** A price whose tax is known before one whose tax is not; then the lower; then by name. */
function isCheaper(a: Offer, b: Offer): boolean {
  if (a.isTaxUnknown !== b.isTaxUnknown) return b.isTaxUnknown;
  if (a.cents !== b.cents) return a.cents < b.cents;
  return a.field < b.field;
}

/** Ways are tried in one order whatever the list's, so the first of equals stands. */
const isBetter = (a: Way, b: Way): boolean =>
  (a.unknown.length - b.unknown.length || a.cost - b.cost || a.packages - b.packages) < 0;

/** The shop's mark-up on the parts, and what comes back. */
function afterwards(working: readonly WorkingLine[], { markUpPermille, resale = [], tradeIn = [] }: MoneyTerms) {
  const parts = working.reduce((sum, { amount, field }) => sum + (field.startsWith('shipping ') ? 0 : amount), 0);
  const lines: WorkingLine[] = [];
  if (markUpPermille !== undefined) lines.push({ amount: share(parts, markUpPermille), field: 'mark-up' });
  for (const { part, cents } of resale) lines.push({ amount: -cents, field: `resale ${part}` });
  for (const { part, cents } of tradeIn) lines.push({ amount: -cents, field: `trade-in ${part}` });
  return lines;
}
