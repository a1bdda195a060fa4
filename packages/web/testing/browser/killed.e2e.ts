import { rmSync } from 'node:fs';
import { chromium, type BrowserContext, type Page } from '@playwright/test';
import { expect, NOTES, openShelf, storedText, test } from './app.ts';

/** How many pages are killed. `FOREGONE_KILLS=200`, as before a release, takes some minutes. */
const KILLS = Number(process.env['FOREGONE_KILLS'] ?? 24);
/** Notes that are typed into at the same time; the page of each is killed over and over. */
const TYPISTS = 4;
/** Nothing older than this, in milliseconds, may be lost. */
const AGE = 1_000;
/** Milliseconds between two words. */
const APART = 40;

// One after the other: what is measured here is the app, not how many browsers a machine can carry.
test.describe.configure({ mode: 'serial' });

/** What is typed matters here, not what the engine says of it. */
const withoutEngine = (context: BrowserContext) =>
  context.addInitScript(() => {
    Reflect.set(
      window,
      'Worker',
      class extends EventTarget {
        postMessage() {}
        terminate() {}
      },
    );
  });

/** Types the time, again and again, where a person types, until the page is no more. Gives back what it typed so far. */
async function typeOn(page: Page): Promise<readonly number[]> {
  const typed: number[] = [];
  await page.exposeFunction('tell', (time: number) => void typed.push(time));
  await page.getByRole('textbox', { name: 'Text of the note' }).click();
  await page.keyboard.press('Control+End');
  await page.evaluate((apart) => {
    setInterval(() => {
      const time = Date.now();
      document.execCommand('insertText', false, `${time} `);
      Reflect.get(window, 'tell')(time);
    }, apart);
  }, APART);
  return typed;
}

/** The latest time in a text. */
const lastIn = (text: string) => Number(/(\d{13}) \s*$/.exec(text)?.[1] ?? 0);

/** What was typed a second or more before the end and is not in the text. */
function lostOf(typed: readonly number[], end: number, text: string): readonly number[] {
  return typed.filter((time) => time <= end - AGE && time > lastIn(text));
}

/** How many texts of a note wait in journals. */
const leftInJournal = (page: Page, note: string) =>
  page.evaluate(
    (end) =>
      Object.keys(localStorage).filter((key) => key.startsWith('foregone.journal.') && key.endsWith(end))
        .length,
    `.${note}`,
  );

test('pages that are killed while somebody types lose nothing older than a second', async ({
  browser,
  baseURL,
}) => {
  test.setTimeout(600_000);
  const context = await browser.newContext({
    baseURL: baseURL!,
    viewport: { width: 480, height: 320 },
    serviceWorkers: 'block',
  });
  await withoutEngine(context);
  const first = await context.newPage();
  const notes = Array.from({ length: TYPISTS }, (_, typist) => `plot-${typist}`);
  await openShelf(first, Object.fromEntries(notes.map((id) => [id, '# Plot\n\n'])));
  await first.close();
  let kills = 0;
  let binding = 0;

  const openNote = async (id: string) => {
    const page = await context.newPage();
    const hand = await context.newCDPSession(page);
    await hand.send('Network.enable');
    await hand.send('Network.setBlockedURLs', { urls: ['*.woff2'] });
    await page.goto(`./#/note/${id}`);
    await expect(page.getByRole('textbox', { name: 'Text of the note' })).toBeVisible();
    return page;
  };
  const typist = async (id: string) => {
    let page = await openNote(id);
    while (kills < KILLS) {
      kills += 1;
      const typed = await typeOn(page);
      // Anything from a moment to some time after the first second, when the promise begins to bind.
      await new Promise((resolve) => setTimeout(resolve, Math.random() * 1_800));
      const hand = await context.newCDPSession(page);
      const gone = page.waitForEvent('crash');
      const end = Date.now();
      hand.send('Page.crash').catch(() => {});
      await gone;
      await page.close();

      // What the killed page left in its journal is saved when the next one starts.
      page = await openNote(id);
      await expect.poll(() => leftInJournal(page, id), { intervals: [20, 50, 100] }).toBe(0);
      const text = (await storedText(page, id)) ?? '';
      expect(text.startsWith('# Plot\n')).toBe(true);
      expect(lostOf(typed, end, text)).toEqual([]);
      if (typed.some((time) => time <= end - AGE)) binding += 1;
    }
  };
  await Promise.all(notes.map(typist));
  await context.close();
  expect(kills).toBe(KILLS);
  expect(binding).toBeGreaterThan(KILLS / 4);
});

test('a browser that is killed outright loses nothing older than a second', async ({ baseURL }, info) => {
  test.setTimeout(180_000);
  const folder = info.outputPath('browser');
  const { launchOptions } = info.project.use;
  const open = () => chromium.launchPersistentContext(folder, { ...launchOptions, baseURL: baseURL! });

  const first = await open();
  await openShelf(first.pages()[0]!, { plot: NOTES.plot });
  await first.close();
  for (let round = 0; round < 3; round += 1) {
    const context = await open();
    await withoutEngine(context);
    const page = context.pages()[0]!;
    await page.goto('./#/note/plot');
    const typed = await typeOn(page);
    await new Promise((resolve) => setTimeout(resolve, 1_500 + Math.random() * 1_000));
    const browser = await processOf(page);
    const closed = context.waitForEvent('close');
    const end = Date.now();
    process.kill(browser, 'SIGKILL');
    await closed;

    const again = await open();
    const reader = again.pages()[0]!;
    await reader.goto('./');
    await expect(reader.getByRole('row', { name: 'Only a plot' })).toBeVisible();
    await expect.poll(() => leftInJournal(reader, 'plot')).toBe(0);
    expect(typed.some((time) => time <= end - AGE)).toBe(true);
    expect(lostOf(typed, end, (await storedText(reader, 'plot')) ?? '')).toEqual([]);
    await again.close();
  }
  rmSync(folder, { recursive: true, force: true });
});

/** The process of the browser itself, which takes all its pages with it. */
async function processOf(page: Page): Promise<number> {
  const hand = await page.context().browser()?.newBrowserCDPSession();
  if (hand === undefined) throw new Error('a page without a browser');
  const { processInfo } = await hand.send('SystemInfo.getProcessInfo');
  const browser = processInfo.find(({ type }) => type === 'browser');
  if (browser === undefined) throw new Error('the browser does not name its process');
  return browser.id;
}
