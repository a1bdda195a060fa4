import type { PileRef, PlaceRef } from '../phrases/values.ts';
import { phrase } from '../phrases/phrase.ts';
import { printOrdinal } from '../phrases/tokens.ts';
import { carry, mark, type Action } from '../pictures/actions.ts';
import { decided, named } from './handling.ts';
import { defineMove, pileName, pileSize, placeIndex, stuck } from './move.ts';

type TakeOutArgs = { pile: PileRef; at?: PlaceRef; to: PileRef; mark?: string };

const TO = '[(to|into|onto) {to:newpile}][, call it {mark:newname}]';

/** P60, P63: one card is taken out of a pile; the cards below rise by one. */
export const takeOut = defineMove<TakeOutArgs>({
  id: 'take-out',
  procedures: ['P60', 'P63'],
  hands: 'choose',
  title: 'take out a card',
  phrases: [
    phrase('take out {at:place} [of {pile:pile}] [(to|into|onto) {to:newpile}][, call it {mark:newname}]'),
    phrase(
      '(remove|draw) {at:place} [(of|from) {pile:pile}] [(to|into|onto) {to:newpile}][, call it {mark:newname}]',
    ),
    phrase(
      'take {at:nthcard} [(of|from) {pile:pile}] [(to|into|onto) {to:newpile}][, call it {mark:newname}]',
    ),
    phrase(
      'take the bottom card [(of|from) {pile:pile}] [(to|into|onto) {to:newpile}][, call it {mark:newname}]',
      {
        at: { end: 'bottom', n: 1 },
      },
    ),
    phrase(
      '(put|place|lay) {at:nthcard} [of {pile:pile}] (on|onto|into) {to:newpile}[, call it {mark:newname}]',
    ),
    phrase('discard {at:place} [of {pile:pile}]', { to: 'discard' }),
    phrase(
      '(the spectator|they|) (takes out|take out|draws|draw|chooses|choose|picks|pick|removes|remove) (any|a) card ' +
        `[(of|from) {pile:pile}] ${TO}`,
    ),
    phrase(`(the spectator|they|) (takes|take) any card [(of|from) {pile:pile}] ${TO}`),
    phrase(`(the spectator takes|they take) a card [(of|from) {pile:pile}] ${TO}`),
  ],
  defaults: { pile: 'packet', to: 'table' },
  help: 'One card is taken out and laid on another pile. The cards that were below it rise by one place.',
  caution: 'An even packet becomes odd, and the places below change from odd to even.',
  synonyms: ['remove', 'draw a card', 'choose a card'],
  brings: ({ to, mark: name }) => ({ piles: named(to), marks: name === undefined ? [] : [name] }),
  options(args, view) {
    const pile = pileName(args.pile, view);
    const to = pileName(args.to, view);
    const size = pileSize(args.pile, view);
    const all = Array.from({ length: size }, (_, i) => i);
    const open =
      args.at === undefined ? all : all.filter((i) => i === placeIndex(args.at as PlaceRef, size, view));
    if (open.length === 0) return stuck('no-such-card', { pile, size });
    const take = (i: number): Action[] => [
      carry(pile, i, 1, to, 0),
      ...(args.mark === undefined ? [] : [mark(to, 0, 1, args.mark, 'set')]),
    ];
    return decided(open.map((i) => ({ key: i + 1, actions: take(i), next: null })));
  },
  say: ({ at }, [n]) => (at === undefined ? `takes the ${printOrdinal(Number(n))} card` : ''),
  examples: [
    {
      before: '1 2 3 4',
      sentence: 'Take out the 3rd card to the pocket.',
      choices: [],
      after: 'packet: 1 2 4; pocket: 3',
    },
    {
      before: '1 2 3',
      sentence: 'The spectator takes any card to the hand, call it chosen.',
      choices: [2],
      after: 'hand: 2(chosen); packet: 1 3',
    },
  ],
});
