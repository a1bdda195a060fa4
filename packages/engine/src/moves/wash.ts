import type { NumberRef, PileRef } from '../phrases/values.ts';
import { phrase } from '../phrases/phrase.ts';
import { carry, mark } from '../pictures/actions.ts';
import { decided, PILE, within, type Way } from './handling.ts';
import { defineMove, numberOf, pileName, pileSize, START, stuck, type Key } from './move.ts';

type WashArgs = {
  pile: PileRef;
  /** Only so many from the top; all if absent. */
  count?: NumberRef;
  faces: 'kept' | 'turning cards as they like';
  ends: 'free' | 'keeping every end';
};

const HOW =
  '[, {faces=turning cards as they like~face up and face down~turning some of the cards over}] [, {ends=keeping every end~keeping the ends}]';

/**
 * P58: cards mixed in any way at all. Any order is reached by exchanging neighbours, and any facing by turning single cards, so one
 * such exchange is one small decision and the moment in between remembers nothing.
 */
export const wash = defineMove<WashArgs>({
  id: 'wash',
  procedures: ['P58'],
  hands: 'mix',
  title: 'free shuffle',
  phrases: [
    phrase(`(shuffle|wash|mix) ${PILE} [freely|thoroughly|anyhow|on the table] ${HOW}`),
    phrase(
      `(shuffle|wash|mix) the top {count:number} cards [of {pile:pile}] [freely|thoroughly|anyhow] ${HOW}`,
    ),
  ],
  defaults: { pile: 'packet', faces: 'kept', ends: 'free' },
  help: 'The cards are mixed anyhow; any order at all may come out. Faces are kept unless the sentence says they may be turned.',
  caution:
    'Ends are not kept: a card may be turned round while it is mixed. Nothing but totals and class-and-face relations survives.',
  synonyms: ['shuffle', 'mix', 'table wash'],
  readings: ({ faces, ends }) => [
    {
      word: 'shuffle',
      taken: faces === 'kept' ? 'any order, every card facing as before' : 'any order and any facing',
      other: faces === 'kept' ? 'Shuffle the packet, turning cards as they like' : 'Shuffle the packet',
    },
    ...(ends === 'free'
      ? [{ word: 'shuffle', taken: 'ends may change', other: 'Shuffle the packet, keeping every end' }]
      : []),
  ],
  options(args, view) {
    const pile = pileName(args.pile, view);
    const size = pileSize(args.pile, view);
    const count = args.count === undefined ? size : numberOf(args.count, view);
    if (count > size) return stuck('not-enough-cards', { pile, size });
    const ways: Way[] = [{ key: 'stop', actions: [], next: null }];
    for (let p = 0; p < count; p++) {
      if (p + 1 < count)
        ways.push({ key: `swap ${p + 1}`, actions: [carry(pile, p, 1, pile, p + 1)], next: 'mixing' });
      if (args.faces !== 'kept')
        ways.push({ key: `turn ${p + 1}`, actions: [mark(pile, p, 1, 'up', 'toggle')], next: 'mixing' });
      if (args.ends === 'free')
        ways.push({ key: `end ${p + 1}`, actions: [mark(pile, p, 1, 'end', 'toggle')], next: 'mixing' });
    }
    return view.phase === START ? decided(ways) : within(ways);
  },
  scatters: (args, view) => [
    {
      pile: pileName(args.pile, view),
      at: 0,
      count: args.count === undefined ? pileSize(args.pile, view) : numberOf(args.count, view),
      faces: args.faces !== 'kept',
      ends: args.ends === 'free',
    },
  ],
  say: (args, keys, view) => {
    if (keys.length <= 1) return 'leaves the cards as they are';
    const count = args.count === undefined ? pileSize(args.pile, view) : numberOf(args.count, view);
    return `mixes them into the order ${mixedOrder(keys, count)}`;
  },
  examples: [
    {
      before: '1 2 3 4',
      sentence: 'Shuffle the packet.',
      choices: ['swap 1', 'swap 2', 'stop'],
      after: '2 3 1 4',
    },
    {
      before: '1 2 3',
      sentence: 'Wash the packet, turning cards as they like.',
      choices: ['turn 3', 'swap 1', 'end 1', 'stop'],
      after: "2' 1 3^",
    },
    { before: '1 2 3', sentence: 'Shuffle the top 2 cards.', choices: ['swap 1', 'stop'], after: '2 1 3' },
  ],
});

/** Old places from the top, with `turned` and `end round` where the sides or ends changed. */
function mixedOrder(keys: readonly Key[], count: number): string {
  const cards = Array.from({ length: count }, (_, i) => ({ place: i + 1, turned: false, round: false }));
  for (const key of keys) {
    const [what, at] = String(key).split(' ');
    const p = Number(at) - 1;
    if (what === 'swap') [cards[p], cards[p + 1]] = [cards[p + 1], cards[p]];
    if (what === 'turn') cards[p] = { ...cards[p], turned: !cards[p].turned };
    if (what === 'end') cards[p] = { ...cards[p], round: !cards[p].round };
  }
  return cards
    .map(({ place, turned, round }) => `${place}${turned ? ' turned' : ''}${round ? ' end round' : ''}`)
    .join(', ');
}
