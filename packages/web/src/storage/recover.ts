import { leftovers, type Shelfmark } from './journal.ts';
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
  let saved = 0;
  for (const { key, note, text, revision } of leftovers(storage, await alivePages())) {
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
