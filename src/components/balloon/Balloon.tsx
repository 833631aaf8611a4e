/** A number in a ring: joins a place in a drawing with its note, in both directions. */
import './balloon.css';

export type BalloonProps = {
  n: number | string;
  /** Dashed: the note cannot tell. */
  dashed?: boolean | undefined;
  /** Where it leads, with what it says to somebody who cannot see where it stands. */
  to?: { href: string; says: string } | undefined;
};

export function Balloon({ n, dashed = false, to }: BalloonProps) {
  const ring = dashed ? 'balloon balloon-dashed' : 'balloon';
  return to ? (
    <a class={`${ring} balloon-link`} href={to.href} aria-label={to.says}>
      {n}
    </a>
  ) : (
    <span class={ring}>{n}</span>
  );
}
