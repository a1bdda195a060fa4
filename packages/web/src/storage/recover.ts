import { leftovers, type Leftover, type Shelfmark } from './journal.ts';
import type { Repository } from './repository.ts';

const LOCK = 'foregone.page.';

/** A name for this page; a lock under it tells others that the page is alive, until it ends however it ends. */
export function announcePage(page: string): void {
  void navigator.locks?.request(`${LOCK}${page}`, () => new Promise(() => {}));
}

async function alivePages(): Promise<ReadonlySet<string>> {
  const { held = [] } = (await navigator.locks?.query()) ?? {};
  return new Set(held.flatMap(({ name }) => (name?.startsWith(LOCK) ? [name.slice(LOCK.length)] : [])));
}

/**
 * Saves what was typed last in pages that were killed. Where the note has moved on, or is gone, the text becomes a version in
 * its history, or a note of its own. Gives back how many texts were saved.
 */
export async function recoverTyping(repository: Repository, storage: Shelfmark): Promise<number> {
  return saveAll(repository, storage, leftovers(storage, await alivePages()));
}

/**
 * Does the same for pages that seem to be alive, as soon as they end. A page that was killed a moment ago still seems to be, and
 * nobody might open another for days.
 *
 * @param page this page's own name
 * @param onSaved hears how many texts were saved
 */
export function recoverLater(
  repository: Repository,
  storage: Shelfmark,
  page: string,
  onSaved: (count: number) => void,
): void {
  const pages = new Set(leftovers(storage, new Set([page])).map((entry) => entry.page));
  for (const other of pages) {
    void navigator.locks?.request(`${LOCK}${other}`, async () => {
      const left = leftovers(storage, new Set()).filter((entry) => entry.page === other);
      onSaved(await saveAll(repository, storage, left));
    });
  }
}

async function saveAll(
  repository: Repository,
  storage: Shelfmark,
  entries: readonly Leftover[],
): Promise<number> {
  let saved = 0;
  for (const { key, note, text, revision } of entries) {
    const found = await repository.getNote(note);
    if (revision >= 0 && found?.text !== text) {
      saved += 1;
      const outcome = await repository.saveNote(note, text, revision);
      if (outcome.kind === 'gone') await repository.createNote(text);
    }
    storage.removeItem(key);
  }
  return saved;
}
