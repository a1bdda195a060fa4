import 'fake-indexeddb/auto';
import { Dexie } from 'dexie';
import { describe, expect, test } from 'vitest';
import { openStore } from './db.ts';
import { createRepository } from './repository.ts';

// What earlier shelves looked like, written down once and never brought up to date.
const V1 = { notes: 'id, changed' };
const V2 = { notes: 'id, changed, trashed', versions: '++key, note, [note+made]' };

const oldNotes = [
  { id: 'a', title: 'Night boat', text: '# Night boat\n', created: 10, changed: 30 },
  { id: 'b', title: 'Corner café', text: '---\ntitle: Corner café\n---\n', created: 20, changed: 20 },
];

async function opened(name: string) {
  const repository = createRepository(openStore(name, () => 1_000));
  const notes = await repository.listNotes();
  return { repository, notes };
}

describe('a shelf of version 1', () => {
  async function make(name: string) {
    const old = new Dexie(name);
    old.version(1).stores(V1);
    await old.table('notes').bulkAdd(oldNotes);
    old.close();
  }

  test('keeps every note to the letter, on the shelf', async () => {
    await make('one-a');
    const { notes } = await opened('one-a');
    expect(notes).toEqual(oldNotes.map((note) => ({ ...note, revision: 1, trashed: 0, summary: null })));
  });

  test('can be worked with', async () => {
    await make('one-b');
    const { repository } = await opened('one-b');
    expect(await repository.saveNote('a', 'new', 1)).toEqual({ kind: 'saved', revision: 2 });
    expect(await repository.versionsOf('a')).toMatchObject([
      { text: '# Night boat\n', kind: 'automatic', made: 30 },
    ]);
    await repository.trashNotes(['b']);
    expect((await repository.listTrash()).map(({ id }) => id)).toEqual(['b']);
    expect((await repository.getSettings()).welcomed).toBe(false);
  });
});

describe('a shelf of version 2', () => {
  async function make(name: string) {
    const old = new Dexie(name);
    old.version(1).stores(V1);
    old.version(2).stores(V2);
    await old.table('notes').bulkAdd([
      { ...oldNotes[0], revision: 7, trashed: 0 },
      { ...oldNotes[1], revision: 2, trashed: 500 },
    ]);
    await old.table('versions').bulkAdd([
      { note: 'a', made: 11, text: 'first' },
      { note: 'a', made: 12, text: 'second', name: 'For the club' },
    ]);
    old.close();
  }

  test('keeps revisions, the bin and the history, and says why each earlier text is kept', async () => {
    await make('two');
    const { repository, notes } = await opened('two');
    expect(notes).toEqual([{ ...oldNotes[0], revision: 7, trashed: 0, summary: null }]);
    expect(await repository.listTrash()).toMatchObject([{ id: 'b', revision: 2, trashed: 500 }]);
    expect(await repository.versionsOf('a')).toMatchObject([
      { text: 'second', kind: 'named', name: 'For the club', made: 12 },
      { text: 'first', kind: 'automatic', name: '', made: 11 },
    ]);
  });
});

test('a shelf of this version opens as it was left', async () => {
  const first = createRepository(openStore('three', () => 5));
  const note = await first.createNote('# A\n');
  await first.keepVersion(note.id, 'earlier', 'named', 'One');
  await first.setSetting('backedUp', 99);
  first.store.db.close();
  const { repository, notes } = await opened('three');
  expect(notes).toEqual([note]);
  expect(await repository.versionsOf(note.id)).toMatchObject([{ text: 'earlier', name: 'One' }]);
  expect((await repository.getSettings()).backedUp).toBe(99);
});

test('a shelf that a newer app has opened keeps what only the newer one knows', async () => {
  const newer = new Dexie('newer');
  newer.version(999).stores({ notes: 'id, changed, trashed', wonders: 'id' });
  const note = { ...oldNotes[0], revision: 1, trashed: 0, summary: null, wonder: 'x' };
  await newer.table('notes').add(note);
  await newer.table('wonders').add({ id: 'x' });
  newer.close();
  const { repository, notes } = await opened('newer');
  expect(notes).toEqual([note]);
  await repository.saveNote('a', 'changed here', 1);
  repository.store.db.close();
  const again = new Dexie('newer');
  again.version(999).stores({ notes: 'id, changed, trashed', wonders: 'id' });
  expect(await again.table('notes').toArray()).toMatchObject([{ text: 'changed here', wonder: 'x' }]);
  expect(await again.table('wonders').toArray()).toEqual([{ id: 'x' }]);
});
