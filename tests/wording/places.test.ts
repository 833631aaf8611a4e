import { expect, test } from 'vitest';
import { placeName } from '../../src/wording/places.ts';

test.each([
  ['processor-socket', 'motherboard-1/socket', 'the processor socket'],
  ['cooler-mount', 'motherboard-1/cooler-mount', 'the cooler mounting of the board'],
  ['cooling', 'cooler-1/cooling', 'the cooler'],
  ['memory-slot', 'motherboard-1/memory-slot-a2', 'slot A2'],
  ['expansion-slot', 'motherboard-1/expansion-slot-x16-1', 'slot x16-1'],
  ['module-slot', 'motherboard-1/module-slot-m2-1', 'M.2 slot 1'],
  ['module-slot', 'motherboard-1/module-slot-rear', 'M.2 slot rear'],
  ['drive-data', 'motherboard-1/sata-3', 'data port 3'],
  ['drive-bay', 'chassis-1/bay-2', 'drive bay 2'],
  ['board-mount', 'chassis-1/tray', 'the tray'],
  ['supply-mount', 'chassis-1/supply-bay', 'the bay for the supply'],
  ['fan-mount', 'chassis-1/fan-front-2', 'the front, place 2'],
  ['board-power', 'power-supply-1/lead-board-plug-1', "plug 1 of the supply's board lead"],
  ['processor-power', 'power-supply-1/lead-processor-plug-2', "plug 2 of the supply's processor lead"],
  ['card-power', 'power-supply-1/lead-card-2-plug-1', "plug 1 of the supply's card lead 2"],
  ['drive-power', 'power-supply-1/lead-drives-1-plug-3', "plug 3 of the supply's drives lead 1"],
  ['fan-header', 'motherboard-1/header-cooler-fan', 'the fan header marked cooler-fan'],
  ['fan-header', 'motherboard-1/header-case-1', 'the fan header marked case-1'],
  ['front-panel', 'motherboard-1/front-power-button', 'the pins for the power button'],
  ['front-panel', 'motherboard-1/front-usb-2', 'the USB 2 pins'],
  ['front-panel', 'motherboard-1/front-usb-2-2', 'the USB 2 pins, block 2'],
  ['front-panel', 'motherboard-1/front-hd-audio', 'the audio pins'],
  ['picture', 'graphics-card-1/output-displayport-1', 'DisplayPort socket 1 of the graphics card'],
  ['picture', 'motherboard-1/picture-hdmi-1', 'HDMI socket 1 of the motherboard'],
] as const)('%s %s is %s', (kind, place, name) => {
  expect(placeName(kind, place)).toBe(name);
});

test('a place of a kind that has no wording of its own is called by the words of its id', () => {
  expect(placeName('keyboard', 'motherboard-1/keyboard-socket')).toBe('keyboard socket');
});
