import { phrase } from '../phrases/phrase.ts';
import type { PileRef } from '../phrases/values.ts';
import { carry } from '../pictures/actions.ts';
import { cardCount, decided, type Way } from './handling.ts';
import { dropNext, saidDrops, type Side } from './interleave.ts';
import { defineMove, pileName, pileSize, START } from './move.ts';
import { turned, turnReading, type How } from './open.ts';

type SloppyMixArgs = { pile: PileRef; over: How };

const SIDES: readonly [Side, Side] = [
  { key: 'upper', pile: '~upper' },
  { key: 'lower', pile: '~lower' },
];
const HALVES = '(either half|one half or the other|either part|one part or the other)';
const TOGETHER = '(push|shuffle|riffle|mix) (the halves|the parts|them|both) together [anyhow]';

/** P22: cut anywhere, either part turned over, and both pushed together anyhow, face up into face down. */
export const sloppyMix = defineMove<SloppyMixArgs>({
  id: 'sloppy-mix',
  procedures: ['P22'],
  hands: 'mix',
  title: 'face up into face down, anyhow',
  phrases: [
    phrase(`cut {pile:pile}, turn ${HALVES} over [{over=sideways|end over end}] and ${TOGETHER}`),
    phrase(`cut {pile:pile}, turn over ${HALVES} [{over=sideways|end over end}] and ${TOGETHER}`),
    phrase('mix {pile:pile} face up into face down [anyhow]'),
  ],
  defaults: { pile: 'packet', over: 'sideways' },
  help: 'The packet is cut anywhere, one of the two parts is turned over as a block, and the two go into each other in any way that keeps the order of each.',
  caution:
    'Done again and again it brings any order and any facing about: only totals, and relations of class and face, survive.',
  synonyms: ['sloppy mixing', 'face up and face down'],
  readings: ({ over }) => turnReading(over),
  options(args, view) {
    const pile = pileName(args.pile, view);
    if (view.phase !== START) return dropNext(SIDES, pile, view);
    const size = pileSize(args.pile, view);
    const over = turned(args.over);
    const ways: Way[] = [{ key: 'none', actions: [], next: null }];
    for (let above = 1; above < size; above++)
      for (const side of ['upper', 'lower'])
        ways.push({
          key: `${side} ${above}`,
          actions: [
            carry(pile, 0, above, '~upper', 0, side === 'upper' ? over : {}),
            carry(pile, 0, size - above, '~lower', 0, side === 'lower' ? over : {}),
          ],
          next: 'drop',
        });
    if (size > 0) ways.push({ key: 'all', actions: [carry(pile, 0, size, pile, 0, over)], next: null });
    return decided(ways);
  },
  say: (_args, [first, ...drops]) => {
    const [side, above] = String(first).split(' ');
    if (above === undefined) return side === 'all' ? 'turns the whole packet over' : 'leaves it as it is';
    return `cuts off ${cardCount(Number(above))}, turns the ${side} part over and lets fall ${saidDrops(drops)}`;
  },
  examples: [
    {
      before: '1 2 3 4',
      sentence: 'Cut the packet, turn either half over and push the halves together.',
      choices: ['lower 2', 'lower', 'upper', 'upper'],
      after: '4^ 1 2 3^',
    },
    {
      before: '1 2 3',
      sentence: 'Mix the packet face up into face down.',
      choices: ['upper 2', 'lower'],
      after: '2^ 1^ 3',
    },
  ],
});
