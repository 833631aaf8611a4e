// BUS-044 to BUS-062: encyclopaedia article "USB", version and power tables (basis: read; BUS-062, BUS-063: computed).
import { describe, expect, it } from 'vitest';
import { usbCurrents, usbDevices, usbRates } from '../../src/standards/usb.ts';

/** id, rate, Mbit/s. */
const rates: readonly (readonly [string, keyof typeof usbRates, number])[] = [
  ['BUS-045', 'usb-1', 12],
  ['BUS-046', 'usb-2', 480],
  ['BUS-047', 'usb-5', 5_000],
  ['BUS-048', 'usb-10', 10_000],
  ['BUS-050', 'usb-20', 20_000],
  ['BUS-051', 'usb-40', 40_000],
  ['BUS-052', 'usb-80', 80_000],
];

/** id, current, mA, and the watts printed beside it. */
const currents: readonly (readonly [string, number, number, number])[] = [
  ['BUS-053', usbCurrents['usb-2'].lowMilliamps, 100, 0.5],
  ['BUS-054', usbCurrents['usb-2'].highMilliamps, 500, 2.5],
  ['BUS-055', usbCurrents['usb-3'].lowMilliamps, 150, 0.75],
  ['BUS-056', usbCurrents['usb-3'].highMilliamps, 900, 4.5],
];

describe('USB', () => {
  it.each(rates)('%s: %s runs at %d Mbit/s', (_id, rate, megabits) => {
    expect(usbRates[rate].megabits).toBe(megabits);
  });

  it.each(currents)('%s: a device draws %d mA, which is the printed power at 5 V', (_id, ours, milliamps, watts) => {
    expect(ours).toBe(milliamps);
    expect((ours * 5) / 1000).toBeCloseTo(watts, 10);
  });

  it('carries 500, 1,212 and 2,424 MB/s after its line code (BUS-062, BUS-063, BUS-050)', () => {
    expect(usbRates['usb-5'].megabytes).toBe((5000 * 8) / 10 / 8);
    expect(usbRates['usb-10'].megabytes).toBe(Math.floor((10_000 * 128) / 132 / 8));
    expect(usbRates['usb-20'].megabytes).toBe(Math.floor((20_000 * 128) / 132 / 8));
  });

  it('has no 1,212 MB/s for two lanes of 5 Gbit/s: the printed figure disagrees with its line code (BUS-064, exact 1,000)', () => {
    expect(2 * usbRates['usb-5'].megabytes).toBe(1000);
  });

  it('takes 127 devices to a controller (BUS-061)', () => {
    expect(usbDevices).toBe(127);
  });
});
