import { readFileSync, writeFileSync } from 'node:fs';
import Papa from 'papaparse';
import { logbookToText } from '../../src/logbook/log.ts';
import type { Act } from '../../src/logbook/types.ts';
import { aLogbook } from '../helpers/logbook.ts';
import { choosing, content, expect, test } from './site.ts';

const right: Act = { act: 'handed-in', exercise: choosing.id, answer: { kind: 'choose', list: choosing.answer } };
const full = choosing.rubric.reduce((sum, line) => sum + line.marks, 0);

const file = (name: string, text: string) => ({ name, mimeType: 'application/json', buffer: Buffer.from(text) });
const logbook = (student: string, id: string, acts: Act[]) =>
  file(
    `${id}.json`,
    logbookToText({ ...aLogbook([{ act: 'named', student }, ...acts], id), content: content.fingerprint }),
  );

const class12 = [
  logbook('Bench 2', 'logbook0002', [right]),
  logbook('Bench 10', 'logbook0010', [{ act: 'lesson-read', lesson: content.lessons[0]?.id ?? '' }]),
  logbook('<img src=x onerror="document.title=1">', 'logbook0666', [right]),
  logbook('=HYPERLINK("http://example.invalid")', 'logbook0667', []),
];

test('an instructor reads a class, sees one row a student and keeps the tables', async ({ page }) => {
  await page.goto('/register/');
  await expect(page.getByText('No logbook has been read yet.')).toBeVisible();

  await test.step('files good and bad are read together', async () => {
    await page.getByLabel('Logbook files').setInputFiles([...class12, file('notes.json', 'all went well')]);
    await expect(page.getByText('4 students from 5 files.')).toBeVisible();
    await expect(page.locator('.register-aside')).toContainText('notes.json: The file is not a logbook');
  });

  const rows = page.locator('.register-table tbody tr');
  await test.step('one row a student, marked again', async () => {
    await expect(rows).toHaveCount(4);
    const bench2 = rows.filter({ hasText: 'Bench 2' });
    await expect(bench2).toContainText(`${full} of ${full}`);
    await bench2.getByText(`${choosing.title}: ${full} of ${full}`).click();
    await expect(bench2).toContainText(choosing.rubric[0]?.says ?? '');
    await expect(rows.filter({ hasText: 'Bench 10' })).toContainText(`1 of ${content.lessons.length} read`);
  });

  await test.step('what a student typed is shown as text and never run', async () => {
    await expect(rows.filter({ hasText: '<img src=x onerror' })).toHaveCount(1);
    await expect(page.locator('.register-table img')).toHaveCount(0);
    await expect(page).toHaveTitle('Register · Benchbook');
  });

  await test.step('dropping files adds to what was read', async () => {
    const text = logbook('Bench 3', 'logbook0003', [right]).buffer.toString();
    const dropped = await page.evaluateHandle((said) => {
      const data = new DataTransfer();
      data.items.add(new File([said], 'bench-3.json', { type: 'application/json' }));
      return data;
    }, text);
    await page.locator('.register-drop').dispatchEvent('drop', { dataTransfer: dropped });
    await expect(page.getByText('5 students from 6 files.')).toBeVisible();
  });

  await test.step('the class table is kept, in order and safe for a spreadsheet', async () => {
    const waiting = page.waitForEvent('download');
    await page.getByRole('button', { name: 'Keep the class table' }).click();
    const download = await waiting;
    expect(download.suggestedFilename()).toBe('class.csv');
    const text = readFileSync(await download.path(), 'utf8').replace(/^\uFEFF/, '');
    const { data } = Papa.parse<Record<string, string>>(text.trimEnd(), { header: true });
    expect(data.map((row) => row['student'])).toContain('\'=HYPERLINK("http://example.invalid")');
    expect(data.find((row) => row['student'] === 'Bench 2')?.[`${choosing.id} marks`]).toBe(String(full));
    const benches = data.map((row) => row['student'] ?? '').filter((name) => name.startsWith('Bench'));
    expect(benches).toEqual(['Bench 2', 'Bench 3', 'Bench 10']);
  });

  await test.step('per student: JSON, CSV and a page to print', async () => {
    for (const [button, ending] of [
      ['Everything of Bench 2, JSON', '.json'],
      ['Table of Bench 2, CSV', '.csv'],
    ] as const) {
      const waiting = page.waitForEvent('download');
      await page.getByRole('button', { name: button }).click();
      expect((await waiting).suggestedFilename()).toBe(`bench-2${ending}`);
    }
    const waiting = page.waitForEvent('popup');
    await page.getByRole('button', { name: 'Progress page of Bench 2, to print' }).click();
    const popup = await waiting;
    await expect(popup.getByRole('heading', { name: 'Progress: Bench 2' })).toBeVisible();
    await expect(popup.getByText(`${full} of ${full}`).first()).toBeVisible();
    // Its style is inside it, and the policy of the site lets it in.
    await expect(popup.locator('table').first()).toHaveCSS('border-collapse', 'collapse');
  });
});

test('a file of 50 MB is set aside unopened, and the rest is read', async ({ page }, info) => {
  const [huge, good] = [info.outputPath('huge.json'), info.outputPath('good.json')];
  writeFileSync(huge, `{"format":"benchbook-logbook","junk":"${'x'.repeat(50_000_000)}"}`);
  writeFileSync(good, class12[0]?.buffer ?? '');
  await page.goto('/register/');
  await page.getByLabel('Logbook files').setInputFiles([huge, good]);
  await expect(page.locator('.register-aside')).toContainText('huge.json: The file holds 50 MB');
  await expect(page.locator('.register-table tbody tr')).toHaveCount(1);
});

test('two hundred logbooks are read, and the one after is told', async ({ page }) => {
  await page.goto('/register/');
  const many = Array.from({ length: 201 }, (_, n) =>
    logbook(`Bench ${n + 1}`, `logbook${String(n + 1).padStart(4, '0')}`, [right]),
  );
  await page.getByLabel('Logbook files').setInputFiles(many);
  await expect(page.getByText('200 students from 200 files.')).toBeVisible();
  await expect(page.getByText('1 more were left out')).toBeVisible();
  await expect(page.locator('.register-table tbody tr')).toHaveCount(200);
});
