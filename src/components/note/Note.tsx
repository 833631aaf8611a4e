/** A note on a drawing: balloon, verdict, one line with the number in it, then what is known and what helps. */
import type { ComponentChildren } from 'preact';
import { Balloon, type BalloonProps } from '../balloon/Balloon.tsx';
import { type MarkedVerdict, VerdictMark } from '../verdict-mark/VerdictMark.tsx';
import './note.css';

export type NoteProps = {
  id: string;
  verdict: MarkedVerdict;
  hazard?: boolean | undefined;
  heading: string;
  balloon?: BalloonProps | undefined;
  /** Zone, who says so, lesson. */
  foot?: ComponentChildren;
  children: ComponentChildren;
};

export function Note({ id, verdict, hazard, heading, balloon, foot, children }: NoteProps) {
  return (
    <article class="note" id={id} aria-labelledby={`${id}-heading`}>
      {balloon && <Balloon dashed={verdict === 'cannot-tell'} {...balloon} />}
      <div class="note-body">
        <VerdictMark verdict={verdict} hazard={hazard} />
        <h3 id={`${id}-heading`}>{heading}</h3>
        {children}
        {foot && <p class="note-foot">{foot}</p>}
      </div>
    </article>
  );
}
