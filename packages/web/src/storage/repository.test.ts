import { describe, expect, test } from 'vitest';
import { summaryWith } from '../../testing/notes.ts';
import { freshRepository } from '../../testing/store.ts';

const MINUTE = 60_000;

describe('saving', () => {
  test('counts revisions up and finds the title', async () => {
    const clock = { time: 100 };
    const repository = freshRepository(clock);
    const note = await repository.createNote('# One\n');
    expect(note).toMatchObject({ title: 'One', revision: 1, created: 100, changed: 100 });
    clock.time = 200;
    expect(await repository.saveNote(note.id, '# Two\n', 1)).toEqual({ kind: 'saved', revision: 2 });
    expect(await repository.getNote(note.id)).toMatchObject({
      title: 'Two',
      revision: 2,
      created: 100,
      changed: 200,
    });
  });

  test('from an older revision is refused, and the refused text kept', async () => {
    const repository = freshRepository();
    const { id } = await repository.createNote('start');
    await repository.saveNote(id, 'theirs', 1);
    expect(await repository.saveNote(id, 'mine', 1)).toMatchObject({
      kind: 'conflict',
      theirs: { text: 'theirs', revision: 2 },
    });
    expect((await repository.getNote(id))?.text).toBe('theirs');
    expect(await repository.versionsOf(id)).toContainEqual(
      expect.objectContaining({ text: 'mine', kind: 'conflict' }),
    );
  });

  test('the same text twice is no change, whatever it started from', async () => {
    const repository = freshRepository();
    const { id } = await repository.createNote('a');
    await repository.saveNote(id, 'b', 1);
    expect(await repository.saveNote(id, 'b', 1)).toEqual({ kind: 'saved', revision: 2 });
  });

  test('of two at the same moment one wins and none is lost', async () => {
    const repository = freshRepository();
    const { id } = await repository.createNote('start');
    const outcomes = await Promise.all(['left', 'right'].map((text) => repository.saveNote(id, text, 1)));
    expect(outcomes.map(({ kind }) => kind).toSorted()).toEqual(['conflict', 'saved']);
    const kept = [
      (await repository.getNote(id))?.text,
      ...(await repository.versionsOf(id)).map(({ text }) => text),
    ];
    expect(kept).toEqual(expect.arrayContaining(['left', 'right', 'start']));
  });

  test('a note that is gone for good', async () => {
    expect(await freshRepository().saveNote('nobody', 'x', 1)).toEqual({ kind: 'gone' });
  });
});

describe('the bin', () => {
  test('takes notes and gives them back as they were', async () => {
    const clock = { time: 1 };
    const repository = freshRepository(clock);
    const [a, b] = await repository.createNotes(['# A', '# B']);
    clock.time = 2;
    await repository.trashNotes([a!.id]);
    expect(await repository.listNotes()).toEqual([b]);
    expect(await repository.listTrash()).toEqual([{ ...a, trashed: 2 }]);
    await repository.restoreNotes([a!.id]);
    expect(await repository.listNotes()).toEqual([a, b]);
  });

  test('only what lies in it can be ended, its history with it', async () => {
    const repository = freshRepository();
    const [a, b] = await repository.createNotes(['# A', '# B']);
    await repository.keepVersion(a!.id, 'old', 'named', 'x');
    await repository.keepVersion(b!.id, 'old', 'named', 'x');
    await repository.trashNotes([a!.id]);
    await repository.endNotes([a!.id, b!.id]);
    expect(await repository.listTrash()).toEqual([]);
    expect((await repository.listNotes()).map(({ id }) => id)).toEqual([b!.id]);
    expect(await repository.versionsOf(a!.id)).toEqual([]);
    expect(await repository.versionsOf(b!.id)).toHaveLength(1);
  });
});

describe('history', () => {
  test('keeps what is replaced, at most every two minutes', async () => {
    const clock = { time: 0 };
    const repository = freshRepository(clock);
    const { id } = await repository.createNote('0');
    for (let minute = 1; minute <= 6; minute += 1) {
      clock.time = minute * MINUTE;
      await repository.saveNote(id, String(minute), minute);
    }
    expect((await repository.versionsOf(id)).map(({ text, made }) => [text, made / MINUTE])).toEqual([
      ['4', 4],
      ['2', 2],
      ['0', 0],
    ]);
  });

  test('keeps the last text of a sitting', async () => {
    const clock = { time: 0 };
    const repository = freshRepository(clock);
    const { id } = await repository.createNote('0');
    for (let second = 1; second <= 30; second += 1) {
      clock.time = second * 1_000;
      await repository.saveNote(id, String(second), second);
    }
    clock.time = 40 * MINUTE;
    await repository.saveNote(id, 'the next sitting', 31);
    expect((await repository.versionsOf(id)).map(({ text }) => text)).toEqual(['30', '0']);
  });

  test('going back keeps the present text first', async () => {
    const repository = freshRepository();
    const { id } = await repository.createNote('then');
    await repository.saveNote(id, 'now', 1);
    await repository.restoreVersion(id, 'then');
    expect(await repository.getNote(id)).toMatchObject({ text: 'then', revision: 3 });
    expect((await repository.versionsOf(id)).map(({ text }) => text)).toContain('now');
  });

  test('a name keeps a text, and taking the name away gives it back to the thinning', async () => {
    const repository = freshRepository();
    const { id } = await repository.createNote('then');
    await repository.saveNote(id, 'now', 1);
    const [version] = await repository.versionsOf(id);
    await repository.nameVersion(version!.key, 'For the club');
    expect(await repository.versionsOf(id)).toMatchObject([{ kind: 'named', name: 'For the club' }]);
    await repository.nameVersion(version!.key, '');
    expect(await repository.versionsOf(id)).toMatchObject([{ kind: 'automatic', name: '' }]);
  });
});

test('renaming changes the title and nothing else', async () => {
  const repository = freshRepository();
  const text = '---\ntitle: Old # really\nminutes: 4\n---\n# Heading\n\n- body\n';
  const { id } = await repository.createNote(text);
  await repository.renameNote(id, 'New: "title"');
  const renamed = await repository.getNote(id);
  expect(renamed?.title).toBe('New: "title"');
  expect(renamed?.text).toContain('minutes: 4');
  expect(renamed?.text.endsWith('---\n# Heading\n\n- body\n')).toBe(true);
});

test('a duplicate is a note of its own', async () => {
  const repository = freshRepository();
  const note = await repository.createNote('# Boat\n\nText.\n');
  const copy = await repository.duplicateNote(note.id);
  expect(copy).toMatchObject({ title: 'Boat (copy)', revision: 1 });
  expect(copy?.text).toContain('Text.');
  await repository.saveNote(copy!.id, 'other', 1);
  expect(await repository.getNote(note.id)).toEqual(note);
});

test('a verdict about an older text is dropped', async () => {
  const repository = freshRepository();
  const { id } = await repository.createNote('a');
  await repository.saveNote(id, 'b', 1);
  await repository.saveSummary(id, summaryWith({ revision: 1 }));
  expect((await repository.getNote(id))?.summary).toBeNull();
  await repository.saveSummary(id, summaryWith({ revision: 2 }));
  expect((await repository.getNote(id))?.summary?.revision).toBe(2);
});
