// Which pairs of plugs wires alone can join, argued from what the plugs carry: HDMI and DVI the same kind of digital
// picture, DisplayPort another, DVI-I and VGA an analog one. That an HDMI socket to a DisplayPort monitor always takes
// an active adapter, and a dual-mode socket a passive one, is what makers of adapters print (common practice).
import { describe, expect, test } from 'vitest';
import { pictureAdapter, pictureAdapterSources } from '../../src/standards/picture-adapters.ts';

describe('picture adapters', () => {
  test.each([
    ['hdmi', 'dvi-d', 'passive'],
    ['dvi-d', 'hdmi', 'passive'],
    ['dvi-i', 'hdmi', 'passive'],
    ['dvi-i', 'vga', 'passive'],
    ['displayport', 'hdmi', 'dual-mode'],
    ['displayport', 'dvi-d', 'dual-mode'],
    ['displayport', 'vga', 'active'],
    ['hdmi', 'displayport', 'active'],
    ['dvi-d', 'displayport', 'active'],
    ['dvi-d', 'vga', 'active'],
    ['hdmi', 'vga', 'active'],
    ['vga', 'hdmi', 'active'],
    ['vga', 'displayport', 'active'],
  ])('from %s to %s: %s', (socket, plug, sort) => {
    expect(pictureAdapter(socket, plug)).toBe(sort);
  });

  test('like plugs need none', () => {
    expect(pictureAdapter('hdmi', 'hdmi')).toBeUndefined();
  });

  test('none is made for the nine-pin socket of digital monitors', () => {
    expect(pictureAdapter('de-9', 'hdmi')).toBeUndefined();
    expect(pictureAdapter('vga', 'de-9')).toBeUndefined();
  });

  test('each way is asked for by itself: turning an adapter round is not the same', () => {
    expect(pictureAdapter('displayport', 'hdmi')).not.toBe(pictureAdapter('hdmi', 'displayport'));
    expect(pictureAdapterSources).toContain('displayport');
  });
});
