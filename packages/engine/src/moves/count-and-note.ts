import type { Amount, PileRef, PlaceRef } from '../phrases/values.ts';
import { phrase } from '../phrases/phrase.ts';
import { carry, mark } from '../pictures/actions.ts';
import { cardCount, decided } from './handling.ts';
import { defineMove, pileName, pileSize, placeIndex, stuck } from './move.ts';
import { badName } from './name-number.ts';
import { isOpen, noNumber, numbersOf } from './open.ts';

type CountAndNoteArgs = {
  pile: PileRef;
  count: Amount;
  /** Which of the counted cards, in the order of counting; the last if absent. */
  at?: PlaceRef;
  mark: string;
  back: 'on top' | 'beneath';
};

const COUNT = '(count off|count out|deal|deal off) {count:cards} [from {pile:pile}] [(to|onto) the table]';
const CALL = 'call it {mark:newname}, and (put|place) them back {back=on top|beneath~underneath}';

/** P38, P39: cards counted off, one of them noted on the way, and put back as they lie. */
export const countAndNote = defineMove<CountAndNoteArgs>({
  id: 'count-and-note',
  procedures: ['P38', 'P39'],
  hands: 'choose',
  title: 'count off and note',
  phrases: [
    phrase(`${COUNT}, (noting|remembering|looking at|note|remember|look at) the last [card|one], ${CALL}`),
    phrase(`${COUNT}, (noting|remembering|looking at|note|remember|look at) {at:nthcard}, ${CALL}`),
  ],
  defaults: { pile: 'packet' },
  help: 'Cards are counted to the table one by one, which reverses them. The last, or the one at the stated number, is noted, and the counted cards are put back as they lie.',
  caution:
    'The counted cards come back reversed: the last one counted is then on top of them. At least one card is counted, or none could be noted.',
  synonyms: ['think of a number and note the card there'],
  brings: ({ mark: name }) => ({ marks: [name] }),
  check: ({ mark: name }) => badName(name),
  readings: ({ at }) => [
    {
      word: 'count off',
      taken: 'one by one, so that the counted cards are reversed',
      other: 'Push off ... cards',
    },
    ...(at?.end === 'bottom'
      ? [
          {
            word: 'from the bottom',
            taken: 'counted back from the last card',
            other: 'noting the ...th card',
          },
        ]
      : []),
  ],
  options(args, view) {
    const pile = pileName(args.pile, view);
    const size = pileSize(args.pile, view);
    const counts = numbersOf(args.count, args.pile, view).filter((k) => k > 0);
    if (counts.length === 0) return noNumber(args.count, args.pile, view);
    const place = (k: number): number => (args.at === undefined ? k - 1 : placeIndex(args.at, k, view));
    const noted = counts.filter((k) => place(k) >= 0 && place(k) < k);
    if (noted.length === 0) return stuck('no-such-card', { pile, size });
    return decided(
      noted.map((k) => ({
        key: k,
        actions: [
          carry(pile, 0, k, '~counted', 0, { reversed: true }),
          mark('~counted', k - 1 - place(k), 1, args.mark, 'set'),
          carry('~counted', 0, k, pile, args.back === 'on top' ? 0 : size - k),
        ],
        next: null,
      })),
    );
  },
  say: ({ count }, [k]) => (isOpen(count) ? `counts off ${cardCount(Number(k))}` : ''),
  examples: [
    {
      before: '1 2 3 4 5 6 7 8',
      sentence: 'Count off 1 to 5 cards, noting the last, call it chosen, and put them back on top.',
      choices: [3],
      after: '3(chosen) 2 1 4 5 6 7 8',
    },
    {
      before: 'k = 2; 1 2 3 4 5 6',
      sentence: 'Count off 4 cards, noting the Kth card, call it chosen, and put them back on top.',
      choices: [],
      after: '4 3 2(chosen) 1 5 6',
    },
  ],
});
