import { trouble } from '../base/diagnostic.ts';
import { phrase, same } from '../phrases/phrase.ts';
import type { Amount, PileRef } from '../phrases/values.ts';
import { carry, type Action } from '../pictures/actions.ts';
import { sizeOf } from '../pictures/layout.ts';
import { called, cardCount, decided, named, within, type Way } from './handling.ts';
import { defineMove, pileName, pileSize, START, stuck, type Option, type View } from './move.ts';
import { isOpen, noNumber, numbersOf, turned } from './open.ts';

type HandAcrossArgs = {
  count: Amount;
  pile: PileRef;
  to: PileRef;
  which: 'from the top of' | 'from anywhere in';
  manner: 'as they are' | 'turned over';
  call?: string;
};

const KEPT = '~kept';
const PASSED = '~passed';

function more(manner: HandAcrossArgs['manner']): { readonly turned?: 'side' | 'end' } {
  return manner === 'turned over' ? turned('sideways') : {};
}

/** P46, P71, P72: one person hands cards across to another, as they are or turned over; which cards may be free. */
export const handAcross = defineMove<HandAcrossArgs>({
  id: 'hand-across',
  procedures: ['P46', 'P71', 'P72'],
  hands: 'hand over',
  title: 'hand cards across',
  phrases: [
    phrase(
      '(hand|pass|give) {count:cards} {which=from the top of~from|from anywhere in} {pile:pile} (across to|to) {to:newpile}' +
        '[, {manner=as they are|turned over~turning them over}][, call (it|the number) {call:newname}]',
    ),
  ],
  defaults: { manner: 'as they are' },
  help: 'Cards go from one pile onto another as a group. From anywhere, each card of the pile may be handed over or kept.',
  caution: 'Turned over, the cards handed across are reversed as a block and show their other sides.',
  synonyms: ['pass', 'give'],
  brings: ({ to, call }) => ({ piles: named(to), numbers: call === undefined ? [] : [call] }),
  check: ({ pile, to }) => (same(pile, to) ? [trouble('pile-twice')] : []),
  options(args, view) {
    const pile = pileName(args.pile, view);
    const to = pileName(args.to, view);
    if (pile === to) return stuck('pile-twice', { piles: [pile] });
    if (view.phase !== START) return sift(args, pile, to, Number(view.phase) - 1, view);
    const numbers = numbersOf(args.count, args.pile, view);
    if (numbers.length === 0) return noNumber(args.count, args.pile, view);
    return decided(
      numbers.map((n): Way => {
        const all = args.which === 'from the top of' || n === 0 || n === pileSize(args.pile, view);
        const actions = n === 0 ? [] : [carry(pile, 0, n, to, 0, more(args.manner))];
        const set = called(args.call, n);
        return all ? { key: n, actions, next: null, ...set } : { key: n, actions: [], next: n + 1, ...set };
      }),
    );
  },
  say({ count, which }, [n, ...deeds]) {
    const said = isOpen(count) ? [n === 0 ? 'hands over nothing' : `hands over ${cardCount(Number(n))}`] : [];
    const places = deeds.flatMap((deed, i) => (deed === 'hand' ? [i + 1] : []));
    if (which === 'from anywhere in' && places.length > 0)
      said.push(`takes them from places ${places.join(', ')}`);
    else if (which === 'from anywhere in' && said.length === 0) said.push('hands over all');
    return said.join(', ');
  },
  examples: [
    {
      before: 'left: 1 2 3; right: 4 5',
      sentence: 'Hand 2 cards from the left across to the right.',
      choices: [],
      after: 'left: 3; right: 1 2 4 5',
    },
    {
      before: 'left: 1 2 3; right: 4 5',
      sentence: 'Hand any number of cards from the left to the right, turned over.',
      choices: [2],
      after: 'left: 3; right: 2^ 1^ 4 5',
    },
    {
      before: 'left: 1 2 3 4; right: 5',
      sentence: 'Hand 2 cards from anywhere in the left across to the right.',
      choices: ['keep', 'hand', 'keep'],
      after: 'left: 1 3; right: 2 4 5',
    },
  ],
});

/** Of `wanted` cards to hand over in all, the next card from the top is one or is not; what is settled is not asked. */
function sift(args: HandAcrossArgs, pile: string, to: string, wanted: number, view: View): readonly Option[] {
  const left = sizeOf(view.layout, pile);
  const kept = sizeOf(view.layout, KEPT);
  const passed = sizeOf(view.layout, PASSED);
  const finish = (keptNow: number, passedNow: number): Action[] => [
    ...(keptNow > 0 ? [carry(KEPT, 0, keptNow, pile, 0)] : []),
    ...(passedNow > 0 ? [carry(PASSED, 0, passedNow, to, 0, more(args.manner))] : []),
  ];
  // So weighted, every set of that many cards is equally likely.
  const step = (key: 'keep' | 'hand', weight: number): Way => {
    const aside = key === 'keep' ? carry(pile, 0, 1, KEPT, kept) : carry(pile, 0, 1, PASSED, passed);
    const done = left === 1;
    const after = finish(kept + (key === 'keep' ? 1 : 0), passed + (key === 'hand' ? 1 : 0));
    return { key, actions: done ? [aside, ...after] : [aside], next: done ? null : view.phase, weight };
  };
  const ways: Way[] = [];
  if (passed < wanted) ways.push(step('hand', wanted - passed));
  if (passed + left > wanted) ways.push(step('keep', left - (wanted - passed)));
  return within(ways);
}
