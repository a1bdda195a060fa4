import type { Page } from '@playwright/test';
import { expect, expectAccessible, openShelf, test, type NOTES } from './app.ts';

async function openTable(page: Page, id: keyof typeof NOTES) {
  await openShelf(page);
  await page.goto(`./#/table/${id}`);
}

const pile = (page: Page) => page.getByRole('region', { name: /^packet, \d+ cards from the top/ });

test('a performance by choices, step by step, and the ending ticked on the cards', async ({ page }) => {
  await openTable(page, 'lamps');
  await expect(pile(page).getByRole('listitem')).toHaveCount(8);
  await page.getByRole('button', { name: 'once more' }).click();
  await page.getByRole('button', { name: 'cuts 3' }).click();
  await expect(pile(page).getByRole('listitem').first()).toContainText('king of diamonds');
  await page.getByRole('button', { name: 'Next step' }).click();
  await expect(pile(page).getByRole('listitem').first()).toContainText('face up');
  await page.getByRole('button', { name: 'stops' }).click();
  await page.getByRole('button', { name: 'Next step' }).click();
  await expect(page.getByRole('region', { name: 'The ending on these cards' })).toContainText(
    'Exactly 4 cards are face up: true',
  );
  await expectAccessible(page);
  await page.getByRole('slider', { name: 'Moment of the performance' }).fill('0');
  await expect(pile(page).getByRole('listitem').first()).toContainText('two of spades');
});

test('touching a card cuts there; the audience learns no hidden face', async ({ page }) => {
  await openTable(page, 'ferry');
  await page.getByRole('button', { name: 'Audience view' }).click();
  await expect(pile(page).getByRole('listitem').first()).toHaveText('a card face down');
  await page.locator('.spot').nth(1).click();
  await page.getByRole('button', { name: 'Performer view' }).click();
  await expect(pile(page).getByRole('listitem').first()).toContainText('three of spades');
});

test('the failing performance is played, and a note that is not understood says so', async ({ page }) => {
  await openTable(page, 'ferry');
  await page.getByRole('button', { name: 'show how it fails' }).click();
  await expect(page.getByRole('region', { name: 'The ending on these cards' })).toContainText('false');
  await page.goto('./#/table/attic');
  await expect(page.getByRole('link', { name: 'Mend it in the note' })).toBeVisible();
  await expectAccessible(page);
});

test('on a phone the cards and the choice fit, and nothing runs over the side', async ({ page }) => {
  await page.setViewportSize({ width: 360, height: 740 });
  await openTable(page, 'lamps');
  await expect(page.getByRole('button', { name: 'once more' })).toBeVisible();
  const over = await page.evaluate(
    () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
  );
  expect(over).toBe(0);
  await expectAccessible(page);
});
