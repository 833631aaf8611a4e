/**
 * What turns a picture socket of the machine into what a monitor takes. HDMI and DVI send one kind of digital picture,
 * DisplayPort another; a DVI-I socket has contacts for an analog picture as well. An adapter works one way only: from
 * the machine to the monitor.
 */
export const pictureAdapterSources = ['hdmi', 'displayport', 'dvi'] as const;

/**
 * `passive`: wires alone. `dual-mode`: wires alone where the socket is dual-mode, a chip where it is not. `active`: a
 * chip, which may want power of its own.
 */
export type PictureAdapter = 'passive' | 'dual-mode' | 'active';

const pairs: readonly string[] = ['hdmi', 'dvi-d', 'dvi-i'];
const analog: readonly string[] = ['vga', 'dvi-i'];
const known: readonly string[] = ['hdmi', 'displayport', 'dvi-d', 'dvi-i', 'vga'];

/** From a socket of the machine to a plug of the monitor; undefined when they are alike, or when nothing is made. */
export function pictureAdapter(socket: string, plug: string): PictureAdapter | undefined {
  if (socket === plug || !known.includes(socket) || !known.includes(plug)) return undefined;
  if (pairs.includes(socket) && pairs.includes(plug)) return 'passive';
  if (analog.includes(socket) && analog.includes(plug)) return 'passive';
  if (socket === 'displayport' && pairs.includes(plug)) return 'dual-mode';
  return 'active';
}
