import { readFileSync, writeFileSync } from 'node:fs';
import { strToU8, unzipSync, zipSync } from 'fflate';
import { allRead, expect, fromMenu, notices, NOTES, openShelf, row, storedText, test, tick } from './app.ts';

test('the first visit: examples, and a note that teaches by being changed', async ({ page }) => {
  await page.goto('./');
  await expect(row(page, 'Start here')).toBeVisible();
  await expect(row(page, 'Start here')).toContainText('Always works', { timeout: 20_000 });
  const count = await page.getByRole('row').count();
  await page.reload();
  await expect(page.getByRole('row')).toHaveCount(count);
});

test('verdicts come by themselves, and notes are found by them', async ({ page }) => {
  await openShelf(page);
  await expect(row(page, 'Four lamps')).toContainText('Always works', { timeout: 20_000 });
  await expect(row(page, 'The last ferry')).toContainText('Can fail');
  await expect(row(page, 'Boxes in the attic')).toContainText('Not understood');
  await allRead(page);
  await expect(row(page, 'Four lamps')).toContainText('8 cards · 3 min');

  await page.getByRole('button', { name: 'Verdict' }).click();
  await tick(page, 'Can fail 1');
  await page.keyboard.press('Escape');
  await expect(page.getByRole('row')).toHaveCount(1);
  await page.getByRole('button', { name: 'Take back Verdict: Can fail' }).click();
  await expect(page.getByRole('row')).toHaveCount(4);

  await page.getByRole('button', { name: 'Moves' }).click();
  await tick(page, /complete cut/);
  await page.keyboard.press('Escape');
  await expect(page.getByRole('row')).toHaveCount(2);
});

test('words find notes, from the keyboard', async ({ page }) => {
  await openShelf(page);
  await page.keyboard.press('/');
  await page.keyboard.type('captain');
  await expect(page.getByRole('row')).toHaveCount(1);
  await expect(row(page, 'The last ferry')).toBeVisible();
  await page.keyboard.press('Escape');
  await expect(page.getByRole('row')).toHaveCount(4);
  await page.getByRole('searchbox').fill('no such word anywhere');
  await page.getByRole('button', { name: 'Show all 4' }).click();
  await expect(page.getByRole('row')).toHaveCount(4);
});

test('new from a template, opened at once and found again', async ({ page }) => {
  await openShelf(page);
  await page.getByRole('button', { name: 'New note' }).click();
  await page.getByRole('menuitem', { name: 'A full pack' }).click();
  await expect(page).toHaveURL(/#\/note\//);
  await page.getByRole('link', { name: 'Shelf' }).click();
  await expect(row(page, 'With a full pack')).toBeVisible();
  await allRead(page);
  // A template is a sound beginning, not a riddle.
  await expect(row(page, 'With a full pack')).toContainText('Always works');
});

test('new from an example', async ({ page }) => {
  await openShelf(page);
  await page.getByRole('button', { name: 'New note' }).click();
  await page.getByRole('menuitem', { name: 'An example …' }).click();
  await page.getByRole('button', { name: 'Start here' }).click();
  await expect(page).toHaveURL(/#\/note\//);
});

test('rename, duplicate, throw away, undo, bin', async ({ page }) => {
  await openShelf(page);
  await fromMenu(page, 'The last ferry', 'Rename …');
  await page.getByRole('textbox', { name: 'Title' }).fill('The first ferry');
  await page.keyboard.press('Enter');
  await expect(row(page, 'The first ferry')).toBeVisible();
  expect(await storedText(page, 'ferry')).toBe(NOTES.ferry.replace('The last ferry', 'The first ferry'));

  await fromMenu(page, 'The first ferry', 'Duplicate');
  await expect(row(page, 'The first ferry (copy)')).toBeVisible();

  await fromMenu(page, 'The first ferry (copy)', 'Throw away');
  await expect(page.getByRole('row')).toHaveCount(4);
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(page.getByRole('row')).toHaveCount(5);

  await fromMenu(page, 'The first ferry (copy)', 'Throw away');
  await page.getByRole('button', { name: 'In and out' }).click();
  await page.getByRole('menuitem', { name: 'Bin (1)' }).click();
  await page.getByRole('button', { name: 'Empty the bin' }).click();
  await page.getByRole('button', { name: 'Yes, empty it' }).click();
  await expect(page.getByText('The bin is empty.')).toBeVisible();
});

test('several at once', async ({ page }) => {
  await openShelf(page);
  for (const title of ['Four lamps at dawn', 'Only a plot']) {
    await tick(row(page, title), /Select/);
  }
  const download = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Export' }).click();
  const files = unzipSync(readFileSync(await (await download).path()));
  expect(Object.keys(files)).toEqual(['four-lamps-at-dawn.md', 'only-a-plot.md']);
  await page.getByRole('button', { name: 'Throw away' }).click();
  await expect(page.getByRole('row')).toHaveCount(2);
});

test('one note goes out as Markdown, all of them as a zip, and the zip comes back in', async ({ page }) => {
  await openShelf(page);
  const one = page.waitForEvent('download');
  await fromMenu(page, 'Four lamps at dawn', 'Export');
  expect((await one).suggestedFilename()).toBe('four-lamps-at-dawn.md');
  expect(readFileSync(await (await one).path(), 'utf8')).toBe(NOTES.lamps);

  const all = page.waitForEvent('download');
  await page.getByRole('button', { name: 'In and out' }).click();
  await page.getByRole('menuitem', { name: 'Export all notes' }).click();
  const zip = readFileSync(await (await all).path());
  expect(Object.keys(unzipSync(zip))).toHaveLength(4);

  for (const title of ['Four lamps at dawn', 'Boxes in the attic']) {
    await fromMenu(page, title, 'Throw away');
    await expect(row(page, title)).toHaveCount(0);
  }
  const choosing = page.waitForEvent('filechooser');
  await page.getByRole('button', { name: 'In and out' }).click();
  await page.getByRole('menuitem', { name: 'Bring in files or a zip …' }).click();
  await (await choosing).setFiles({ name: 'foregone-notes.zip', mimeType: 'application/zip', buffer: zip });
  await expect(notices(page)).toContainText('2 notes brought in. 2 notes already here.');
  await expect(page.getByRole('row')).toHaveCount(4);
});

test('a zip that would fill the machine is let go, and the page lives on', async ({ page }) => {
  await openShelf(page);
  const bomb = zipSync(
    { 'bomb.md': new Uint8Array(60_000_000), 'good.md': strToU8('# A good one\n') },
    { level: 9 },
  );
  const choosing = page.waitForEvent('filechooser');
  await page.getByRole('button', { name: 'In and out' }).click();
  await page.getByRole('menuitem', { name: 'Bring in files or a zip …' }).click();
  await (
    await choosing
  ).setFiles({ name: 'bomb.zip', mimeType: 'application/zip', buffer: Buffer.from(bomb) });
  await expect(notices(page)).toContainText('One note brought in. Refused: bomb.md (too long)');
  await expect(row(page, 'A good one')).toBeVisible();
});

test('files dropped on the shelf come in', async ({ page }, info) => {
  await openShelf(page);
  const file = info.outputPath('dropped.md');
  writeFileSync(file, '# Dropped\n');
  const hand = await page.context().newCDPSession(page);
  for (const type of ['dragEnter', 'dragOver', 'drop'] as const) {
    await hand.send('Input.dispatchDragEvent', {
      type,
      x: 600,
      y: 400,
      data: { items: [], files: [file], dragOperationsMask: 1 },
    });
  }
  await expect(row(page, 'Dropped')).toBeVisible();
});

test('history: kept by itself, named, compared, gone back to', async ({ page }) => {
  await openShelf(page);
  await fromMenu(page, 'The last ferry', 'Rename …');
  await page.getByRole('textbox', { name: 'Title' }).fill('The first ferry');
  await page.keyboard.press('Enter');
  await fromMenu(page, 'The first ferry', 'History …');
  await page.getByRole('textbox', { name: /Keep the text/ }).fill('For the club');
  await page.getByRole('button', { name: 'Keep', exact: true }).click();
  const versions = page.getByRole('listbox', { name: 'Earlier texts' });
  await expect(versions.getByRole('option')).toHaveCount(2);

  await versions.getByRole('option').last().click();
  await expect(page.locator('del')).toHaveText('last');
  await expect(page.locator('ins')).toHaveText('first');
  await versions.getByRole('option', { name: 'For the club' }).click();
  await expect(page.getByRole('columnheader', { name: 'For the club' })).toBeVisible();
  await versions.getByRole('option', { name: 'For the club' }).click();
  await page.getByRole('button', { name: 'Go back to this text' }).click();
  await expect(versions.getByRole('option', { name: 'Before going back' })).toBeVisible();
  expect(await storedText(page, 'ferry')).toBe(NOTES.ferry);
});

test('the whole shelf from the keyboard', async ({ page }) => {
  await openShelf(page);
  await row(page, 'Four lamps').focus();
  await page.keyboard.press('ArrowDown');
  await page.keyboard.press('Space');
  await expect(page.getByRole('group', { name: 'The chosen notes' })).toContainText('One note chosen');
  await page.keyboard.press('Space');
  await page.keyboard.press('Enter');
  await expect(page).toHaveURL(/#\/note\/ferry/);
  await page.keyboard.press('Alt+1');
  await expect(page.getByRole('grid', { name: 'Notes' })).toBeVisible();
  await page.keyboard.press('?');
  await expect(page.getByRole('dialog', { name: 'Keys' })).toContainText('Find a note');
  await page.keyboard.press('Escape');
  await page.keyboard.press('n');
  await expect(page).toHaveURL(/#\/note\//);
});

test('a thousand notes open and are found without waiting', async ({ page }) => {
  const many = Object.fromEntries(
    Array.from({ length: 1_000 }, (_, index) => [
      `n${index}`,
      `# Note ${index}\n\n${'Cut the packet and think of a lamp. '.repeat(60)}${index === 777 ? 'periwinkle' : ''}\n`,
    ]),
  );
  await openShelf(page, many);
  await expect(page.getByRole('row')).toHaveCount(100);
  const started = Date.now();
  await page.getByRole('searchbox').fill('periwinkle');
  await expect(page.getByRole('row')).toHaveCount(1);
  expect(Date.now() - started).toBeLessThan(4_000);
  await expect(row(page, 'Note 777')).toBeVisible();
});
