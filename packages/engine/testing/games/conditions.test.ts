import { describe, expect, test } from 'vitest';
import { compile } from '../../src/note/compile.ts';
import { format } from '../../src/note/format.ts';
import { printWorking } from '../../src/note/print.ts';
import { read } from '../../src/note/read.ts';
import { certify } from '../../src/proving/certify.ts';
import { decide } from '../../src/proving/decide.ts';
import { recheck } from '../../src/recheck/recheck.ts';
import type { SentenceProof } from '../../src/verdicts/certificate.ts';

function noteOf(setUp: string, working: string, ending: string): string {
  return `## Set-up
- packet: ${setUp}

## Working
${working}

## Ending
- ${ending}
`;
}

function errors(text: string): string[] {
  return compile(read(text))
    .diagnostics.filter(({ severity }) => severity === 'error')
    .map(({ code }) => code);
}

function verdict(setUp: string, working: string, ending: string): string {
  const text = noteOf(setUp, working, ending);
  const { routine } = compile(read(text));
  if (routine === undefined) throw new Error(errors(text).join());
  const decision = decide(routine);
  const [sentence] = decision.sentences;
  const proof = certify(decision, sentence);
  const isAccepted =
    proof === null ||
    recheck(routine, [JSON.parse(JSON.stringify(proof)) as SentenceProof])[0].fault === undefined;
  return `${sentence.verdict}${isAccepted ? '' : ', not accepted'}`;
}

describe('conditions on cards', () => {
  test.each([
    'If the top card is red:',
    'If the 3rd card of the packet is face up:',
    'If the bottom card is not an ace:',
    'If the chosen card is in the table:',
    'If chosen is in the packet:',
    'If the AS is not in the table:',
    'If the top 2 cards face the same way:',
    'If the cards face the same way:',
    'If the top cards of the packet and the table agree in colour:',
    'If the top card of the packet and the top card of the table differ in suit:',
    'If all cards are face down:',
    'If any red card of the table is face up:',
    'If no card is face up:',
    'In secret, if the top card is red:',
  ])('%s is read and written', (head) => {
    const working = `1. The spectator thinks of any card, call it chosen.
2. Push off 2 cards to the table.
3. ${head}
   1. Turn over the packet.
4. Otherwise:
   1. Cut the packet.`;
    const text = noteOf('AS 2H 3C 4D 5S face down', working, 'All cards are face down.');
    expect(errors(text)).toEqual([]);
    const { routine } = compile(read(text));
    const steps = routine?.steps ?? [];
    expect(steps.map(({ do: kind, number }) => `${number} ${kind}`)).toEqual([
      '1 move',
      '2 move',
      '3 move',
      '3 if',
    ]);
    const again = compile(
      read(noteOf('AS 2H 3C 4D 5S face down', printWorking(steps), 'All cards are face down.')),
    );
    expect(printWorking(again.routine?.steps ?? [])).toBe(printWorking(steps));
    const formatted = format(text);
    expect(format(formatted)).toBe(formatted);
    const plain = (list: typeof steps): string => JSON.stringify(list).replace(/"range":\{[^}]*\}/g, '');
    expect(plain(compile(read(formatted)).routine?.steps ?? [])).toBe(plain(steps));
  });

  test('on one line, with a comma', () => {
    const working = '1. If the top card is red, turn over the packet. Otherwise cut the packet.';
    expect(errors(noteOf('AS 2H face down', working, 'All cards are face down.'))).toEqual([]);
  });

  test('an unknown pile or mark is said', () => {
    const bad = (head: string) =>
      errors(noteOf('AS 2H face down', `1. ${head}\n   1. Cut the packet.`, 'All cards are face down.'));
    expect(bad('If the top card of the rest is red:')).toEqual(['unknown-pile']);
    expect(bad('If the top card is purple:')).not.toEqual([]);
    expect(bad('If the top card is red, behind your back:')).toEqual(['looks-unseen']);
  });

  test('nothing to do on one side', () => {
    const working = '1. If the top card is red: do nothing. Otherwise: turn over the packet.';
    expect(verdict('AS 2H face down', working, 'All cards are face up.')).toBe('proved');
    expect(verdict('2H AS face down', working, 'All cards are face down.')).toBe('proved');
    const even = '1. If N is even: do nothing. Otherwise: turn over the packet.';
    const named = `1. The spectator names an even number from 2 to 4, call it N.\n2. ${even.slice(3)}`;
    expect(verdict('AS 2H face down', named, 'All cards are face down.')).toBe('proved');
  });
});

describe('outs', () => {
  test('the colour that shows decides the ending: both are proved', () => {
    const working = `1. Cut the packet.
2. If the top card is red:
   1. Turn over the packet.
3. Otherwise:
   1. Move the top card to the bottom; turn over the packet.`;
    const setUp = '2S 9H 4C KD 7S AH 8C 5D face down';
    expect(verdict(setUp, working, 'The bottom card is red.')).toBe('proved');
    expect(verdict(setUp, working, 'The bottom card is the 9H.')).toBe('refuted');
  });

  test('without the out it fails', () => {
    const setUp = '2S 9H 4C KD 7S AH 8C 5D face down';
    expect(verdict(setUp, '1. Cut the packet.\n2. Turn over the packet.', 'The bottom card is red.')).toBe(
      'refuted',
    );
  });

  test('the performer chooses by what is seen', () => {
    const working = `1. Cut the packet.
2. If the top card is the 2S:
   1. Do nothing.
3. You may turn over the packet.
4. If the top card is face up:
   1. Turn over the packet.`;
    expect(verdict('2S 9H face down', working, 'All cards are face down.')).toBe('proved');
    const mirror = `1. Cut the packet.
2. If the top card is the 2S:
   1. Do nothing.
3. You may move the top card to the bottom.`;
    expect(verdict('2S 9H face down', mirror, 'The top card is the 9H.')).toBe('proved');
    expect(
      verdict(
        '2S 9H face down',
        mirror.replace('If the top', 'In secret, if the top'),
        'The top card is the 9H.',
      ),
    ).toBe('refuted');
  });

  test('an answer of the spectator decides what the performer does', () => {
    const working = `1. The spectator thinks of any card, call it chosen.
2. Deal the packet into 2 piles.
3. If chosen is in pile 1:
   1. You put pile 1 on pile 2 into packet.
4. Otherwise:
   1. You put pile 2 on pile 1 into packet.`;
    expect(verdict('2S 9H 4C KD face down', working, 'The chosen card is one of the top 2 cards.')).toBe(
      'proved',
    );
  });

  test('but not one that only the spectator sees', () => {
    const working = `1. In secret, if the top card is red:
   1. You turn over the packet.`;
    expect(errors(noteOf('2S 9H face down', working, 'All cards are face down.'))).toEqual(['uses-secret']);
  });
});
