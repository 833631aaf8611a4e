import AxeBuilder from '@axe-core/playwright';
import { content, expect, pages, test } from './site.ts';

for (const path of pages) {
  test(`${path} has no fault that axe can see`, async ({ page }) => {
    await page.goto(path);
    await page.waitForLoadState('networkidle');
    const { violations } = await new AxeBuilder({ page }).analyze();
    expect(
      violations.map(({ id, nodes }) => `${id}: ${nodes.map((node) => node.target.join(' ')).join(', ')}`),
    ).toEqual([]);
  });

  test(`${path} does not scroll sideways at 320 px`, async ({ page }, info) => {
    test.skip(info.project.name === 'laptop', 'The phone looks at narrow pages.');
    await page.setViewportSize({ width: 320, height: 640 });
    await page.goto(path);
    await page.waitForLoadState('networkidle');
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(320);
  });
}

test('the places stand in one line where there is room, behind one button where there is not', async ({ page }) => {
  const [part] = content.parts;
  await page.goto(`/parts/${part?.id}/`);
  const places = page.getByRole('navigation', { name: 'Places on this site' });
  for (const width of [900, 1280]) {
    await page.setViewportSize({ width, height: 740 });
    const lines = await places
      .getByRole('link')
      .evaluateAll((links) => links.map((link) => (link as HTMLElement).offsetTop));
    expect(new Set(lines).size).toBe(1);
    await expect(places.getByRole('link', { name: 'Parts', exact: true })).toHaveAttribute('aria-current', 'true');
  }
  for (const [width, height] of [
    [320, 256],
    [360, 740],
    [600, 740],
  ] as const) {
    await page.setViewportSize({ width, height });
    await expect(places).toBeHidden();
    await page.getByRole('button', { name: 'Contents' }).click();
    await places.getByRole('link', { name: 'Parts', exact: true }).scrollIntoViewIfNeeded();
    await expect(places.getByRole('link', { name: 'Parts', exact: true })).toBeInViewport();
    await places.getByRole('button', { name: 'Close' }).click();
  }
});

test('dark and in forced colours, the checker and the card have no fault that axe can see', async ({ page }) => {
  for (const path of [`/exercises/${content.exercises[0]?.id}/`, `/card/${content.procedures[0]?.id}/`]) {
    for (const media of [{ colorScheme: 'dark' }, { forcedColors: 'active' }] as const) {
      await page.emulateMedia({ colorScheme: 'light', forcedColors: 'none', ...media });
      await page.goto(path);
      await page.waitForLoadState('networkidle');
      const { violations } = await new AxeBuilder({ page }).analyze();
      expect(violations.map(({ id }) => id)).toEqual([]);
    }
  }
});

test.describe('without script', () => {
  test.use({ javaScriptEnabled: false });

  test('every lesson is read to its end, questions and answers too', async ({ page }) => {
    for (const lesson of content.lessons) {
      await page.goto(`/lessons/${lesson.id}/`);
      await expect(page.getByRole('heading', { level: 1, name: lesson.title })).toBeVisible();
      await expect(page.locator('[data-question]')).toHaveCount(lesson.questions.length);
      const first = page.locator('[data-question] details').first();
      await first.locator('summary').click();
      await expect(first.locator('.choice-why')).toBeVisible();
    }
  });

  test('the job card is read whole', async ({ page }) => {
    await page.goto('/card/current-desktop/');
    await expect(page.locator('.paper-action').first()).toBeVisible();
    await expect(page.locator('.paper-hold')).not.toHaveCount(0);
    expect(await page.locator('.paper-step').count()).toBeGreaterThan(35);
  });

  test('every part has a page that says what it needs and offers, and the parts are listed by class', async ({
    page,
  }) => {
    await page.goto('/parts/');
    await expect(page.getByRole('heading', { level: 2 })).toHaveCount(
      new Set(content.parts.map((part) => part.class)).size,
    );
    for (const of of new Set(content.parts.map((part) => part.class))) {
      const part = content.parts.find((one) => one.class === of);
      await page.goto(`/parts/${part?.id}/`);
      await expect(page.getByRole('heading', { level: 1, name: part?.name ?? '' })).toBeVisible();
      await expect(page.getByRole('heading', { level: 2, name: 'What it needs' })).toBeVisible();
      await expect(page.getByRole('heading', { level: 2, name: 'What it offers' })).toBeVisible();
    }
  });

  test('the front page is the list of sheets, and an exercise shows its brief and shelf', async ({ page }) => {
    await page.goto('/');
    for (const lesson of content.lessons)
      await expect(page.getByRole('link', { name: lesson.title }).first()).toBeVisible();
    await page.goto('/exercises/harbour-museum/');
    await expect(page.getByText('40,000 photographs')).toBeVisible();
    await expect(page.getByRole('table').first()).toBeVisible();
  });
});
