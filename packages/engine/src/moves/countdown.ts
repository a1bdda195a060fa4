import { trouble } from '../base/diagnostic.ts';
import type { NumberRef, PileRef } from '../phrases/values.ts';
import { phrase } from '../phrases/phrase.ts';
import { carry, mark, type Action } from '../pictures/actions.ts';
import { called, named } from './handling.ts';
import { valueCounted } from './looking.ts';
import { defineMove, numberOf, pileName, pileSize, START, stuck } from './move.ts';
import { badName } from './name-number.ts';

type CountdownArgs = { pile: PileRef; to: PileRef; from: NumberRef; courts?: NumberRef; call?: string };

/** P42: cards dealt face up while counting down, until a card has the number said; a cover card when none has. */
export const countdown = defineMove<CountdownArgs>({
  id: 'countdown',
  procedures: ['P42'],
  hands: 'deal',
  title: 'count down to a hit',
  phrases: [
    phrase(
      '(count down|deal face up counting down) from {from:number} until (a card hits|there is a hit) [, from {pile:pile}] [(to|onto) {to:newpile}] ' +
        '[, courts counting {courts:number}][, call the hit {call:newname}]',
    ),
  ],
  defaults: { pile: 'packet', to: 'table' },
  help:
    'Cards are dealt face up one by one while counting down to 1. When a card has the value of the number said, the count stops. ' +
    'When none has, one more card is dealt face down to close the pile, and the hit counts 0.',
  caution: 'Courts never hit from ten unless they are said to count ten. Do not forget the cover card.',
  synonyms: ['value count down'],
  brings: ({ to, call }) => ({ piles: named(to), numbers: call === undefined ? [] : [call] }),
  check: ({ from, call }) => [
    ...(from === 0 ? [trouble('count-from-none')] : []),
    ...(call === undefined ? [] : badName(call)),
  ],
  readings: () => [
    {
      word: 'hit',
      taken: 'without a hit a cover card is dealt face down and the hit is 0',
      other: 'Deal ... cards face up to the table',
    },
  ],
  looks: {
    attributes: () => ['value'],
    bits: () => [],
    observe(args, table, view) {
      const pile = pileName(args.pile, view);
      const courts = args.courts === undefined ? undefined : numberOf(args.courts, view);
      return table.layout.names.includes(pile) ? valueCounted(table.cardAt(pile, 0), courts) : 0;
    },
  },
  options(args, view) {
    const pile = pileName(args.pile, view);
    const size = pileSize(args.pile, view);
    const to = pileName(args.to, view);
    const said =
      view.phase === START ? numberOf(args.from, view) : Number(String(view.phase).slice('at '.length));
    if (said === 0 && view.phase === START) return stuck('count-from-none');
    if (size === 0) return stuck('not-enough-cards', { pile, size });
    const dealt = (face: 'set' | 'clear'): Action[] => [
      carry(pile, 0, 1, '~dealt', 0),
      mark('~dealt', 0, 1, 'up', face),
      carry('~dealt', 0, 1, to, 0),
    ];
    if (said === 0)
      return [{ key: 'cover', actions: dealt('clear'), next: null, off: 0, ...called(args.call, 0) }];
    const hit = Number(view.seen) === said;
    return [
      {
        key: hit ? 'hit' : said,
        actions: dealt('set'),
        next: hit ? null : `at ${said - 1}`,
        off: 0,
        ...(hit ? called(args.call, said) : {}),
      },
    ];
  },
  say: (_args, keys) => (keys.at(-1) === 'hit' ? `hits after ${keys.length}` : 'finds no hit'),
  examples: [
    {
      before: '2 5 8 7 6',
      sentence: 'Count down from 10 until a card hits, call the hit N.',
      choices: [],
      after: 'n = 8; packet: 7 6; table: 8^ 5^ 2^',
    },
    {
      before: '7 8 9 4',
      sentence: 'Count down from 3 until there is a hit to pile 1.',
      choices: [],
      after: 'pile 1: 4 9^ 8^ 7^',
    },
  ],
});
