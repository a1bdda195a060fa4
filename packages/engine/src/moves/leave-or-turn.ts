import type { Amount, PileRef } from '../phrases/values.ts';
import { phrase } from '../phrases/phrase.ts';
import { carry, type Action } from '../pictures/actions.ts';
import { cardCount, decided, within, type Way } from './handling.ts';
import { allowed, defineMove, pileName, START, type Key, type View } from './move.ts';
import { noNumber } from './open.ts';
import { sizeOf } from '../pictures/layout.ts';

/** What may be done to each block before it is laid down. */
type Deed = 'leave' | 'turn' | 'reverse';

type LeaveOrTurnArgs = { pile: PileRef; blocks: Amount; each: string; lay: string };

const DEEDS: Readonly<Record<string, readonly Deed[]>> = {
  'leaving or turning': ['leave', 'turn'],
  turning: ['turn'],
  leaving: ['leave'],
  'leaving or swapping': ['leave', 'reverse'],
  swapping: ['reverse'],
  'leaving, swapping or turning': ['leave', 'reverse', 'turn'],
};
const SAID: Readonly<Record<Deed, string>> = { leave: 'leaves', turn: 'turns', reverse: 'swaps' };
const HEAP = '~heap';
const NEXT = 'next';

function layingOf(lay: string): readonly ('on' | 'beneath')[] {
  if (lay === 'on top or beneath') return ['on', 'beneath'];
  return [lay === 'beneath' ? 'beneath' : 'on'];
}

/**
 * P17, P18: blocks are taken off the top one after another, each left, turned over or reversed, and laid on or under a new
 * heap. The usual custom for what is too little for a block: it goes on top as it is.
 */
export const leaveOrTurn = defineMove<LeaveOrTurnArgs>({
  id: 'leave-or-turn',
  procedures: ['P17', 'P18'],
  hands: 'turn',
  title: 'leave or turn blocks',
  phrases: [
    phrase(
      '(take|deal) {blocks:blocks} off [the top of] {pile:pile}, ' +
        '{each=leaving or turning~turning or leaving|turning|leaving or swapping~swapping or leaving|swapping|leaving, swapping or turning|leaving} each' +
        '[, (and lay|laying|and laying) each {lay=on top|beneath|on top or beneath~beneath or on top}]',
    ),
    phrase(
      '(take|deal) ({pile:pile}|[all] the cards) off in {blocks:blocks}, ' +
        '{each=leaving or turning~turning or leaving} each [pair|block|one]' +
        '[, (and lay|laying|and laying) each {lay=on top|beneath|on top or beneath~beneath or on top}]',
    ),
    phrase(
      '(take|deal) {blocks:blocks} off the top, ' +
        '{each=leaving or turning~turning or leaving|turning|leaving or swapping~swapping or leaving|swapping|leaving, swapping or turning|leaving} each' +
        '[, (and lay|laying|and laying) each {lay=on top|beneath|on top or beneath~beneath or on top}]',
    ),
  ],
  defaults: { pile: 'packet', lay: 'on top' },
  help: 'Blocks come off the top one after another; each is left or turned over as one, and laid on or under the new heap.',
  caution:
    'Even blocks in an even packet keep the tie between place, face and class. A pair swapped without turning breaks it, and so does an odd block. Cards left over go on top as they are.',
  synonyms: ['leave or turn'],
  options(args, view) {
    const pile = pileName(args.pile, view);
    const left = sizeOf(view.layout, pile);
    if (left === 0 && view.phase === START) return [{ key: 'none', actions: [], next: null, off: 0 }];
    const ways = blockWays(args, pile, left, view);
    if (ways.length === 0) return noNumber(args.blocks, args.pile, view);
    return view.phase === START ? decided(ways) : within(ways);
  },
  say: (_args, keys) => keys.map(sayBlock).join(', '),
  examples: [
    {
      before: '1 2 3 4 5 6 7 8',
      sentence:
        'Take an even number of cards at a time off the packet, leaving or turning each, and lay each on top or beneath.',
      choices: ['turn 2 on', 'leave 2 beneath', 'turn 4 on'],
      after: '8^ 7^ 6^ 5^ 2^ 1^ 3 4',
    },
    {
      before: '1 2 3 4 5 6',
      sentence: 'Take pairs off the top, leaving or turning each.',
      choices: ['turn 2 on', 'leave 2 on', 'leave 2 on'],
      after: '5 6 3 4 2^ 1^',
    },
    {
      before: '1 2 3 4 5',
      sentence: 'Deal pairs off the top, leaving or swapping each, laying each beneath.',
      choices: ['reverse 2 beneath', 'leave 2 beneath'],
      after: '5 2 1 3 4',
    },
  ],
});

function blockWays(args: LeaveOrTurnArgs, pile: string, left: number, view: View): Way[] {
  const full = allowed(args.blocks, 0, left, view).filter((n) => n > 0);
  // Too little for any block: the rest goes on top as it is.
  if (full.length === 0) {
    if (view.phase === START) return [];
    return [lastly(`leave ${left} on`, [carry(pile, 0, left, HEAP, 0)], left, pile, view)];
  }
  const ways: Way[] = [];
  for (const n of full)
    for (const deed of DEEDS[args.each])
      for (const lay of layingOf(args.lay)) {
        const into = lay === 'on' ? 0 : sizeOf(view.layout, HEAP);
        const more =
          deed === 'leave' ? {} : deed === 'turn' ? ({ turned: 'side' } as const) : { reversed: true };
        ways.push(lastly(`${deed} ${n} ${lay}`, [carry(pile, 0, n, HEAP, into, more)], n, pile, view));
      }
  return ways;
}

/** Goes on while cards are left; at the end the new heap takes the place of the old. */
function lastly(key: Key, actions: readonly Action[], taken: number, pile: string, view: View): Way {
  const left = sizeOf(view.layout, pile) - taken;
  if (left > 0) return { key, actions, next: NEXT };
  const heap = sizeOf(view.layout, HEAP) + taken;
  return { key, actions: [...actions, carry(HEAP, 0, heap, pile, 0)], next: null };
}

function sayBlock(key: Key): string {
  const [deed, n, lay] = String(key).split(' ');
  if (n === undefined) return 'takes nothing';
  return `${SAID[deed as Deed]} ${cardCount(Number(n))}${lay === 'beneath' ? ', beneath' : ''}`;
}
