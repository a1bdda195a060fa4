import { trouble, type Trouble } from '../base/diagnostic.ts';
import type { NumberRef, PileRef } from '../phrases/values.ts';
import { phrase } from '../phrases/phrase.ts';
import { carry, type Action } from '../pictures/actions.ts';
import { sizeOf } from '../pictures/layout.ts';
import { cardCount, decided, within, type Way } from './handling.ts';
import { defineMove, numberOf, pileName, START, stuck, type Option, type Stuck, type View } from './move.ts';

type CutHeapsArgs = {
  pile: PileRef;
  into: NumberRef;
  equal: boolean;
  order: 'in any order' | 'in any cyclic order' | readonly number[];
};

/** Heaps are numbered from the top of the packet. More than anybody cuts. */
const MOST_HEAPS = 26;
const CUT = 'cut';
const GATHER = 'gather';

function heap(n: number): string {
  return `~${n}`;
}

function troubles({ into, order }: CutHeapsArgs): readonly Trouble[] {
  if (typeof into === 'number') {
    if (into === 0) return [trouble('no-piles')];
    if (into > MOST_HEAPS) return [trouble('too-many-piles', { most: MOST_HEAPS })];
  }
  if (typeof order === 'string') return [];
  const wanted = typeof into === 'number' ? into : order.length;
  const once = new Set(order).size === order.length && order.every((n) => n >= 1 && n <= wanted);
  return once && order.length === wanted ? [] : [trouble('not-an-order', { heaps: wanted })];
}

/** P4: a packet is cut into several heaps, which are put together again; each heap keeps its order. */
export const cutHeaps = defineMove<CutHeapsArgs>({
  id: 'cut-heaps',
  procedures: ['P4'],
  hands: 'cut',
  title: 'cut into heaps and reassemble',
  phrases: [
    phrase(
      'cut {pile:pile} into {into:number} (heaps|packets|piles|parts) and (reassemble|put|gather) them [together] ' +
        '({order=in any order|in any cyclic order}|in the order {order:sequence} [from the top])',
    ),
    phrase(
      'cut {pile:pile} into {into:number} equal (heaps|packets|piles|parts) and (reassemble|put|gather) them [together] ' +
        '({order=in any order|in any cyclic order}|in the order {order:sequence} [from the top])',
      { equal: true },
    ),
  ],
  defaults: { pile: 'packet', equal: false },
  help: 'The packet is cut into heaps, the first one from the top, and these are put together in some order, each heap keeping its own.',
  caution: 'Only when the heaps go back in cyclic order is this a cut. Any order destroys a cyclic stack.',
  synonyms: ['cut into packets'],
  check: troubles,
  options(args, view) {
    const heaps = numberOf(args.into, view);
    const pile = pileName(args.pile, view);
    const broken = troubles({ ...args, into: heaps });
    if (broken.length > 0) return stuck(broken[0].code, broken[0].facts);
    if (view.phase === GATHER) return gatherNext(args, pile, heaps, view);
    return cutNext(args, pile, heaps, view);
  },
  say(args, keys) {
    const cuts = args.equal ? 1 : keys.findIndex((key) => String(key).startsWith('heap'));
    const cut = args.equal ? [] : keys.slice(0, cuts).map((n) => cardCount(Number(n)));
    const order = keys.slice(cuts).map((key) => String(key).slice('heap '.length));
    const parts: string[] = [];
    if (cut.length > 0) parts.push(`cuts off ${cut.join(', ')}`);
    if (typeof args.order === 'string') parts.push(`puts heaps ${order.join(', ')} from the top`);
    return parts.join('; ');
  },
  examples: [
    {
      before: '1 2 3 4 5 6 7 8',
      sentence: 'Cut the packet into 3 heaps and reassemble them in the order 2, 3, 1 from the top.',
      choices: [2, 3],
      after: '3 4 5 6 7 8 1 2',
    },
    {
      before: '1 2 3 4 5 6',
      sentence: 'Cut the packet into 3 equal heaps and reassemble them in any order.',
      choices: ['heap 3', 'heap 2'],
      after: '5 6 3 4 1 2',
    },
    {
      before: '1 2 3 4 5',
      sentence: 'Cut the packet into 3 packets and put them together in any cyclic order.',
      choices: [1, 1, 'heap 3'],
      after: '3 4 5 1 2',
    },
  ],
});

/** The next heap comes off the top; the last one is what is left, and every heap has at least one card. */
function cutNext(args: CutHeapsArgs, pile: string, heaps: number, view: View): readonly Option[] | Stuck {
  const size = sizeOf(view.layout, pile);
  let next = 1;
  while (sizeOf(view.layout, heap(next)) > 0) next++;
  if (size < heaps - next + 1) return stuck('not-enough-cards', { pile, size });
  if (args.equal) {
    if (size % heaps !== 0) return stuck('not-divisible', { pile, size, by: heaps });
    const actions: Action[] = [];
    for (let n = 1; n <= heaps; n++) actions.push(carry(pile, 0, size / heaps, heap(n), 0));
    return [{ key: 'equal', actions, next: GATHER, off: 0 }];
  }
  if (heaps === 1) return [{ key: size, actions: [carry(pile, 0, size, heap(1), 0)], next: GATHER, off: 0 }];
  const last = next === heaps - 1;
  const ways: Way[] = [];
  for (let n = 1; n <= size - (heaps - next); n++) {
    const actions = [carry(pile, 0, n, heap(next), 0)];
    if (last) actions.push(carry(pile, 0, size - n, heap(heaps), 0));
    ways.push({ key: n, actions, next: last ? GATHER : CUT });
  }
  return view.phase === START ? decided(ways) : within(ways);
}

/** The heap that goes beneath those gathered so far. */
function gatherNext(args: CutHeapsArgs, pile: string, heaps: number, view: View): readonly Option[] {
  const left: number[] = [];
  for (let n = 1; n <= heaps; n++) if (sizeOf(view.layout, heap(n)) > 0) left.push(n);
  const all = (order: readonly number[]): Action[] => {
    const actions: Action[] = [];
    let into = sizeOf(view.layout, pile);
    for (const n of order) {
      const size = sizeOf(view.layout, heap(n));
      actions.push(carry(heap(n), 0, size, pile, into));
      into += size;
    }
    return actions;
  };
  const { order } = args;
  if (typeof order !== 'string')
    return within([{ key: `heap ${order.join(', ')}`, actions: all(order), next: null }]);
  if (order === 'in any cyclic order')
    return within(
      left.map((n) => ({
        key: `heap ${n}`,
        actions: all([...left.filter((m) => m >= n), ...left.filter((m) => m < n)]),
        next: null,
      })),
    );
  return within(
    left.map((n) => ({ key: `heap ${n}`, actions: all([n]), next: left.length === 1 ? null : GATHER })),
  );
}
