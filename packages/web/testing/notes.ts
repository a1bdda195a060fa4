import type { NoteRecord, NoteSummary } from '../src/storage/records.ts';

/** A note for tests, with what matters to the test named. */
export function noteWith(part: Partial<NoteRecord> & { readonly id: string }): NoteRecord {
  return {
    title: part.id,
    text: `# ${part.id}\n`,
    revision: 1,
    created: 0,
    changed: 0,
    trashed: 0,
    summary: null,
    ...part,
  };
}

export function summaryWith(part: Partial<NoteSummary>): NoteSummary {
  return {
    revision: 1,
    engine: 'test',
    verdict: 'proved',
    cards: null,
    minutes: null,
    moves: [],
    structures: [],
    ...part,
  };
}
