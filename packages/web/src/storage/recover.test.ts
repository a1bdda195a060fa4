import { afterEach, describe, expect, test, vi } from 'vitest';
import { freshRepository, memoryStorage } from '../../testing/store.ts';
import { openJournal } from './journal.ts';
import { recoverLater, recoverTyping } from './recover.ts';

function withPages(...alive: string[]) {
  const held = alive.map((page) => ({ name: `foregone.page.${page}` }));
  vi.stubGlobal('navigator', { locks: { query: () => Promise.resolve({ held }) } });
}
afterEach(() => void vi.unstubAllGlobals());

describe('what a killed page leaves behind', () => {
  test('is saved, and forgotten then', async () => {
    withPages();
    const [repository, storage] = [freshRepository(), memoryStorage()];
    const { id } = await repository.createNote('start');
    openJournal(storage, 'dead').write(id, { text: 'typed', revision: 1 });
    expect(await recoverTyping(repository, storage)).toBe(1);
    expect((await repository.getNote(id))?.text).toBe('typed');
    expect(storage.length).toBe(0);
    expect(await recoverTyping(repository, storage)).toBe(0);
  });

  test('is left to a page that is alive', async () => {
    withPages('alive');
    const [repository, storage] = [freshRepository(), memoryStorage()];
    const { id } = await repository.createNote('start');
    openJournal(storage, 'alive').write(id, { text: 'typing', revision: 1 });
    expect(await recoverTyping(repository, storage)).toBe(0);
    expect((await repository.getNote(id))?.text).toBe('start');
    expect(storage.length).toBe(1);
  });

  test('is saved when a page that seemed alive ends', async () => {
    const ended: (() => Promise<void>)[] = [];
    vi.stubGlobal('navigator', {
      locks: {
        query: () => Promise.resolve({ held: [{ name: 'foregone.page.dying' }] }),
        request: (name: string, run: () => Promise<void>) => {
          expect(name).toBe('foregone.page.dying');
          ended.push(run);
        },
      },
    });
    const [repository, storage] = [freshRepository(), memoryStorage()];
    const { id } = await repository.createNote('start');
    openJournal(storage, 'dying').write(id, { text: 'typed', revision: 1 });
    openJournal(storage, 'own').write(id, { text: 'mine', revision: 1 });
    const saved: number[] = [];
    expect(await recoverTyping(repository, storage)).toBe(1);
    recoverLater(repository, storage, 'own', (count) => saved.push(count));
    expect(ended).toHaveLength(1);
    await ended[0]!();
    expect(saved).toEqual([1]);
    expect((await repository.versionsOf(id)).map(({ text }) => text)).toContain('typed');
  });

  test('goes into the history where the note has moved on', async () => {
    withPages();
    const [repository, storage] = [freshRepository(), memoryStorage()];
    const { id } = await repository.createNote('start');
    await repository.saveNote(id, 'later', 1);
    openJournal(storage, 'dead').write(id, { text: 'typed', revision: 1 });
    await recoverTyping(repository, storage);
    expect((await repository.getNote(id))?.text).toBe('later');
    expect((await repository.versionsOf(id)).map(({ text }) => text)).toContain('typed');
  });

  test('becomes a note of its own where the note is gone', async () => {
    withPages();
    const [repository, storage] = [freshRepository(), memoryStorage()];
    openJournal(storage, 'dead').write('gone', { text: '# Typed', revision: 3 });
    await recoverTyping(repository, storage);
    expect(await repository.listNotes()).toMatchObject([{ title: 'Typed', text: '# Typed' }]);
  });

  test.each(['', '{', '[]', 'null', '{"text":1,"revision":1}', '{"text":"x"}'])(
    'rubbish is thrown away: %s',
    async (rubbish) => {
      withPages();
      const [repository, storage] = [freshRepository(), memoryStorage()];
      storage.setItem('foregone.journal.dead.note', rubbish);
      storage.setItem('somebody else', 'stays');
      expect(await recoverTyping(repository, storage)).toBe(0);
      expect(await repository.listNotes()).toEqual([]);
      expect(storage.key(0)).toBe('somebody else');
    },
  );

  test('without locks to ask, everything is taken for left behind', async () => {
    vi.stubGlobal('navigator', {});
    const [repository, storage] = [freshRepository(), memoryStorage()];
    const { id } = await repository.createNote('start');
    openJournal(storage, 'dead').write(id, { text: 'typed', revision: 1 });
    expect(await recoverTyping(repository, storage)).toBe(1);
  });
});
