/**
 * Lists of about 1990 as somebody at the bench would judge them. Every verdict was argued by hand, from the parts'
 * files and the practice of the time, before the core was asked.
 */
import { describe, expect, test } from 'vitest';
import { verdictOf } from '../../src/fit/examples.ts';
import { judgeList } from '../../src/fit/judge.ts';
import type { Verdict } from '../../src/fit/model.ts';
import type { Overall } from '../../src/fit/report.ts';
import type { PartsList } from '../../src/parts/part.ts';
import { content } from '../helpers/content.ts';

/** `tammer-1024-80*4` is four of them. */
const asList = (written: string): PartsList =>
  written.split(' ').map((line) => {
    const [part = '', quantity = '1'] = line.split('*');
    return { part, quantity: Number(quantity) };
  });

type Case = { why: string; list: string; overall: Overall; rules: Record<string, Verdict> };

const cases: readonly Case[] = [
  {
    why: 'A 32-bit bus reads four modules of eight bits at once: two of them are half a bank.',
    list: 'hulvane-desk-8 eskerby-wide velm-three-25 tammer-1024-80*2 sprillock-all sollen-array-256 sollen-tint-14 thrannet-35-1440 hask-120 dray-desk-200 drenning-plain-din yarrant-base-4 tollick-four',
    overall: 'does-not-fit',
    rules: { 'memory/bank-fill': 'does-not-fit' },
  },
  {
    why: 'Each bank is of one sort in itself: 4 MB and 16 MB, of 32 MB.',
    list: 'hulvane-desk-8 eskerby-wide velm-three-25 tammer-1024-80*4 sprillock-all sollen-array-256 sollen-tint-14 thrannet-35-1440 hask-120 dray-desk-200 drenning-plain-din yarrant-base-4 tollick-four vossock-4096-70*4',
    overall: 'fits',
    rules: { 'memory/bank-fill': 'fits', 'memory/bank-total': 'fits' },
  },
  {
    why: 'Two sizes in one bank of four fill none.',
    list: 'hulvane-desk-8 eskerby-wide velm-three-25 tammer-1024-80*2 sprillock-all sollen-array-256 sollen-tint-14 thrannet-35-1440 hask-120 dray-desk-200 drenning-plain-din yarrant-base-4 tollick-four vossock-4096-70*2',
    overall: 'does-not-fit',
    rules: { 'memory/bank-fill': 'does-not-fit' },
  },
  {
    why: 'Pins for holes do not go into sockets for contacts.',
    list: 'hulvane-desk-8 eskerby-wide velm-three-25 sprillock-all sollen-array-256 sollen-tint-14 thrannet-35-1440 hask-120 dray-desk-200 drenning-plain-din yarrant-base-4 tollick-four vossock-pin-1024*4',
    overall: 'does-not-fit',
    rules: { 'memory/bank-pins': 'does-not-fit' },
  },
  {
    why: 'Eight chips in place of nine: the board stops at the missing parity bit.',
    list: 'hulvane-desk-8 eskerby-wide velm-three-25 sprillock-all sollen-array-256 sollen-tint-14 thrannet-35-1440 hask-120 dray-desk-200 drenning-plain-din yarrant-base-4 tollick-four vossock-1024-eight*4',
    overall: 'does-not-fit',
    rules: { 'memory/bank-parity': 'does-not-fit', 'memory/bank-fill': 'fits' },
  },
  {
    why: '80 ns where the board at 33 MHz asks for 70.',
    list: 'hulvane-desk-8 tammer-1024-80*4 sprillock-all sollen-array-256 sollen-tint-14 thrannet-35-1440 hask-120 dray-desk-200 drenning-plain-din yarrant-base-4 tollick-four eskerby-wide-33 velm-three-33',
    overall: 'does-not-fit',
    rules: { 'memory/bank-speed': 'does-not-fit' },
  },
  {
    why: 'Nobody knows how fast the modules are, nor whether they have parity.',
    list: 'hulvane-desk-8 eskerby-wide velm-three-25 sprillock-all sollen-array-256 sollen-tint-14 thrannet-35-1440 hask-120 dray-desk-200 drenning-plain-din yarrant-base-4 tollick-four corrow-stray-1024*4',
    overall: 'cannot-tell',
    rules: { 'memory/bank-speed': 'cannot-tell', 'memory/bank-parity': 'cannot-tell' },
  },
  {
    why: 'The board is full at 4 MB; a memory card is what one buys then.',
    list: 'hulvane-desk-8 eskerby-two velm-two-12 corrow-1024-100*8 sprillock-all dorrenby-mono dorrenby-amber-12 thrannet-525-1200 marl-40 dray-desk-200 drenning-clatter yarrant-easel-1 tollick-four vossock-shelf',
    overall: 'fits',
    rules: { 'memory/bank-total': 'fits', 'memory/bank-fill': 'fits' },
  },
  {
    why: 'Five cards with the long edge, four long slots.',
    list: 'hulvane-desk-8 eskerby-narrow velm-narrow-20 tammer-1024-80*4 sollen-paper-14 thrannet-35-1440 hask-80 dray-desk-200 drenning-plain-din yarrant-base-4 tollick-four sollen-array-1024 sprillock-all sprillock-sound sprillock-net vossock-shelf',
    overall: 'does-not-fit',
    rules: { 'expansion/slot-free': 'does-not-fit' },
  },
  {
    why: 'The printer port of the one-colour card and the sound card both keep interrupt 7.',
    list: 'hulvane-desk-8 eskerby-two velm-two-12 corrow-1024-100*2 sprillock-all dorrenby-mono dorrenby-amber-12 thrannet-525-1200 marl-40 dray-desk-200 drenning-clatter yarrant-easel-1 tollick-four sprillock-sound-old',
    overall: 'does-not-fit',
    rules: { 'expansion/bus-lines': 'does-not-fit' },
  },
  {
    why: "Interrupt 3 is the second serial port's, 7 the one-colour card's and so 5 the printer port's: the network card has 3 or 5.",
    list: 'hulvane-desk-8 eskerby-narrow velm-narrow-20 tammer-1024-80*2 sprillock-disk sprillock-ports thrannet-35-1440 hask-80 dray-desk-200 drenning-plain-din yarrant-base-4 tollick-four dorrenby-mono dorrenby-amber-12 sprillock-net-short',
    overall: 'does-not-fit',
    rules: { 'expansion/bus-lines': 'does-not-fit' },
  },
  {
    why: 'A card of 250 mm where the drive cage ends cards at 240.',
    list: 'eskerby-four-local velm-four-25 tammer-72-8192 sollen-array-local sprillock-all sollen-tint-16 thrannet-35-1440 hask-540 hulvane-200 drenning-plain-din yarrant-easel-2 tollick-four hulvane-low-desk',
    overall: 'does-not-fit',
    rules: { 'clearance/bus-card': 'does-not-fit' },
  },
  {
    why: 'A disk on two ribbons and a controller with one of 40 pins.',
    list: 'hulvane-desk-8 eskerby-wide velm-three-25 tammer-1024-80*4 sprillock-all sollen-array-256 sollen-tint-14 thrannet-35-1440 dray-desk-200 drenning-plain-din yarrant-base-4 tollick-four marl-older-20',
    overall: 'does-not-fit',
    rules: { 'storage/drive-port': 'does-not-fit' },
  },
  {
    why: '1,024 cylinders of 16 heads and 63 sectors are 504 binary megabytes; the disk has 516. It works with less.',
    list: 'hulvane-desk-8 eskerby-wide velm-three-25 tammer-1024-80*4 sprillock-all sollen-array-256 sollen-tint-14 thrannet-35-1440 dray-desk-200 drenning-plain-din yarrant-base-4 tollick-four hask-540',
    overall: 'fits',
    rules: { 'storage/disk-addressing': 'does-not-fit' },
  },
  {
    why: 'A disk of full height, and bays of half.',
    list: 'hulvane-desk-8 eskerby-narrow velm-narrow-20 tammer-1024-80*2 sprillock-ports sollen-array-256 sollen-paper-14 thrannet-35-1440 dray-desk-200 drenning-plain-din yarrant-base-4 tollick-four sprillock-older-disk thrannet-full-40',
    overall: 'does-not-fit',
    rules: { 'mounting/drive-bay': 'does-not-fit' },
  },
  {
    why: 'A diskette ribbon tells two drives apart, whatever their plugs.',
    list: 'hulvane-desk-8 eskerby-wide velm-three-25 tammer-1024-80*4 sprillock-all sollen-array-256 sollen-tint-14 thrannet-35-1440 hask-120 dray-desk-200 drenning-plain-din yarrant-base-4 tollick-four thrannet-525-1200 thrannet-525-360',
    overall: 'does-not-fit',
    rules: { 'storage/drive-port': 'does-not-fit' },
  },
  {
    why: '1.44 M runs at 500 kbit/s and the controller takes 300: the drive reads the diskettes, the machine does not.',
    list: 'hulvane-desk-8 eskerby-narrow velm-narrow-20 tammer-1024-80*2 sollen-array-256 sollen-paper-14 thrannet-35-1440 dray-desk-200 drenning-plain-din yarrant-base-4 tollick-four sprillock-short-floppy',
    overall: 'does-not-fit',
    rules: { 'storage/system-diskettes': 'does-not-fit', 'storage/floppy-rate': 'does-not-fit' },
  },
  {
    why: 'A drive of 1.2 M reads 360 K.',
    list: 'hulvane-desk-8 eskerby-two velm-two-12 corrow-1024-100*2 sprillock-all dorrenby-mono dorrenby-amber-12 thrannet-525-1200 marl-40 dray-desk-200 drenning-clatter tollick-four yarrant-base-3',
    overall: 'fits',
    rules: { 'storage/system-diskettes': 'fits' },
  },
  {
    why: 'No small bay opens to the front, so no diskette goes in.',
    list: 'eskerby-wide velm-three-25 tammer-1024-80*4 sprillock-all sollen-array-256 sollen-tint-14 thrannet-35-1440 hask-120 dray-desk-200 drenning-plain-din yarrant-base-4 tollick-four hulvane-tower-5',
    overall: 'does-not-fit',
    rules: { 'mounting/drive-bay': 'does-not-fit' },
  },
  {
    why: 'The drive reads 1.2 M, its controller of 300 kbit/s does not.',
    list: 'hulvane-desk-8 eskerby-two velm-two-12 corrow-1024-100*2 dorrenby-mono dorrenby-amber-12 thrannet-525-1200 dray-desk-200 drenning-clatter tollick-four sprillock-short-floppy thrannet-box-1200',
    overall: 'does-not-fit',
    rules: { 'storage/diskette-format': 'does-not-fit' },
  },
  {
    why: '18.43 kHz into a monitor made for 15.75: the plugs fit, and the monitor burns.',
    list: 'hulvane-desk-8 eskerby-two velm-two-12 corrow-1024-100*2 sprillock-all dorrenby-mono thrannet-525-1200 marl-40 dray-desk-200 drenning-clatter yarrant-easel-1 tollick-four dorrenby-colour-14',
    overall: 'does-not-fit',
    rules: { 'display/scan-rate': 'does-not-fit' },
  },
  {
    why: 'One of the two pictures is right; the other is told, for a switch or a program may choose it.',
    list: 'hulvane-desk-8 eskerby-two velm-two-12 corrow-1024-100*2 sprillock-all thrannet-525-1200 marl-40 dray-desk-200 drenning-clatter yarrant-easel-1 tollick-four dorrenby-fine dorrenby-colour-14',
    overall: 'fits',
    rules: { 'display/scan-rate': 'fits', 'display/mode-choice': 'does-not-fit' },
  },
  {
    why: 'Each monitor has its card; that the sockets look alike is told.',
    list: 'hulvane-desk-8 eskerby-two velm-two-12 corrow-1024-100*2 sprillock-all dorrenby-mono dorrenby-amber-12 thrannet-525-1200 marl-40 dray-desk-200 drenning-clatter yarrant-easel-1 tollick-four dorrenby-sixteen dorrenby-colour-14',
    overall: 'fits',
    rules: { 'display/scan-rate': 'fits', 'display/sockets-alike': 'does-not-fit' },
  },
  {
    why: 'The colour monitor goes on the colour card, though the one-colour card comes first.',
    list: 'hulvane-desk-8 eskerby-two velm-two-12 corrow-1024-100*2 sprillock-all dorrenby-mono thrannet-525-1200 marl-40 dray-desk-200 drenning-clatter yarrant-easel-1 tollick-four dorrenby-sixteen dorrenby-colour-14',
    overall: 'fits',
    rules: { 'display/scan-rate': 'fits', 'display/sockets-alike': 'does-not-fit' },
  },
  {
    why: 'A supply for 100 to 130 V and a monitor for 220 to 240 V: no mains serves both.',
    list: 'hulvane-desk-8 eskerby-wide velm-three-25 tammer-1024-80*4 sprillock-all sollen-array-256 sollen-tint-14 thrannet-35-1440 hask-120 drenning-plain-din yarrant-base-4 tollick-four hulvane-180-export',
    overall: 'does-not-fit',
    rules: { 'power/mains-voltage': 'does-not-fit' },
  },
  {
    why: 'Two large disks start at 48 W each beside cards of 30 W and more, on 150 W.',
    list: 'eskerby-narrow velm-narrow-20 tammer-1024-80*2 sprillock-ports sollen-array-256 sollen-paper-14 drenning-plain-din tollick-four hulvane-old-desk dray-desk-150 sprillock-older-disk thrannet-full-40*2',
    overall: 'does-not-fit',
    rules: { 'power/supply-load': 'does-not-fit' },
  },
  {
    why: 'A plug of six pins and a socket of five: it does not go in, and the machine stops at start-up without its keyboard.',
    list: 'hulvane-desk-8 eskerby-wide velm-three-25 tammer-1024-80*4 sprillock-all sollen-array-256 sollen-tint-14 thrannet-35-1440 hask-120 dray-desk-200 yarrant-base-4 tollick-four drenning-office',
    overall: 'does-not-fit',
    rules: { 'cabling/keyboard-plug': 'does-not-fit' },
  },
  {
    why: 'The adapter the right way round.',
    list: 'hulvane-desk-8 eskerby-wide velm-three-25 tammer-1024-80*4 sprillock-all sollen-array-256 sollen-tint-14 thrannet-35-1440 hask-120 dray-desk-200 yarrant-base-4 tollick-four drenning-office tollick-keys-large',
    overall: 'fits',
    rules: { 'cabling/keyboard-plug': 'fits' },
  },
  {
    why: 'The fan on the fins has nothing to be plugged into.',
    list: 'hulvane-desk-8 eskerby-four-local tammer-72-8192 sollen-array-local sprillock-all sollen-tint-16 thrannet-35-1440 hask-540 hulvane-200 drenning-plain-din yarrant-easel-2 tollick-four quellin-four-double-50 ebbe-clip-fan',
    overall: 'does-not-fit',
    rules: { 'cabling/fan-header': 'does-not-fit', 'cooling/no-cooling': 'fits' },
  },
  {
    why: 'What a machine of today sends to a monitor of one rate is not recorded, and the wrong rate burns it.',
    list: 'orrisk-c1 quellin-5 skarn-mid tammer-16*2 marl-1tb fennick-650 lodden-40 wexling-picture-analog sollen-tint-14',
    overall: 'cannot-tell',
    rules: { 'display/scan-rate': 'cannot-tell' },
  },
];

describe('lists of about 1990', () => {
  test.each(cases)('$why', ({ list, overall, rules }) => {
    const report = judgeList(asList(list), content.parts);
    expect(report.unjudged).toEqual([]);
    expect(Object.fromEntries(Object.keys(rules).map((rule) => [rule, verdictOf(report, rule)]))).toEqual(rules);
    expect(report.overall).toBe(overall);
  });

  test('two monitors of one plug go on the card that each is made for, whichever comes first', () => {
    // The colour monitor would take the first socket, which is the one-colour card's.
    const joints = (list: string) =>
      judgeList(asList(list), content.parts)
        .joints.filter(({ kind }) => kind === 'picture')
        .map(({ need, place }) => [need, place]);
    const colourAlone = 'eskerby-two dorrenby-mono dorrenby-sixteen dorrenby-colour-14';
    expect(joints(colourAlone)).toEqual([['monitor-1/picture', 'bus-card-2/output-de9-1']]);
    expect(joints(`${colourAlone} dorrenby-amber-12`)).toEqual([
      ['monitor-1/picture', 'bus-card-1/output-de9-1'],
      ['monitor-2/picture', 'bus-card-2/output-de9-1'],
    ]);
  });
});
