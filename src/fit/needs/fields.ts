/** Where the value of an attribute is recorded on a part. */
import type { PartClass } from '../../parts/part.ts';
import type { Attr, KindName } from '../model.ts';

/** Only those that are not recorded under their own name. */
const elsewhere: Partial<Record<`${PartClass} ${KindName}`, Record<Attr, string>>> = {
  'motherboard cooler-mount': { mountings: 'coolerMountings' },
  'motherboard memory-slot': {
    generation: 'memory.generation',
    registered: 'memory.registered',
    sizeGb: 'memory.moduleGb',
  },
  'memory-module memory-slot': { sizeGb: 'capacityGb' },
  'storage-drive drive-bay': { bay: 'build' },
  'chassis supply-mount': { shape: 'supplyShape', lengthMm: 'supplyLengthMm' },
  'monitor picture': { plugs: 'sockets' },
};

/** `supplyLengthMm` for the length that a case takes at its supply mount. */
export const fieldOf = (partClass: PartClass, kind: KindName, attr: Attr): string =>
  elsewhere[`${partClass} ${kind}`]?.[attr] ?? attr;
