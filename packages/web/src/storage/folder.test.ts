import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { freshRepository } from '../../testing/store.ts';
import type { Disk } from './folder-disk.ts';
import { syncFolder } from './folder-sync.ts';
import type { Repository } from './repository.ts';

/** A folder in memory. */
function memoryDisk(files: Record<string, string | undefined> = {}) {
  const held = new Map(Object.entries(files));
  const disk: Disk = {
    list: () => Promise.resolve([...held].map(([path, text]) => ({ path, text }))),
    write(path, text, was) {
      if ((held.get(path) ?? '') !== was) return Promise.resolve(false);
      held.set(path, text);
      return Promise.resolve(true);
    },
  };
  return { held, disk };
}

async function textsOf(repository: Repository): Promise<string[]> {
  return (await repository.listNotes()).map(({ text }) => text).toSorted();
}
const filesOf = (held: ReadonlyMap<string, string | undefined>) => Object.fromEntries(held);

async function linked(text = 'start') {
  const repository = freshRepository();
  const note = await repository.createNote(text);
  const { held, disk } = memoryDisk();
  await syncFolder(repository, disk);
  const sync = () => syncFolder(repository, disk);
  const change = async (to: string) => {
    const { revision } = (await repository.getNote(note.id))!;
    await repository.saveNote(note.id, to, revision);
  };
  return { repository, note, held, disk, sync, change };
}

describe('a folder that is linked', () => {
  test('gets the notes, and its own files come onto the shelf', async () => {
    const repository = freshRepository();
    await repository.createNotes(['# Boat', '# Lamp']);
    const { held, disk } = memoryDisk({ 'old/tea.md': '# Tea', 'lamp.md': '# Lamp' });
    await syncFolder(repository, disk);
    expect(await textsOf(repository)).toEqual(['# Boat', '# Lamp', '# Tea']);
    expect(filesOf(held)).toEqual({ 'old/tea.md': '# Tea', 'lamp.md': '# Lamp', 'boat.md': '# Boat' });
    await syncFolder(repository, disk);
    expect(await textsOf(repository)).toHaveLength(3);
    expect(held.size).toBe(3);
  });

  test('a change on either side reaches the other', async () => {
    const { repository, held, sync, change } = await linked();
    await change('changed here');
    await sync();
    expect([...held.values()]).toEqual(['changed here']);
    held.set('start.md', 'changed there');
    await sync();
    expect(await textsOf(repository)).toEqual(['changed there']);
    // What stood here before the folder's text came is in the history.
    const [note] = await repository.listNotes();
    expect((await repository.versionsOf(note!.id)).map(({ text }) => text)).toContain('start');
  });

  test('changes on both sides are both kept, on both sides', async () => {
    const { repository, held, sync, change } = await linked();
    await change('here');
    held.set('start.md', 'there');
    expect((await sync()).parted).toEqual(['here']);
    expect(await textsOf(repository)).toEqual(['here', 'there']);
    expect(new Set(held.values())).toEqual(new Set(['here', 'there']));
    expect((await sync()).parted).toEqual([]);
    expect(held.size).toBe(2);
  });

  test('the same change on both sides is none', async () => {
    const { repository, held, sync, change } = await linked();
    await change('same');
    held.set('start.md', 'same');
    expect(await sync()).toEqual({ sameFolder: true, parted: [], trashed: [] });
    expect(await textsOf(repository)).toEqual(['same']);
  });

  test('a file that is removed puts its note into the bin; a note changed meanwhile is written anew', async () => {
    const { repository, held, sync, change } = await linked();
    held.set('other.md', 'other');
    await sync();
    held.delete('start.md');
    expect((await sync()).trashed).toEqual(['start']);
    expect(await textsOf(repository)).toEqual(['other']);
    await repository.restoreNotes((await repository.listTrash()).map(({ id }) => id));
    await sync();
    expect(held.get('start.md')).toBe('start');
    held.delete('start.md');
    await change('changed');
    await sync();
    expect(held.get('start.md')).toBe('changed');
  });

  test('a note that is thrown away leaves its file alone, and comes back only if the file is changed', async () => {
    const { repository, note, held, sync } = await linked();
    await repository.trashNotes([note.id]);
    await sync();
    await sync();
    expect(await textsOf(repository)).toEqual([]);
    expect(held.get('start.md')).toBe('start');
    held.set('start.md', 'second thoughts');
    await sync();
    expect(await textsOf(repository)).toEqual(['second thoughts']);
  });

  test('an empty folder is taken for another one, not for a wish', async () => {
    const { repository, held, sync } = await linked();
    held.set('other.md', 'other');
    await sync();
    held.clear();
    expect(await sync()).toMatchObject({ sameFolder: false });
    expect(await textsOf(repository)).toEqual(['other', 'start']);
  });

  test('a file that cannot be read is left alone', async () => {
    const { repository, held, sync, change } = await linked();
    held.set('start.md', undefined);
    held.set('picture.md', undefined);
    await change('changed');
    await sync();
    expect(await textsOf(repository)).toEqual(['changed']);
    expect(held.get('start.md')).toBeUndefined();
  });

  test('a file written between the look and the write is not overwritten', async () => {
    const { repository, held, disk, change } = await linked();
    await change('here');
    const late: Disk = {
      list: () => disk.list(),
      write(path, text, was) {
        held.set('start.md', 'somebody was faster');
        return disk.write(path, text, was);
      },
    };
    await syncFolder(repository, late);
    expect(held.get('start.md')).toBe('somebody was faster');
    await syncFolder(repository, disk);
    expect(await textsOf(repository)).toEqual(['here', 'somebody was faster']);
  });

  test('whatever happens on both sides, no text is lost', async () => {
    const event = fc.record({
      side: fc.constantFrom('here', 'there', 'sync'),
      which: fc.nat(2),
      deed: fc.constantFrom('change', 'remove', 'add'),
    });
    await fc.assert(
      fc.asyncProperty(fc.array(event, { maxLength: 14 }), async (events) => {
        const clock = { time: 0 };
        const repository = freshRepository(clock);
        const { held, disk } = memoryDisk({ 'a.md': 'a', 'b.md': 'b' });
        await syncFolder(repository, disk);
        let count = 0;
        const written = new Set<string>();
        const removed = new Set<string>();
        for (const { side, which, deed } of events) {
          count += 1;
          // Far enough apart for the history to keep every text.
          clock.time += 180_000;
          const text = `text ${count}`;
          const notes = await repository.listNotes();
          const paths = [...held.keys()].toSorted();
          const [note, path] = [
            notes[which % Math.max(1, notes.length)],
            paths[which % Math.max(1, paths.length)],
          ];
          if (side === 'sync') await syncFolder(repository, disk);
          else if (deed === 'add') {
            written.add(text);
            if (side === 'here') await repository.createNote(text);
            else held.set(`${count}.md`, text);
          } else if (side === 'here' && note !== undefined) {
            if (deed === 'remove') await repository.trashNotes([note.id]);
            else {
              written.add(text);
              await repository.saveNote(note.id, text, note.revision);
            }
          } else if (side === 'there' && path !== undefined) {
            const old = held.get(path);
            if (deed === 'remove') held.delete(path);
            else held.set(path, text);
            if (deed === 'change') written.add(text);
            // What a person does to a file that was not yet seen here is theirs to do.
            if (old !== undefined) removed.add(old);
          }
        }
        await syncFolder(repository, disk);
        const everywhere = new Set([...held.values()].flatMap((text) => text ?? []));
        for (const { id, text } of await repository.store.db.notes.toArray()) {
          everywhere.add(text);
          for (const version of await repository.versionsOf(id)) everywhere.add(version.text);
        }
        expect([...written].filter((text) => !everywhere.has(text) && !removed.has(text))).toEqual([]);
      }),
      { numRuns: 150 },
    );
  });
});
