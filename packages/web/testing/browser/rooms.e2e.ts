import type { Page } from '@playwright/test';
import { ALL_LOOKS, expect, expectAccessible, NOTES, openShelf, test } from './app.ts';

/** A title that no line is wide enough for, and cards that no row is. */
const LONG = `---
title: The lamplighter's apprentice who counted every lamp on the long north quay twice before the fog came in
---
One line of plot.

## Set-up
- packet: full pack in any order, face down

## Working
1. Deal the packet into 4 piles.

   > "One for each of you, round and round, until there is nothing left in my hands."

2. Gather the piles in any order.
3. Cut the packet.

## Ending
- Every card is face down.
`;

/** A note that one step breaks. */
const BROKEN = NOTES.lamps
  .replace('Four lamps at dawn', 'Four lamps and a storm')
  .replace('2. Deal', '2. Riffle the packet.\n3. Deal');

const TEXTS = { ...NOTES, broken: BROKEN, long: LONG };

/** How a person may look at the pages. */
const LOOKS: Readonly<Record<string, { width: number; height: number; dark?: boolean; large?: boolean }>> = {
  light: { width: 1280, height: 860 },
  dark: { width: 1280, height: 860, dark: true },
  phone: { width: 360, height: 740 },
  tablet: { width: 820, height: 1180 },
  projector: { width: 1920, height: 1080 },
  large: { width: 1280, height: 860, large: true },
};

const verdict = (page: Page) => page.locator('.note-verdict');
const settled = async (page: Page) => {
  await expect(page.locator('[aria-busy="true"]')).toHaveCount(0);
  // What is still coming in is not yet what it will be.
  await page.evaluate(() => Promise.allSettled(document.getAnimations().map(({ finished }) => finished)));
};

type State = (page: Page) => Promise<void>;

const NOTE: Readonly<Record<string, State>> = {
  'that works': async (page) => {
    await page.goto('#/note/lamps');
    await expect(verdict(page)).toContainText('Always works');
    await expect(page.getByRole('region', { name: 'Also safe here' })).toBeVisible();
  },
  'that can fail, with what is not safe': async (page) => {
    await page.goto('#/note/broken');
    await expect(verdict(page)).toContainText('Can fail');
    await expect(page.getByRole('button', { name: 'See what is safe instead' })).toBeVisible();
    await page.getByText(/^Not safe here/).click();
  },
  'built with buttons': async (page) => {
    await page.goto('#/note/ferry');
    await page.getByRole('button', { name: 'Build with buttons' }).click();
    await page.getByRole('button', { name: 'Change the cards' }).click();
    await page.getByRole('combobox', { name: 'the packet' }).selectOption('cards one by one');
    await page.getByRole('button', { name: '3 of hearts' }).click();
    await expect(page.getByRole('dialog').getByText('Understood.')).toBeVisible();
  },
  'not understood': async (page) => {
    await page.goto('#/note/attic');
    await expect(verdict(page)).toContainText('Not understood');
  },
  'without a working': async (page) => {
    await page.goto('#/note/plot');
    await expect(verdict(page)).not.toContainText('Checking');
  },
  'with a long title': async (page) => {
    await page.goto('#/note/long');
    await expect(verdict(page)).toContainText('Always works');
  },
  'that is not there': async (page) => {
    await page.goto('#/note/none');
    await expect(page.getByRole('link', { name: 'Take one from the shelf' })).toBeVisible();
  },
};

// Told once the engine has worked it out.
const needed = (page: Page) => page.getByText('Needed here:');
const pile = (page: Page) => page.getByRole('region', { name: /^packet, \d+ cards/ });

const TABLE: Readonly<Record<string, State>> = {
  'before the first step': async (page) => {
    await page.goto('#/table/lamps');
    await expect(needed(page)).toBeVisible();
  },
  'at an ending that fails': async (page) => {
    await page.goto('#/table/ferry');
    await page.getByRole('button', { name: 'show how it fails' }).click();
    await expect(page.getByRole('region', { name: 'The ending on these cards' })).toContainText('false');
    await expect(needed(page)).toBeVisible();
  },
  'with 52 cards in 4 piles': async (page) => {
    await page.goto('#/table/long');
    await expect(pile(page).getByRole('listitem')).toHaveCount(52);
    await page.getByRole('button', { name: 'Next step' }).click();
    await expect(page.getByRole('region', { name: /^pile 4, 13 cards/ })).toBeAttached();
    await expect(needed(page)).toBeVisible();
  },
  'for an audience': async (page) => {
    await page.goto('#/table/lamps');
    await page.getByRole('button', { name: 'Audience view' }).click();
  },
  'for cards in the hands': async (page) => {
    await page.goto('#/table/lamps');
    await page.getByRole('button', { name: 'Cards in hand' }).click();
    await page.getByRole('button', { name: 'Call the next step' }).click();
  },
  'at a slip': async (page) => {
    await page.goto('#/table/ferry');
    await expect(needed(page)).toBeVisible();
    await page.getByRole('button', { name: 'make a slip' }).click();
    await expect(page.getByRole('dialog', { name: 'A slip on purpose' })).toBeVisible();
  },
  'without a working': async (page) => {
    await page.goto('#/table/attic');
    await expect(page.getByRole('link', { name: 'Mend it in the note' })).toBeVisible();
  },
};

const help = (address: string): State => {
  return async (page) => {
    await page.goto(`#/help/${address}`);
    await expect(page.getByRole('navigation', { name: 'Help' })).toBeVisible();
  };
};
const HELP: Readonly<Record<string, State>> = {
  'the guide': help(''),
  'a page of the guide': help('guide/have-need-freedom'),
  moves: help('moves'),
  'a move': help('moves/cut'),
  endings: help('endings'),
  'an ending': help('endings/count'),
  keys: help('keys'),
};

async function look(page: Page, name: string): Promise<void> {
  const { width, height, dark = false, large = false } = LOOKS[name]!;
  await page.setViewportSize({ width, height });
  await page.emulateMedia({ colorScheme: dark ? 'dark' : 'light', reducedMotion: 'reduce' });
  if (large)
    await page.addInitScript(() => localStorage.setItem('foregone.preferences', '{"print":"large"}'));
  await openShelf(page, TEXTS);
}

const ROOMS = { note: NOTE, table: TABLE, help: HELP };

const GONE_THROUGH: Readonly<Record<string, readonly string[]>> = ALL_LOOKS
  ? Object.fromEntries(Object.keys(ROOMS).map((room) => [room, ['light', 'dark', 'phone', 'large']]))
  : { note: ['light'], table: ['dark'], help: ['phone'] };

for (const [room, states] of Object.entries(ROOMS)) {
  for (const name of GONE_THROUGH[room]!) {
    test(`nobody is kept out of the ${room}: ${name}`, async ({ page }) => {
      await look(page, name);
      for (const [state, reach] of Object.entries(states)) {
        await test.step(state, async () => {
          // Through the shelf, so that the room begins anew.
          await page.goto('#/');
          await expect(page.getByRole('grid', { name: 'Notes' })).toBeVisible();
          await reach(page);
          await settled(page);
          await expectAccessible(page);
          const over = await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
          expect(over, 'nothing hangs over the edge').toBeLessThanOrEqual(0);
        });
      }
    });
  }
}

/** What is looked at by people before it is kept as a picture; the page under test must look like it. */
const PICTURES: readonly (readonly [file: string, reach: State, looks: readonly string[]])[] = [
  ['note', NOTE['that works']!, ['light', 'dark', 'phone', 'tablet', 'projector', 'large']],
  ['note-fails', NOTE['that can fail, with what is not safe']!, ['light', 'phone']],
  ['note-unread', NOTE['not understood']!, ['light']],
  ['note-long', NOTE['with a long title']!, ['phone']],
  ['note-cards', NOTE['built with buttons']!, ['light', 'phone']],
  ['table', TABLE['before the first step']!, ['light', 'dark', 'phone', 'tablet', 'projector', 'large']],
  ['table-fails', TABLE['at an ending that fails']!, ['light']],
  ['table-52', TABLE['with 52 cards in 4 piles']!, ['light', 'phone', 'projector']],
  ['table-hands', TABLE['for cards in the hands']!, ['phone']],
  ['table-slip', TABLE['at a slip']!, ['light']],
  ['help', HELP['a page of the guide']!, ['light', 'phone']],
  ['help-move', HELP['a move']!, ['light']],
];

for (const name of Object.keys(LOOKS)) {
  test(`pictures: ${name}`, async ({ page }) => {
    // A choice by chance is always the same one, and no clock runs.
    await page.addInitScript(() => {
      Math.random = () => 0.5;
    });
    await look(page, name);
    for (const [file, reach, looks] of PICTURES) {
      if (!looks.includes(name)) continue;
      await test.step(file, async () => {
        await page.goto('#/');
        await expect(page.getByRole('grid', { name: 'Notes' })).toBeVisible();
        await reach(page);
        await settled(page);
        await page.evaluate(() => window.scrollTo(0, 0));
        await expect(page).toHaveScreenshot(`${file}-${name}.png`, {
          mask: [page.locator('.clock')],
          maskColor: '#efe9dc',
        });
      });
    }
  });
}
