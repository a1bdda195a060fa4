import type { Store } from './db.ts';
import { keepOutgoing, keepVersion } from './history.ts';
import type { NoteRecord, NoteSummary } from './records.ts';
import { titleOf, withTitle } from './title.ts';

/** What became of a save. A conflict has lost nothing: the refused text is in the note's history. */
export type SaveOutcome =
  | { readonly kind: 'saved'; readonly revision: number }
  /** The note has moved on since the revision the save started from. */
  | { readonly kind: 'conflict'; readonly theirs: NoteRecord }
  | { readonly kind: 'gone' };

/** The notes on the shelf, last changed first. */
export async function listNotes({ db }: Store): Promise<NoteRecord[]> {
  const notes = await db.notes.where('trashed').equals(0).toArray();
  return notes.sort((a, b) => b.changed - a.changed);
}

/** The notes in the bin, last thrown away first. */
export async function listTrash({ db }: Store): Promise<NoteRecord[]> {
  const notes = await db.notes.where('trashed').above(0).toArray();
  return notes.sort((a, b) => b.trashed - a.trashed);
}

export function getNote({ db }: Store, id: string): Promise<NoteRecord | undefined> {
  return db.notes.get(id);
}

export async function createNote(store: Store, text: string): Promise<NoteRecord> {
  const [note] = await createNotes(store, [text]);
  return note!;
}

/** Puts several notes on the shelf: all of them or, where there is no room, none. */
export async function createNotes({ db, now }: Store, texts: readonly string[]): Promise<NoteRecord[]> {
  const time = now();
  const notes: NoteRecord[] = [];
  for (const [index, text] of texts.entries()) {
    notes.push({
      id: crypto.randomUUID(),
      title: await titleOf(text),
      text,
      revision: 1,
      created: time,
      // A moment apart, so that together they keep their order.
      changed: time - index,
      trashed: 0,
      summary: null,
    });
  }
  await db.notes.bulkAdd(notes);
  return notes;
}

/** Replaces a note's text, if it still is at the revision the caller started from. */
export async function saveNote(store: Store, id: string, text: string, base: number): Promise<SaveOutcome> {
  const { db, now } = store;
  // Outside the transaction, which would not wait for it.
  const title = await titleOf(text);
  return db.transaction('rw', db.notes, db.versions, async (): Promise<SaveOutcome> => {
    const note = await db.notes.get(id);
    if (note === undefined) return { kind: 'gone' };
    if (note.text === text) return { kind: 'saved', revision: note.revision };
    if (note.revision !== base) {
      await keepVersion(store, id, text, 'conflict');
      return { kind: 'conflict', theirs: note };
    }
    await keepOutgoing(store, note);
    const revision = base + 1;
    await db.notes.put({ ...note, text, title, revision, changed: now() });
    return { kind: 'saved', revision };
  });
}

/** Goes back to an earlier text; the present one is kept in the history first. */
export async function restoreVersion(store: Store, id: string, text: string): Promise<SaveOutcome> {
  const note = await getNote(store, id);
  if (note === undefined) return { kind: 'gone' };
  if (note.text !== text) await keepVersion(store, id, note.text, 'named', 'Before going back');
  return saveNote(store, id, text, note.revision);
}

export async function renameNote(store: Store, id: string, title: string): Promise<SaveOutcome> {
  const note = await getNote(store, id);
  if (note === undefined) return { kind: 'gone' };
  return saveNote(store, id, await withTitle(note.text, title), note.revision);
}

export async function duplicateNote(store: Store, id: string): Promise<NoteRecord | undefined> {
  const note = await getNote(store, id);
  if (note === undefined) return undefined;
  return createNote(store, await withTitle(note.text, `${note.title} (copy)`));
}

/** Puts notes into the bin, from where `restoreNotes` brings them back. */
export async function trashNotes({ db, now }: Store, ids: readonly string[]): Promise<void> {
  await db.notes
    .where('id')
    .anyOf([...ids])
    .modify({ trashed: now() });
}

export async function restoreNotes({ db }: Store, ids: readonly string[]): Promise<void> {
  await db.notes
    .where('id')
    .anyOf([...ids])
    .modify({ trashed: 0 });
}

/** Ends notes and their history for good. Only what lies in the bin can be ended. */
export async function endNotes({ db }: Store, ids: readonly string[]): Promise<void> {
  await db.transaction('rw', db.notes, db.versions, async () => {
    const notes = await db.notes
      .where('id')
      .anyOf([...ids])
      .toArray();
    const gone = notes.filter(({ trashed }) => trashed > 0).map(({ id }) => id);
    await db.versions.where('note').anyOf(gone).delete();
    await db.notes.bulkDelete(gone);
  });
}

/** Remembers what the engine said of a revision; an answer about an older text is dropped. */
export async function saveSummary({ db }: Store, id: string, summary: NoteSummary): Promise<void> {
  await db.transaction('rw', db.notes, async () => {
    const note = await db.notes.get(id);
    if (note?.revision === summary.revision) await db.notes.update(id, { summary });
  });
}
