import { readFileSync } from 'node:fs';
import type { Page } from '@playwright/test';
import { fillShelf } from '../old-shelves.ts';
import { ALL_LOOKS, expect, fromMenu, row, storedText, test } from './app.ts';

/** What an empty page becomes. */
const WRITTEN = `---
title: Untitled note
---

## Set-up

- packet: 10 cards, face down

## Working

1. Any number of times: cut the packet and turn over the top 2 cards.
2. Deal the packet into a pile, turning every second card.

## Ending

- Exactly 5 cards are face up.
`;

const verdict = (page: Page) => page.locator('.note-verdict');
const builder = (page: Page) => page.getByRole('region', { name: 'Build with buttons' });
const alsoSafe = (page: Page) => page.getByRole('region', { name: 'Also safe here' });
const ending = (page: Page) => page.getByRole('region', { name: 'The ending on these cards' });
const room = (page: Page, name: string) =>
  page.getByRole('navigation', { name: 'Rooms' }).getByRole('link', { name });

async function emptyShelf(page: Page): Promise<void> {
  await fillShelf(page, {
    version: 3,
    rows: { notes: [], settings: [{ name: 'welcomed', value: true }] },
  });
  await page.goto('./');
  await expect(page.getByText('The shelf is empty.')).toBeVisible();
}

async function emptyPage(page: Page): Promise<string> {
  await page.getByRole('button', { name: 'New note' }).click();
  await page.getByRole('menuitem', { name: 'Empty page' }).click();
  await expect(verdict(page)).toContainText('Always works');
  return new URL(page.url()).hash.split('/').at(-1) ?? '';
}

/** Finds a sentence by what somebody would call it, and fills it in. */
async function pick(page: Page, words: string, title: string, fill: () => Promise<void> = async () => {}) {
  const dialog = page.getByRole('dialog');
  await dialog.getByRole('searchbox', { name: 'Look for' }).fill(words);
  await dialog.getByRole('button', { name: title, exact: true }).click();
  await fill();
  await expect(dialog.getByText('Understood.')).toBeVisible();
  await dialog.getByRole('button', { name: /^Put it in/ }).click();
  await expect(dialog).toHaveCount(0);
}

/** The ten-card routine, built by pressing buttons. */
async function buildIt(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'Build with buttons' }).click();
  await builder(page).getByRole('button', { name: 'Change the cards' }).click();
  await page.getByRole('spinbutton', { name: 'how many' }).fill('10');
  await page.getByRole('button', { name: 'Lay these cards' }).click();
  await builder(page).getByRole('button', { name: 'Change step 1' }).click();
  await pick(page, 'cut turn', 'cut and turn over', async () => {
    await page.getByRole('combobox', { name: 'how often' }).selectOption('any number of times');
  });
  await builder(page).getByRole('button', { name: 'Add a step' }).click();
  await pick(page, 'deal turning', 'deal, turning every second card');
  await builder(page).getByRole('button', { name: 'Change ending 1' }).click();
  await pick(page, 'exactly', 'so many cards', async () => {
    const dialog = page.getByRole('dialog');
    await dialog.getByRole('spinbutton', { name: /number$/ }).fill('5');
    await dialog.getByLabel('which cards').fill('cards');
    await dialog.getByLabel('are', { exact: true }).fill('face up');
  });
}

/** From a note that can fail to the failing performance, played to its end on the table. */
async function watchItFail(page: Page): Promise<void> {
  await page.getByRole('link', { name: 'Play on the table' }).click();
  await page.getByRole('button', { name: 'show how it fails' }).click();
  await expect(ending(page)).toContainText('false');
  await room(page, 'Note').click();
}

/** Takes the first mix that is offered in place of the step that breaks the note. */
async function mendIt(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'See what is safe instead' }).click();
  await expect(alsoSafe(page)).toContainText('Safe in place of step');
  const offered = alsoSafe(page)
    .getByRole('group', { name: 'Mix' })
    .getByRole('button', { name: /always/ })
    .first();
  await expect(offered).toBeInViewport();
  await offered.click();
  await expect(verdict(page)).toContainText('Always works');
}

/** Performs once with the next step hidden, choosing by chance, to an ending that comes out. */
async function rehearse(page: Page): Promise<void> {
  await room(page, 'Table').click();
  await page.getByRole('checkbox', { name: 'hide next step' }).check();
  await expect(async () => {
    if ((await ending(page).count()) === 0) {
      const next = page.getByRole('button', { name: /^(at random|Next step|Go on)$/ }).first();
      await next.click({ timeout: 1_000 });
    }
    await expect(ending(page)).toContainText('true', { timeout: 100 });
  }).toPass();
}

for (const [size, use] of [
  ['at a desk', {}],
  ['on a phone', { viewport: { width: 390, height: 800 }, hasTouch: true }],
] as const) {
  test.describe(size, () => {
    test.use({ ...use, reducedMotion: 'reduce' } as object);

    test('from an empty shelf to a rehearsed routine, found again after a restart', async ({
      page,
      context,
      complaints,
    }) => {
      await emptyShelf(page);
      const id = await emptyPage(page);
      await buildIt(page);
      await expect(verdict(page)).toContainText('Always works');
      await expect(verdict(page)).toContainText('10 cards');
      await builder(page).getByRole('button', { name: 'Put a step in before 2' }).click();
      await pick(page, 'riffle', 'riffle shuffle');
      await expect(verdict(page)).toContainText('Can fail');
      await expect.poll(() => storedText(page, id)).toContain('2. Riffle the packet.');
      await watchItFail(page);
      await mendIt(page);
      await expect.poll(() => storedText(page, id)).not.toContain('Riffle');

      await page.evaluate(async () => {
        await navigator.serviceWorker.ready;
      });
      await context.setOffline(true);
      await rehearse(page);
      const overhang = () => page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
      expect(await overhang()).toBeLessThanOrEqual(0);

      // The next morning, still without a network.
      await page.goto('about:blank');
      await page.goto('./');
      await expect(row(page, 'Untitled note')).toContainText('Always works');
      await page.getByRole('searchbox').fill('turning every second');
      await row(page, 'Untitled note').click();
      await expect(verdict(page)).toContainText('Always works');
      expect(await overhang()).toBeLessThanOrEqual(0);
      complaints.splice(
        0,
        complaints.length,
        ...complaints.filter((text) => !/INTERNET_DISCONNECTED/.test(text)),
      );
    });

    if (size === 'at a desk' || ALL_LOOKS)
      test('the whole job by typing: refuted, watched, mended, rehearsed, exported, wiped and brought back', async ({
        page,
      }) => {
        await emptyShelf(page);
        const id = await emptyPage(page);
        await page.getByRole('textbox', { name: 'Text of the note' }).click();
        await page.keyboard.press('Control+a');
        const typed = WRITTEN.replace('Untitled note', 'Ten lamps').replace(
          '2. Deal',
          '2. Riffle the packet.\n3. Deal',
        );
        await page.keyboard.insertText(typed);
        await expect(page.getByRole('heading', { level: 1 })).toHaveText('Ten lamps');
        await expect(verdict(page)).toContainText('Can fail');
        await page.getByRole('button', { name: 'The failing one' }).click();
        await expect(page.getByRole('region', { name: 'The cards at the caret' })).toContainText(
          'that fails',
        );
        await watchItFail(page);
        await mendIt(page);
        await rehearse(page);
        const kept = await storedText(page, id);
        expect(kept).not.toContain('Riffle');

        await room(page, 'Shelf').click();
        const download = page.waitForEvent('download');
        await fromMenu(page, 'Ten lamps', 'Export');
        const file = readFileSync(await (await download).path());
        expect(file.toString('utf8')).toBe(kept);

        await fromMenu(page, 'Ten lamps', 'Throw away');
        await page.getByRole('button', { name: 'In and out' }).click();
        await page.getByRole('menuitem', { name: 'Bin (1)' }).click();
        await page.getByRole('button', { name: 'Empty the bin' }).click();
        await page.getByRole('button', { name: 'Yes, empty it' }).click();
        await page.keyboard.press('Escape');
        await expect(page.getByText('The shelf is empty.')).toBeVisible();

        const choosing = page.waitForEvent('filechooser');
        await page.getByRole('button', { name: 'In and out' }).click();
        await page.getByRole('menuitem', { name: 'Bring in files or a zip …' }).click();
        await (await choosing).setFiles({ name: 'ten-lamps.md', mimeType: 'text/markdown', buffer: file });
        await expect(row(page, 'Ten lamps')).toContainText('Always works');
      });
  });
}
