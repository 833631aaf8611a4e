/** The kinds of the fit model with plain test names, so that the search is tested without any rule. */
import type { Kinds, Test } from '../../../src/fit/model.ts';

const shares = (need: string, place = need): Test => ({ name: `test/${need}`, op: 'shares', need, place });
const atMost = (need: string, place = need): Test => ({ name: `test/${need}`, op: 'atMost', need, place });

export const kinds: Kinds = {
  'processor-socket': { tests: [shares('socket')] },
  'cooler-mount': { tests: [shares('mountings')] },
  cooling: { tests: [] },
  'memory-slot': { tests: [shares('generation'), atMost('sizeGb')], hungry: 'channelMib' },
  'memory-bank': { tests: [shares('pins'), atMost('sizeMb')] },
  'expansion-slot': { tests: [shares('bus'), atMost('lanes', 'lengthLanes')], hungry: 'busMBps' },
  'module-slot': {
    tests: [shares('key'), shares('lengthMm', 'lengthsMm'), shares('link', 'links')],
    hungry: 'busMBps',
  },
  'drive-data': { tests: [shares('plug')] },
  'drive-bay': { tests: [shares('bay', 'bays')] },
  'board-mount': { tests: [shares('formFactor', 'formFactors')] },
  'supply-mount': { tests: [shares('shape'), atMost('lengthMm')] },
  'fan-mount': { tests: [shares('sizeMm')] },
  'radiator-mount': { tests: [shares('sizeMm')] },
  'board-power': { tests: [shares('plug')] },
  'processor-power': { tests: [shares('plug')] },
  'card-power': { tests: [shares('plug')], hungry: 'leadDeciwatts' },
  'drive-power': { tests: [shares('plug')], hungry: 'leadDeciwatts' },
  'fan-header': { tests: [], hungry: 'mA' },
  'front-panel': { tests: [shares('plug')] },
  picture: { tests: [shares('plugs', 'plug'), shares('end')], hungry: 'pictureMbps' },
  keyboard: { tests: [shares('plug')] },
  pointer: { tests: [shares('plug')] },
  mains: { tests: [shares('plug')] },
  setting: { tests: [shares('block')] },
  'coprocessor-socket': { tests: [shares('socket')] },
  'light-header': { tests: [shares('plug')], hungry: 'milliamps' },
  'monitor-mount': { tests: [shares('holesMm')] },
};
