import type { MoveStep } from '../packages/engine/src/routine/routine.ts';
import type { ShelfNote } from './generate-shelf.ts';

/**
 * The procedures of the trade, under the headings that modules name (`procedures: ['P1']`). One line each; what they mean exactly is
 * said by the modules.
 */
export interface Heading {
  readonly key: string;
  readonly title: string;
}

/** A procedure. `used` tells it from others done by the same moves, or made of several, or of a set-up. */
export interface Procedure extends Heading {
  readonly used?: (note: ShelfNote) => boolean;
  /** Source files that say it, where no move of its own does; in packages/engine. */
  readonly files?: readonly string[];
  /** Tests besides those in which a sentence of its moves occurs. */
  readonly tests?: readonly string[];
}

type Steps = readonly MoveStep[];
const some =
  (id: string, is: (step: MoveStep) => boolean) =>
  ({ steps }: Pick<ShelfNote, 'steps'>) =>
    steps.some((step) => step.move === id && is(step));
/** The kind of amount that a blank leaves: `any`, `exactly`, ... */
const amountOf = ({ args }: MoveStep, blank: string): string => {
  const value = args[blank];
  return typeof value === 'object' && value !== null && 'of' in value ? String(value.of) : '';
};
const isOpenAmount = (step: MoveStep, blank: string): boolean =>
  !['', 'exactly', 'half'].includes(amountOf(step, blank));
const isRange = (step: MoveStep, from: number, to: number): boolean => {
  const { count } = step.args;
  return (
    typeof count === 'object' && count !== null && 'from' in count && count.from === from && count.to === to
  );
};
/** Whether a step handles so many cards as a number says that was named. */
const isNamed = ({ args: { count } }: MoveStep): boolean =>
  typeof count === 'object' && count !== null && 'n' in count && typeof count.n === 'object';
const times = (steps: Steps, id: string): number => steps.filter(({ move }) => move === id).length;
const follows = (steps: Steps, first: string, second: string): boolean =>
  steps.some(({ move }, i) => move === first && steps[i + 1]?.move === second);
const isSwapping = ({ args }: MoveStep): boolean =>
  typeof args.each === 'string' && args.each.includes('swap');

export const PROCEDURES: readonly Procedure[] = [
  { key: 'P1', title: 'complete cut', used: some('cut', (step) => amountOf(step, 'at') === 'any') },
  {
    key: 'P2',
    title: 'cut at a named or an even number',
    used: some('cut', (step) => amountOf(step, 'at') !== 'any'),
  },
  { key: 'P3', title: 'cut off a packet, nothing completed' },
  { key: 'P4', title: 'cut into heaps and put them together' },
  {
    key: 'P5',
    title: 'cut and turn over some',
    used: ({ steps }) => times(steps, 'cut-turn') > 0 || follows(steps, 'cut', 'turn-block'),
  },
  { key: 'P6', title: 'cut deeper' },
  { key: 'P7', title: 'cross the cut' },
  { key: 'P8', title: 'haymow shuffle' },
  { key: 'P9', title: 'transfer from top to bottom' },
  { key: 'P10', title: 'bury' },
  {
    key: 'P11',
    title: 'cut off a secret number and keep it',
    used: some(
      'cut-off',
      (step) => step.secret || (isOpenAmount(step, 'count') && step.args.call !== undefined),
    ),
  },
  { key: 'P12', title: 'turn the packet over' },
  { key: 'P13', title: 'turn a block over' },
  { key: 'P14', title: 'turn one card in place' },
  { key: 'P15', title: 'deal, turning every second card' },
  { key: 'P16', title: 'turn every second card, order kept' },
  {
    key: 'P17',
    title: 'leave or turn even blocks',
    used: some('leave-or-turn', (step) => !isSwapping(step)),
  },
  {
    key: 'P18',
    title: 'swap a pair without turning it',
    used: ({ steps }) => times(steps, 'swap-cards') > 0 || some('leave-or-turn', isSwapping)({ steps }),
  },
  {
    key: 'P19',
    title: 'turn end over end',
    used: ({ steps }) =>
      steps.some(({ args }) => args.how === 'end over end' || args.over === 'end over end'),
  },
  { key: 'P20', title: 'rotate the packet or a part' },
  { key: 'P21', title: 'one card with its end the other way' },
  { key: 'P22', title: 'sloppy mix, face up into face down' },
  { key: 'P23', title: 'right the cards' },
  { key: 'P24', title: 'deal some, which reverses them' },
  { key: 'P25', title: 'push off as a group' },
  { key: 'P26', title: 'count out and drop the rest on top' },
  { key: 'P27', title: 'run some and throw the rest' },
  { key: 'P28', title: 'deal all into one heap' },
  { key: 'P29', title: 'deal into piles in turn' },
  { key: 'P30', title: 'gather piles' },
  { key: 'P31', title: 'skip gather' },
  { key: 'P32', title: 'deal rows, gather columns' },
  {
    key: 'P33',
    title: 'snake layout',
    used: ({ steps }) => steps.some(({ args }) => args.way === 'rows alternately'),
  },
  { key: 'P34', title: 'milk' },
  { key: 'P35', title: 'over and under into the other hand' },
  { key: 'P36', title: 'down-under deal to the last card' },
  { key: 'P37', title: 'down-under deal to reorder' },
  { key: 'P38', title: 'number thought of, its card noted' },
  {
    key: 'P39',
    title: 'secret number removed, its card noted, all put back',
    used: ({ steps }) =>
      times(steps, 'count-and-note') > 0 &&
      steps.some(({ move }) => move === 'push-off' || move === 'cut-off'),
  },
  {
    key: 'P40',
    title: 'secret number moved to the bottom, then some counted off',
    used: ({ steps }) =>
      some('transfer', (step) => isOpenAmount(step, 'count') || isNamed(step))({ steps }) &&
      times(steps, 'deal') > 0,
  },
  { key: 'P41', title: 'spell a word or a name' },
  { key: 'P42', title: 'count a value' },
  { key: 'P43', title: 'count down to the same number' },
  {
    key: 'P43b',
    title: 'deal until told to stop, a free number',
    used: ({ steps }) =>
      times(steps, 'name-number') > 0 || some('deal', (step) => isOpenAmount(step, 'count'))({ steps }),
  },
  {
    key: 'P44',
    title: 'hands dealt after a cut',
    used: ({ steps }) => {
      const cut = steps.findIndex(({ move }) => move === 'cut');
      return (
        cut >= 0 &&
        steps.slice(cut).some(({ move, args }) => move === 'deal-piles' && args.plural === 'hands')
      );
    },
  },
  { key: 'P45', title: 'two hands dealt, one dropped on the other' },
  { key: 'P46', title: 'equal piles, some shifted, some removed' },
  { key: 'P47', title: 'count round a ring with a tail' },
  { key: 'P48', title: 'clock layout' },
  { key: 'P49', title: 'riffle' },
  {
    key: 'P50',
    title: 'deal some off and riffle',
    used: ({ steps }) => times(steps, 'gilbreath') > 0 || follows(steps, 'deal', 'riffle-together'),
  },
  { key: 'P51', title: 'riffle face up into face down' },
  {
    key: 'P52',
    title: 'out-faro, in-faro',
    used: ({ steps, cards }) => times(steps, 'faro') > 0 && cards % 2 === 0,
  },
  {
    key: 'P53',
    title: 'faro of an odd packet',
    used: ({ steps, cards }) => times(steps, 'faro') > 0 && cards % 2 === 1,
  },
  { key: 'P54', title: 'partial faro' },
  { key: 'P55', title: 'anti-faro' },
  { key: 'P56', title: 'strip out any cards' },
  { key: 'P57', title: 'overhand shuffle' },
  { key: 'P58', title: 'free shuffle' },
  { key: 'P59', title: 'shuffle within blocks, or the order of blocks' },
  {
    key: 'P60',
    title: 'choose a card and return it',
    used: ({ steps }) =>
      times(steps, 'take-out') > 0 && steps.some(({ move }) => /^(put|bury|move)/.test(move)),
  },
  { key: 'P61', title: 'note a card at a place' },
  { key: 'P62', title: 'lose a card' },
  { key: 'P63', title: 'remove or insert cards' },
  { key: 'P64', title: 'card thought of in a group that is shown' },
  { key: 'P65', title: 'piles kept or discarded at will' },
  { key: 'P66', title: 'pick two, remove one, in turn' },
  {
    key: 'P67',
    title: 'take one to three in turn',
    used: ({ steps }) => steps.filter((step) => isRange(step, 1, 3)).length > 1,
  },
  { key: 'P68', title: 'cross out rows and columns' },
  { key: 'P69', title: 'pile named, picked up in its turn' },
  { key: 'P70', title: 'fold heaps over' },
  {
    key: 'P71',
    title: 'exchange piles, or hand cards across turned over',
    used: ({ steps }) =>
      steps.some(
        ({ move, args }) =>
          move === 'exchange-piles' ||
          move === 'move-pile' ||
          (move === 'hand-across' && args.manner === 'turned over'),
      ),
  },
  { key: 'P72', title: 'hand cards across and back', used: ({ steps }) => times(steps, 'hand-across') > 1 },
  { key: 'P73', title: 'behind the back, under the table' },
  {
    key: 'P74',
    title: 'tear in half and stack',
    used: ({ setUp }) => /\btorn in (half|two) and\b/.test(setUp),
    files: ['src/note/setup-mates.ts'],
    tests: ['src/note/setup.test.ts'],
  },
  { key: 'P75', title: 'pairs sorted by colour into heaps' },
  { key: 'P76', title: 'follow the values along a row' },
  { key: 'P77', title: 'look whether the faces of a pair agree' },
  {
    key: 'P78',
    title: 'packets of hands, gathered and dealt again',
    used: ({ steps }) =>
      times(steps, 'deal-piles') > 1 && times(steps, 'note-card') > 0 && times(steps, 'say-pile') > 0,
  },
];
