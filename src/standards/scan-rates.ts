/**
 * Scan rates of the display cards of about 1990: the clock, and the totals across and down.
 * `digital` cards send a wire a colour, to a nine-pin socket; `analog` ones a voltage a colour, to fifteen pins.
 * Sources: `scan-rates` for the rates; clock and totals are from memory and agree with them.
 */
export const scanRates = {
  'mono-350': {
    name: 'digital, one colour, 350 lines',
    signal: 'digital',
    widthPx: 720,
    heightPx: 350,
    pixelClockKHz: 16257,
    hTotal: 882,
    vTotal: 370,
    source: 'scan-rates',
  },
  'colour-200': {
    name: 'digital, colour, 200 lines',
    signal: 'digital',
    widthPx: 640,
    heightPx: 200,
    pixelClockKHz: 14318.18,
    hTotal: 912,
    vTotal: 262,
    source: 'scan-rates',
  },
  'colour-350': {
    name: 'digital, colour, 350 lines',
    signal: 'digital',
    widthPx: 640,
    heightPx: 350,
    pixelClockKHz: 16257,
    hTotal: 744,
    vTotal: 366,
    source: 'scan-rates',
  },
  'vga-480': {
    name: 'VGA, 480 lines',
    signal: 'analog',
    widthPx: 640,
    heightPx: 480,
    pixelClockKHz: 25175,
    hTotal: 800,
    vTotal: 525,
    source: 'scan-rates',
  },
  'vga-400': {
    name: 'VGA, 400 lines',
    signal: 'analog',
    widthPx: 640,
    heightPx: 400,
    pixelClockKHz: 25175,
    hTotal: 800,
    vTotal: 449,
    source: 'scan-rates',
  },
  'vga-text': {
    name: 'VGA, text',
    signal: 'analog',
    widthPx: 720,
    heightPx: 400,
    pixelClockKHz: 28322,
    hTotal: 900,
    vTotal: 449,
    source: 'scan-rates',
  },
} as const;
