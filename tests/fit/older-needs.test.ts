import { describe, expect, test } from 'vitest';
import { aPart } from '../../src/fit/examples.ts';
import type { KindName, Lowered, Unit } from '../../src/fit/model.ts';
import { lower, lowerAll } from '../../src/fit/needs/index.ts';
import type { Part, PartClass, PartOf } from '../../src/parts/part.ts';

/** The plain part of about 1990 with fields changed; a field given as undefined is left out. */
function unit<C extends PartClass>(partClass: C, change: Partial<Record<keyof PartOf<C>, unknown>> = {}): Unit {
  const fields = Object.entries({ ...aPart(partClass, 'vintage'), ...change });
  const recorded = fields.filter(([, value]) => value !== undefined);
  return { id: `${partClass}-1`, part: Object.fromEntries(recorded) as unknown as Part };
}

const need = ({ needs }: Lowered, id: string) => needs.find((one) => one.id === id);
const place = ({ places }: Lowered, id: string) => places.find((one) => one.id === id);
const capacity = ({ resources }: Lowered, id: string) => resources.find((one) => one.id === id)?.capacity;
const placeIds = ({ places }: Lowered, kind: KindName) => places.filter((one) => one.kind === kind).map(({ id }) => id);
const open = ({ unrecorded }: Lowered) => unrecorded.map(({ kind, field, of }) => `${kind} ${field} ${of}`);

describe('board', () => {
  const board = (change: Parameters<typeof unit<'motherboard'>>[1] = {}) => lower(unit('motherboard', change));

  test('a short slot takes 8-bit cards and has nothing for a high line; a long one has no such limit', () => {
    const short = place(board(), 'motherboard-1/bus-slot-short-1');
    expect(short?.attrs).toEqual({ bus: ['isa-8'], lengthLanes: null });
    expect(short?.meters?.['high-line']).toEqual(['motherboard-1/bus-slot-short-1/high-line']);
    expect(capacity(board(), 'motherboard-1/bus-slot-short-1/high-line')).toBe(0);
    const long = place(board(), 'motherboard-1/bus-slot-long-1');
    expect(long?.attrs['bus']).toEqual(['isa-8', 'isa-16']);
    expect(long?.meters).not.toHaveProperty('high-line');
  });

  test('a card covers the cut-out of its slot alone', () => {
    expect(place(board(), 'motherboard-1/bus-slot-long-3')?.meters?.['halfSlots']).toEqual(['motherboard-1/pos-3']);
    expect(capacity(board(), 'motherboard-1/pos-3')).toBe(2);
  });

  test('lines that the board keeps have nothing left', () => {
    expect(capacity(board(), 'bus/irq-8')).toBe(0);
    expect(capacity(board(), 'bus/irq-5')).toBeUndefined();
  });

  test('a bank is one place for as many modules as it has sockets', () => {
    expect(place(board(), 'motherboard-1/bank-1')).toMatchObject({
      kind: 'memory-bank',
      fill: 4,
      rank: 1,
      attrs: { pins: '30', largestKb: 4096, slowestNs: 80, slots: 4 },
    });
  });

  test('no coprocessor socket is not the same as none recorded', () => {
    expect(placeIds(board({ coprocessorSocket: null }), 'coprocessor-socket')).toEqual([]);
    expect(open(board({ coprocessorSocket: null }))).toEqual(open(board()));
    expect(open(board({ coprocessorSocket: undefined }))).toContain(
      'coprocessor-socket motherboard-1.coprocessorSocket places',
    );
  });

  test('a socket for keyboard or mouse is one thing that both its places draw on', () => {
    const lowered = board({ inputSockets: [{ id: 'either', plug: 'ps2', for: ['keyboard', 'pointer'] }] });
    for (const kind of ['keyboard', 'pointer'] as const) {
      expect(place(lowered, `motherboard-1/input-either-${kind}`)).toMatchObject({
        kind,
        draws: { inputs: 1 },
        meters: { inputs: ['motherboard-1/input-either'] },
      });
    }
    expect(capacity(lowered, 'motherboard-1/input-either')).toBe(1);
  });

  test('the end of every ribbon comes before the middle of any', () => {
    const dataSockets = [
      { id: 'disk', plug: 'ata-40' },
      { id: 'floppy', plug: 'floppy-34', kilobits: 500 },
    ];
    const { places } = board({ dataSockets });
    const ribbons = places.filter(({ kind }) => kind === 'drive-data').toSorted((a, b) => a.rank - b.rank);
    expect(ribbons.map(({ id, attrs }) => [id, attrs['plug']])).toEqual([
      ['motherboard-1/data-disk-end', ['ata-40']],
      ['motherboard-1/data-floppy-end', ['floppy-pins', 'floppy-edge']],
      ['motherboard-1/data-disk-middle', ['ata-40']],
      ['motherboard-1/data-floppy-middle', ['floppy-pins', 'floppy-edge']],
    ]);
  });

  test('a socket without a ribbon offers itself, for a ribbon that is on the list', () => {
    const lowered = board({ dataSockets: [{ id: 'floppy', plug: 'floppy-34', ribbon: [] }] });
    expect(placeIds(lowered, 'drive-data')).toEqual(['motherboard-1/data-floppy-socket']);
    expect(place(lowered, 'motherboard-1/data-floppy-socket')?.attrs['plug']).toEqual(['floppy-34']);
  });

  test('one that records its banks and slots says that it has none of the newer sort', () => {
    const lowered = board({ memory: undefined, expansionSlots: undefined, sataPorts: undefined, dataSockets: [] });
    expect(open(lowered).filter((one) => /memory|expansion|drive-data/.test(one))).toEqual([]);
  });

  test('what it keeps of the bus, not recorded, leaves every setting open', () => {
    expect(open(board({ takenLines: undefined }))).toContain('setting motherboard-1.takenLines limits');
  });
});

describe('bus card', () => {
  test('each jumper block is a need of its own, with its own positions to be joined to', () => {
    const lowered = lower(unit('bus-card'));
    expect(need(lowered, 'bus-card-1/jumper-serial')).toMatchObject({
      kind: 'setting',
      attrs: { block: 'bus-card-1/jumper-serial' },
    });
    expect(place(lowered, 'bus-card-1/jumper-serial-at-2')).toMatchObject({
      rank: 1,
      attrs: { block: 'bus-card-1/jumper-serial' },
      draws: { 'irq-3': 1, 'io-2f8': 1 },
      meters: { 'irq-3': ['bus/irq-3'], 'io-2f8': ['bus/io-2f8'] },
      after: ['bus-card-1/edge'],
    });
    expect(capacity(lowered, 'bus/io-2f8')).toBe(1);
  });

  test('lines that no jumper moves are a block with one position, and a high one reaches for the slot', () => {
    const lowered = lower(unit('bus-card'));
    const kept = place(lowered, 'bus-card-1/lines-kept');
    // Interrupt 14 is on the long part of the slot; 6 is not.
    expect(kept?.draws).toEqual({ 'irq-6': 1, 'irq-14': 1, 'io-3f0': 1, 'io-1f0': 1, 'high-line': 1 });
    expect(kept?.meters).not.toHaveProperty('high-line');
    expect(need(lowered, 'bus-card-1/edge')?.carries).toEqual(['high-line']);
  });

  test('interrupt 9 is on the short part of the slot', () => {
    const lowered = lower(unit('bus-card', { lines: ['irq-9'], settings: [] }));
    expect(place(lowered, 'bus-card-1/lines-kept')?.draws).toEqual({ 'irq-9': 1 });
  });

  test('a 16-bit card that also works short is a card for both', () => {
    const lowered = lower(unit('bus-card', { buses: ['isa-16', 'isa-16-short'] }));
    expect(need(lowered, 'bus-card-1/edge')?.attrs['bus']).toEqual(['isa-16', 'isa-8']);
  });

  test('it offers what it does: a sound card without sockets for drives lacks no record of them', () => {
    const bare = { outputs: undefined, dataSockets: undefined, inputSockets: undefined, memoryBanks: undefined };
    expect(open(lower(unit('bus-card', { ...bare, roles: ['sound'] })))).toEqual([]);
    expect(open(lower(unit('bus-card', { ...bare, roles: ['display', 'ports'] })))).toEqual([
      'picture bus-card-1.outputs places',
      'keyboard bus-card-1.inputSockets places',
      'pointer bus-card-1.inputSockets places',
    ]);
  });

  test('jumpers that are not recorded are reported, but a card that sets itself has none', () => {
    const bare = { settings: undefined, lines: undefined };
    expect(open(lower(unit('bus-card', bare)))).toEqual([
      'setting bus-card-1.settings needs',
      'setting bus-card-1.lines needs',
    ]);
    expect(open(lower(unit('bus-card', { ...bare, buses: ['pci-5v'] })))).toEqual([]);
  });
});

describe('drives', () => {
  test('a diskette drive needs a bay that opens to the front', () => {
    const bay = (size: string | undefined) =>
      need(lower(unit('floppy-drive', { size })), 'floppy-drive-1/bay')?.attrs['bay'];
    expect(bay('3.5')).toEqual(['3.5-open']);
    expect(bay('5.25')).toEqual(['5.25', '5.25-full']);
    expect(bay(undefined)).toBeUndefined();
  });

  test('a diskette drive draws its data rate', () => {
    const lowered = lower(unit('floppy-drive', { format: '3.5-2880' }));
    expect(need(lowered, 'floppy-drive-1/data')?.draws).toEqual({ kilobits: 1000 });
  });

  test('a fixed disk wants a lead that bears its start; without that figure, what it draws at work', () => {
    const draw = (milliwatts: number | undefined, spinUpMilliwatts: number | undefined) =>
      need(lower(unit('fixed-disk', { milliwatts, spinUpMilliwatts })), 'fixed-disk-1/power')?.draws;
    expect(draw(8000, 18_050)).toEqual({ leadDeciwatts: 181 });
    expect(draw(8000, undefined)).toEqual({ leadDeciwatts: 80 });
    expect(draw(undefined, undefined)).toBeUndefined();
  });
});

describe('processor', () => {
  test('one that stays cool needs no cooler', () => {
    expect(lower(unit('processor')).needs.map(({ kind }) => kind)).toEqual(['processor-socket']);
  });

  test('a plug-in board takes the place of the processor, or the socket beside it', () => {
    const socket = (leavesProcessorIn: boolean | undefined) =>
      need(lower(unit('processor-board', { leavesProcessorIn })), 'processor-board-1/socket');
    expect(socket(false)).toMatchObject({ kind: 'processor-socket', attrs: { socket: null, boardSocket: 'p-132' } });
    expect(socket(undefined)).toMatchObject({ kind: 'processor-socket' });
    expect(socket(true)).toMatchObject({ kind: 'coprocessor-socket', attrs: { socket: 'p-132' } });
  });
});

describe('monitor', () => {
  test('an analog one draws analog, which no digital socket passes', () => {
    const picture = need(lower(unit('monitor')), 'monitor-1/picture');
    expect(picture?.attrs['signals']).toEqual(['analog']);
    expect(picture?.draws?.['analog']).toBe(1);
    const outputs = [
      { id: 'd', plug: 'dvi-d' },
      { id: 'i', plug: 'dvi-i' },
    ];
    const card = lower(unit('graphics-card', { outputs }));
    const [meter = ''] = place(card, 'graphics-card-1/output-d')?.meters?.['analog'] ?? [];
    expect(capacity(card, meter)).toBe(0);
    expect(place(card, 'graphics-card-1/output-i')?.meters).not.toHaveProperty('analog');
  });

  test('plugs that settle the signal by themselves leave none to compare', () => {
    const sockets = [{ id: 'hdmi-1', plug: 'hdmi' }];
    expect(need(lower(unit('monitor', { sockets })), 'monitor-1/picture')?.attrs['signals']).toBeNull();
  });
});

describe('mains', () => {
  const leads = (...units: Unit[]) => lowerAll(units).needs.filter(({ kind }) => kind === 'mains');

  test('leads are counted only where the list holds a strip', () => {
    const [supply, monitor, strip] = [unit('power-supply'), unit('monitor'), unit('power-strip')];
    expect(leads(supply, monitor)).toEqual([]);
    expect(leads(supply, monitor, strip).map(({ id }) => id)).toEqual(['power-supply-1/mains', 'monitor-1/mains']);
  });

  test('the outlet of a supply is live once the supply is, and for leads made for it', () => {
    const lowered = lowerAll([unit('power-supply'), unit('monitor'), unit('power-strip')]);
    expect(place(lowered, 'power-supply-1/monitor-outlet')?.after).toEqual(['power-supply-1/mains']);
    expect(need(lowered, 'monitor-1/mains')?.attrs['plug']).toEqual(['wall-socket', 'supply-outlet']);
    expect(need(lowered, 'power-supply-1/mains')?.attrs['plug']).toEqual(['wall-socket']);
  });
});
