import type { PartOf } from '../../parts/part.ts';
import type { KindName, Lowered, Need, Place, Resource, Unit, Unrecorded } from '../model.ts';
import { panelUnits } from './amounts.ts';
import { lightLead } from './lights.ts';
import { cutOutsCounted, positionName, positionNames } from './motherboard.ts';
import { namer } from './names.ts';

type Case = PartOf<'chassis'>;

/** More fans than any panel holds. */
const mostFans = 9;
const smallestFanUnits = 2;

export function lower({ id, part }: Unit<Case>): Lowered {
  const name = namer(id);
  const cutOuts = part.cutOuts;
  const rows = cutOuts === undefined ? [] : positionNames.map((position) => [position, [`${id}/${position}`]] as const);
  const panels = fanPanels(id, part, name);
  return {
    needs: [
      ...frontLeads(id, part, name),
      ...fittedFans(id, part, name),
      ...(part.lights ?? []).map((light) => lightLead(name('light', light.id), id, light)),
    ],
    places: [
      {
        id: `${id}/tray`,
        part: id,
        kind: 'board-mount',
        rank: 0,
        attrs: { formFactors: part.formFactors },
        meters: Object.fromEntries(rows.map(([position, row]) => [position, [...row]])),
      },
      {
        id: `${id}/supply-bay`,
        part: id,
        kind: 'supply-mount',
        rank: 0,
        attrs: { shape: part.supplyShape, lengthMm: part.supplyLengthMm },
      },
      ...driveBays(id, part, name),
      ...panels.places,
    ],
    resources: [...cutOutResources(id, cutOuts), ...panels.resources],
    unrecorded: unrecorded(id, part),
  };
}

/** Two half slots at each cut-out, none below the last. */
const cutOutResources = (id: string, cutOuts: number | undefined): Resource[] =>
  cutOuts === undefined
    ? []
    : Array.from({ length: cutOutsCounted }, (_, n) => ({
        id: `${id}/${positionName(n + 1)}`,
        capacity: n < cutOuts ? 2 : 0,
      }));

/** Bays that share their room with the supply are filled after all others, so that it is kept free where it can be. */
const besideSupply = 100;

/** A bay takes every drive of its sizes where it records no lesser height or depth. */
const driveBays = (id: string, { driveBays: bays = [] }: Case, name: ReturnType<typeof namer>): Place[] =>
  bays.map(({ id: bay, sizes, heightMm, depthMm, supplyLengthMm }, index) => ({
    id: name('bay', bay),
    part: id,
    kind: 'drive-bay',
    rank: supplyLengthMm === undefined ? index : besideSupply + index,
    attrs: { bays: sizes, heightMm: heightMm ?? null, depthMm: depthMm ?? null },
  }));

/** What a bay's place is called: `chassis-1/bay-2`. */
export const bayPlace = (id: string, bay: string): string => namer(id)('bay', bay);

/** How a radiator's place is used when fans of the case come out for it. */
export const radiatorInstead = 'instead';
/** A radiator that has no room beside the fans of the case goes there when nothing else will do. */
const inPlaceOfFans = 100;

/**
 * A fitted fan holds its part of the panel. A radiator takes from the same row as fans; hands can take a fitted fan out
 * for it, which is another way of using the place.
 */
function fanPanels(id: string, part: Case, name: ReturnType<typeof namer>) {
  const places: Place[] = [];
  const resources: Resource[] = [];
  for (const { id: panel, sizesMm, units, radiatorsMm = [], depthMm, memoryHeightMm } of part.fanPanels ?? []) {
    const fitted = (part.fittedFans ?? []).filter((fan) => fan.panel === panel);
    const taken = fitted.reduce((sum, { sizeMm }) => sum + panelUnits(sizeMm), 0);
    const panelId = name('panel', panel);
    const free = Math.max(0, units - taken);
    resources.push({ id: panelId, capacity: free });
    for (let n = 1; n <= Math.min(mostFans, Math.floor(free / smallestFanUnits)); n += 1) {
      places.push({
        id: name('fan', `${panel}-${n}`),
        part: id,
        kind: 'fan-mount',
        rank: places.length,
        attrs: { sizesMm },
        meters: { panelUnits: [panelId] },
      });
    }
    if (radiatorsMm.length > 0) {
      const radiator: Place = {
        id: name('radiator', panel),
        part: id,
        kind: 'radiator-mount',
        rank: places.length,
        attrs: {
          radiatorsMm,
          depthMm,
          // Over the memory at the top, before the end of a card at the front.
          memoryHeightMm: panel === 'top' ? memoryHeightMm : null,
          cardRoomMm: panel === 'front' && part.frontFansTakeCardRoom !== false ? part.cardLengthMm : null,
        },
        meters: { panelUnits: [panelId] },
      };
      places.push(fitted.length === 0 ? radiator : { ...radiator, way: 'beside' });
      if (fitted.length > 0) {
        const heldId = name('panel', `${panel}-held`);
        resources.push({ id: heldId, capacity: Math.min(taken, units) });
        places.push({
          ...radiator,
          way: radiatorInstead,
          rank: inPlaceOfFans + radiator.rank,
          meters: { panelUnits: [panelId, heldId] },
        });
      }
    }
  }
  return { places, resources };
}

const frontLeads = (id: string, { frontLeads: leads = [] }: Case, name: ReturnType<typeof namer>): Need[] =>
  leads.map((plug) => ({
    id: name('front', plug),
    part: id,
    kind: 'front-panel',
    left: plug === 'power-button' ? 'blocker' : 'limit',
    attrs: { plug },
  }));

const fittedFans = (id: string, { fittedFans: fans = [] }: Case, name: ReturnType<typeof namer>): Need[] =>
  fans.map((fan) => ({
    id: name('fitted', fan.id),
    part: id,
    kind: 'fan-header',
    left: 'limit',
    attrs: { pins: fan.pins },
    draws: { milliamps: fan.milliamps },
  }));

const lists: readonly [keyof Case, KindName, Unrecorded['of']][] = [
  ['cutOuts', 'expansion-slot', 'limits'],
  ['driveBays', 'drive-bay', 'places'],
  ['fanPanels', 'fan-mount', 'places'],
  ['fanPanels', 'radiator-mount', 'places'],
  ['fittedFans', 'fan-header', 'needs'],
  ['frontLeads', 'front-panel', 'needs'],
];

const unrecorded = (id: string, part: Case): Unrecorded[] =>
  lists
    .filter(([field]) => part[field] === undefined)
    .map(([field, kind, of]) => ({ kind, part: id, field: `${id}.${field}`, of }));
