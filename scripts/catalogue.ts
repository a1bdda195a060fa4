import type { MoveStep } from '../packages/engine/src/routine/routine.ts';

/**
 * The procedures, structures, endings and predictions of the trade that the workbench means to cover, under the headings that
 * modules name (`procedures: ['P1']`, `endings: ['C4']`). One line each; what they mean exactly is said by the modules.
 */
export interface Heading {
  readonly key: string;
  readonly title: string;
}

/** A procedure. `used` tells it from others done by the same moves, or made of several: it is given all moves of a
 * note, blocks opened, and the number of cards. */
export interface Procedure extends Heading {
  readonly used?: (steps: readonly MoveStep[], cards: number) => boolean;
}

/** A structure, recognised in a note by what its set-up says, by a form of ending that states it, or by a move that rests on it. */
export interface StructureHeading extends Heading {
  readonly setUp?: RegExp;
  readonly endings?: readonly string[];
  readonly moves?: readonly string[];
  /** Tests of the structure itself, from packages/engine. */
  readonly tests: readonly string[];
}

/** A kind of prediction, carried by these forms of ending in a note that has a prediction. */
export interface Prediction extends Heading {
  readonly endings: readonly string[];
}

type Steps = readonly MoveStep[];
const some = (id: string, is: (step: MoveStep) => boolean) => (steps: Steps) =>
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
    used: (steps) => times(steps, 'cut-turn') > 0 || follows(steps, 'cut', 'turn-block'),
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
    used: (steps) => times(steps, 'swap-cards') > 0 || some('leave-or-turn', isSwapping)(steps),
  },
  {
    key: 'P19',
    title: 'turn end over end',
    used: (steps) => steps.some(({ args }) => args.how === 'end over end' || args.over === 'end over end'),
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
    used: (steps) => steps.some(({ args }) => args.way === 'rows alternately'),
  },
  { key: 'P34', title: 'milk' },
  { key: 'P35', title: 'over and under into the other hand' },
  { key: 'P36', title: 'down-under deal to the last card' },
  { key: 'P37', title: 'down-under deal to reorder' },
  { key: 'P38', title: 'number thought of, its card noted' },
  {
    key: 'P39',
    title: 'secret number removed, its card noted, all put back',
    used: (steps) =>
      times(steps, 'count-and-note') > 0 &&
      steps.some(({ move }) => move === 'push-off' || move === 'cut-off'),
  },
  {
    key: 'P40',
    title: 'secret number moved to the bottom, then some counted off',
    used: (steps) =>
      some('transfer', (step) => isOpenAmount(step, 'count'))(steps) && times(steps, 'deal') > 0,
  },
  { key: 'P41', title: 'spell a word or a name' },
  { key: 'P42', title: 'count a value' },
  { key: 'P43', title: 'count down to the same number' },
  {
    key: 'P43b',
    title: 'deal until told to stop, a free number',
    used: (steps) =>
      times(steps, 'name-number') > 0 || some('deal', (step) => isOpenAmount(step, 'count'))(steps),
  },
  {
    key: 'P44',
    title: 'hands dealt after a cut',
    used: (steps) => {
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
    used: (steps) => times(steps, 'gilbreath') > 0 || follows(steps, 'deal', 'riffle-together'),
  },
  { key: 'P51', title: 'riffle face up into face down' },
  {
    key: 'P52',
    title: 'out-faro, in-faro',
    used: (steps, cards) => times(steps, 'faro') > 0 && cards % 2 === 0,
  },
  {
    key: 'P53',
    title: 'faro of an odd packet',
    used: (steps, cards) => times(steps, 'faro') > 0 && cards % 2 === 1,
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
    used: (steps) => times(steps, 'take-out') > 0 && steps.some(({ move }) => /^(put|bury|move)/.test(move)),
  },
  { key: 'P61', title: 'note a card at a place' },
  { key: 'P62', title: 'lose a card' },
  { key: 'P63', title: 'remove or insert cards' },
  { key: 'P64', title: 'card thought of in a group that is shown' },
  { key: 'P65', title: 'piles kept or discarded at will' },
  { key: 'P66', title: 'pick two, remove one, in turn' },
  { key: 'P67', title: 'take one to three in turn', used: some('push-off', (step) => isRange(step, 1, 3)) },
  { key: 'P68', title: 'cross out rows and columns' },
  { key: 'P69', title: 'pile named, picked up in its turn' },
  { key: 'P70', title: 'fold heaps over' },
  {
    key: 'P71',
    title: 'exchange piles, or hand cards across turned over',
    used: (steps) =>
      steps.some(
        ({ move, args }) =>
          move === 'exchange-piles' ||
          move === 'move-pile' ||
          (move === 'hand-across' && args.manner === 'turned over'),
      ),
  },
  { key: 'P72', title: 'hand cards across and back', used: (steps) => times(steps, 'hand-across') > 1 },
  { key: 'P73', title: 'behind the back, under the table' },
  { key: 'P74', title: 'tear in half and stack' },
  { key: 'P75', title: 'pairs sorted by colour into heaps' },
  { key: 'P76', title: 'follow the values along a row' },
  { key: 'P77', title: 'look whether the faces of a pair agree' },
  {
    key: 'P78',
    title: 'packets of hands, gathered and dealt again',
    used: (steps) => times(steps, 'deal-piles') > 1,
  },
];

const WHO_KEEPS = 'testing/published/who-keeps-what.test.ts';
const CONVERSIONS = 'testing/published/conversions.test.ts';

export const STRUCTURES: readonly StructureHeading[] = [
  {
    key: 'S1',
    title: 'alternating',
    setUp: /alternat/i,
    endings: ['alternate'],
    tests: [WHO_KEEPS, CONVERSIONS],
  },
  { key: 'S2', title: 'mirrored', setUp: /mirror/i, tests: [WHO_KEEPS, CONVERSIONS] },
  { key: 'S3', title: 'cyclic mirror', setUp: /opposite order|reverse order/i, tests: [WHO_KEEPS] },
  {
    key: 'S4',
    title: 'half-offset',
    setUp: /(twice|half[- ]offset|in the same order)/i,
    tests: [WHO_KEEPS, CONVERSIONS],
  },
  {
    key: 'S5',
    title: 'adjacent pairs',
    setUp: /pairs|mates in pairs/i,
    endings: ['agree', 'differ', 'faces-tell'],
    tests: [WHO_KEEPS, CONVERSIONS],
  },
  {
    key: 'S6',
    title: 'face and class alternate',
    setUp: /alternat/i,
    moves: ['deal-turning', 'turn-alternate', 'cut-turn'],
    tests: [WHO_KEEPS, 'testing/published/turning.test.ts'],
  },
  { key: 'S7', title: 'class shown by face', endings: ['two-ways'], tests: [WHO_KEEPS, CONVERSIONS] },
  {
    key: 'S8',
    title: 'period k, or one of each in every block',
    setUp: /repeated/i,
    endings: ['one-of-each', 'repeat'],
    tests: [WHO_KEEPS, 'testing/published/riffles.test.ts'],
  },
  {
    key: 'S9',
    title: 'balance of counts',
    endings: ['as-many', 'difference', 'same-number'],
    tests: ['src/moves/compositions.test.ts'],
  },
  {
    key: 'S10',
    title: 'as many face up at odd places as at even',
    endings: ['count'],
    moves: ['deal-turning', 'turn-alternate'],
    tests: [WHO_KEEPS],
  },
  { key: 'S11', title: 'parity of a place', tests: [WHO_KEEPS], endings: ['place-is', 'card-is'] },
  {
    key: 'S12',
    title: 'distance from the key',
    endings: ['distance', 'next-to', 'between'],
    tests: [WHO_KEEPS],
  },
  {
    key: 'S13',
    title: 'cyclic stack',
    setUp: /Stebbins|eight kings/i,
    endings: ['steps'],
    tests: [WHO_KEEPS, 'src/cards/stacks.test.ts'],
  },
  {
    key: 'S14',
    title: 'sums to the same with the mate',
    endings: ['same-total', 'group-total'],
    tests: [CONVERSIONS],
  },
  {
    key: 'S15',
    title: 'fixed sums',
    endings: ['total-is', 'group-total'],
    moves: ['cross-out'],
    tests: ['src/moves/compositions.test.ts'],
  },
  {
    key: 'S16',
    title: 'place written in digits',
    moves: ['gather-with', 'say-pile', 'faro'],
    tests: ['testing/published/pile-tricks.test.ts', 'testing/published/faro.test.ts'],
  },
  { key: 'S17', title: 'every window differs', setUp: /window|De Bruijn/i, tests: [] },
  {
    key: 'S18',
    title: 'rising sequences',
    setUp: /in order/i,
    moves: ['riffle'],
    tests: ['testing/published/riffles.test.ts'],
  },
  {
    key: 'S19',
    title: 'reversal does not depend on the number',
    moves: ['count-and-transfer', 'count-and-note'],
    tests: ['testing/published/transfers.test.ts'],
  },
  { key: 'S20', title: 'a number less its digits', moves: ['reckon'], tests: ['src/moves/choosing.test.ts'] },
  { key: 'S21', title: 'pairs laid by a key of letters', setUp: /key/i, tests: [] },
  { key: 'S22', title: 'sums that tell both', endings: ['total-is'], tests: [] },
  { key: 'S23', title: 'walks that merge', tests: [] },
  { key: 'S24', title: 'exchanges followed', moves: ['swap-cards', 'exchange-piles'], tests: [] },
  { key: 'S25', title: 'one end differs', moves: ['rotate-card', 'rotate-packet'], tests: [WHO_KEEPS] },
  {
    key: 'S26',
    title: 'order within a class is free',
    setUp: /\bany \d+|alternately red and black/i,
    tests: ['src/note/setup.test.ts'],
  },
];

export const ENDINGS: readonly Heading[] = [
  { key: 'C1', title: 'your card is the top, the last, the one left' },
  { key: 'C2', title: 'it is the only card the other way' },
  { key: 'C3', title: 'all face one way, or all but some' },
  { key: 'C4', title: 'exactly so many' },
  { key: 'C5', title: 'as many here as there' },
  { key: 'C6', title: 'so many more' },
  { key: 'C7', title: 'the two match' },
  { key: 'C8', title: 'one of each in every pair, four, hand' },
  { key: 'C9', title: 'the colours have separated' },
  { key: 'C10', title: 'each pile topped by one' },
  { key: 'C11', title: 'in order, alternating, or as at the start' },
  { key: 'C12', title: 'they add up' },
  { key: 'C13', title: 'the value tells the place or the number' },
  { key: 'C14', title: 'the card that was named is here' },
  { key: 'C15', title: 'one of these is it' },
  { key: 'C16', title: 'the last ones left match' },
  { key: 'C17', title: 'the better hand' },
  { key: 'C18', title: 'next to, between, so many from the key' },
  { key: 'C19', title: 'no two neighbours alike' },
  { key: 'C20', title: 'this heap is even, that odd' },
];

export const PREDICTIONS: readonly Prediction[] = [
  { key: 'exact card', title: 'the very card', endings: ['place-is', 'card-is', 'only-card'] },
  { key: 'value', title: 'its value only', endings: ['place-is', 'places-are', 'value-at'] },
  { key: 'colour', title: 'its colour only', endings: ['place-is', 'all-are', 'all-but-are'] },
  { key: 'set', title: 'which cards', endings: ['exactly-those', 'all-in', 'two-ways', 'all-except'] },
  { key: 'count', title: 'how many', endings: ['count'] },
  { key: 'position', title: 'at which place', endings: ['card-is', 'place-is', 'value-place'] },
  { key: 'relation', title: 'what agrees', endings: ['agree', 'differ', 'faces-tell', 'one-of-each'] },
  { key: 'between', title: 'between two cards', endings: ['between', 'next-to', 'distance'] },
  { key: 'as many as', title: 'as many as', endings: ['as-many', 'same-number', 'difference'] },
  {
    key: 'only one',
    title: 'the only one which',
    endings: ['only-other-way', 'only-card', 'all-but', 'all-but-are'],
  },
  { key: 'sum', title: 'what they add up to', endings: ['total-is', 'group-total', 'same-total'] },
  { key: 'order', title: 'a whole order', endings: ['reads', 'starting-order', 'runs', 'sorted', 'steps'] },
];

/** Headings that have no module or no note yet; the check lets them pass and no others. */
export const AWAITED: readonly string[] =
  'P3 P4 P6 P7 P9 P10 P11 P12 P16 P18 P19 P20 P21 P22 P23 P25 P27 P28 P31 P32 P33 P35 P37 P38 P39 P40 P41 P42 P43 P44 P45 P47 P48 P53 P54 P55 P56 P57 P59 P60 P62 P63 P65 P66 P67 P68 P70 P71 P73 P74 P75 P76 P77 C6 C11 C13 C15 C17 C18'.split(
    ' ',
  );
