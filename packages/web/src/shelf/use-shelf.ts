import { useEffect, useMemo, useRef, useState } from 'react';
import type { NoteRecord } from '../storage/records.ts';
import { repository } from '../storage/repository.ts';
import { useLive } from '../storage/use-live.ts';
import { NO_FILTER, passes, type Filter } from './facets.ts';
import type { SearchIndex } from './search-index.ts';

export const ORDERS = ['changed', 'title', 'cards'] as const;
export type Order = (typeof ORDERS)[number];

export interface Shelf {
  /** All notes; undefined until they are read. */
  readonly notes: readonly NoteRecord[] | undefined;
  /** Those that have the words, before the facets; what the facets count. */
  readonly found: readonly NoteRecord[];
  readonly shown: readonly NoteRecord[];
  readonly words: string;
  readonly filter: Filter;
  readonly order: Order;
  readonly setWords: (words: string) => void;
  readonly setFilter: (filter: Filter) => void;
  readonly setOrder: (order: Order) => void;
}

/** The shelf as it is asked for: by words, facets and order. */
export function useShelf(): Shelf {
  const notes = useLive(() => repository.listNotes(), []);
  const [words, setWords] = useState('');
  const [filter, setFilter] = useState(NO_FILTER);
  const [order, setOrder] = useState<Order>('changed');
  const index = useIndex(words.trim() !== '');

  const found = useMemo(() => {
    if (notes === undefined) return [];
    if (words.trim() === '') return sorted(notes, order);
    if (index === undefined) return [];
    index.update(notes);
    const byId = new Map(notes.map((note) => [note.id, note]));
    return index.find(words).flatMap((id) => byId.get(id) ?? []);
  }, [notes, words, order, index]);

  const shown = useMemo(() => found.filter((note) => passes(note, filter)), [found, filter]);
  return { notes, found, shown, words, filter, order, setWords, setFilter, setOrder };
}

/** The index comes with the first word that is looked for. */
function useIndex(wanted: boolean): SearchIndex | undefined {
  const [index, setIndex] = useState<SearchIndex>();
  const asked = useRef(false);
  useEffect(() => {
    if (!wanted || asked.current) return;
    asked.current = true;
    void import('./search-index.ts').then(({ createIndex }) => setIndex(createIndex()));
  }, [wanted]);
  return index;
}

function sorted(notes: readonly NoteRecord[], order: Order): readonly NoteRecord[] {
  switch (order) {
    case 'changed':
      return notes;
    case 'title':
      return notes.toSorted((a, b) => a.title.localeCompare(b.title));
    case 'cards':
      return notes.toSorted((a, b) => (a.summary?.cards ?? Infinity) - (b.summary?.cards ?? Infinity));
  }
}
