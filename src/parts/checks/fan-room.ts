import { ofClass, type SenseCheck } from './check.ts';

const unitMm = 60;

/** The fans in a case as sold fit on its panels. */
export const fanRoom: SenseCheck = {
  id: 'fan-room',
  check: (parts) =>
    ofClass(parts, 'chassis').flatMap(({ id, fanPanels, fittedFans = [] }) =>
      (fanPanels ?? []).flatMap(({ id: panel, units }) => {
        const held = fittedFans.filter((fan) => fan.panel === panel);
        const taken = held.reduce((sum, { sizeMm }) => sum + Math.ceil(sizeMm / unitMm), 0);
        if (taken <= units) return [];
        const at = fittedFans.findIndex((fan) => fan.panel === panel);
        const expected = `fans of ${units} units or less, which the ${panel} panel has`;
        return [{ part: id, path: ['fittedFans', at], actual: `fans of ${taken} units at the ${panel}`, expected }];
      }),
    ),
};
