import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { freshRepository, memoryStorage } from '../../testing/store.ts';
import { isFull, startAutosave, type SaveState } from './autosave.ts';
import { leftovers, openJournal } from './journal.ts';
import type { Repository } from './repository.ts';

// The database's own pauses go on by themselves; only the helper's are under the test's hand.
beforeEach(() => void vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout'] }));
afterEach(() => void vi.useRealTimers());

async function begin(repository: Repository = freshRepository()) {
  const note = await repository.createNote('start');
  const storage = memoryStorage();
  const states: SaveState[] = [];
  const outside: string[] = [];
  const autosave = startAutosave({
    repository,
    journal: openJournal(storage, 'page'),
    note,
    onState: (state) => states.push(state),
    onOutside: (text) => outside.push(text),
  });
  const kept = async () => (await repository.getNote(note.id))?.text;
  const journaled = () => leftovers(storage, new Set()).map(({ text }) => text);
  return { repository, note, storage, states, outside, autosave, kept, journaled };
}

describe('typing', () => {
  test('is kept a moment after the last key', async () => {
    const { autosave, kept, states, note } = await begin();
    autosave.edit('one');
    vi.advanceTimersByTime(149);
    expect(states).toEqual([]);
    vi.advanceTimersByTime(1);
    await autosave.flush();
    expect(await kept()).toBe('one');
    expect(states.map(({ kind }) => kind)).toEqual(['saving', 'saved']);
    expect(note.revision).toBe(1);
  });

  test('without a pause is kept all the same, every third of a second', async () => {
    const { autosave, states } = await begin();
    for (let time = 0; time < 2_000; time += 50) {
      autosave.edit(`at ${time}`);
      vi.advanceTimersByTime(50);
      // Lets a save that was started come to its end.
      await vi.waitFor(() => expect(states.at(-1)?.kind ?? 'saved').toBe('saved'));
    }
    expect(states.filter(({ kind }) => kind === 'saved').length).toBeGreaterThanOrEqual(3);
  });

  test('is in the journal at once, and leaves it when it is kept', async () => {
    const { autosave, journaled, kept } = await begin();
    autosave.edit('one');
    expect(journaled()).toEqual(['one']);
    autosave.edit('two');
    vi.advanceTimersByTime(120);
    expect(journaled()).toEqual(['two']);
    await autosave.flush();
    expect(journaled()).toEqual([]);
    expect(await kept()).toBe('two');
  });

  test('goes on where the journal refuses', async () => {
    const { autosave, storage, kept } = await begin();
    storage.refuses = true;
    autosave.edit('one');
    await autosave.flush();
    expect(await kept()).toBe('one');
  });

  test('typing back while a save is under way ends with what is on the page', async () => {
    const { autosave, kept, outside } = await begin();
    autosave.edit('changed');
    const saving = autosave.flush();
    autosave.edit('start');
    await saving;
    await autosave.flush();
    expect(await kept()).toBe('start');
    expect(outside).toEqual([]);
  });
});

describe('two pages', () => {
  test('what another one saved is shown when nothing is unsaved here', async () => {
    const { autosave, repository, note, outside, kept } = await begin();
    await repository.saveNote(note.id, 'theirs', 1);
    autosave.seen((await repository.getNote(note.id))!);
    expect(outside).toEqual(['theirs']);
    autosave.edit('theirs and mine');
    await autosave.flush();
    expect(await kept()).toBe('theirs and mine');
  });

  test('never overwrite each other: the second is asked, and both are kept', async () => {
    const { autosave, repository, note, states, kept } = await begin();
    autosave.edit('mine');
    await repository.saveNote(note.id, 'theirs', 1);
    await autosave.flush();
    expect(states.at(-1)).toMatchObject({ kind: 'conflict', mine: 'mine', theirs: { text: 'theirs' } });
    expect(await kept()).toBe('theirs');
    // What is typed while the question stands waits for its answer.
    autosave.edit('mine, longer');
    await autosave.flush();
    expect(await kept()).toBe('theirs');
    await autosave.settle('mine');
    expect(await kept()).toBe('mine, longer');
    expect(states.at(-1)).toEqual({ kind: 'saved' });
    expect((await repository.versionsOf(note.id)).map(({ text }) => text)).toEqual(
      expect.arrayContaining(['mine', 'theirs']),
    );
  });

  test('going on with the other text keeps this one in the history', async () => {
    const { autosave, repository, note, outside, kept } = await begin();
    autosave.edit('mine');
    await repository.saveNote(note.id, 'theirs', 1);
    await autosave.flush();
    autosave.edit('mine, longer');
    await autosave.settle('theirs');
    expect(outside).toEqual(['theirs']);
    expect(await kept()).toBe('theirs');
    expect((await repository.versionsOf(note.id)).map(({ text }) => text)).toContain('mine, longer');
  });

  test('a conflict settled is no conflict any more', async () => {
    const { autosave, repository, note, states, kept } = await begin();
    autosave.edit('mine');
    await repository.saveNote(note.id, 'theirs', 1);
    await autosave.flush();
    await autosave.settle('mine');
    autosave.edit('more');
    await autosave.flush();
    expect(await kept()).toBe('more');
    expect(states.at(-1)).toEqual({ kind: 'saved' });
  });
});

describe('a browser that will not', () => {
  test('says that there is no room, and tries again with the next change', async () => {
    const repository = freshRepository();
    const { autosave, states, kept } = await begin(repository);
    const save = vi.spyOn(repository, 'saveNote');
    save.mockRejectedValueOnce(
      Object.assign(new Error('AbortError'), { inner: new DOMException('', 'QuotaExceededError') }),
    );
    autosave.edit('one');
    await autosave.flush();
    expect(states.at(-1)).toEqual({ kind: 'refused', full: true });
    autosave.edit('two');
    await autosave.flush();
    expect(states.at(-1)).toEqual({ kind: 'saved' });
    expect(await kept()).toBe('two');
  });

  test.each([
    [new DOMException('', 'QuotaExceededError'), true],
    [{ name: 'AbortError', inner: { name: 'QuotaExceededError' } }, true],
    [new Error('other'), false],
    [undefined, false],
  ])('%o', (error, full) => expect(isFull(error)).toBe(full));
});

test('a note that was ended elsewhere', async () => {
  const { autosave, repository, note, states, journaled } = await begin();
  autosave.edit('still here');
  await repository.trashNotes([note.id]);
  await repository.endNotes([note.id]);
  await autosave.flush();
  expect(states.at(-1)).toEqual({ kind: 'gone' });
  // The words are not lost: they stay in the journal, from where the next start makes a note of them.
  expect(journaled()).toEqual(['still here']);
});
