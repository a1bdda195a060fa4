import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { titleOf, UNTITLED, withTitle } from './title.ts';

describe('what a note is called', () => {
  test.each([
    ['the title in its head', '---\ntitle: Night boat\n---\n# Other\n', 'Night boat'],
    ['quoted, with a colon', '---\nminutes: 3\ntitle: "Boat: a note"\n---\n', 'Boat: a note'],
    ['a number', '---\ntitle: 1984\n---\n', '1984'],
    ['folded over lines', '---\ntitle: >-\n  Night\n  boat\n---\n', 'Night boat'],
    ['with lines as Windows ends them', '\uFEFF---\r\ntitle: Night boat\r\n---\r\n# Other\r\n', 'Night boat'],
    ['its first heading', '\n# Night boat\n\nText', 'Night boat'],
    ['its first words', 'Just words\nand more', 'Just words'],
    ['its first words after an empty title', '---\ntitle:\n---\nJust words', 'Just words'],
    ['nothing', '', UNTITLED],
    ['an open head', '---\ntitle: x\n', 'title: x'],
    ['a head that is no map', '---\n- a\n- b\n---\nWords', 'Words'],
    ['a head that cannot be read', '---\ntitle: [\n---\nWords', 'Words'],
    ['a title of another kind', '---\ntitle: {a: b}\n---\nWords', 'Words'],
  ])('%s', async (_what, text, title) => {
    expect(await titleOf(text)).toBe(title);
  });

  test('a long one is cut, an odd one is one line', async () => {
    expect([...(await titleOf(`# ${'🂡'.repeat(500)}`))]).toHaveLength(120);
    expect(await titleOf('---\ntitle: "a\\n\\tb"\n---\n')).toBe('a b');
  });

  test('aliases that would grow without end do no harm', async () => {
    const bomb = ['a: &a [x,x,x,x,x,x,x,x,x]', ...Array.from('bcdefghij')].map((line, index) =>
      index === 0
        ? line
        : `${line}: &${line} [${Array(9)
            .fill(`*${String.fromCharCode(96 + index)}`)
            .join()}]`,
    );
    expect(await titleOf(`---\n${bomb.join('\n')}\n---\nWords`)).toBe('Words');
  });

  test('any text has one', async () => {
    await fc.assert(
      fc.asyncProperty(fc.string({ unit: 'binary', maxLength: 300 }), async (text) => {
        const title = await titleOf(`---\n${text}`);
        expect(title.trim()).not.toBe('');
        expect(title).not.toContain('\n');
      }),
    );
  });
});

describe('giving a title', () => {
  const title = fc
    .string({ minLength: 1, maxLength: 60 })
    .filter((text) => text.trim() === text && !/\s\s/.test(text));
  test.each([
    '',
    '# H\n',
    '---\nminutes: 2\n---\nBody\n',
    '---\ntitle: a\n# remark\ncredits: []\n---\n\nBody',
  ])('to %j', async (text) => {
    await fc.assert(
      fc.asyncProperty(title, async (wanted) => {
        expect(await titleOf(await withTitle(text, wanted))).toBe(wanted);
      }),
      { numRuns: 40 },
    );
  });

  test('leaves a head alone that cannot be read', async () => {
    const text = '---\ntitle: [\n---\nWords';
    expect(await withTitle(text, 'x')).toBe(text);
  });

  test('keeps the ends of lines', async () => {
    expect(await withTitle('---\r\ntitle: a\r\n---\r\nBody\r\n', 'b')).toBe(
      '---\r\ntitle: b\r\n---\r\nBody\r\n',
    );
  });
});
