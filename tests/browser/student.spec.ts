import { readFileSync } from 'node:fs';
import { readLogbook } from '../../src/logbook/read.ts';
import { choose, choosing, content, expect, lastEntry, openDrawer, show, test, untilLive } from './site.ts';

const nameOf = (part: string) => content.parts.find(({ id }) => id === part)?.name ?? part;
const full = choosing.rubric.reduce((sum, line) => sum + line.marks, 0);

test('an answer given before the script has come goes nowhere, and is taken once it has', async ({ page }) => {
  let letThrough = () => {};
  const held = new Promise<void>((resolve) => {
    letThrough = resolve;
  });
  await page.route('**/*.js', async (route) => {
    await held;
    await route.continue();
  });
  await page.goto('/lessons/parts/what-the-parts-are/', { waitUntil: 'commit' });
  const address = page.url();
  const question = page.locator('[data-question="two-numbers"]');
  await question.getByText('It is 3 mm too tall').click();
  await question.getByRole('button').click({ noWaitAfter: true });
  letThrough();
  await question.getByRole('button', { name: 'Answer', exact: true }).click();
  await expect(question.locator('.choice-why:visible')).toContainText('Choose a lower cooler');
  expect(page.url()).toBe(address);
});

test('a student reads, chooses, hands in, builds and keeps the file', async ({ page }) => {
  test.setTimeout(300_000);
  const { id } = choosing;

  await test.step('the front page says what to do first, and the lessons stand in order', async () => {
    await page.goto('/');
    await expect(page.getByRole('heading', { level: 1 })).toContainText('Begin with sheet 1.1');
    const sheets = await page.locator('#zone-b a').allTextContents();
    const lessons = sheets.filter((says) => /^\s*\d\.\d/.test(says)).map((says) => says.trim().slice(0, 3));
    expect(lessons).toEqual(content.lessons.map((lesson) => lesson.sheet));
    await page.getByRole('link', { name: 'Begin with sheet 1.1', exact: true }).click();
    await expect(page.getByRole('heading', { level: 1, name: 'What the parts are' })).toBeVisible();
  });

  await test.step('a wrong answer is told why, and the right one too', async () => {
    const question = page.locator('[data-question="two-numbers"]');
    const answer = question.getByRole('button', { name: 'Answer', exact: true });
    await question.getByText('It fits, if you press a little').click();
    await answer.click();
    const why = question.locator('.choice-why:visible');
    await expect(why).toHaveCount(1);
    await expect(why).toContainText('Not yet.');
    await expect(why).toContainText('A side panel does not stretch');
    await question.getByText('It is 3 mm too tall').click();
    await answer.click();
    await expect(question.locator('.choice-why:visible')).toContainText('Choose a lower cooler');
  });

  await test.step('a misfit is told with its millimetres, its reason, its remedy, its source and its lesson', async () => {
    await page.goto('/lessons/fit/choosing-for-a-purpose/');
    await untilLive(page);
    await show(page, 'Drawers');
    await choose(page, id, 'case', { part: 'lodden-slim', quantity: 1 });
    await choose(page, id, 'cooler', { part: 'skarn-mid', quantity: 1 });
    await show(page, 'Notes');
    const note = page.locator('.note', { hasText: 'mm too tall' });
    await expect(note).toContainText('Does not fit');
    await expect(note).toContainText(/\d+ mm.*\d+ mm/);
    await expect(note).toContainText('What helps:');
    await expect(note).toContainText('Makers’ sheets');
    await expect(note.getByRole('link', { name: /sheet \d\.\d/ })).toBeVisible();
  });

  await test.step('undo takes the last choice back', async () => {
    await page.getByRole('button', { name: 'Undo' }).click();
    await expect(page.locator('.note', { hasText: 'mm too tall' })).toHaveCount(0);
    await show(page, 'Drawers');
  });

  await test.step('a whole list is chosen', async () => {
    for (const { position, class: kind, parts } of choosing.shelf) {
      const lines = choosing.answer.filter(({ part }) => parts.includes(part));
      for (const line of lines) await choose(page, id, position, line);
      if (lines.length > 0) {
        await expect(page.locator(`#${id}-drawer-${position}`), kind).toContainText(nameOf(lines[0]?.part ?? ''));
      }
    }
  });

  await test.step('nothing is lost when the page is loaded again', async () => {
    // The last choice is on the device before the page goes.
    const last = choosing.answer.at(-1)?.part ?? '';
    await expect.poll(() => lastEntry(page)).toContain(last);
    await page.reload();
    await show(page, 'Drawers');
    for (const { position, parts } of choosing.shelf) {
      const line = choosing.answer.find(({ part }) => parts.includes(part));
      if (line) await expect(page.locator(`#${id}-drawer-${position}`)).toContainText(nameOf(line.part));
    }
  });

  await test.step('it is handed in and marked line by line', async () => {
    await page.getByRole('button', { name: 'Hand in this list' }).click();
    await expect(page.getByRole('heading', { name: `${full} of ${full} marks` })).toBeVisible();
    await expect(page.locator('ol.marks > li')).toHaveCount(choosing.rubric.length);
    for (const line of choosing.rubric) await expect(page.locator('ol.marks')).toContainText(line.says);
  });

  await test.step('the job card is for that list', async () => {
    await page.getByRole('link', { name: 'Open the job card for this list' }).click();
    await expect(page.getByText(/^Step 1 of \d+$/)).toBeVisible();
    await expect(page.getByRole('heading', { level: 1 })).toBeVisible();
  });

  const seen = { cautions: 0, holds: 0, measured: 0, help: 0 };
  const done = page.getByRole('heading', { name: /^All \d+ steps are done/ });
  const tick = page.locator('button.card-tick:not(.card-tick-not-yet)');
  const heading = page.getByRole('heading', { level: 1 });

  await test.step('ten steps are ticked, the tab is closed, and nothing is lost', async () => {
    for (let n = 1; n <= 10; n += 1) {
      await expect(page.getByText(new RegExp(`^Step ${n} of`))).toBeVisible();
      await tick.click();
    }
    await expect(page.getByText(/^Step 11 of/)).toBeVisible();
    const address = page.url();
    await page.goto('about:blank');
    await page.goto(address);
    await expect(page.getByText(/^Step 11 of/)).toBeVisible();
    await expect(page.getByText(/You were here at \d\d:\d\d/)).toBeVisible();
  });

  await test.step('every step to the last is done, with holds and the measurement', async () => {
    while (!(await done.isVisible())) {
      const before = await heading.textContent();
      seen.cautions += await page.locator('.card-step .caution').count();
      seen.help += await page.locator('.card-help').count();
      if (await page.getByLabel('Initials of the instructor who looked').isVisible()) {
        seen.holds += 1;
        await expect(heading).toContainText('Stop here.');
        if (seen.holds === 1) {
          await page.getByLabel('Initials of the instructor who looked').fill('MR');
        } else {
          await page.getByRole('button', { name: 'No instructor tonight? Answer for yourself' }).click();
          for (const box of await page.locator('.card-self input').all()) await box.check();
        }
      } else if (await page.locator('#measured').isVisible()) {
        seen.measured += 1;
        await page.locator('#measured').fill('10,9');
        await page.getByRole('button', { name: 'Note it' }).click();
        await expect(page.locator('#measure-says')).toContainText('Stop. 10.9 V is outside');
        await expect(tick).toHaveCount(0);
        await page.locator('#measured').fill('12.08');
        await page.getByRole('button', { name: 'Note it' }).click();
        await expect(page.locator('#measure-says')).toContainText('12.08 V is within');
      }
      await tick.click();
      await expect(heading).not.toHaveText(before ?? '');
    }
    expect(seen.holds).toBeGreaterThanOrEqual(3);
    expect(seen.measured).toBe(1);
    expect(seen.cautions).toBeGreaterThan(10);
    expect(seen.help).toBeGreaterThan(10);
  });

  await test.step('it prints on A4 and on US Letter', async () => {
    for (const format of ['A4', 'Letter']) {
      const pdf = await page.pdf({ format });
      expect(pdf.subarray(0, 5).toString()).toBe('%PDF-');
    }
    await page.emulateMedia({ media: 'print' });
    await expect(page.locator('.paper-step').first()).toBeVisible();
    await expect(page.locator('.paper-hold').first()).toBeVisible();
    await expect(page.locator('.card-screen')).toBeHidden();
    await page.emulateMedia({ media: 'screen' });
  });

  await test.step('the front page says where the student left off', async () => {
    await page.goto('/');
    await expect(page.getByRole('heading', { level: 1 })).not.toContainText('Begin with sheet 1.1');
  });

  await test.step('a name is asked for once and the file is kept', async () => {
    await page.goto('/logbook/');
    await page.getByLabel('Your name or bench number').fill('Bench 7');
    await page.getByRole('button', { name: 'Write it down' }).click();
    await expect(page.getByText('This is the logbook of Bench 7.')).toBeVisible();
    await expect(page.getByLabel('Your name or bench number')).toHaveCount(0);
    const waiting = page.waitForEvent('download');
    await page.getByRole('button', { name: 'Keep a file now' }).click();
    const download = await waiting;
    expect(download.suggestedFilename()).toMatch(/^logbook-bench-7-\d{4}-\d\d-\d\d\.json$/);
    const read = readLogbook(readFileSync(await download.path(), 'utf8'));
    expect(read.remarks).toEqual([]);
    expect(read.sound).toBe(read.logbook?.events.length);
    const acts = new Set(read.logbook?.events.map((event) => event.act));
    for (const act of [
      'named',
      'lesson-opened',
      'question-answered',
      'handed-in',
      'step-ticked',
      'hold-passed',
    ] as const) {
      expect(acts, act).toContain(act);
    }
    await page.reload();
    await expect(page.getByText('Bench 7').first()).toBeVisible();
    await expect(page.getByLabel('Your name or bench number')).toHaveCount(0);
  });
});

test('a list that does not fit has no job card, and says why', async ({ page }) => {
  const list = choosing.answer.filter(
    ({ part }) => !content.parts.some((one) => one.id === part && one.class === 'cooler'),
  );
  await page.goto(`/card/current-desktop/#list=${list.map(({ part, quantity }) => `${part}*${quantity}`).join('.')}`);
  await expect(page.getByRole('heading', { name: 'Not ready to build' })).toBeVisible();
  await expect(page.locator('.card-not-yet li')).not.toHaveCount(0);
  await expect(page.locator('.card-tick')).toHaveCount(0);
});

test('a list without a processor has no job card either', async ({ page }) => {
  await page.goto('/card/current-desktop/#list=lodden-30.fennick-550.no-such-part');
  await expect(page.getByRole('heading', { name: 'Not ready to build' })).toBeVisible();
  await expect(page.getByText('The list has no processor.')).toBeVisible();
  await expect(page.getByText('“no-such-part” is not a part of this course.')).toBeVisible();
  await page.emulateMedia({ media: 'print' });
  await expect(page.locator('.paper-step')).toHaveCount(0);
  await expect(page.getByText('The list has no processor.')).toBeVisible();
});

test('a list with a lit cooler has no job card yet, and says which joint has no step', async ({ page }) => {
  const list = 'lodden-30.orrisk-b2.quellin-5.ebbe-glow.tammer-16*2.marl-1tb.fennick-550.sollen-27';
  await page.goto(`/card/current-desktop/#list=${list}`);
  await expect(page.getByRole('heading', { name: 'Not ready to build' })).toBeVisible();
  await expect(page.getByText('has no step yet that joins Ebbe Glow to a header for lights.')).toBeVisible();
  await page.emulateMedia({ media: 'print' });
  await expect(page.locator('.paper-step')).toHaveCount(0);
});

test('a measure that the maker does not give can be taken and written down', async ({ page }) => {
  const { id } = choosing;
  await page.goto(`/exercises/${id}/`);
  await untilLive(page);
  await show(page, 'Drawers');
  await choose(page, id, 'case', { part: 'lodden-30', quantity: 1 });
  await choose(page, id, 'cooler', { part: 'skarn-tall', quantity: 1 });
  await show(page, 'Notes');
  const note = page
    .locator('.note', { hasText: 'Cannot tell' })
    .filter({ has: page.locator('form') })
    .first();
  await expect(note).toContainText('To find out:');
  await note.locator('input').fill('155');
  await note.getByRole('button', { name: 'Keep it' }).click();
  await expect(page.getByText('One measure you took')).toBeVisible();
  await expect.poll(() => lastEntry(page)).toContain('measure-noted');
  await page.reload();
  await show(page, 'Notes');
  await expect(page.getByText('One measure you took')).toBeVisible();
});

test('a cooler that the student measured too tall has no job card', async ({ page }) => {
  const list = choosing.answer.map(({ part, quantity }) => {
    const isCooler = content.parts.some((one) => one.id === part && one.class === 'cooler');
    return `${isCooler ? 'skarn-tall' : part}*${quantity}`;
  });
  const card = `/card/current-desktop/#list=${list.join('.')}`;
  await page.goto(card);
  await expect(page.getByText(/^Step 1 of/)).toBeVisible();
  await page.goto(`/exercises/${choosing.id}/`);
  await untilLive(page);
  await show(page, 'Drawers');
  const inList = choosing.answer.find(({ part }) =>
    content.parts.some((one) => one.id === part && one.class === 'chassis'),
  );
  await choose(page, choosing.id, 'case', inList ?? { part: 'lodden-30', quantity: 1 });
  await choose(page, choosing.id, 'cooler', { part: 'skarn-tall', quantity: 1 });
  await show(page, 'Notes');
  const note = page.locator('.note', { has: page.locator('form') }).filter({ hasText: 'How tall is the cooler' });
  await note.locator('input').fill('200');
  await note.getByRole('button', { name: 'Keep it' }).click();
  await expect.poll(() => lastEntry(page)).toContain('measure-noted');
  await page.goto(card);
  await expect(page.getByRole('heading', { name: 'Not ready to build' })).toBeVisible();
  await expect(page.getByText(/mm too tall/)).toBeVisible();
});

test('what does not fit in the list on the table is found and explained', async ({ page }) => {
  await page.goto('/lessons/fit/how-parts-meet/');
  await untilLive(page);
  const misfits = page.locator('.misfits');
  const exercise = content.exercises.find((one) => one.kind === 'misfits');
  if (exercise?.kind !== 'misfits') throw new Error('The course has no exercise of this kind.');
  const statements = misfits.locator('.statement');
  await expect(statements).toHaveCount(exercise.statements.length);
  await statements.first().getByText('Fits', { exact: true }).click();
  await expect(misfits.getByRole('button', { name: `${exercise.statements.length - 1} more to judge` })).toBeVisible();
  await expect.poll(() => lastEntry(page)).toContain('verdict-given');
  await page.reload();
  await expect(misfits.getByRole('button', { name: `${exercise.statements.length - 1} more to judge` })).toBeVisible();
  for (const statement of await statements.all()) await statement.getByText('Fits', { exact: true }).click();
  await misfits.getByRole('button', { name: 'Hand in these verdicts' }).click();
  const marks = misfits.getByRole('heading', { name: /^\d+ of \d+ marks$/ });
  await expect(marks).toBeVisible();
  await expect(marks).not.toContainText(/^0 of/);
  await expect(misfits.locator('.misfits-notes .note')).not.toHaveCount(0);
});

test('the whole checker is worked by keyboard alone', async ({ page }, info) => {
  test.skip(info.project.name === 'phone', 'A keyboard belongs to the laptop.');
  const { id } = choosing;
  await page.goto(`/exercises/${id}/`);
  await untilLive(page);
  const drawer = page.locator(`#${id}-drawer-case`);
  await expect(drawer).toBeVisible();
  const focused = () => page.evaluate(() => document.activeElement?.id ?? '');
  for (let n = 0; n < 40 && (await focused()) !== `${id}-drawer-case`; n += 1) await page.keyboard.press('Tab');
  expect(await focused()).toBe(`${id}-drawer-case`);
  await page.keyboard.press('Enter');
  await expect(drawer).toHaveAttribute('aria-expanded', 'true');
  const isRadio = () => page.evaluate(() => (document.activeElement as HTMLInputElement | null)?.type === 'radio');
  for (let n = 0; n < 6 && !(await isRadio()); n += 1) await page.keyboard.press('Tab');
  await page.keyboard.press('Space');
  await page.keyboard.press('ArrowDown');
  await expect(drawer).not.toContainText('nothing yet');
  await expect(page.locator('[role=status]').first()).toContainText('chosen');
});

test('the way through the job card is worked by keyboard alone', async ({ page }, info) => {
  test.skip(info.project.name === 'phone', 'A keyboard belongs to the laptop.');
  await page.goto('/card/current-desktop/');
  await expect(page.getByText(/^Step 1 of/)).toBeVisible();
  const isTick = () => page.evaluate(() => document.activeElement?.classList.contains('card-tick') ?? false);
  for (let n = 0; n < 25 && !(await isTick()); n += 1) await page.keyboard.press('Tab');
  await page.keyboard.press('Enter');
  await expect(page.getByText(/^Step 2 of/)).toBeVisible();
  expect(await page.evaluate(() => document.activeElement?.tagName)).toBe('H1');
});

test('a drawer opens its tray and closes it again', async ({ page }) => {
  await page.goto(`/exercises/${choosing.id}/`);
  await untilLive(page);
  await show(page, 'Drawers');
  const tray = await openDrawer(page, choosing.id, 'supply');
  await expect(tray).toBeVisible();
  await page.locator(`#${choosing.id}-drawer-supply`).click();
  await expect(tray).toBeHidden();
});

test('a drawer leads to the sheets of its parts, and the list waits', async ({ page }) => {
  const { id } = choosing;
  await page.goto(`/exercises/${id}/`);
  await untilLive(page);
  await show(page, 'Drawers');
  await choose(page, id, 'case', { part: 'lodden-30', quantity: 1 });
  await expect.poll(() => lastEntry(page)).toContain('lodden-30');
  const more = page.locator(`#${id}-tray-case`).getByRole('link', { name: 'More about the Lodden 30' });
  expect((await more.boundingBox())?.height).toBeGreaterThanOrEqual(44);
  await more.click();
  await expect(page.getByRole('heading', { level: 1, name: 'Lodden 30' })).toBeVisible();
  await page.goBack();
  await show(page, 'Drawers');
  await expect(page.locator(`#${id}-drawer-case`)).toContainText('Lodden 30');
  const tray = await openDrawer(page, id, 'case');
  await tray.getByRole('link', { name: 'All cases by their sheets' }).click();
  await expect(page.getByRole('heading', { level: 2, name: 'Cases' })).toBeInViewport();
});

test('a note on what the drawing does not show says so, and leads nowhere', async ({ page }) => {
  const { id } = choosing;
  await page.goto(`/exercises/${id}/`);
  await untilLive(page);
  await show(page, 'Drawers');
  await choose(page, id, 'case', { part: 'lodden-slim', quantity: 1 });
  await choose(page, id, 'fans', { part: 'ebbe-80', quantity: 3 });
  await show(page, 'Notes');
  const undrawn = page.locator('.note', { hasText: 'Not in the drawing' });
  await expect(undrawn.first()).toBeVisible();
  await expect(undrawn.locator('a.balloon-link')).toHaveCount(0);
});

test('on a small phone each step shows caution, action and button at once, and a second quick tap claims nothing', async ({
  page,
}, info) => {
  test.skip(info.project.name === 'laptop', 'It is about the phone.');
  await page.setViewportSize({ width: 360, height: 640 });
  await page.goto('/card/current-desktop/');
  const tick = page.locator('button.card-tick:not(.card-tick-not-yet)');
  await tick.dblclick();
  await expect(page.getByText(/^Step 2 of/)).toBeVisible();
  for (let n = 2; n <= 20; n += 1) {
    await expect(page.getByText(new RegExp(`^Step ${n} of`))).toBeVisible();
    for (const seen of await page.locator('.card-step .caution, .card-step h1').all()) {
      await expect(seen).toBeInViewport({ ratio: 1 });
    }
    const action = await page.locator('.card-step h1').boundingBox();
    const dock = await page.locator('.card-dock').boundingBox();
    expect((action?.y ?? 0) + (action?.height ?? 0)).toBeLessThanOrEqual(dock?.y ?? 0);
    await tick.click();
  }
});
