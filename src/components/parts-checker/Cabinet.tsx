/** The cabinet: a drawer for each position, with its label card, its verdict, and how many of its parts would fit. */

import type { Finding } from '../../fit/report.ts';
import { type MarkedVerdict, VerdictMark } from '../verdict-mark/VerdictMark.tsx';
import { fitting, type WouldBe } from './counts.ts';
import { countIn, type Drawer, drawerName, inDrawer } from './list.ts';
import { isFault, isUntold } from './sort-findings.ts';
import type { Checker } from './store.ts';
import { Tray } from './Tray.tsx';

export function Cabinet({ checker }: { checker: Checker }) {
  const open = checker.open.value;
  return (
    <ul class="cabinet">
      {checker.drawers.map((drawer) => {
        const isOpen = open === drawer.position;
        const tray = `${checker.exercise.id}-tray-${drawer.position}`;
        return (
          <li key={drawer.position} class="cabinet-place">
            <button
              type="button"
              id={`${checker.exercise.id}-drawer-${drawer.position}`}
              class={drawerClass(checker, drawer, isOpen)}
              aria-expanded={isOpen}
              aria-controls={tray}
              onClick={() => {
                checker.open.value = isOpen ? undefined : drawer.position;
              }}
            >
              <span class="drawer-card">
                <b>{drawerName(drawer)}</b>
                <span>{contents(checker, drawer)}</span>
              </span>
              <DrawerVerdict checker={checker} drawer={drawer} />
            </button>
            {isOpen && <Tray checker={checker} drawer={drawer} id={tray} />}
          </li>
        );
      })}
    </ul>
  );
}

function drawerClass(checker: Checker, drawer: Drawer, isOpen: boolean): string {
  const isEmpty = countIn(drawer, checker.list.value) < Math.max(drawer.from, 1);
  return `drawer${isOpen ? ' drawer-open' : ''}${isEmpty ? ' drawer-empty' : ''}`;
}

/** "Pellam 8", "2 × Tammer 16 GB, Marl 1 TB". */
function contents(checker: Checker, drawer: Drawer): string {
  const lines = inDrawer(drawer, checker.list.value);
  if (lines.length === 0) return drawer.from === 0 ? 'none' : 'nothing yet';
  return lines
    .map(
      ({ part, quantity }) => `${quantity > 1 ? `${quantity} × ` : ''}${checker.partOf.value.get(part)?.name ?? part}`,
    )
    .join(', ');
}

function DrawerVerdict({ checker, drawer }: { checker: Checker; drawer: Drawer }) {
  const tried = checker.tried.value.get(drawer.position);
  const isBegun = checker.list.value.length > 0;
  const word = tried && isBegun ? `${fitting(tried)} of ${drawer.parts.length} fit` : `${drawer.parts.length} parts`;
  if (countIn(drawer, checker.list.value) === 0) return <span class="drawer-word">{word}</span>;
  const units = new Set(checker.report.value.units.filter((unit) => unit.class === drawer.class).map(({ id }) => id));
  const about = checker.sorted.value.notes.filter((finding) => finding.about.some((unit) => units.has(unit)));
  // A choice may be what puts two other parts at odds, such as a fan in front of a card.
  const lines = inDrawer(drawer, checker.list.value);
  const wouldBe = lines.length === 1 ? tried?.get(lines[0]?.part ?? '')?.verdict : undefined;
  const verdict = verdictOf(about, wouldBe);
  return (
    <>
      <VerdictMark verdict={verdict} word={word} />
      <span class="visually-hidden">{spoken[verdict]}</span>
    </>
  );
}

function verdictOf(about: readonly Finding[], wouldBe: WouldBe['verdict'] | undefined): MarkedVerdict {
  if (about.some(isFault) || wouldBe === 'does-not-fit') return 'does-not-fit';
  if (about.some(isUntold) || wouldBe === 'cannot-tell') return 'cannot-tell';
  return about.length > 0 ? 'less' : 'fits';
}

const spoken: Record<MarkedVerdict, string> = {
  fits: ', this choice fits',
  'does-not-fit': ', this choice does not fit',
  'cannot-tell': ', nobody can tell of this choice',
  less: ', this choice works with less',
  'does-not-apply': '',
};
