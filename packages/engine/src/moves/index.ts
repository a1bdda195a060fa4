import { agreePairs } from './agree-pairs.ts';
import { antiFaro } from './anti-faro.ts';
import { bury } from './bury.ts';
import { choosePile } from './choose-pile.ts';
import { countAndNote } from './count-and-note.ts';
import { countAndTransfer } from './count-and-transfer.ts';
import { countKind } from './count-kind.ts';
import { countPile } from './count-pile.ts';
import { countRing } from './count-ring.ts';
import { countdown } from './countdown.ts';
import { crossCut } from './cross-cut.ts';
import { crossOut } from './cross-out.ts';
import { cut } from './cut.ts';
import { cutDeeper } from './cut-deeper.ts';
import { cutHeaps } from './cut-heaps.ts';
import { cutOff } from './cut-off.ts';
import { cutPiles } from './cut-piles.ts';
import { cutTurn } from './cut-turn.ts';
import { deal } from './deal.ts';
import { dealAll } from './deal-all.ts';
import { dealLetters } from './deal-letters.ts';
import { dealPiles } from './deal-piles.ts';
import { dealTurning } from './deal-turning.ts';
import { dealTwoHands } from './deal-two-hands.ts';
import { dealValue } from './deal-value.ts';
import { downUnderDeal } from './down-under.ts';
import { downUnderHeap } from './down-under-heap.ts';
import { exchangePiles } from './exchange-piles.ts';
import { faro } from './faro.ts';
import { fold } from './fold.ts';
import { foldLayout } from './fold-layout.ts';
import { foldLine } from './fold-line.ts';
import { gather } from './gather.ts';
import { gatherBySkips } from './gather-by-skips.ts';
import { gatherLines } from './gather-lines.ts';
import { gatherOrder } from './gather-order.ts';
import { gatherOutermost } from './gather-outermost.ts';
import { gatherWith } from './gather-with.ts';
import { gilbreath } from './gilbreath.ts';
import { handAcross } from './hand-across.ts';
import { haymow } from './haymow.ts';
import { layByWords } from './lay-by-words.ts';
import { layClock } from './lay-clock.ts';
import { layOut } from './lay-out.ts';
import { leaveOrTurn } from './leave-or-turn.ts';
import { milk } from './milk.ts';
import { milkPairs } from './milk-pairs.ts';
import { monge } from './monge.ts';
import { moveCard } from './move-card.ts';
import { movePile } from './move-pile.ts';
import { nameNumber } from './name-number.ts';
import { nameWord } from './name-word.ts';
import { noteCard } from './note-card.ts';
import { overhand } from './overhand.ts';
import { partialFaro } from './partial-faro.ts';
import { pushOffCards } from './push-off.ts';
import { putBack } from './put-back.ts';
import { putBeneath } from './put-beneath.ts';
import { putOn } from './put-on.ts';
import { readValue } from './read-value.ts';
import { reckon } from './reckon.ts';
import { riffle } from './riffle.ts';
import { riffleTogether } from './riffle-together.ts';
import { rotateBlock } from './rotate-block.ts';
import { rotateCard } from './rotate-card.ts';
import { rotatePacket } from './rotate-packet.ts';
import { run } from './run.ts';
import { sayCard } from './say-card.ts';
import { sayNumber } from './say-number.ts';
import { sayPile } from './say-pile.ts';
import { seeAlike } from './see-alike.ts';
import { seeAll } from './see-all.ts';
import { seeCard } from './see-card.ts';
import { seeIn } from './see-in.ts';
import { shuffleBlocks } from './shuffle-blocks.ts';
import { shuffleWithin } from './shuffle-within.ts';
import { sloppyMix } from './sloppy-mix.ts';
import { sortKind } from './sort-kind.ts';
import { sortPairs } from './sort-pairs.ts';
import { spellCard } from './spell-card.ts';
import { spellName } from './spell-name.ts';
import { stripOut } from './strip-out.ts';
import { swapCards } from './swap-cards.ts';
import { takeAny } from './take-any.ts';
import { takeKind } from './take-kind.ts';
import { takeOut } from './take-out.ts';
import { transfer } from './transfer.ts';
import { transferLetters } from './transfer-letters.ts';
import { transpose } from './transpose.ts';
import { turnAll } from './turn-all.ts';
import { turnAlternate } from './turn-alternate.ts';
import { turnAndRiffle } from './turn-and-riffle.ts';
import { turnBlock } from './turn-block.ts';
import { turnCard } from './turn-card.ts';
import { turnEach } from './turn-each.ts';
import { turnPacket } from './turn-packet.ts';
import { turnToBottom } from './turn-to-bottom.ts';
import { walkValues } from './walk-values.ts';
import { wash } from './wash.ts';
import type { Move } from './move.ts';

/** Every move there is; a new one is its own file and one line here. */
export const MOVES: readonly Move[] = [
  agreePairs,
  antiFaro,
  bury,
  choosePile,
  countAndNote,
  countAndTransfer,
  countdown,
  countKind,
  countPile,
  countRing,
  crossCut,
  crossOut,
  cut,
  cutDeeper,
  cutHeaps,
  cutOff,
  cutPiles,
  cutTurn,
  deal,
  dealAll,
  dealLetters,
  dealPiles,
  dealTurning,
  dealTwoHands,
  dealValue,
  downUnderDeal,
  downUnderHeap,
  exchangePiles,
  faro,
  fold,
  foldLayout,
  foldLine,
  gather,
  gatherBySkips,
  gatherLines,
  gatherOrder,
  gatherOutermost,
  gatherWith,
  gilbreath,
  handAcross,
  haymow,
  layByWords,
  layClock,
  layOut,
  leaveOrTurn,
  milk,
  milkPairs,
  monge,
  moveCard,
  movePile,
  nameNumber,
  nameWord,
  noteCard,
  overhand,
  partialFaro,
  pushOffCards,
  putBack,
  putBeneath,
  putOn,
  readValue,
  reckon,
  riffle,
  riffleTogether,
  rotateBlock,
  rotateCard,
  rotatePacket,
  run,
  sayCard,
  sayNumber,
  sayPile,
  seeAlike,
  seeAll,
  seeCard,
  seeIn,
  shuffleBlocks,
  shuffleWithin,
  sloppyMix,
  sortKind,
  sortPairs,
  spellCard,
  spellName,
  stripOut,
  swapCards,
  takeAny,
  takeKind,
  takeOut,
  transfer,
  transferLetters,
  transpose,
  turnAll,
  turnAlternate,
  turnAndRiffle,
  turnBlock,
  turnCard,
  turnEach,
  turnPacket,
  turnToBottom,
  walkValues,
  wash,
];

const BY_ID = new Map(MOVES.map((move) => [move.id, move]));

export function moveById(id: string): Move {
  const move = BY_ID.get(id);
  // Routines are compiled against this same list.
  if (move === undefined) throw new Error(`no move ${id}`);
  return move;
}
