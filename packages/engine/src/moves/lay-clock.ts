import { trouble } from '../base/diagnostic.ts';
import { phrase } from '../phrases/phrase.ts';
import type { PileRef } from '../phrases/values.ts';
import { carry } from '../pictures/actions.ts';
import { defineMove, pileName, pileSize, stuck } from './move.ts';

type LayClockArgs = { pile: PileRef; way: 'clockwise' | 'anticlockwise'; from: number };

const HOURS = 12;

function hour(n: number): string {
  return `hour ${n}`;
}

/** P48: twelve cards dealt one to each hour of a clock. */
export const layClock = defineMove<LayClockArgs>({
  id: 'lay-clock',
  procedures: ['P48'],
  hands: 'deal',
  title: 'lay out a clock',
  phrases: [
    phrase(
      "(lay|lay out) {pile:pile} [out] (as|in) a clock, {way=clockwise|anticlockwise~counterclockwise} from {from:number} [o'clock]",
    ),
    phrase(
      "(deal|lay out) a clock [from {pile:pile}], {way=clockwise|anticlockwise~counterclockwise} from {from:number} [o'clock]",
    ),
  ],
  defaults: { pile: 'packet' },
  help: 'The top twelve cards are dealt round a clock, one to each hour; the card at three is hour 3.',
  caution:
    'Where it starts and which way it goes must be said: dealing anticlockwise from 12 undoes one reversal.',
  synonyms: ['clock layout'],
  brings: () => ({ piles: Array.from({ length: HOURS }, (_, i) => hour(i + 1)) }),
  check: ({ from }) =>
    typeof from === 'number' && from >= 1 && from <= HOURS ? [] : [trouble('no-such-hour')],
  options(args, view) {
    const pile = pileName(args.pile, view);
    const size = pileSize(args.pile, view);
    if (size < HOURS) return stuck('not-enough-cards', { pile, size });
    const step = args.way === 'clockwise' ? 1 : HOURS - 1;
    const actions = Array.from({ length: HOURS }, (_, i) =>
      carry(pile, 0, 1, hour(((args.from - 1 + i * step) % HOURS) + 1), 0),
    );
    return [{ key: 'laid', actions, next: null, off: 0 }];
  },
  say: () => '',
  examples: [
    {
      before: '1 2 3 4 5 6 7 8 9 10 11 12 13',
      sentence: 'Lay the packet out as a clock, clockwise from 1.',
      choices: [],
      after:
        'hour 1: 1; hour 2: 2; hour 3: 3; hour 4: 4; hour 5: 5; hour 6: 6; hour 7: 7; hour 8: 8; hour 9: 9; hour 10: 10; hour 11: 11; hour 12: 12; packet: 13',
    },
    {
      before: '1 2 3 4 5 6 7 8 9 10 11 12',
      sentence: "Lay the packet out as a clock, anticlockwise from 12 o'clock.",
      choices: [],
      after:
        'hour 1: 12; hour 2: 11; hour 3: 10; hour 4: 9; hour 5: 8; hour 6: 7; hour 7: 6; hour 8: 5; hour 9: 4; hour 10: 3; hour 11: 2; hour 12: 1',
    },
  ],
});
