import type { Page } from '@playwright/test';
import { ALL_LOOKS, allRead, expect, expectAccessible, fromMenu, NOTES, openShelf, test } from './app.ts';

/** The states of the shelf that somebody may be in. */
const STATES: Readonly<Record<string, (page: Page) => Promise<void>>> = {
  notes: async (page) => {
    await expect(page.getByRole('row')).toHaveCount(4);
  },
  chosen: async (page) => {
    await page.getByRole('row').first().focus();
    await page.keyboard.press('Space');
    await expect(page.getByRole('group', { name: 'The chosen notes' })).toBeVisible();
  },
  menu: async (page) => {
    await page.getByRole('button', { name: 'What to do with The last ferry' }).click();
    await expect(page.getByRole('menu')).toBeVisible();
  },
  new: async (page) => {
    await page.getByRole('button', { name: 'New note' }).click();
    await expect(page.getByRole('menu')).toBeVisible();
  },
  facet: async (page) => {
    await page.getByRole('button', { name: 'Verdict' }).click();
    await expect(page.getByRole('dialog')).toBeVisible();
  },
  history: async (page) => {
    await fromMenu(page, 'The last ferry', 'History …');
    await page.getByRole('textbox', { name: /Keep the text/ }).fill('For the club');
    await page.getByRole('button', { name: 'Keep', exact: true }).click();
    await page.getByRole('option', { name: 'For the club' }).click();
    await expect(page.getByRole('columnheader', { name: 'Now' })).toBeVisible();
  },
  rename: async (page) => {
    await fromMenu(page, 'The last ferry', 'Rename …');
    await expect(page.getByRole('dialog')).toBeVisible();
  },
  bin: async (page) => {
    await fromMenu(page, 'The last ferry', 'Throw away');
    await expect(page.getByRole('button', { name: 'Undo' })).toBeVisible();
    await page.getByRole('button', { name: 'In and out' }).click();
    await page.getByRole('menuitem', { name: 'Bin (1)' }).click();
    await expect(page.getByRole('dialog')).toBeVisible();
  },
  nothing: async (page) => {
    await page.getByRole('searchbox').fill('nothing has this word');
    await expect(page.getByText('No note fits.')).toBeVisible();
  },
  looks: async (page) => {
    await page.getByRole('button', { name: 'How it looks' }).click();
    await expect(page.getByRole('dialog')).toBeVisible();
  },
  keys: async (page) => {
    await page.keyboard.press('?');
    await expect(page.getByRole('dialog', { name: 'Keys' })).toBeVisible();
  },
};

for (const colorScheme of ['light', 'dark'] as const) {
  test.describe(`by ${colorScheme}`, () => {
    test.use({ colorScheme });
    test('nobody is kept out of any state of the shelf', async ({ page }) => {
      test.setTimeout(240_000);
      await openShelf(page);
      await allRead(page);
      // By lamplight the colours are others, the parts are the same: the first state has them all.
      const states = Object.entries(STATES).slice(0, colorScheme === 'light' || ALL_LOOKS ? undefined : 1);
      for (const [name, reach] of states) {
        await test.step(name, async () => {
          await reach(page);
          // What is still coming in is not yet what it will be.
          await page.evaluate(() =>
            Promise.allSettled(document.getAnimations().map(({ finished }) => finished)),
          );
          await expectAccessible(page);
        });
        await page.keyboard.press('Escape');
        // Through another room, so that the shelf begins anew.
        await page.goto('#/table');
        await expect(page.getByRole('searchbox')).toHaveCount(0);
        await page.goto('#/');
        await expect(page.getByRole('grid', { name: 'Notes' })).toBeVisible();
      }
    });

    test('the shelf', async ({ page }) => {
      await openShelf(page);
      await allRead(page);
      await expect(page).toHaveScreenshot(`shelf-${colorScheme}.png`);
    });
  });
}

test('an empty shelf', async ({ page }) => {
  await openShelf(page, { plot: NOTES.plot });
  await fromMenu(page, 'Only a plot', 'Throw away');
  await page.getByRole('button', { name: 'Dismiss' }).click();
  await expect(page.getByText('The shelf is empty.')).toBeVisible();
  await expectAccessible(page);
});

test.describe('on a phone', () => {
  test.use({ viewport: { width: 360, height: 740 }, hasTouch: true });

  test('everything is within reach and nothing hangs over the edge', async ({ page }) => {
    await openShelf(page);
    await allRead(page);
    const overhang = () => page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
    expect(await overhang()).toBe(0);
    await expect(page).toHaveScreenshot('shelf-phone.png');
    await page.getByRole('button', { name: 'What to do with The last ferry' }).tap();
    await page.getByRole('menuitem', { name: 'History …' }).tap();
    await expect(page.getByRole('dialog')).toBeVisible();
    expect(await overhang()).toBe(0);
    await expectAccessible(page);
  });

  test('in large print', async ({ page }) => {
    await openShelf(page);
    await page.getByRole('button', { name: 'How it looks' }).tap();
    await page.getByRole('radio', { name: 'Large' }).locator('xpath=ancestor::label').tap();
    await page.keyboard.press('Escape');
    expect(await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth)).toBe(0);
    await expectAccessible(page);
  });
});

test('what a person prefers is kept, and other tabs follow', async ({ page, context }) => {
  await openShelf(page);
  const other = await context.newPage();
  await other.goto('./');
  await page.getByRole('button', { name: 'How it looks' }).click();
  for (const choice of ['By lamplight', 'Four colours', 'Still']) {
    await page.getByRole('radio', { name: choice }).locator('xpath=ancestor::label').click();
  }
  const root = (tab: Page) => tab.locator('html');
  for (const tab of [page, other]) {
    await expect(root(tab)).toHaveAttribute('data-theme', 'dark');
    await expect(root(tab)).toHaveAttribute('data-suits', 'four');
    await expect(root(tab)).toHaveAttribute('data-motion', 'reduced');
  }
  await page.reload();
  await expect(root(page)).toHaveAttribute('data-theme', 'dark');
});
