import { showMm, tidy } from '../../../units/amounts.ts';
import type { Joint, UnitId } from '../../model.ts';
import { leadPlace } from '../../needs/power-supply.ts';
import { cannotTell, doesNotApply, doesNotFit, fits, gathersRule } from '../../rule.ts';

/** In millimetres, by common practice: what a lead goes out of its way behind the tray and into the plug. */
const slack = 100;

type Cable = { readonly unit: UnitId; readonly lengthMm: number | undefined };

/** The cables between a socket and the supply, and the plug of the supply at the end. */
function pathOf(first: Joint, joints: readonly Joint[], adapters: readonly Cable[]): { cables: Cable[]; end: string } {
  const cables: Cable[] = [];
  let end = first.place;
  for (;;) {
    const cable = adapters.find(({ unit }) => end.startsWith(`${unit}/`));
    const next = cable && joints.find(({ kind, need }) => kind === first.kind && need.startsWith(`${cable.unit}/`));
    if (cable === undefined || next === undefined || cables.includes(cable)) return { cables, end };
    cables.push(cable);
    end = next.place;
  }
}

export const cableLength = gathersRule({
  id: 'cabling/cable-length',
  title: "The processor's lead reaches from the supply to the top of the board",
  severity: 'limit',
  basis: 'practice',
  sources: ['common-practice'],
  lesson: 'fit/how-parts-meet',

  gathers: {
    'power-supply': ['leads'],
    adapter: ['lengthMm'],
    chassis: ['heightMm', 'supplyPlace'],
    motherboard: [],
  },
  sees: ['processor-power', 'supply-mount', 'board-mount'],
  judge({ 'power-supply': supplies, adapter: adapters, chassis: cases, motherboard: boards }, { joints }) {
    const housing = cases.find(({ unit }) => joints.some(({ place }) => place === `${unit}/tray`));
    // With the supply at the top the lead has no way to go.
    if (housing?.supplyPlace !== 'bottom') return doesNotApply;
    const first = joints.find(
      ({ kind, need }) => kind === 'processor-power' && boards.some(({ unit }) => need.startsWith(`${unit}/`)),
    );
    if (first === undefined) return doesNotApply;

    const way = pathOf(first, joints, adapters);
    const supply = supplies.find(({ unit }) => way.end.startsWith(`${unit}/`));
    const lead = supply?.leads?.find(({ id }) => way.end.startsWith(`${leadPlace(supply.unit, id)}-plug-`));
    if (supply === undefined || lead === undefined) return doesNotApply;
    // A supply that records no length of any lead says nothing of them.
    const isMeasured = supply.leads?.some(({ lengthMm }) => lengthMm !== undefined);
    if (!isMeasured) return doesNotApply;
    if (lead.lengthMm === undefined) return cannotTell(`${supply.unit}.leads`);
    const unmeasured = way.cables.filter(({ lengthMm }) => lengthMm === undefined);
    if (unmeasured.length > 0) return cannotTell(...unmeasured.map(({ unit }) => `${unit}.lengthMm`));
    if (housing.heightMm === undefined) return cannotTell(`${housing.unit}.heightMm`);

    const length = way.cables.reduce((sum, { lengthMm = 0 }) => sum + lengthMm, lead.lengthMm);
    const wanted = housing.heightMm + slack;
    const facts = { supply: supply.name, chassis: housing.name, length, wanted, short: tidy(wanted - length) };
    const about = [supply.unit, housing.unit];
    return facts.short <= 0 ? fits(facts, about) : doesNotFit(facts, about);
  },

  say: {
    fits: ({ supply, length, wanted }) =>
      `The processor's lead of ${supply} is ${showMm(length)} long; about ${showMm(wanted)} are wanted.`,
    doesNotFit: ({ supply, chassis, length, wanted, short }) => ({
      headline: `The processor's lead is ${showMm(short)} short`,
      what: `The processor's lead of ${supply} is ${showMm(length)} long; from the bottom of ${chassis} round behind the tray to the top of the board about ${showMm(wanted)} are wanted, so ${showMm(short)} may be missing.`,
      why: 'The lead goes up behind the tray and over the top edge of the board; a short one has to cross the board instead, under tension and in the way of the air.',
      remedy: `The lead should be ${showMm(wanted)} or more: add an extension, or choose a supply with longer leads or a lower case. Where it reaches straight across the board, the machine works.`,
    }),
    cannotTell: () => ({
      headline: "How long is the processor's lead?",
      what: 'The length of the lead, of an extension, or the height of the case is not recorded, so it is not judged whether the lead reaches.',
      findOut: 'Measure the lead from where it leaves the supply to its plug, and the case from bottom to top.',
    }),
  },

  examples: [
    {
      title: 'exactly as long as the way',
      parts: {
        motherboard: { powerSockets: ['eps-8'] },
        chassis: { heightMm: 450, supplyPlace: 'bottom' },
        'power-supply': { leads: [{ id: 'processor', plugs: ['eps-8'], lengthMm: 550 }] },
      },
      verdict: 'fits',
    },
    {
      title: 'ten millimetres short',
      parts: {
        motherboard: { powerSockets: ['eps-8'] },
        chassis: { heightMm: 450, supplyPlace: 'bottom' },
        'power-supply': { leads: [{ id: 'processor', plugs: ['eps-8'], lengthMm: 540 }] },
      },
      verdict: 'does-not-fit',
    },
    {
      title: 'an extension makes up for it',
      parts: {
        motherboard: { powerSockets: ['eps-8'] },
        chassis: { heightMm: 450, supplyPlace: 'bottom' },
        'power-supply': { leads: [{ id: 'processor', plugs: ['eps-4'], lengthMm: 350 }] },
        adapter: {
          form: 'cable',
          lengthMm: 200,
          ins: [{ id: 'in', kind: 'processor-power', attrs: { plug: 'eps-4' } }],
          outs: [{ id: 'out', kind: 'processor-power', attrs: { plug: 'eps-8' } }],
        },
      },
      verdict: 'fits',
    },
    {
      title: 'the supply is at the top',
      parts: {
        motherboard: { powerSockets: ['eps-8'] },
        chassis: { heightMm: 450, supplyPlace: 'top' },
        'power-supply': { leads: [{ id: 'processor', plugs: ['eps-8'], lengthMm: 540 }] },
      },
      verdict: 'does-not-apply',
    },
    {
      title: 'this one lead is not recorded',
      parts: {
        motherboard: { powerSockets: ['eps-8'] },
        chassis: { heightMm: 450, supplyPlace: 'bottom' },
        'power-supply': {
          leads: [
            { id: 'board', plugs: ['atx-24'], lengthMm: 550 },
            { id: 'processor', plugs: ['eps-8'] },
          ],
        },
      },
      verdict: 'cannot-tell',
    },
  ],
});
