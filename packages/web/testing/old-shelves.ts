import type { Page } from '@playwright/test';

/** How each version of the shelf laid out its database; written down once and never brought up to date. */
const SHELVES = {
  1: { notes: ['id', 'changed'] },
  2: { notes: ['id', 'changed', 'trashed'], versions: ['++key', 'note', '[note+made]'] },
  3: {
    notes: ['id', 'changed', 'trashed'],
    versions: ['++key', 'note', '[note+made]'],
    settings: ['name'],
    links: ['path', 'note'],
  },
} as const satisfies Record<number, Record<string, readonly string[]>>;

export interface ShelfContent {
  readonly version: keyof typeof SHELVES;
  readonly rows: Readonly<Record<string, readonly object[]>>;
}

/** Fills this browser's database as an app of that version would have left it, without opening the app. */
export async function fillShelf(page: Page, { version, rows }: ShelfContent): Promise<void> {
  await page.goto('icon.svg');
  await page.evaluate(
    ({ number, stores, content }) =>
      new Promise<void>((resolve, reject) => {
        // The library counts in tens.
        const opening = indexedDB.open('foregone', number * 10);
        opening.onerror = () => reject(new Error('cannot open'));
        opening.onupgradeneeded = () => {
          for (const [name, [key, ...indexes]] of Object.entries(stores)) {
            const auto = key!.startsWith('++');
            const store = opening.result.createObjectStore(name, {
              keyPath: key!.replace('++', ''),
              autoIncrement: auto,
            });
            for (const index of indexes) {
              store.createIndex(index, index.startsWith('[') ? index.slice(1, -1).split('+') : index);
            }
          }
        };
        opening.onsuccess = () => {
          const database = opening.result;
          const step = database.transaction(Object.keys(content), 'readwrite');
          for (const [name, all] of Object.entries(content)) {
            for (const row of all) step.objectStore(name).add(row);
          }
          step.oncomplete = () => {
            database.close();
            resolve();
          };
          step.onerror = () => reject(new Error('cannot fill'));
        };
      }),
    { number: version, stores: SHELVES[version] as Record<string, readonly string[]>, content: rows },
  );
}
