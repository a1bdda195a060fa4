import { describe, expect, test } from 'vitest';
import { compile } from '../../src/note/compile.ts';
import { read } from '../../src/note/read.ts';
import { decide } from '../../src/proving/decide.ts';

function compiled(working: string, ending = 'All cards are face down.') {
  return compile(
    read(`## Set-up
- packet: 2S 9H 4C KD 7S AH, face down
## Working
${working}
## Ending
- ${ending}
`),
  );
}

const secrets = (working: string) =>
  compiled(working)
    .diagnostics.filter(({ severity }) => severity === 'error')
    .map(({ code, facts }) => `${code} ${String(facts.name)} ${String(facts.step)}`);

const verdict = (working: string, ending: string) => {
  const { routine, diagnostics } = compiled(working, ending);
  if (routine === undefined) throw new Error(JSON.stringify(diagnostics));
  return decide(routine).sentences[0].verdict;
};

describe('the performer may not rest on', () => {
  test.each([
    [
      'a number thought of',
      '1. The spectator thinks of a number from 1 to 3, call it N.\n2. You deal N cards to the table.',
      '1',
    ],
    [
      'a number named in secret',
      '1. The spectator names a number from 1 to 3, call it N, in secret.\n2. You deal N cards to the table.',
      '1',
    ],
    [
      'a number counted unseen',
      '1. Cut off 1 to 3 cards to the pocket, call the number N.\n2. You deal N cards to the table.',
      '1',
    ],
    [
      'what is reckoned from it',
      '1. The spectator thinks of a number from 1 to 3, call it N.\n2. Call N plus 1 M.\n3. You deal M cards to the table.',
      '2',
    ],
    [
      'a condition on it',
      '1. The spectator thinks of a number from 1 to 3, call it N.\n2. If N is even:\n   1. You turn over the packet.',
      '1',
    ],
    [
      'so many times',
      '1. The spectator thinks of a number from 1 to 3, call it N.\n2. N times:\n   1. You turn over the packet.',
      '1',
    ],
    [
      'a card thought of',
      '1. The spectator thinks of any card, call it chosen.\n2. You take out the chosen card.',
      '1',
    ],
    [
      'one named too late',
      '1. The spectator thinks of any card, call it chosen.\n2. You take out the chosen card.\n3. The spectator names the chosen card.',
      '1',
    ],
    [
      'one named only perhaps',
      '1. The spectator thinks of any card, call it chosen.\n2. Either:\n   - The spectator names the chosen card.\n   - Do nothing.\n3. You take out the chosen card.',
      '1',
    ],
    [
      'one thought of anew',
      '1. The spectator thinks of a number from 1 to 3, call it N.\n2. The spectator says N.\n3. 2 times:\n   1. You transfer N cards from the top to the bottom.\n   2. The spectator thinks of a number from 1 to 3, call it N.',
      '1',
    ],
  ])('%s', (_, working, step) => {
    const all = secrets(working);
    expect(all.length).toBeGreaterThan(0);
    expect(all.every((one) => one.startsWith('uses-secret ') && one.endsWith(` ${step}`))).toBe(true);
  });
});

describe('the performer may rest on', () => {
  test.each([
    [
      'a number named',
      '1. The spectator names a number from 1 to 3, call it N.\n2. You deal N cards to the table.',
    ],
    ['a number rolled', '1. Roll a die, call it N.\n2. You deal N cards to the table.'],
    [
      'one cut off openly',
      '1. Cut off 1 to 3 cards to the pocket, openly, call the number N.\n2. You deal N cards to the table.',
    ],
    [
      'what the performer settled',
      '1. You note the 3rd card, call it key.\n2. Cut the packet.\n3. You take out the key card.',
    ],
    [
      'a number said later',
      '1. The spectator thinks of a number from 1 to 3, call it N.\n2. The spectator says N.\n3. You deal N cards to the table.',
    ],
    [
      'a card named later',
      '1. The spectator thinks of any card, call it chosen.\n2. Cut the packet.\n3. The spectator names the chosen card.\n4. You take out the chosen card.',
    ],
    [
      'nothing, where the spectator does it',
      '1. The spectator thinks of a number from 1 to 3, call it N.\n2. Deal N cards to the table.',
    ],
  ])('%s', (_, working) => {
    expect(secrets(working)).toEqual([]);
  });
});

test('a card named aloud can be brought anywhere by the performer, one only thought of cannot', () => {
  const told = `1. The spectator thinks of any card, call it chosen.
2. The spectator names the chosen card.
3. You cut the packet.`;
  expect(verdict(told, 'The chosen card is the top card.')).toBe('proved');
  const untold = told.replace('2. The spectator names the chosen card.\n', '').replace('3. ', '2. ');
  expect(verdict(untold, 'The chosen card is the top card.')).toBe('refuted');
});

test('a number said aloud is known from then on', () => {
  const said = `1. The spectator thinks of a number from 1 to 3, call it N.
2. Transfer N cards from the top to the bottom.
3. The spectator says N.
4. You cut the packet.`;
  expect(verdict(said, 'The top card is the 2S.')).toBe('proved');
  expect(verdict(said.replace('3. The spectator says N.\n4. ', '3. '), 'The top card is the 2S.')).toBe(
    'refuted',
  );
});
