import type { Page } from '@playwright/test';
import { expect, expectAccessible, NOTES, openShelf, storedText, test } from './app.ts';

async function openNote(page: Page, id: keyof typeof NOTES) {
  await openShelf(page);
  await page.goto(`./#/note/${id}`);
  await expect(editor(page)).toBeVisible();
}

const editor = (page: Page) => page.getByRole('textbox', { name: 'Text of the note' });
const verdict = (page: Page) => page.locator('.note-verdict');
const margin = (page: Page) => page.getByRole('list', { name: 'Beside each step' });
const cards = (page: Page) => page.getByRole('region', { name: 'The cards at the caret' });

/** Puts the caret at the end of a line that has these words. */
async function caretAfter(page: Page, words: string) {
  await page.locator('.cm-line', { hasText: words }).first().click();
  await page.keyboard.press('End');
}

test('the verdict, the margin and the cards follow what is typed, and all of it is kept', async ({
  page,
}) => {
  await openNote(page, 'lamps');
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Four lamps at dawn');
  await expect(verdict(page)).toContainText('Always works', { timeout: 20_000 });
  await expect(verdict(page)).toContainText('by linear algebra');
  await expect(verdict(page)).toContainText('8 cards · unlimited performances');
  await expect(margin(page).getByRole('listitem')).toHaveCount(4);
  await expect(margin(page)).toContainText(
    'as many cards are face up at the odd places as at the even places',
  );
  await expect(page.locator('.understood', { hasText: 'Turn over the top 2 together' })).toBeVisible();
  await expect(page.locator('.free', { hasText: 'Cut' })).toBeVisible();

  await caretAfter(page, 'Turn over the top 2');
  await expect(cards(page)).toContainText('Before step 1.2');
  await expect(cards(page).getByRole('listitem')).toHaveCount(8);
  for (let i = 0; i < ' together.'.length; i += 1) await page.keyboard.press('ArrowLeft');
  await page.keyboard.press('Backspace');
  await page.keyboard.type('3');
  await expect(verdict(page)).toContainText('Can fail', { timeout: 20_000 });
  await page.getByRole('button', { name: 'The failing one' }).click();
  await expect(cards(page)).toContainText('in a performance that fails');
  await expect.poll(() => storedText(page, 'lamps')).toContain('the top 3 together');

  await page.locator('.cm-content').focus();
  await page.keyboard.press('Control+z');
  await page.keyboard.press('Control+z');
  await expect(verdict(page)).toContainText('Always works', { timeout: 20_000 });
});

test('each entry of the margin stands beside its step', async ({ page }) => {
  await openNote(page, 'lamps');
  await expect(margin(page).getByRole('listitem')).toHaveCount(4);
  await expect(verdict(page)).toContainText('Always works', { timeout: 20_000 });
  const line = await page.locator('.cm-line', { hasText: 'Any number of times' }).boundingBox();
  const entry = await margin(page).getByRole('listitem').first().boundingBox();
  expect(Math.abs(line!.y - entry!.y)).toBeLessThan(12);
});

test('trouble is underlined, said, and mended by one key', async ({ page }) => {
  const text = NOTES.lamps.replace('Cut the packet.', 'Cutt the packet.');
  await openShelf(page, { lamps: text });
  await page.goto('./#/note/lamps');
  await expect(verdict(page)).toContainText('Not understood', { timeout: 20_000 });
  await expect(page.locator('.trouble-error').first()).toBeVisible();
  await page.locator('.trouble-error').first().click();
  await page.keyboard.press('Alt+Enter');
  await expect(verdict(page)).toContainText('Always works', { timeout: 20_000 });
});

test('sentences are offered where one begins, and steps change places by keys', async ({ page }) => {
  await openNote(page, 'ferry');
  await caretAfter(page, 'Cut the packet.');
  await page.keyboard.press('Enter');
  await page.keyboard.type('Milk the');
  await expect(page.getByRole('option', { name: /Milk the packet.*milk shuffle/ })).toBeVisible();
  // For 75 ms a list that has just come up takes no keys, so that nobody takes from it unawares.
  await page.waitForTimeout(150);
  await page.keyboard.press('Enter');
  await expect.poll(() => storedText(page, 'ferry')).toContain('2. Milk the packet.');
  await page.keyboard.press('Escape');
  await page.keyboard.press('Alt+ArrowUp');
  await expect.poll(() => storedText(page, 'ferry')).toContain('1. Milk the packet.\n2. Cut the packet.');
});

test('a note is built without typing, by the keyboard', async ({ page }) => {
  // Looking the whole page over takes long on a busy machine.
  test.slow();
  await openNote(page, 'ferry');
  await page.getByRole('button', { name: 'Build with buttons' }).click();
  const builder = page.getByRole('region', { name: 'Build with buttons' });
  await builder.getByRole('button', { name: 'Add a step' }).press('Enter');
  await page.getByRole('searchbox', { name: 'Look for' }).fill('complete cut');
  await page.getByRole('button', { name: 'complete cut', exact: true }).press('Enter');
  await page.getByRole('checkbox').first().check();
  await page.getByLabel('at: how free').selectOption('even');
  await expect(page.getByText('Cut the packet at an even number.')).toBeVisible();
  await expect(page.getByRole('dialog').getByText('Understood.')).toBeVisible();
  await expectAccessible(page);
  await page.getByRole('button', { name: 'Put it in as the last step' }).press('Enter');
  await expect.poll(() => storedText(page, 'ferry')).toContain('2. Cut the packet at an even number.');
  await builder.getByRole('button', { name: 'Move step 2 up' }).press('Enter');
  await expect
    .poll(() => storedText(page, 'ferry'))
    .toContain('1. Cut the packet at an even number.\n2. Cut');
  await builder.getByRole('button', { name: 'Take step 1 out' }).press('Enter');
  await expect.poll(() => storedText(page, 'ferry')).toBe(NOTES.ferry);
});

test('the page keeps nobody out, by day, by lamplight and on a phone', async ({ page }) => {
  // Looking the whole page over takes long on a busy machine.
  test.slow();
  await openNote(page, 'lamps');
  await expect(verdict(page)).toContainText('Always works', { timeout: 20_000 });
  await expect(margin(page).locator('svg').first()).toBeVisible();
  await expectAccessible(page);
  await page.emulateMedia({ colorScheme: 'dark' });
  await expectAccessible(page);
  await page.setViewportSize({ width: 360, height: 740 });
  await caretAfter(page, 'Deal the packet');
  await expect(page.locator('.drawer')).toContainText('Certain');
  await expectAccessible(page);
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(360);
});
