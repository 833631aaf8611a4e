/** Changing a parts list drawer by drawer. Pure: every function gives a new list. */
import type { ChooseExercise } from '../../exercises/types.ts';
import type { Listed, PartClass, PartId, PartsList } from '../../parts/part.ts';

export type Drawer = Omit<ChooseExercise['shelf'][number], 'class'> & { class: PartClass };

export const drawersOf = ({ shelf }: ChooseExercise): Drawer[] => shelf as Drawer[];

export const inDrawer = (drawer: Drawer, list: PartsList): Listed[] =>
  list.filter(({ part }) => drawer.parts.includes(part));

export const countIn = (drawer: Drawer, list: PartsList): number =>
  inDrawer(drawer, list).reduce((sum, { quantity }) => sum + quantity, 0);

export const quantityOf = (part: PartId, list: PartsList): number =>
  list.find((listed) => listed.part === part)?.quantity ?? 0;

export const without = (drawer: Drawer, list: PartsList): Listed[] =>
  list.filter(({ part }) => !drawer.parts.includes(part));

/** The list with `quantity` of a part, none when 0; the rest as it stands. */
export function withQuantity(part: PartId, quantity: number, list: PartsList): Listed[] {
  if (quantity === 0) return list.filter((listed) => listed.part !== part);
  if (quantityOf(part, list) === 0) return [...list, { part, quantity }];
  return list.map((listed) => (listed.part === part ? { part, quantity } : listed));
}

/** The list with this part instead of whatever the drawer gave. */
export function choose(drawer: Drawer, part: PartId, list: PartsList): Listed[] {
  return [...without(drawer, list), { part, quantity: 1 }];
}

/**
 * The list as it would be were the drawer's choice all of this part: as many as are chosen, or as few as the brief
 * asks for. What "4 of 11 fit" counts.
 */
export function instead(drawer: Drawer, part: PartId, list: PartsList): Listed[] {
  const chosen = inDrawer(drawer, list);
  if (chosen.length === 1 && chosen[0]?.part === part) return [...list];
  return [...without(drawer, list), { part, quantity: Math.max(countIn(drawer, list), drawer.from, 1) }];
}

/** Drawers that hold fewer than the brief asks for. */
export const shortDrawers = (drawers: readonly Drawer[], list: PartsList): Drawer[] =>
  drawers.filter((drawer) => countIn(drawer, list) < drawer.from);

/** Two lists hold the same parts, in whatever order. */
export function isSame(a: PartsList, b: PartsList): boolean {
  return a.length === b.length && a.every(({ part, quantity }) => quantityOf(part, b) === quantity);
}

/** "Graphics card": the drawer's label. */
export const drawerName = ({ position }: Drawer): string =>
  position.charAt(0).toUpperCase() + position.slice(1).replaceAll('-', ' ');
