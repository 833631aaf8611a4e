/** What every journey shares: the course's own content, pages that complain, and the way through the checker. */
import { test as base, expect, type Locator, type Page } from '@playwright/test';
import type { Listed } from '../../src/parts/part.ts';
import { content } from '../helpers/content.ts';

export { choosing, content } from '../helpers/content.ts';
export { expect };

/** A page that fails its test when a script goes wrong, something is blocked or anything outside the site is asked for. */
export const test = base.extend({
  page: async ({ page, baseURL }, use) => {
    const amiss: string[] = [];
    page.on('pageerror', (error) => amiss.push(`script: ${error.message}`));
    page.on('console', (message) => {
      if (['error', 'warning'].includes(message.type())) amiss.push(`console: ${message.text()}`);
    });
    page.on('request', (request) => {
      const url = request.url();
      if (!url.startsWith(baseURL ?? '') && !/^(blob|data):/.test(url)) amiss.push(`asks elsewhere: ${url}`);
    });
    await use(page);
    expect(amiss).toEqual([]);
  },
});

/** Every sort of page of the site, by its path; of the pages of parts the board's and the case's. */
export const pages = [
  '/',
  ...content.lessons.map((lesson) => `/lessons/${lesson.id}/`),
  ...content.exercises.map((exercise) => `/exercises/${exercise.id}/`),
  ...content.procedures.map((procedure) => `/card/${procedure.id}/`),
  '/parts/',
  ...['motherboard', 'chassis'].map((of) => `/parts/${content.parts.find((part) => part.class === of)?.id}/`),
  '/logbook/',
  '/key/',
  '/register/',
];

export const isPhone = (page: Page): boolean => (page.viewportSize()?.width ?? 0) < 600;

/** The checker is on the page before its script has come; until then a click on it does nothing. */
export const untilLive = (page: Page): Promise<void> => expect(page.locator('astro-island[ssr]')).toHaveCount(0);

/** On a phone the checker shows one view at a time. */
export async function show(page: Page, view: 'Drawing' | 'Notes' | 'Drawers' | 'Rulers'): Promise<void> {
  await untilLive(page);
  const dock = page.getByRole('navigation', { name: 'Views of the list' });
  if (await dock.isVisible()) await dock.getByRole('button', { name: view }).click();
}

/** Opens the drawer of a position, if it is not open. */
export async function openDrawer(page: Page, exercise: string, position: string): Promise<Locator> {
  await untilLive(page);
  const drawer = page.locator(`#${exercise}-drawer-${position}`);
  if ((await drawer.getAttribute('aria-expanded')) !== 'true') await drawer.click();
  return page.locator(`#${exercise}-tray-${position}`);
}

/** Chooses one line of a list in its drawer. */
export async function choose(page: Page, exercise: string, position: string, line: Listed): Promise<void> {
  const name = content.parts.find((part) => part.id === line.part)?.name ?? line.part;
  const tray = await openDrawer(page, exercise, position);
  const more = tray.getByRole('button', { name: `One more ${name}`, exact: true });
  if (await more.count()) for (let n = 0; n < line.quantity; n += 1) await more.click();
  else
    await tray
      .locator('label.tray-row', { hasText: name })
      .filter({ has: page.getByText(name, { exact: true }) })
      .click();
}

/** The entry last written to the logbook on this device, as text; waits for writing that is under way. */
export function lastEntry(page: Page): Promise<string> {
  return page.evaluate(
    () =>
      new Promise<string>((resolve, reject) => {
        const opening = indexedDB.open('benchbook');
        opening.onerror = () => reject(opening.error);
        opening.onsuccess = () => {
          const cursor = opening.result.transaction('events').objectStore('events').openCursor(null, 'prev');
          cursor.onerror = () => reject(cursor.error);
          cursor.onsuccess = () => {
            opening.result.close();
            resolve(JSON.stringify(cursor.result?.value ?? null));
          };
        };
      }),
  );
}
