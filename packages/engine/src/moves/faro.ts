import type { PileRef } from '../phrases/values.ts';
import { phrase } from '../phrases/phrase.ts';
import { carry, type Action } from '../pictures/actions.ts';
import { PILE } from './handling.ts';
import { defineMove, pileName, pileSize } from './move.ts';

type FaroArgs = { pile: PileRef; way: FaroWay; larger?: 'on top' | 'beneath' };

export type FaroWay = 'out-faro' | 'in-faro';

/**
 * The top `above` of `size` cards woven one by one into those below, beginning from the top with a card of the upper part (out) or of
 * the lower (in); what one part has left over stays at the bottom.
 */
export function woven(pile: string, above: number, size: number, way: FaroWay): Action[] {
  if (above === 0 || above === size) return [];
  let upper = above;
  let lower = size - above;
  const fromTop: ('~upper' | '~lower')[] = [];
  for (let takeUpper = way === 'out-faro'; upper + lower > 0; takeUpper = !takeUpper) {
    const take: 'upper' | 'lower' = (takeUpper && upper > 0) || lower === 0 ? 'upper' : 'lower';
    if (take === 'upper') upper--;
    else lower--;
    fromTop.push(`~${take}`);
  }
  const left = { '~upper': above, '~lower': size - above };
  return [
    carry(pile, 0, above, '~upper', 0),
    carry(pile, 0, size - above, '~lower', 0),
    ...fromTop.reverse().map((side) => carry(side, --left[side], 1, pile, 0)),
  ];
}

/** P52, P53: the packet cut in half and the halves woven card by card. */
export const faro = defineMove<FaroArgs>({
  id: 'faro',
  procedures: ['P52', 'P53'],
  hands: 'mix',
  title: 'out-faro, in-faro',
  phrases: [
    phrase(
      `[perfect] {way=out-faro|in-faro} [shuffle] ${PILE} [, the larger half {larger=on top|beneath~below}]`,
    ),
    phrase(
      `(give ${PILE}|do|perform|make|) (a|an) [perfect] {way=out-faro|in-faro} [shuffle] [, the larger half {larger=on top|beneath~below}]`,
    ),
    phrase(
      `weave ${PILE} perfectly, {way=out-faro~out~the top card stays on top~top card stays|in-faro~in~the top card goes second}`,
    ),
  ],
  defaults: { pile: 'packet' },
  help:
    'The packet is cut at half and the halves are woven, one card from each in turn. Out: the top card stays on top. ' +
    'In: the top card becomes the second.',
  caution:
    'With an odd number the larger half must be on top for the out-faro and beneath for the in-faro, or the weave does not come out even.',
  synonyms: ['perfect weave'],
  readings: ({ way, larger }) => {
    const taken = larger ?? (way === 'out-faro' ? 'on top' : 'beneath');
    const other = taken === 'on top' ? 'beneath' : 'on top';
    const name = way === 'out-faro' ? 'Out-faro' : 'In-faro';
    return [
      {
        word: way,
        taken: `with an odd number the larger half is ${taken}`,
        other: `${name} the packet, the larger half ${other}`,
      },
    ];
  },
  options(args, view) {
    const size = pileSize(args.pile, view);
    const larger = args.larger ?? (args.way === 'out-faro' ? 'on top' : 'beneath');
    const above = larger === 'on top' ? Math.ceil(size / 2) : Math.floor(size / 2);
    return [
      { key: args.way, actions: woven(pileName(args.pile, view), above, size, args.way), next: null, off: 0 },
    ];
  },
  say: () => '',
  examples: [
    { before: '1 2 3 4 5 6 7 8', sentence: 'Out-faro the packet.', choices: [], after: '1 5 2 6 3 7 4 8' },
    { before: '1 2 3 4 5 6 7 8', sentence: 'In-faro the packet.', choices: [], after: '5 1 6 2 7 3 8 4' },
    { before: '1 2 3 4 5 6 7', sentence: 'Out-faro the packet.', choices: [], after: '1 5 2 6 3 7 4' },
    { before: '1 2 3 4 5 6 7', sentence: 'In-faro the packet.', choices: [], after: '4 1 5 2 6 3 7' },
    {
      before: '1 2 3 4 5 6 7',
      sentence: 'Out-faro the packet, the larger half beneath.',
      choices: [],
      after: '1 4 2 5 3 6 7',
    },
  ],
});
