import { readdirSync, readFileSync } from 'node:fs';
import { gzipSync } from 'node:zlib';
import { allRead, expect, NOTES, openShelf, row, test } from './app.ts';

const dist = new URL('../../dist/', import.meta.url);

test('after the first load everything works without a network', async ({ page, context, complaints }) => {
  await openShelf(page, { lamps: NOTES.lamps, ferry: NOTES.ferry });
  await page.evaluate(async () => {
    await navigator.serviceWorker.ready;
  });
  await context.setOffline(true);
  await page.reload();
  await expect(row(page, 'Four lamps')).toBeVisible();
  await allRead(page);
  // A room, the engine and the search that were never opened while there was a network.
  await page.getByRole('searchbox').fill('captain');
  await expect(page.getByRole('row')).toHaveCount(1);
  await page.goto('#/note/ferry');
  await expect(page.getByRole('textbox', { name: 'Text of the note' })).toContainText('captain');
  await page.getByRole('button', { name: 'How it looks' }).click();
  await expect(page.getByRole('dialog')).toContainText(
    'There is no network just now. Everything works without a network.',
  );
  // The browser looks for a newer version, and cannot.
  complaints.splice(
    0,
    complaints.length,
    ...complaints.filter((text) => !/ERR_INTERNET_DISCONNECTED/.test(text)),
  );
});

test('everything that was built is kept for later', () => {
  const worker = readFileSync(new URL('sw.js', dist), 'utf8');
  const built = readdirSync(new URL('assets/', dist));
  expect(built.length).toBeGreaterThan(10);
  expect(built.filter((name) => !worker.includes(name))).toEqual([]);
});

test('the shelf needs little before it is useful', async ({ page }) => {
  const loaded = new Set<string>();
  page.on('response', (response) => {
    if (/\.(?:js|css|html)$|\/$/.test(new URL(response.url()).pathname)) loaded.add(response.url());
  });
  await page.addInitScript(() => {
    // Later loads are the engine's and the service worker's.
    Reflect.deleteProperty(Navigator.prototype, 'serviceWorker');
  });
  await page.goto('./');
  await expect(page.getByRole('grid', { name: 'Notes' })).toBeVisible({ timeout: 45_000 });
  const needed = [...loaded].filter((url) => !/engine-worker|examples|preload/.test(url));
  let total = 0;
  for (const url of needed) {
    const path = new URL(url).pathname.slice(1) || 'index.html';
    total += gzipSync(readFileSync(new URL(path, dist))).length;
  }
  expect(needed.length).toBeGreaterThan(1);
  expect(total).toBeLessThan(250_000);
});

test('a page may run and load its own files only', async ({ page, complaints }) => {
  await openShelf(page, {
    plot: '# <img src=x onerror=alert(1)>\n\n<script>window.broken = true</script>\n',
  });
  await expect(row(page, /<img/)).toBeVisible();
  const refused = await page.evaluate(async () => {
    const blocked: string[] = [];
    document.addEventListener('securitypolicyviolation', ({ effectiveDirective }) =>
      blocked.push(effectiveDirective),
    );
    const script = document.createElement('script');
    script.textContent = 'window.broken = true';
    const style = document.createElement('style');
    style.textContent = 'body { display: none }';
    const handler = document.createElement('div');
    handler.setAttribute('onclick', 'window.broken = true');
    const styled = document.createElement('div');
    styled.setAttribute('style', 'display: none');
    document.body.append(script, style, handler, styled);
    handler.click();
    await fetch('http://127.0.0.1:9/').catch(() => {});
    await new Promise((resolve) => setTimeout(resolve, 300));
    return { blocked: [...new Set(blocked)].toSorted(), broken: 'broken' in window };
  });
  expect(refused).toEqual({
    blocked: ['connect-src', 'script-src-attr', 'script-src-elem', 'style-src-attr', 'style-src-elem'],
    broken: false,
  });
  complaints.length = 0;
});

test('a fault of ours offers the notes as files', async ({ page, complaints }) => {
  await openShelf(page);
  // The database breaks under the app's hands.
  await page.evaluate(() => {
    const broken = () => {
      throw new DOMException('broken', 'UnknownError');
    };
    Reflect.set(IDBObjectStore.prototype, 'getAll', broken);
    Reflect.set(IDBIndex.prototype, 'getAll', broken);
    Reflect.set(IDBIndex.prototype, 'openCursor', broken);
  });
  await page.goto('#/note/none');
  await page.goto('#/');
  await expect(page.getByRole('heading', { name: 'Foregone has stumbled.' })).toBeVisible();
  await expect(page.getByRole('button', { name: 'Export all notes' })).toBeVisible();
  await page.getByRole('button', { name: 'Open again' }).click();
  await expect(page.getByRole('row')).toHaveCount(4);
  complaints.length = 0;
});
