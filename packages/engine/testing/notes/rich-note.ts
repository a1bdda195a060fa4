import fc from 'fast-check';
import type { Step } from '../../src/routine/routine.ts';
import { MOVES } from '../../src/moves/index.ts';
import { CLAIMS } from '../../src/claims/index.ts';
import { sampleSentences as sampleClaims } from '../claim-laws.ts';
import { sampleSentences } from '../move-laws.ts';

/** A set-up and first steps that bring every name the samples of the phrases use. */
const SET_UP = `- packet: A-8 of clubs, face down
- pile 1: A-4 of hearts, face down
- pile 2: 5-8 of hearts, face down
- pile 3: 9H TH JH, face down
- table: A-6 of spades, face down
- left: A-4 of diamonds, face down
- right: 5-8 of diamonds, face down
- own: "lamp", 10C, face down
- warm: hearts
- season: hearts = spring, diamonds = summer, clubs = spring, spades = summer, "lamp" = spring
- weight: hearts 1, diamonds 2, clubs 3, spades 4, "lamp" 5`;

const FIRST = [
  'The spectator names a number from 1 to 4, call it N.',
  'The spectator names a number from 1 to 4, call it K.',
  'The spectator notes the top card, call it chosen.',
];
export const FIRST_STEPS = FIRST.length;

export function richNote(working: string, ending = '- All cards are face down.'): string {
  const first = FIRST.map((sentence) => `1. ${sentence}\n`).join('');
  return `---\ntitle: Rich\n---\nProse.\n\n## Set-up\n${SET_UP}\n\n## Working\n${first}${working}\n\n## Ending\n${ending}\n`;
}

/** Sentences of all moves, as their phrases print them. */
export const SENTENCES: readonly string[] = MOVES.flatMap((move) => sampleSentences(move, 6)).map(
  (sentence) => sentence.replace(/\.$/, ''),
);

const sentence = fc.constantFrom(...SENTENCES);
const lower = (text: string): string => text.slice(0, 1).toLowerCase() + text.slice(1);

const HEADS = [
  'Any number of times',
  'As often as they like',
  'At least once',
  'At least 3 times',
  '3 times',
  'Twice',
  'Repeat N times',
  'You choose how often',
  'For each pile',
  'If N is even',
  'If K is more than 2',
];

/** Ways of saying a sentence that leave its move alone. */
const said = fc.oneof(
  { weight: 6, arbitrary: sentence },
  { weight: 1, arbitrary: sentence.map((text) => `You ${lower(text)}`) },
  { weight: 1, arbitrary: sentence.map((text) => `${text}, in secret`) },
  { weight: 1, arbitrary: sentence.map((text) => `Now have the spectator ${lower(text)}`) },
  { weight: 1, arbitrary: sentence.map((text) => `The spectator may ${lower(text)}`) },
  { weight: 1, arbitrary: sentence.map((text) => `${text} any number of times`) },
);
const line = fc.oneof(
  said.map((text) => `${text}.`),
  fc.tuple(said, said).map(([a, b]) => `${a}; ${lower(b)}.`),
  fc.tuple(said, said).map(([a, b]) => `${a}, then ${lower(b)}.`),
  fc.tuple(fc.constantFrom(...HEADS), said).map(([head, a]) => `${head}: ${lower(a)}.`),
  fc.tuple(said, said).map(([a, b]) => `Either ${lower(a)} or ${lower(b)}.`),
);

/** Lines of a working, blocks within blocks, each line with its indentation. */
export const workings: fc.Arbitrary<string> = fc
  .array(items(2), { minLength: 1, maxLength: 4 })
  .map((all) => all.flat().join('\n'));

function items(depth: number): fc.Arbitrary<string[]> {
  const one = line.map((text) => [`1. ${text}`]);
  if (depth === 0) return one;
  const under = (mark: string, body: string[][]): string[] =>
    body.flatMap((lines) => lines.map((text, i) => `   ${i === 0 ? text.replace(/^1\./, mark) : text}`));
  const block = fc
    .tuple(fc.constantFrom(...HEADS), fc.array(items(depth - 1), { minLength: 1, maxLength: 2 }))
    .map(([head, body]) => [`1. ${head}:`, ...under('1.', body)]);
  const either = fc
    .array(one, { minLength: 2, maxLength: 3 })
    .map((body) => ['1. Either:', ...under('-', body)]);
  return fc.oneof(
    { weight: 4, arbitrary: one },
    { weight: 1, arbitrary: block },
    { weight: 1, arbitrary: either },
  );
}

/** Steps without their places and numbers, to compare what they mean. */
export function meant(steps: readonly Step[]): unknown {
  return JSON.parse(
    JSON.stringify(steps, (key, value: unknown) => (key === 'range' || key === 'number' ? undefined : value)),
  );
}

/** Sentences of all claims, as their phrases print them. */
export const CLAIM_SENTENCES: readonly string[] = CLAIMS.flatMap((claim) => sampleClaims(claim, 4)).map(
  (text) => lower(text.replace(/\.$/, '')),
);

const claim = fc.constantFrom(...CLAIM_SENTENCES);

/** Sentences of the ending, joined in every way, brackets around what is joined inside. */
export const endings: fc.Arbitrary<string> = joined(2).map((text) => `- ${text}.`);

function joined(depth: number): fc.Arbitrary<string> {
  if (depth === 0) return claim;
  const part = fc.oneof(
    { weight: 2, arbitrary: claim },
    { weight: 1, arbitrary: joined(depth - 1).map((text) => `(${text})`) },
  );
  return fc.oneof(
    { weight: 3, arbitrary: claim },
    fc.tuple(part, part).map(([a, b]) => `${a} and ${b}`),
    fc.tuple(part, part, part).map((all) => all.join(' or ')),
    fc.tuple(part, part).map(([a, b]) => `if ${a}, then ${b}`),
    fc.tuple(part, part).map(([a, b]) => `${a} exactly when ${b}`),
    part.map((a) => `it is not true that ${a}`),
    part.map((a) => `${a}, up to a cut`),
    part.map((a) => `up to turning pile 2 over, ${a}`),
  );
}
