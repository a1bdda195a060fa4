/**
 * What was typed and is not yet in the database. Written in one step that is over when the call returns, so that a tab may be
 * killed at any moment; read once, when the app next starts.
 */
export interface Journal {
  write(note: string, entry: JournalEntry): void;
  clear(note: string): void;
}

export interface JournalEntry {
  readonly text: string;
  /** The revision the typing started from. */
  readonly revision: number;
}

/** An entry left behind by a page that is no more. */
export interface Leftover extends JournalEntry {
  readonly page: string;
  readonly note: string;
  readonly key: string;
}

const PREFIX = 'foregone.journal.';

/** The part of `localStorage` that a journal needs. */
export type Shelfmark = Pick<Storage, 'setItem' | 'removeItem' | 'getItem' | 'key' | 'length'>;

/** A journal for one page; `page` names it among all pages of this browser. */
export function openJournal(storage: Shelfmark, page: string): Journal {
  const key = (note: string) => `${PREFIX}${page}.${note}`;
  return {
    write(note, { text, revision }) {
      try {
        storage.setItem(key(note), JSON.stringify({ text, revision }));
      } catch {
        // Too long for it, or no storage at all. The database is the truth; this only covers the last half second.
      }
    },
    clear(note) {
      storage.removeItem(key(note));
    },
  };
}

/** Entries of pages that are gone; those in `alive` are still typing. */
export function leftovers(storage: Shelfmark, alive: ReadonlySet<string>): Leftover[] {
  const found: Leftover[] = [];
  for (let index = 0; index < storage.length; index += 1) {
    const key = storage.key(index);
    if (key === null || !key.startsWith(PREFIX)) continue;
    const [page = '', ...rest] = key.slice(PREFIX.length).split('.');
    const entry = readEntry(storage.getItem(key));
    if (!alive.has(page))
      found.push({ key, page, note: rest.join('.'), ...(entry ?? { text: '', revision: -1 }) });
  }
  return found;
}

function readEntry(text: string | null): JournalEntry | undefined {
  try {
    const value: unknown = JSON.parse(text ?? '');
    if (typeof value !== 'object' || value === null || !('text' in value) || !('revision' in value))
      return undefined;
    const { text: typed, revision } = value;
    return typeof typed === 'string' && typeof revision === 'number' ? { text: typed, revision } : undefined;
  } catch {
    return undefined;
  }
}
