import AxeBuilder from '@axe-core/playwright';
import { expect, test as plain, type Locator, type Page } from '@playwright/test';
import { fillShelf } from '../old-shelves.ts';

/** A note that always works, one that can fail, one that is not understood and one without an ending. */
export const NOTES = {
  lamps: `---
title: Four lamps at dawn
minutes: 3
---
Eight keepers and four lamps. However the night goes, exactly half of the lamps are lit at dawn.

## Set-up
- packet: 2S 9H 4C KD 7S AH JC 5D, face down

## Working
1. Any number of times:
   1. Cut the packet.
   2. Turn over the top 2 together.
2. Deal the packet into a pile, turning every second card.

## Ending
- Exactly 4 cards are face up.
`,
  ferry: `---
title: The last ferry
minutes: 6
---
Whoever boards last is certain to be the captain, until somebody cuts once too often.

## Set-up
- packet: AS 2S 3S 4S 5S 6S, face down

## Working
1. Cut the packet.

## Ending
- The top card is the ace of spades.
`,
  attic: `---
title: Boxes in the attic
---
Half an idea.

## Set-up
- packet: 10 cards alternately red and black, face down

## Working
1. Do something clever with the boxes.

## Ending
- Every card is face down.
`,
  plot: `# Only a plot

A borrowed pack, a stopped clock, and nobody near the table.
`,
} as const;

const CHANGED = Date.UTC(2026, 2, 5, 12);

/** Rows for the shelf's database, one for each text, the first changed last. */
export function rowsFor(texts: Readonly<Record<string, string>>) {
  return Object.entries(texts).map(([id, text], index) => ({
    id,
    title: /^title: (.*)$/m.exec(text)?.[1] ?? /^# (.*)$/m.exec(text)?.[1] ?? 'Untitled note',
    text,
    revision: 1,
    created: CHANGED - index * 86_400_000,
    changed: CHANGED - index * 86_400_000,
    trashed: 0,
    summary: null,
  }));
}

/** Opens the app on a shelf with these notes and no welcome. */
export async function openShelf(page: Page, texts: Readonly<Record<string, string>> = NOTES): Promise<void> {
  await fillShelf(page, {
    version: 3,
    rows: { notes: rowsFor(texts), settings: [{ name: 'welcomed', value: true }] },
  });
  await page.goto('./');
  await expect(page.getByRole('grid', { name: 'Notes' })).toBeVisible();
}

/** Waits until the engine has read every note on the shelf. */
export async function allRead(page: Page): Promise<void> {
  await expect(page.getByText('Checking …')).toHaveCount(0, { timeout: 20_000 });
}

export const row = (page: Page, title: string | RegExp) => page.getByRole('row', { name: title });

/** The lines at the foot of the page. */
export const notices = (page: Page) => page.getByRole('region', { name: 'Notices' });

/** Ticks a box; the words or the drawn box beside it are what a hand meets. */
export async function tick(place: Page | Locator, name: string | RegExp): Promise<void> {
  await place.getByRole('checkbox', { name }).locator('xpath=ancestor::label').click();
}

/** Chooses from the menu of a note's row. */
export async function fromMenu(page: Page, title: string, action: string): Promise<void> {
  await page.getByRole('button', { name: `What to do with ${title}` }).click();
  await page.getByRole('menuitem', { name: action }).click();
}

/** Nothing on the page that keeps somebody out. */
export async function expectAccessible(page: Page): Promise<void> {
  const { violations } = await new AxeBuilder({ page })
    .withTags(['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'])
    // What opens over the page stands outside its landmarks by nature.
    .disableRules(['region'])
    .analyze();
  expect(violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(' | ')}`)).toEqual(
    [],
  );
}

/** The text a note has in the database, as the app itself would read it. */
export function storedText(page: Page, id: string): Promise<string | undefined> {
  return page.evaluate(
    (key) =>
      new Promise<string | undefined>((resolve, reject) => {
        const opening = indexedDB.open('foregone');
        opening.onerror = () => reject(new Error('cannot open'));
        opening.onsuccess = () => {
          const asking = opening.result.transaction('notes').objectStore('notes').get(key);
          asking.onsuccess = () => {
            opening.result.close();
            resolve((asking.result as { text?: string } | undefined)?.text);
          };
        };
      }),
    id,
  );
}

/** Every test fails for anything the page complains of, refused styles and scripts included. */
export const test = plain.extend<{ readonly complaints: string[] }>({
  complaints: [
    async ({ page }, use) => {
      // Pages without a head of their own make the browser ask for this.
      await page.route('**/favicon.ico', (route) => route.fulfill({ status: 204 }));
      const complaints: string[] = [];
      page.on('pageerror', ({ message }) => complaints.push(message));
      page.on('console', (message) => {
        if (message.type() === 'error' || message.type() === 'warning') complaints.push(message.text());
      });
      await use(complaints);
      expect(complaints).toEqual([]);
    },
    { auto: true },
  ],
});

export { expect };

/** `FOREGONE_LOOKS=all` goes through every room in every look, as before a release; by default each is gone through in one. */
export const ALL_LOOKS = process.env['FOREGONE_LOOKS'] === 'all';
