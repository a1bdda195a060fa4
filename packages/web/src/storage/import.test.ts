import { strToU8, Zip, ZipDeflate, zipSync } from 'fflate';
import { describe, expect, test } from 'vitest';
import { zipOf } from './export-notes.ts';
import { fileNamesOf } from './file-names.ts';
import { IMPORT_LIMITS } from './import-limits.ts';
import { readIncoming, type Incoming } from './import-notes.ts';

const file = (path: string, bytes: Uint8Array<ArrayBuffer> | string): Incoming => ({
  path,
  file: new Blob([bytes]),
});
const zip = (files: Record<string, Uint8Array | string>, level: 0 | 9 = 9) =>
  new Uint8Array(
    zipSync(
      Object.fromEntries(
        Object.entries(files).map(([name, text]) => [name, typeof text === 'string' ? strToU8(text) : text]),
      ),
      { level },
    ),
  );

describe('what goes out comes back', () => {
  test('to the letter, whatever it is called', async () => {
    const notes = [
      { title: 'Night boat', text: '# Night boat\r\n\r\n♠ é 🂡\n' },
      { title: 'night BOAT', text: 'no end of line' },
      { title: '../../etc/passwd', text: 'x'.repeat(300_000) },
      { title: 'CON', text: '\uFEFFwith a mark' },
      { title: '   ', text: ' spaces ' },
    ];
    const out = await zipOf(notes);
    const { texts, refused, others } = await readIncoming([file('notes.zip', out)]);
    expect(texts).toEqual(notes.map(({ text }) => text));
    expect(refused).toEqual([]);
    expect(others).toBe(0);
  });

  test('the same notes make the same file', async () => {
    const notes = [{ title: 'a', text: 'b' }];
    expect(await zipOf(notes)).toEqual(await zipOf(notes));
  });
});

test('file names are all different and fit everywhere', () => {
  const titles = ['Boat', 'boat', 'BOAT!', 'a/b\\c:d', 'nul', '.', '', '♠', 'é', 'x'.repeat(500)];
  const names = fileNamesOf(titles, ['boat.md']);
  expect(names.slice(0, 3)).toEqual(['boat-2.md', 'boat-3.md', 'boat-4.md']);
  expect(new Set(names).size).toBe(names.length);
  for (const name of names) {
    expect(name).toMatch(/^[\p{L}\p{N}][\p{L}\p{N}-]*\.md$/u);
    expect(name.length).toBeLessThan(100);
    expect(name).not.toMatch(/^(?:nul|con)\.md$/);
  }
});

describe('what comes in', () => {
  test('files, folders and zips at once; pictures are passed over', async () => {
    const { texts, others, refused } = await readIncoming([
      file('a.md', 'A'),
      file('folder/sub/b.txt', 'B'),
      file('folder/picture.png', new Uint8Array([1, 2, 3])),
      file(
        'c.zip',
        zip({ 'x/c.markdown': 'C', 'x/y.jpg': 'J', '__MACOSX/x/._c.md': 'M', '.hidden.md': 'H' }),
      ),
      file('d.ZIP', zip({ 'd.md': 'D' }, 0)),
    ]);
    expect(texts).toEqual(['A', 'B', 'C', 'D']);
    expect(others).toBe(4);
    expect(refused).toEqual([]);
  });

  test('what is no text, empty, or no zip is refused by name, and the rest comes in', async () => {
    const { texts, refused } = await readIncoming([
      file('latin.md', new Uint8Array([0x63, 0x61, 0x66, 0xe9])),
      file('nul.md', 'a\0b'),
      file('empty.md', ' \n'),
      file('not.zip', 'PKzip? no'),
      file('half.zip', zip({ 'a.md': 'x'.repeat(10_000) }, 0).slice(0, 5_000)),
      file('good.md', 'good'),
    ]);
    expect(texts).toEqual(['good']);
    expect(refused.map(({ name, why }) => `${name}: ${why}`)).toEqual(
      expect.arrayContaining([
        'latin.md: not text',
        'nul.md: not text',
        'empty.md: empty',
        'not.zip: damaged',
      ]),
    );
  });

  test('a zip in a zip is not opened', async () => {
    const inner = zip({ 'a.md': 'x' });
    expect(
      await readIncoming([file('outer.zip', zip({ 'inner.zip': inner, 'inner.md': inner }))]),
    ).toMatchObject({
      texts: [],
      others: 1,
      refused: [{ name: 'inner.md', why: 'not text' }],
    });
  });
});

describe('a zip that would unpack to far more than it is', () => {
  test('one huge file: let go as soon as it shows', async () => {
    const bomb = zip({ 'bomb.md': new Uint8Array(60_000_000), 'after.md': 'still here' });
    expect(bomb.length).toBeLessThan(100_000);
    const started = performance.now();
    const { texts, refused } = await readIncoming([file('bomb.zip', bomb)]);
    expect(texts).toEqual(['still here']);
    expect(refused).toEqual([{ name: 'bomb.md', why: 'too long' }]);
    expect(performance.now() - started).toBeLessThan(3_000);
  });

  test('many files of the greatest length', async () => {
    const page = new Uint8Array(IMPORT_LIMITS.note).fill(120);
    const files = Object.fromEntries(Array.from({ length: 80 }, (_, index) => [`${index}.md`, page]));
    const { texts, refused } = await readIncoming([file('many.zip', zip(files))]);
    expect(texts.length).toBeLessThanOrEqual(IMPORT_LIMITS.total / IMPORT_LIMITS.note);
    expect(refused).toContainEqual({ name: 'many.zip', why: 'too much' });
  });

  test('many tiny files', async () => {
    const files = Object.fromEntries(Array.from({ length: 60 }, (_, index) => [`${index}.md`, 'x']));
    const limits = { ...IMPORT_LIMITS, count: 20 };
    const { texts, refused } = await readIncoming([file('many.zip', zip(files))], { limits });
    expect(texts).toHaveLength(20);
    expect(refused).toEqual([{ name: 'many.zip', why: 'too many' }]);
  });

  test('many things that are no notes', async () => {
    const files = Object.fromEntries(Array.from({ length: 60 }, (_, index) => [`${index}.png`, 'x']));
    const limits = { ...IMPORT_LIMITS, entries: 20 };
    expect((await readIncoming([file('many.zip', zip(files))], { limits })).refused).toEqual([
      { name: 'many.zip', why: 'too many' },
    ]);
  });

  test('one that lies about its size', async () => {
    const pieces: Uint8Array[] = [];
    const writer = new Zip((_, piece) => pieces.push(piece));
    const entry = new ZipDeflate('liar.md', { level: 9 });
    writer.add(entry);
    for (let round = 0; round < 50; round += 1) entry.push(new Uint8Array(100_000), round === 49);
    writer.end();
    const { refused } = await readIncoming([{ path: 'liar.zip', file: new Blob(pieces as BlobPart[]) }]);
    expect(refused).toEqual([{ name: 'liar.md', why: 'too long' }]);
  });

  test('one that takes too long', async () => {
    let time = 0;
    const clock = () => (time += 4_000);
    const big = zip(
      Object.fromEntries(Array.from({ length: 9 }, (_, index) => [`${index}.md`, 'x'.repeat(200_000)])),
      0,
    );
    const { refused } = await readIncoming([file('slow.zip', big)], { clock });
    expect(refused).toContainEqual({ name: 'slow.zip', why: 'too slow' });
  });

  test('one that is too large to begin with', async () => {
    const limits = { ...IMPORT_LIMITS, zip: 100 };
    const { refused } = await readIncoming([file('large.zip', zip({ 'a.md': 'x'.repeat(500) }, 0))], {
      limits,
    });
    expect(refused).toEqual([{ name: 'large.zip', why: 'too long' }]);
  });

  test('bytes at random, with a beginning that looks right', async () => {
    for (let seed = 1; seed <= 60; seed += 1) {
      const whole = zip({ 'a.md': 'hello '.repeat(500), 'b/c.md': 'world' });
      let state = seed;
      for (let hit = 0; hit < 6; hit += 1) {
        state = (state * 48_271) % 2_147_483_647;
        whole[4 + (state % (whole.length - 4))] = state & 0xff;
      }
      const { texts } = await readIncoming([file('odd.zip', whole)]);
      expect(texts.length).toBeLessThanOrEqual(2);
    }
  });
});
