import { expect, test } from 'vitest';
import { alterations } from '../../src/insight/freedom/alterations.ts';
import { alsoCertain } from '../../src/insight/likeness/also.ts';
import { compile } from '../../src/note/compile.ts';
import { read } from '../../src/note/read.ts';
import { decide } from '../../src/proving/decide.ts';
import { DEFAULT_LIMITS } from '../../src/proving/question.ts';
import { holdsAlways } from './altered.ts';

const LANTERNS = `## Set-up

- packet: 6 cards alternately red and black, face down

## Working

1. Any number of times:
   1. Cut the packet.
   2. Turn over the top 2 together.
2. Deal the packet into a pile, turning every second card.
3. Cut the packet at 2.

## Ending

- Exactly 3 cards are face up.
`;

function opened(text: string) {
  const { routine, diagnostics } = compile(read(text));
  if (routine === undefined) throw new Error(JSON.stringify(diagnostics));
  return { routine, decision: decide(routine) };
}

test('what is certain besides: the faces show the colours, which the note does not claim', () => {
  const { decision } = opened(LANTERNS);
  const found = alsoCertain(decision, DEFAULT_LIMITS).map(({ trade, words }) => `${trade} ${words}`);
  expect(found).toContain('S7 all cards face the same way exactly where they are alike in colour');
  // Claimed already.
  expect(found).not.toContain('S9 there are exactly 3 face-up cards');
});

test('what is claimed besides is not told again, and nothing that is true of every arrangement', () => {
  const { decision } = opened(
    LANTERNS.replace(
      'Exactly 3 cards are face up.',
      'All red cards face one way and all black cards the other.',
    ),
  );
  const found = alsoCertain(decision, DEFAULT_LIMITS).map(({ words }) => words);
  expect(found).toContain('there are exactly 3 face-up cards');
  expect(found.filter((words) => words === 'there are exactly 3 red cards')).toEqual([]);
});

test('every change of a step has the verdict that trying all performances gives', () => {
  const { routine, decision } = opened(LANTERNS);
  const rows = [...alterations(routine, decision, DEFAULT_LIMITS)];
  for (const { kind, number, text, verdict, routine: changed } of rows) {
    const said = `${kind} ${number} ${text}`;
    expect(`${said}: ${verdict}`).toBe(`${said}: ${holdsAlways(changed) ? 'proved' : 'refuted'}`);
  }
  const verdictOf = (kind: string, number: string): string | undefined =>
    rows.find((row) => row.kind === kind && row.number === number)?.verdict;
  expect(verdictOf('drop', '2')).toBe('refuted');
  expect(verdictOf('drop', '3')).toBe('proved');
  expect(verdictOf('repeat', '3')).toBe('proved');
  // Any cut at all does as well as one at 2.
  expect(rows.find((row) => row.kind === 'widen' && row.number === '3')?.text).toBe('Cut the packet.');
});
