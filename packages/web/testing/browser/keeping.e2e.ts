import type { Page } from '@playwright/test';
import { fillShelf } from '../old-shelves.ts';
import {
  expect,
  expectAccessible,
  fromMenu,
  NOTES,
  notices,
  openShelf,
  row,
  rowsFor,
  storedText,
  test,
} from './app.ts';

/** The place to type in, whichever editor the Note room has. */
const pageText = (page: Page) => page.getByRole('textbox', { name: 'Text of the note' });

async function typeAtEnd(page: Page, text: string): Promise<void> {
  await pageText(page).click();
  await page.keyboard.press('Control+End');
  await page.keyboard.type(text);
}

test.describe('shelves of earlier versions', () => {
  const old = rowsFor({ lamps: NOTES.lamps, plot: NOTES.plot });

  test('the first version', async ({ page }) => {
    const notes = old.map(({ id, title, text, created, changed }) => ({ id, title, text, created, changed }));
    await fillShelf(page, { version: 1, rows: { notes } });
    await page.goto('./');
    // A shelf with notes on it needs no examples.
    await expect(page.getByRole('row')).toHaveCount(2);
    expect(await storedText(page, 'lamps')).toBe(NOTES.lamps);
    await fromMenu(page, 'Only a plot', 'Throw away');
    await expect(page.getByRole('row')).toHaveCount(1);
  });

  test('the second version, with its bin and its history', async ({ page }) => {
    const notes = old.map(({ summary: _, ...note }, index) => ({ ...note, trashed: index * 1_000 }));
    const versions = [{ note: 'lamps', made: 1_000, text: 'An earlier text', name: 'For the club' }];
    await fillShelf(page, { version: 2, rows: { notes, versions } });
    await page.goto('./');
    await expect(page.getByRole('row')).toHaveCount(1);
    await fromMenu(page, 'Four lamps at dawn', 'History …');
    await page.getByRole('option', { name: 'For the club' }).click();
    await expect(page.locator('del').first()).toHaveText('An earlier text');
    await page.keyboard.press('Escape');
    await page.getByRole('button', { name: 'In and out' }).click();
    await page.getByRole('menuitem', { name: 'Bin (1)' }).click();
    await page.getByRole('button', { name: 'Put back Only a plot' }).click();
    await page.getByRole('button', { name: 'Close' }).click();
    await expect(page.getByRole('row')).toHaveCount(2);
  });
});

test.describe('two tabs', () => {
  test('what one types shows in the other', async ({ page, context }) => {
    await openShelf(page);
    await page.goto('#/note/plot');
    const other = await context.newPage();
    await other.goto('./#/note/plot');
    await expect(pageText(other)).toContainText('stopped clock');
    await typeAtEnd(page, 'And a lamp.');
    await expect(pageText(other)).toContainText('And a lamp.');
    await typeAtEnd(other, ' Two lamps.');
    await expect(pageText(page)).toContainText('And a lamp. Two lamps.');
  });

  test('never overwrite each other in silence: both texts are kept, and one is asked', async ({
    page,
    context,
  }) => {
    await openShelf(page);
    await page.goto('#/note/plot');
    const other = await context.newPage();
    await other.goto('./#/note/plot');
    await expect(pageText(other)).toContainText('stopped clock');
    // Both are at it before either is saved, so neither has heard of the other.
    const insert = (tab: Page, text: string) =>
      tab.evaluate((words) => document.execCommand('insertText', false, words), text);
    await pageText(page).click();
    await pageText(other).click();
    await Promise.all([insert(page, 'From the left. '), insert(other, 'From the right. ')]);
    const question = (tab: Page) => tab.getByRole('alertdialog', { name: /changed in two places/ });
    const asking = async () => (await question(page).count()) + (await question(other).count());
    await expect.poll(asking).toBe(1);
    const asked = (await question(page).count()) > 0 ? page : other;
    await expectAccessible(asked);
    await question(asked).getByRole('button', { name: 'Go on with this page' }).click();
    await expect(question(asked)).toHaveCount(0);

    await page.goto('#/');
    await fromMenu(page, 'Only a plot', 'History …');
    const texts: string[] = [(await storedText(page, 'plot')) ?? ''];
    for (const option of await page.getByRole('option').all()) {
      await option.click();
      texts.push((await page.locator('.comparison td:first-child').allInnerTexts()).join('\n'));
      await option.click();
    }
    expect(texts.some((text) => text.includes('From the left.'))).toBe(true);
    expect(texts.some((text) => text.includes('From the right.'))).toBe(true);
  });
});

test.describe('room in the browser', () => {
  test('is spoken of before it runs out', async ({ page }) => {
    await page.addInitScript(() => {
      navigator.storage.estimate = () => Promise.resolve({ usage: 95_000_000, quota: 100_000_000 });
    });
    await openShelf(page);
    const banner = page.getByRole('complementary', { name: 'Reminder' });
    await expect(banner).toContainText('nearly full');
    const download = page.waitForEvent('download');
    await banner.getByRole('button', { name: 'Export all notes' }).click();
    expect((await download).suggestedFilename()).toBe('foregone-notes.zip');
  });

  test('that has run out stops nothing but the new note, and offers the way out', async ({ page }) => {
    await fillShelf(page, {
      version: 3,
      rows: { notes: [], settings: [{ name: 'welcomed', value: true }] },
    });
    // The browser's own limit cannot be reached in a test's time, so it refuses as if it had been.
    await page.addInitScript(() => {
      Reflect.set(IDBObjectStore.prototype, 'add', () => {
        throw new DOMException('full', 'QuotaExceededError');
      });
    });
    await page.goto('./');
    const choosing = page.waitForEvent('filechooser');
    await page.getByRole('button', { name: 'In and out' }).click();
    await page.getByRole('menuitem', { name: 'Bring in files or a zip …' }).click();
    await (
      await choosing
    ).setFiles({ name: 'a.md', mimeType: 'text/markdown', buffer: Buffer.from('# A\n') });
    await expect(notices(page)).toContainText('no more room');
    await expect(page.getByText('The shelf is empty.')).toBeVisible();
    const download = page.waitForEvent('download');
    await notices(page).getByRole('button', { name: 'Export all notes' }).click();
    await download;
  });
});

test('a folder on disk is kept in step, and both sides of a quarrel stay', async ({ page }) => {
  // The browser's own private folder stands for the one a person would choose.
  await page.addInitScript(() => {
    const pick = async () =>
      (await navigator.storage.getDirectory()).getDirectoryHandle('notes', { create: true });
    Object.assign(window, { showDirectoryPicker: pick });
  });
  await openShelf(page, { plot: NOTES.plot });
  const onDisk = () =>
    page.evaluate(async () => {
      const folder = await (await navigator.storage.getDirectory()).getDirectoryHandle('notes');
      const files: Record<string, string> = {};
      for await (const [name, handle] of folder.entries()) {
        if (handle instanceof FileSystemFileHandle) files[name] = await (await handle.getFile()).text();
      }
      return files;
    });
  const write = (name: string, text: string) =>
    page.evaluate(
      async ([file, content]) => {
        const folder = await (await navigator.storage.getDirectory()).getDirectoryHandle('notes');
        const writer = await (await folder.getFileHandle(file!, { create: true })).createWritable();
        await writer.write(content!);
        await writer.close();
      },
      [name, text],
    );

  await page.getByRole('button', { name: 'In and out' }).click();
  await page.getByRole('menuitem', { name: 'Keep in step with a folder …' }).click();
  await expect(page.getByText('In step with the folder “notes”.')).toBeVisible();
  expect(await onDisk()).toEqual({ 'only-a-plot.md': NOTES.plot });

  await write('only-a-plot.md', '# Changed in the folder\n');
  await write('new.md', '# New in the folder\n');
  await page.evaluate(() => window.dispatchEvent(new Event('focus')));
  await expect(row(page, 'Changed in the folder')).toBeVisible();
  await expect(row(page, 'New in the folder')).toBeVisible();

  // While nobody looks at the folder, the note is changed on both sides.
  await page.evaluate(() => {
    void navigator.locks.request(
      'foregone.folder',
      () => new Promise((resolve) => window.addEventListener('look again', resolve)),
    );
  });
  await fromMenu(page, 'New in the folder', 'Rename …');
  await page.getByRole('textbox', { name: 'Title' }).fill('Renamed here');
  await page.keyboard.press('Enter');
  await write('new.md', '# Changed there\n');
  await expect(row(page, 'Renamed here')).toBeVisible();
  await page.evaluate(() => window.dispatchEvent(new Event('look again')));
  await expect(notices(page)).toContainText('was changed here and in the folder');
  await expect(row(page, 'Renamed here')).toBeVisible();
  await expect(row(page, 'Changed there')).toBeVisible();
  expect(Object.keys(await onDisk()).toSorted()).toEqual(['new.md', 'only-a-plot.md', 'renamed-here.md']);

  await page.getByRole('button', { name: 'Let go' }).click();
  await expect(page.getByText('In step with')).toHaveCount(0);
});

test('a copy outside the browser is asked for when it is due', async ({ page }) => {
  const notes = rowsFor(NOTES).map((note) => ({ ...note, changed: note.created + 5_000 }));
  await fillShelf(page, { version: 3, rows: { notes, settings: [{ name: 'welcomed', value: true }] } });
  await page.goto('./');
  const banner = page.getByRole('complementary', { name: 'Reminder' });
  await expect(banner).toContainText('4 notes changed and never copied out');
  await banner.getByRole('button', { name: 'Not now' }).click();
  await expect(banner).toHaveCount(0);
  await page.reload();
  await expect(page.getByRole('row')).toHaveCount(4);
  await expect(banner).toHaveCount(0);
});
