/** Where the value of an attribute is recorded on a part. */
import type { PartClass } from '../../parts/part.ts';
import type { Attr, KindName } from '../model.ts';

/** Only those that are not recorded under their own name. */
const elsewhere: Partial<Record<`${PartClass} ${KindName}`, Record<Attr, string>>> = {
  'motherboard cooler-mount': { mountings: 'coolerMountings', bare: 'coolerMountings' },
  'cooler cooler-mount': { boxed: 'mountings' },
  'motherboard memory-slot': {
    generation: 'memory.generation',
    registered: 'memory.registered',
    sizeGb: 'memory.moduleGb',
  },
  'memory-module memory-slot': { sizeGb: 'capacityGb' },
  'storage-drive drive-bay': { bay: 'build' },
  'graphics-card card-power': { drawsW: 'sustainedW' },
  'expansion-card card-power': { drawsW: 'sustainedW' },
  'power-supply card-power': { senseW: 'leads.senseW' },
  // Measures of the parts beside the cooler; no field of its own.
  'cooler radiator-mount': { memoryMm: 'memoryBeside', reachMm: 'cardBeside' },
  'chassis radiator-mount': {
    radiatorsMm: 'fanPanels.radiatorsMm',
    depthMm: 'fanPanels.depthMm',
    memoryHeightMm: 'fanPanels.memoryHeightMm',
    cardRoomMm: 'cardLengthMm',
  },
  'chassis supply-mount': { shape: 'supplyShape', lengthMm: 'supplyLengthMm' },
  'monitor picture': { plugs: 'sockets', signals: 'sockets' },
  'bus-card expansion-slot': { bus: 'buses' },
  'motherboard memory-bank': { largestKb: 'memoryBanks', slowestNs: 'memoryBanks' },
  'bus-card memory-bank': { largestKb: 'memoryBanks', slowestNs: 'memoryBanks' },
  'motherboard coprocessor-socket': { socket: 'coprocessorSocket' },
  'motherboard processor-socket': { boardSocket: 'socket' },
  'processor-board processor-socket': { boardSocket: 'socket' },
  'floppy-drive drive-bay': { bay: 'size', heightMm: 'size' },
  'fixed-disk drive-bay': { bay: 'size', heightMm: 'size' },
  'floppy-drive drive-power': { plug: 'powerPlug' },
};

/** `supplyLengthMm` for the length that a case takes at its supply mount. */
export const fieldOf = (partClass: PartClass, kind: KindName, attr: Attr): string =>
  elsewhere[`${partClass} ${kind}`]?.[attr] ?? attr;
