import type { Block, PileRef } from '../phrases/values.ts';
import { phrase } from '../phrases/phrase.ts';
import { carry } from '../pictures/actions.ts';
import { cardCount } from './handling.ts';
import { dropNext, saidDrops, type Side } from './interleave.ts';
import { defineMove, pileName, pileSize, START } from './move.ts';
import { chooseNumber, turned, turnReading, type How } from './open.ts';

type TurnAndRiffleArgs = { pile: PileRef; block: Block; over: How };

const ANY_TOP: Block = { end: 'top', cards: { of: 'any' } };
const ANY_BOTTOM: Block = { end: 'bottom', cards: { of: 'any' } };
const RIFFLE =
  'riffle (them into the rest|it into the rest|the two (parts|packets|halves) together|them together)';
const FACES = '[face up into face down|face-up into face-down]';

/** P51: one part of a packet turned over and riffled face up into the face-down rest. */
export const turnAndRiffle = defineMove<TurnAndRiffleArgs>({
  id: 'turn-and-riffle',
  procedures: ['P51'],
  hands: 'mix',
  title: 'riffle face up into face down',
  phrases: [
    phrase(`turn over {block:block} [of {pile:pile}] [{over=sideways|end over end}] and ${RIFFLE} ${FACES}`),
    phrase(`turn {block:block} [of {pile:pile}] over [{over=sideways|end over end}] and ${RIFFLE} ${FACES}`),
    phrase(
      `cut {pile:pile}, turn (one|the upper|the top|the cut-off) (half|part|packet) over [{over=sideways|end over end}] and ${RIFFLE} ${FACES}`,
      { block: ANY_TOP },
    ),
    phrase(
      `cut {pile:pile}, turn the (lower|bottom) (half|part|packet) over [{over=sideways|end over end}] and ${RIFFLE} ${FACES}`,
      { block: ANY_BOTTOM },
    ),
    phrase('riffle {pile:pile} (face up into face down|face-up into face-down)', { block: ANY_TOP }),
  ],
  defaults: { pile: 'packet', over: 'sideways' },
  help:
    'One part of the packet is turned over as a block, which reverses it, and the two parts are riffled together. Every card shows which part ' +
    'it came from. Choices: how many are turned, then where each card falls from, from the bottom up.',
  caution: 'Turning has reversed the part already: do not deal it as well.',
  synonyms: ['face up into face down'],
  readings: ({ over }) => turnReading(over),
  options(args, view) {
    const pile = pileName(args.pile, view);
    const upper: Side = { key: args.block.end === 'top' ? 'turned' : 'rest', pile: '~upper' };
    const lower: Side = { key: args.block.end === 'top' ? 'rest' : 'turned', pile: '~lower' };
    if (view.phase !== START) return dropNext([upper, lower], pile, view);
    const size = pileSize(args.pile, view);
    const over = turned(args.over);
    return chooseNumber(args.block.cards, args.pile, view, (k) => {
      if (k === 0) return { actions: [], next: null };
      if (k === size) return { actions: [carry(pile, 0, k, pile, 0, over)], next: null };
      const above = args.block.end === 'top' ? k : size - k;
      return {
        actions: [
          carry(pile, 0, above, upper.pile, 0, upper.key === 'turned' ? over : {}),
          carry(pile, 0, size - above, lower.pile, 0, lower.key === 'turned' ? over : {}),
        ],
        next: 'drop',
      };
    });
  },
  say: (_args, [k, ...drops]) =>
    `turns over ${k === 0 ? 'nothing' : cardCount(Number(k))}${drops.length === 0 ? '' : ` and lets fall ${saidDrops(drops)}`}`,
  examples: [
    {
      before: '1 2 3 4 5 6 7 8',
      sentence: 'Turn over the top 3 cards and riffle them into the rest.',
      choices: ['rest', 'rest', 'turned', 'turned', 'rest', 'rest', 'turned'],
      after: '4 3^ 5 6 2^ 1^ 7 8',
    },
    {
      before: '1 2 3 4',
      sentence: 'Cut the packet, turn the lower half over and riffle the two parts together.',
      choices: [2, 'turned', 'rest', 'rest'],
      after: '4^ 1 2 3^',
    },
  ],
});
