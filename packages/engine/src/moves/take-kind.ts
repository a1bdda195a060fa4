import { trouble } from '../base/diagnostic.ts';
import { attributesOfKind, bitsOfKind, isOfKind } from '../phrases/of-kind.ts';
import { phrase, same } from '../phrases/phrase.ts';
import type { Kind, PileRef } from '../phrases/values.ts';
import { carry } from '../pictures/actions.ts';
import { sizeOf } from '../pictures/layout.ts';
import { layOn, named } from './handling.ts';
import { defineMove, pileName, pileSize, stuck } from './move.ts';

type TakeKindArgs = { pile: PileRef; kind: Kind; to: PileRef };

/** P23, P63: cards of a kind taken out of a pile, such as those that lie face up. */
export const takeKind = defineMove<TakeKindArgs>({
  id: 'take-kind',
  procedures: ['P23', 'P63'],
  hands: 'choose',
  title: 'take out cards of a kind',
  phrases: [
    phrase('(take|pick|sort) out {kind:those} [(of|from) {pile:pile}] [(to|onto|into) {to:newpile}]'),
    phrase('(remove|withdraw) {kind:those} [(of|from) {pile:pile}] [(to|onto|into) {to:newpile}]'),
    phrase('discard {kind:those} [(of|from) {pile:pile}]', { to: 'discard' }),
  ],
  defaults: { pile: 'packet', to: 'table' },
  help: 'The pile is gone through and every card of the kind is laid on another pile, all in the order they had; the rest close up.',
  caution:
    'After that one may speak of where cards lie, and of what kind they are, but not of how they lay before.',
  synonyms: ['take out the face-up cards'],
  brings: ({ to }) => ({ piles: named(to) }),
  check: ({ pile, to }) => (same(pile, to) ? [trouble('pile-twice')] : []),
  looks: {
    attributes: ({ kind }) => attributesOfKind(kind),
    bits: ({ kind }) => bitsOfKind(kind),
    observe(args, table, view) {
      const pile = pileName(args.pile, view);
      if (pileSize(args.pile, view) === 0) return 'none';
      const isTaken = isOfKind(args.kind, table.cardAt(pile, 0), (bit) => table.bitAt(pile, 0, bit));
      return isTaken ? 'taken' : 'kept';
    },
  },
  options(args, view) {
    const pile = pileName(args.pile, view);
    const to = pileName(args.to, view);
    if (pile === to) return stuck('pile-twice', { piles: [to] });
    const left = pileSize(args.pile, view);
    if (left === 0 || view.seen === undefined) return [{ key: 'none', actions: [], next: null, off: 0 }];
    const heap = view.seen === 'taken' ? '~taken' : '~kept';
    const onto = sizeOf(view.layout, heap);
    const step = carry(pile, 0, 1, heap, onto);
    if (left > 1) return [{ key: view.seen, actions: [step], next: 'going', off: 0 }];
    const taken = sizeOf(view.layout, '~taken') + (heap === '~taken' ? 1 : 0);
    const kept = sizeOf(view.layout, '~kept') + (heap === '~kept' ? 1 : 0);
    const actions = [step, ...layOn('~kept', kept, pile), ...layOn('~taken', taken, to)];
    return [{ key: view.seen, actions, next: null, off: 0 }];
  },
  say: () => '',
  examples: [
    {
      before: '1 2^ 3 4^',
      sentence: 'Take out the face-up cards.',
      choices: [],
      after: 'packet: 1 3; table: 2^ 4^',
    },
    {
      before: 'packet: 4H 5S 6D; hand: 2C',
      sentence: 'Remove the red cards from the packet to the hand.',
      choices: [],
      after: 'hand: 4H 6D 2C; packet: 5S',
    },
    {
      before: '1 2(chosen) 3',
      sentence: 'Discard the chosen card.',
      choices: [],
      after: 'discard: 2(chosen); packet: 1 3',
    },
  ],
});
