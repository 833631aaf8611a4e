/**
 * Rates and currents of USB. `megabytes` is what is left after the line code, a second.
 * Source: `usb`.
 */
export const usbRates = {
  'usb-1': { name: 'USB 1.1', megabits: 12 },
  'usb-2': { name: 'USB 2.0', megabits: 480 },
  'usb-5': { name: 'USB 5 Gbit/s', megabits: 5_000, megabytes: 500 },
  'usb-10': { name: 'USB 10 Gbit/s', megabits: 10_000, megabytes: 1_212 },
  'usb-20': { name: 'USB 20 Gbit/s', megabits: 20_000, megabytes: 2_424 },
  'usb-40': { name: 'USB 40 Gbit/s', megabits: 40_000 },
  'usb-80': { name: 'USB 80 Gbit/s', megabits: 80_000 },
} as const;
export const usbSource = 'usb';

/** Milliamps at 5 V that a device may draw from a port, before and after it has been allowed more. */
export const usbCurrents = {
  'usb-2': { lowMilliamps: 100, highMilliamps: 500 },
  'usb-3': { lowMilliamps: 150, highMilliamps: 900 },
} as const;

/** Devices on one host controller, hubs counted in. */
export const usbDevices = 127;
