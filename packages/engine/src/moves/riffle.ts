import type { Amount, PileRef } from '../phrases/values.ts';
import { phrase } from '../phrases/phrase.ts';
import { carry } from '../pictures/actions.ts';
import { decided, PILE } from './handling.ts';
import { dropNext, saidDrops, waysToCut, type Side } from './interleave.ts';
import { allowed, defineMove, pileName, pileSize, START, stuck } from './move.ts';

type RiffleArgs = { pile: PileRef; at: Amount };

const SIDES: readonly [Side, Side] = [
  { key: 'left', pile: '~left' },
  { key: 'right', pile: '~right' },
];

/** P49: a packet cut in two and the parts riffled together. */
export const riffle = defineMove<RiffleArgs>({
  id: 'riffle',
  procedures: ['P49'],
  hands: 'mix',
  title: 'riffle shuffle',
  phrases: [
    phrase(`(riffle|riffle-shuffle|dovetail|rosette) ${PILE} [once] [after cutting [it] at {at:amount}]`),
    phrase(
      `cut ${PILE} [[at {at:amount}] [in two|into two]] and (riffle|rosette) (the halves|the two halves|the parts|the packets|the two parts|the two packets|them|it) [together|into each other]`,
    ),
    phrase(`give ${PILE} a (riffle|riffle shuffle|rosette shuffle|dovetail shuffle)`),
    phrase(`push the [two] halves of {pile:pile} through each other`),
  ],
  defaults: { pile: 'packet', at: { of: 'any' } },
  help:
    'The packet is cut, and cards fall from the bottoms of the two parts, now from one, now from the other, as they come. ' +
    'The upper part is the left one. Choices: how many cards are cut off, then where each card falls from, from the bottom up.',
  caution:
    'Each part keeps its order, so there are at most two rising sequences. Cutting none and riffling nothing is allowed.',
  synonyms: ['rosette', 'dovetail', 'push through'],
  readings: () => [{ word: 'riffle', taken: 'any interleaving, from any cut', other: 'Out-faro the packet' }],
  options(args, view) {
    const pile = pileName(args.pile, view);
    if (view.phase !== START) return dropNext(SIDES, pile, view);
    const size = pileSize(args.pile, view);
    const places = allowed(args.at, 0, size, view);
    // Cutting all the cards leaves no second part, just as cutting none: one option, unless only the full number was asked for.
    const distinct = places.filter((c) => c < size || !places.includes(0));
    if (distinct.length === 0) return stuck('cut-too-deep', { pile, size });
    return decided(
      distinct.map((c) => {
        const whole = c === 0 || c === size;
        return {
          key: c,
          actions: whole ? [] : [carry(pile, 0, c, '~left', 0), carry(pile, 0, size - c, '~right', 0)],
          next: whole ? null : 'drop',
          weight: waysToCut(size, c) + (c === 0 && places.includes(size) && size > 0 ? 1 : 0),
        };
      }),
    );
  },
  say: (_args, [c, ...drops]) =>
    drops.length === 0 ? 'cuts nothing and riffles nothing' : `cuts ${c} and lets fall ${saidDrops(drops)}`,
  examples: [
    {
      before: '1 2 3 4 5 6 7 8',
      sentence: 'Riffle the packet.',
      choices: [3, 'right', 'right', 'left', 'left', 'right', 'left'],
      after: '4 5 1 6 2 3 7 8',
    },
    {
      before: '1 2 3 4 5 6',
      sentence: 'Cut the packet at 3 and riffle the halves together.',
      choices: ['right', 'left', 'right', 'left', 'right'],
      after: '1 4 2 5 3 6',
    },
    { before: '1 2 3', sentence: 'Riffle the packet.', choices: [0], after: '1 2 3' },
  ],
});
