import { expect, test } from 'vitest';
import { CLAIMS } from '../packages/engine/src/claims/index.ts';
import { MOVES } from '../packages/engine/src/moves/index.ts';
import { MESSAGES } from '../packages/engine/src/note/messages/index.ts';
import { parseTable } from '../packages/engine/testing/packets.ts';
import { missingParts } from './generate-completeness.ts';
import { draw } from './generate-drawing.ts';
import { endingsPage } from './generate-endings.ts';
import { messagesPage } from './generate-messages.ts';
import { movesPage } from './generate-moves.ts';
import { block } from './generate-parts.ts';

const drawn = (text: string): string => draw([['now', parseTable(text)]]);

test('every module has all its parts', () => {
  expect(missingParts(MOVES, CLAIMS, MESSAGES)).toEqual([]);
});

test('a part that is missing is told', () => {
  const [move] = MOVES;
  const [claim] = CLAIMS;
  const [message] = MESSAGES;
  expect(missingParts([{ ...move, help: ' ' }], [], [])).toEqual([`move ${move.id} has no help`]);
  expect(missingParts([{ ...move, examples: [] }], [], [])).toEqual([`move ${move.id} has no examples`]);
  expect(missingParts([move, move], [], [])).toEqual([`two modules are called move "${move.title}"`]);
  expect(missingParts([], [{ ...claim, caution: '', endings: [] }], [])).toEqual([
    `ending ${claim.id} has no caution`,
    `ending ${claim.id} has no endings`,
  ]);
  const onlyTrue = claim.examples.filter(({ holds }) => holds);
  expect(missingParts([], [{ ...claim, examples: onlyTrue }], [])).toEqual([
    `ending ${claim.id} has no example that is false`,
  ]);
  expect(missingParts([], [], [{ ...message, remedy: () => '' }])).toEqual([
    `message ${message.code} has no remedy`,
  ]);
});

test('a packet is drawn from its top, with faces, ends and marks', () => {
  expect(drawn("1 2^ 3' 4(chosen)").replace(/ +/g, ' ')).toBe("now packet 1 [2] 3' 4(chosen)");
});

test('piles stand in line, and numbers under them', () => {
  expect(drawn('n = 3; packet: 1 2; pile 1: 10^')).toBe(
    ['now  packet   1    2', '     pile 1  [10]', '     N = 3'].join('\n'),
  );
});

test('a layout is drawn as it lies, with an empty cell as a dot', () => {
  expect(drawn('cell 1 1: 1; cell 1 2: 2^ 3; cell 2 2: 4')).toBe(
    ['now   1       [2]  3', '      .        4'].join('\n'),
  );
  expect(drawn('packet:')).toBe('now  no cards');
});

test('a text with code marks in it is still one block', () => {
  expect(block('a\n```\nb')).toBe('````text\na\n```\nb\n````');
});

test('every module is on its page, with every one of its examples', () => {
  const [moves, endings, messages] = [movesPage(), endingsPage(), messagesPage()];
  for (const { title, examples } of MOVES) {
    expect(moves).toContain(`### ${title.slice(0, 1).toUpperCase()}${title.slice(1)}\n`);
    for (const { sentence } of examples) expect(moves).toContain(`\n${sentence}\n`);
  }
  for (const { examples } of CLAIMS)
    for (const { sentence } of examples) expect(endings).toContain(`\n${sentence}\n`);
  for (const { code } of MESSAGES) expect(messages).toContain(`### ${code}\n`);
}, 60_000);
