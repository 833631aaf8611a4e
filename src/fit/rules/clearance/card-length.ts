import { showMm, tidy } from '../../../units/amounts.ts';
import type { UnitId } from '../../model.ts';
import { cannotTell, doesNotApply, doesNotFit, fits, gathersRule } from '../../rule.ts';
import { lacks } from '../words.ts';

/** In millimetres, from memory: fans for a case are hardly made thinner, so less room than this calls for no fan. */
const thinnestFan = 10;

const thinner = (spare: number): string =>
  spare < thinnestFan ? '' : `, or choose a fan there of ${showMm(spare)} or less`;

export const cardLength = gathersRule({
  id: 'clearance/card-length',
  title: 'The graphics card is no longer than the room for it',
  severity: 'blocker',
  basis: 'maker',
  sources: ['maker-data-sheet'],
  lesson: 'fit/how-parts-meet',

  gathers: {
    'graphics-card': ['lengthMm'],
    chassis: ['cardLengthMm', 'frontFansTakeCardRoom', 'fittedFans'],
    fan: ['thicknessMm'],
  },
  sees: ['fan-mount'],
  judge({ 'graphics-card': cards, chassis, fan: fans }, { joints }) {
    const housing = chassis[0];
    if (cards.length === 0 || housing === undefined) return doesNotApply;
    const unmeasured = cards.filter((card) => card.lengthMm === undefined);
    const length = Math.max(...cards.map((card) => card.lengthMm ?? 0));
    const longest = cards.filter((card) => card.lengthMm === length).map((card) => card.unit);
    if (housing.cardLengthMm === undefined) return cannotTell(`${housing.unit}.cardLengthMm`);

    const inFront: { field: string; thick: number | undefined; unit: UnitId }[] = [
      ...(housing.fittedFans ?? [])
        .filter((fitted) => fitted.panel === 'front')
        .map(({ thicknessMm }) => ({ field: 'fittedFans', thick: thicknessMm, unit: housing.unit })),
      ...fans
        .filter(({ unit }) =>
          joints.some(
            ({ kind, need, place }) =>
              kind === 'fan-mount' && need.startsWith(`${unit}/`) && place.startsWith(`${housing.unit}/fan-front-`),
          ),
        )
        .map(({ unit, thicknessMm }) => ({ field: 'thicknessMm', thick: thicknessMm, unit })),
    ];
    const counts = housing.frontFansTakeCardRoom !== false;
    const fanMm = counts ? Math.max(0, ...inFront.map(({ thick }) => thick ?? 0)) : 0;
    const room = tidy(housing.cardLengthMm - fanMm);
    const facts = { length, limit: housing.cardLengthMm, fanMm, room, over: tidy(length - room) };
    const about = [...longest, housing.unit];

    if (length > housing.cardLengthMm) return doesNotFit(facts, about);
    if (unmeasured.length > 0) return cannotTell(...unmeasured.map(({ unit }) => `${unit}.lengthMm`));
    if (inFront.length === 0 && housing.fittedFans === undefined && counts)
      return cannotTell(`${housing.unit}.fittedFans`);
    if (length > room && housing.frontFansTakeCardRoom === undefined)
      return cannotTell(`${housing.unit}.frontFansTakeCardRoom`);
    if (length > room) return doesNotFit(facts, about);
    const unknown = counts ? inFront.filter(({ thick }) => thick === undefined) : [];
    if (unknown.length > 0) return cannotTell(...unknown.map(({ unit, field }) => `${unit}.${field}`));
    return fits(facts, about);
  },

  say: {
    fits: ({ length, limit, fanMm, room }) =>
      fanMm > 0
        ? `The graphics card is ${showMm(length)} long; the case allows ${showMm(limit)}, less ${showMm(fanMm)} for the fan at the front: ${showMm(room)}.`
        : `The graphics card is ${showMm(length)} long; the case allows ${showMm(limit)}.`,
    doesNotFit: ({ length, limit, fanMm, room, over }) => ({
      headline: `The graphics card is ${showMm(over)} too long`,
      what:
        fanMm > 0
          ? `The graphics card is ${showMm(length)} long; the case allows ${showMm(limit)}, less ${showMm(fanMm)} for the fan at the front, which is ${showMm(room)}, so it is ${showMm(over)} too long.`
          : `The graphics card is ${showMm(length)} long; the case allows ${showMm(limit)}, so it is ${showMm(over)} too long.`,
      why:
        fanMm > 0
          ? 'The far end of the card meets the fan at the front before its bracket reaches the back of the case.'
          : 'The far end of the card meets the front of the case before its bracket reaches the back.',
      remedy:
        fanMm > 0 && length <= limit
          ? `Choose a card of ${showMm(room)} or less, or a case that allows ${showMm(tidy(length + fanMm))} or more, or leave the front in line with the card without a fan${thinner(tidy(limit - length))}.`
          : `Choose a card of ${showMm(room)} or less, or a case that allows ${showMm(tidy(length + fanMm))} or more.`,
    }),
    cannotTell: (missing) =>
      lacks(missing, 'graphics-card')
        ? {
            headline: 'How long is the graphics card?',
            what: "The graphics card's length is not recorded, so this fit is not judged.",
            findOut: "Read it on the maker's sheet, or measure from the bracket to the far end.",
          }
        : lacks(missing, 'fan')
          ? {
              headline: 'How thick is the front fan?',
              what: 'The thickness of the fan at the front is not recorded, so the room left for the card is not judged.',
              findOut: 'Measure its frame: 25 mm is usual, 15 mm is thin.',
            }
          : {
              headline: 'How long a card does the case allow?',
              what: 'The room for a card, or the fans at the front that share it, are not recorded, so this fit is not judged.',
              findOut:
                'Measure inside the case from the rear bracket to the first thing in front of the card, be it a fan or the wall.',
            },
  },

  examples: [
    {
      title: 'exactly at the limit, with no fan at the front',
      parts: {
        'graphics-card': { lengthMm: 312 },
        chassis: { cardLengthMm: 312, frontFansTakeCardRoom: true, fittedFans: [] },
      },
      verdict: 'fits',
    },
    {
      title: 'one millimetre over',
      parts: {
        'graphics-card': { lengthMm: 313 },
        chassis: { cardLengthMm: 312, frontFansTakeCardRoom: true, fittedFans: [] },
      },
      verdict: 'does-not-fit',
    },
    {
      title: 'exactly what the fitted fan leaves',
      parts: {
        'graphics-card': { lengthMm: 287 },
        chassis: {
          cardLengthMm: 312,
          frontFansTakeCardRoom: true,
          fittedFans: [{ id: 'front-1', panel: 'front', sizeMm: 120, thicknessMm: 25, pins: 3, milliamps: 180 }],
        },
      },
      verdict: 'fits',
    },
    {
      title: 'one millimetre more than an added fan leaves',
      parts: {
        'graphics-card': { lengthMm: 288 },
        chassis: {
          cardLengthMm: 312,
          frontFansTakeCardRoom: true,
          fittedFans: [],
          fanPanels: [{ id: 'front', sizesMm: [120], units: 4 }],
        },
        fan: { sizeMm: 120, thicknessMm: 25 },
      },
      verdict: 'does-not-fit',
    },
    {
      title: 'the fan is not in the way of the card',
      parts: {
        'graphics-card': { lengthMm: 312 },
        chassis: {
          cardLengthMm: 312,
          frontFansTakeCardRoom: false,
          fittedFans: [{ id: 'front-1', panel: 'front', sizeMm: 120, thicknessMm: 25, pins: 3, milliamps: 180 }],
        },
      },
      verdict: 'fits',
    },
    {
      title: "the card's length is not recorded",
      parts: {
        'graphics-card': { lengthMm: undefined },
        chassis: { cardLengthMm: 312, frontFansTakeCardRoom: true, fittedFans: [] },
      },
      verdict: 'cannot-tell',
    },
    {
      title: "the case's room is not recorded",
      parts: {
        'graphics-card': { lengthMm: 312 },
        chassis: { cardLengthMm: undefined, frontFansTakeCardRoom: true, fittedFans: [] },
      },
      verdict: 'cannot-tell',
    },
    { title: 'no card on the list', parts: { chassis: { cardLengthMm: 312 } }, verdict: 'does-not-apply' },
  ],
});
