/** What people read for the words that files are written in. */
import { formFactors } from '../standards/boards.ts';
import { memoryGenerations } from '../standards/memory.ts';
import { supplyShapes } from '../standards/supplies.ts';

const names: Readonly<Record<string, string>> = {
  atx: formFactors.atx.name,
  'micro-atx': formFactors['micro-atx'].name,
  'mini-itx': formFactors['mini-itx'].name,
  sfx: supplyShapes.sfx.name,
  ddr4: memoryGenerations.ddr4.name,
  ddr5: memoryGenerations.ddr5.name,
  'atx-24': '24-pin board plug',
  'eps-8': '8-pin processor plug',
  'eps-4': '4-pin processor plug',
  'pcie-6': '6-pin card plug',
  'pcie-8': '8-pin card plug',
  '12v-2x6': '16-pin card plug',
  'sata-power': 'SATA power plug',
  'peripheral-4': '4-pin drive plug',
  hdmi: 'HDMI',
  displayport: 'DisplayPort',
  'dvi-d': 'DVI',
  vga: 'VGA',
  'power-button': 'power button',
  'usb-2': 'USB 2',
  'usb-3': 'USB 3',
  'usb-c': 'USB-C',
  'hd-audio': 'audio',
  pcie: 'PCIe',
  sata: 'SATA',
  m: 'key M',
  b: 'key B',
  '2.5': '2.5 inch',
  '3.5': '3.5 inch',
};

/** "ddr5" is read "DDR5"; a name that a maker gave, such as the socket `k4`, is read as it stands. */
export const termName = (term: string): string => names[term] ?? term;
