import MiniSearch from 'minisearch';
import type { NoteRecord } from '../storage/records.ts';

interface Entry {
  readonly id: string;
  readonly title: string;
  readonly text: string;
  readonly moves: string;
  readonly structures: string;
}

/** Words of all notes, kept in step with the shelf. */
export interface SearchIndex {
  update(notes: readonly NoteRecord[]): void;
  /** Ids of the notes that have all of the words, the best first. The last word may be unfinished. */
  find(words: string): readonly string[];
}

export function createIndex(): SearchIndex {
  const index = new MiniSearch<Entry>({
    fields: ['title', 'text', 'moves', 'structures'],
    // `Á` and `a`, `é` and `e` are one letter to a person who searches.
    processTerm: (term) =>
      term
        .normalize('NFD')
        .replace(/\p{M}+/gu, '')
        .toLowerCase(),
  });
  const known = new Map<string, NoteRecord>();
  return {
    update(notes) {
      const present = new Set(notes.map(({ id }) => id));
      for (const id of known.keys()) {
        if (present.has(id)) continue;
        known.delete(id);
        index.discard(id);
      }
      for (const note of notes) {
        const before = known.get(note.id);
        if (before?.revision === note.revision && before.summary === note.summary) continue;
        if (before === undefined) index.add(entryOf(note));
        else if (!isSame(before, note)) index.replace(entryOf(note));
        known.set(note.id, note);
      }
    },
    find(words) {
      const options = {
        combineWith: 'AND',
        prefix: true,
        // One slip in a longer word is forgiven.
        fuzzy: (term: string) => (term.length > 5 ? 1 : false),
        boost: { title: 3, moves: 2, structures: 2 },
      } as const;
      return index.search(words, options).map(({ id }) => String(id));
    },
  };
}

function entryOf({ id, title, text, summary }: NoteRecord): Entry {
  return {
    id,
    title,
    text,
    moves: summary?.moves.join(' ') ?? '',
    structures: summary?.structures.join(' ') ?? '',
  };
}

function isSame(a: NoteRecord, b: NoteRecord): boolean {
  const [one, other] = [entryOf(a), entryOf(b)];
  return (
    one.text === other.text &&
    one.title === other.title &&
    one.moves === other.moves &&
    one.structures === other.structures
  );
}
