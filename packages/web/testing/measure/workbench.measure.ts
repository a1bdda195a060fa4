import { appendFileSync, readdirSync, readFileSync } from 'node:fs';
import { gzipSync } from 'node:zlib';
import { test, type Page } from '@playwright/test';
import { fillShelf } from '../old-shelves.ts';

// Figures for bench/browser-suite.ts, one a line; bench/README.md says what they are held to.

const dist = new URL('../../dist/', import.meta.url);

/** @param found milliseconds, or thousands of bytes */
function tell(what: string, found: number): void {
  const file = process.env['FOREGONE_FIGURES'];
  const line = JSON.stringify({ what, found });
  if (file === undefined) console.log(line);
  else appendFileSync(file, `${line}\n`);
}

function quantile(all: readonly number[], share: number): number {
  const sorted = all.toSorted((a, b) => a - b);
  return sorted[Math.min(sorted.length - 1, Math.floor(sorted.length * share))] ?? Number.NaN;
}

const note = (title: string, setUp: string, working: readonly string[], ending: string, prose = '') =>
  `---\ntitle: ${title}\n---\n\n${prose}\n\n## Set-up\n\n- packet: ${setUp}\n\n## Working\n\n${working.join('\n')}\n\n## Ending\n\n- ${ending}\n`;

/** Opens the shelf with these notes on it, as though the engine had read them before. */
async function opened(page: Page, texts: readonly (readonly [id: string, text: string])[]): Promise<void> {
  const engine = readdirSync(new URL('assets/', dist)).find((name) => name.startsWith('engine-worker')) ?? '';
  const summary = { revision: 1, engine, verdict: 'proved', cards: 8, minutes: 3, moves: ['complete cut'] };
  const notes = texts.map(([id, text], at) => ({
    id,
    text,
    title: /^title: (.*)$/m.exec(text)?.[1] ?? id,
    revision: 1,
    created: 1_700_000_000_000 + at,
    changed: 1_700_000_000_000 + at,
    trashed: 0,
    summary: { ...summary, structures: [] },
  }));
  await fillShelf(page, { version: 3, rows: { notes, settings: [{ name: 'welcomed', value: true }] } });
  await page.goto('./');
  await page.getByRole('grid', { name: 'Notes' }).waitFor();
}

/** A word of its own for every number, neither the beginning of another nor a slip away from it. */
const wordOf = (at: number) =>
  [...String(at).padStart(3, '0')].map((digit) => 'abcdefghij'.charAt(Number(digit)).repeat(3)).join('');

const atRest = (page: Page) => page.locator('.note-page[data-busy=""]').waitFor();

test('what the shelf loads before it is useful, on a first visit', async ({ browser, baseURL }) => {
  const context = await browser.newContext({ baseURL: baseURL!, serviceWorkers: 'block' });
  const page = await context.newPage();
  const loaded = new Set<string>();
  page.on('response', (response) => {
    if (/\.(?:js|css|html)$|\/$/.test(new URL(response.url()).pathname)) loaded.add(response.url());
  });
  await page.goto('./');
  await page.getByRole('grid', { name: 'Notes' }).waitFor();
  const bytes = [...loaded]
    .filter((url) => !/engine-worker|examples|preload/.test(url))
    .map(
      (url) => gzipSync(readFileSync(new URL(new URL(url).pathname.slice(1) || 'index.html', dist))).length,
    );
  tell('first chunk, gzipped', bytes.reduce((sum, size) => sum + size, 0) / 1_000);
  await context.close();
});

test('work of the page’s own thread for one key, in a note of 200 steps', async ({ page, context }) => {
  const steps = Array.from(
    { length: 200 },
    (_, at) => `${at + 1}. ${at % 2 === 0 ? 'Cut the packet.' : 'Turn the packet over.'}`,
  );
  await opened(page, [
    ['long', note('Two hundred', '8 cards, face down', steps, '8 cards face the same way.')],
  ]);
  await page.goto('./#/note/long');
  await page.getByRole('textbox', { name: 'Text of the note' }).click();
  await atRest(page);
  await page.keyboard.press('Control+End');
  const hand = await context.newCDPSession(page);
  await hand.send('Performance.enable', { timeDomain: 'threadTicks' });
  const parts = new Set(['ScriptDuration', 'LayoutDuration', 'RecalcStyleDuration']);
  const spent = async () => {
    const { metrics } = await hand.send('Performance.getMetrics');
    return metrics.filter(({ name }) => parts.has(name)).reduce((sum, { value }) => sum + value, 0);
  };
  const words = 'The lamps along the pier are lit from the far end and put out again. ';
  const all: number[] = [];
  for (let at = 0; at < 120; at += 1) {
    const before = await spent();
    await page.keyboard.type(words[at % words.length] ?? ' ');
    // Until the frame with the letter in it has been made.
    await page.evaluate(() => new Promise((resolve) => requestAnimationFrame(() => setTimeout(resolve))));
    all.push(((await spent()) - before) * 1_000);
  }
  tell('typing in a note of 200 steps: script and style a key, p95', quantile(all, 0.95));
});

for (const [cards, keys] of [
  [16, 20],
  [52, 12],
] as const) {
  test(`from the last key to the verdict and the margin, ${cards} cards`, async ({ page }) => {
    const working = [
      '1. Any number of times:',
      '   1. Cut the packet.',
      '   2. Turn over the top 2 together.',
      '2. Deal the packet into a pile, turning every second card.',
    ];
    const setUp = `${cards} cards alternately red and black, face down`;
    await opened(page, [
      ['turnover', note('Turnover', setUp, working, `Exactly ${cards / 2} cards are face up.`)],
    ]);
    await page.goto('./#/note/turnover');
    await atRest(page);
    await page.locator('.cm-line', { hasText: 'Turn over the top 2' }).click();
    await page.keyboard.press('End');
    for (let at = 0; at < ' together.'.length; at += 1) await page.keyboard.press('ArrowLeft');
    const verdicts: number[] = [];
    const margins: number[] = [];
    for (let at = 0; at < keys; at += 1) {
      // A space more or less: another text, whose verdict is not known yet.
      await page.evaluate(() => {
        const told = new Promise<{ verdict: number; margin: number }>((resolve) => {
          const found = { verdict: 0, margin: 0 };
          const isBusy = (is: string | undefined) =>
            is === undefined || ['read', 'check', 'play', 'moments'].includes(is);
          document.addEventListener(
            'keydown',
            () => {
              const begun = performance.now();
              const look = () => {
                const verdict = document.querySelector('.note-verdict')?.getAttribute('aria-busy');
                const busy = document.querySelector<HTMLElement>('.note-page')?.dataset['busy'];
                if (verdict === 'false' && found.verdict === 0) found.verdict = performance.now() - begun;
                if (verdict === 'false' && !isBusy(busy)) {
                  found.margin = performance.now() - begun;
                  resolve(found);
                } else requestAnimationFrame(look);
              };
              // The page hears of the key after this does.
              setTimeout(look, 5);
            },
            { once: true },
          );
        });
        Reflect.set(window, 'told', told);
      });
      await page.keyboard.press(at % 2 === 0 ? 'Space' : 'Backspace');
      const { verdict, margin } = await page.evaluate(
        () => Reflect.get(window, 'told') as Promise<{ verdict: number; margin: number }>,
      );
      verdicts.push(verdict);
      margins.push(margin);
      await page.waitForTimeout(300);
    }
    tell(`verdict after the last key, ${cards} cards, median`, quantile(verdicts, 0.5));
    tell(`margin after the last key, ${cards} cards, median`, quantile(margins, 0.5));
  });
}

interface TraceEvent {
  readonly name: string;
  readonly ph: string;
  readonly ts: number;
  readonly tid: number;
  readonly dur?: number;
  readonly tdur?: number;
}

test('script and style of one frame while 52 cards move', async ({ page, browser }) => {
  const working = [
    '1. Deal the packet into 4 piles.',
    '2. Gather the piles in any order.',
    '3. Turn the packet over.',
    '4. Cut the packet.',
  ];
  await opened(page, [
    ['pack', note('Pack', 'full pack in any order, face down', working, 'Every card is face up.')],
  ]);
  await page.goto('./#/table/pack');
  await page.getByRole('button', { name: 'Next step' }).waitFor();
  await browser.startTracing(page, {
    categories: ['devtools.timeline', 'disabled-by-default-devtools.timeline'],
  });
  await page.getByRole('button', { name: 'all at random' }).click();
  await page.waitForTimeout(5_000);
  const trace = JSON.parse((await browser.stopTracing()).toString('utf8')) as {
    traceEvents: readonly TraceEvent[];
  };
  const parts = new Set(['FireAnimationFrame', 'UpdateLayoutTree', 'Layout', 'PrePaint']);
  const thread = trace.traceEvents.find(({ name }) => name === 'FireAnimationFrame')?.tid;
  const frames: number[] = [];
  const mine = trace.traceEvents.filter(
    ({ ph, tid, name }) => ph === 'X' && tid === thread && parts.has(name),
  );
  for (const { name, tdur, dur = 0 } of mine.toSorted((a, b) => a.ts - b.ts)) {
    if (name === 'FireAnimationFrame') frames.push(0);
    const last = frames.length - 1;
    if (last >= 0) frames[last] = (frames[last] ?? 0) + (tdur ?? dur) / 1_000;
  }
  tell('52 cards moving: script and style a frame, p95', quantile(frames, 0.95));
});

test('the shelf with 500 notes: coming in, and finding one', async ({ page }) => {
  const prose = 'Patter that goes on about lamps, ferries and the weather on the quay. '.repeat(20);
  const texts = Array.from({ length: 500 }, (_, at) => {
    const own = `${prose}\n\n${wordOf(at)} stands here only.`;
    return [
      `note-${at}`,
      note(`Note ${at}`, '8 cards, face down', ['1. Cut the packet.'], 'Every card is face down.', own),
    ] as const;
  });
  await opened(page, texts);
  const comes: number[] = [];
  for (let turn = 0; turn < 5; turn += 1) {
    await page.goto('#/help/keys');
    await page.getByRole('navigation', { name: 'Help' }).waitFor();
    comes.push(
      await page.evaluate(
        () =>
          new Promise<number>((resolve) => {
            const begun = performance.now();
            window.location.hash = '#/';
            const look = () => {
              if (document.querySelector('[role="row"]') === null) requestAnimationFrame(look);
              else requestAnimationFrame(() => resolve(performance.now() - begun));
            };
            look();
          }),
      ),
    );
  }
  tell('shelf of 500 notes, until it is drawn, median', quantile(comes, 0.5));

  const box = page.getByRole('searchbox');
  // The index is made when somebody first looks for something.
  await box.fill('weather');
  await page.waitForTimeout(2_000);
  const finds: number[] = [];
  for (let turn = 0; turn < 8; turn += 1) {
    const title = `Note ${turn * 37 + 3}`;
    await page.evaluate((wanted) => {
      const told = new Promise<number>((resolve) => {
        document.addEventListener(
          'input',
          () => {
            const begun = performance.now();
            const look = () => {
              const rows = document.querySelectorAll('[role="row"]');
              if (rows.length === 1 && rows[0]?.textContent.includes(wanted))
                resolve(performance.now() - begun);
              else requestAnimationFrame(look);
            };
            look();
          },
          { once: true, capture: true },
        );
      });
      Reflect.set(window, 'told', told);
    }, title);
    await box.fill(wordOf(turn * 37 + 3));
    finds.push(await page.evaluate(() => Reflect.get(window, 'told') as Promise<number>));
    await box.fill('');
    await page.waitForTimeout(300);
  }
  tell('finding a word among 500 notes, median', quantile(finds, 0.5));
});
