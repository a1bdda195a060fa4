import type { Step } from '../../src/routine/routine.ts';
import { either } from '../naive/write.ts';
import {
  adjacentMates,
  alternating,
  blockForm,
  classByFace,
  cyclicMirror,
  cyclicStack,
  exactPeriod,
  faceClassParity,
  faceUpCount,
  halfOffset,
  keyDistance,
  mirroredMates,
  mirroredOpposites,
  oddAsEven,
  oneEndDiffers,
  oppositesInPairs,
  placeParity,
  type Structure,
} from './structures.ts';

/** The mixes of the trade's table of what keeps what, in its order. */
export const MIXES: Readonly<Record<string, readonly (string | Step)[]>> = {
  'a cut': ['Cut the packet.'],
  'b even cut': ['Cut the packet at an even number.'],
  'c count all through': ['Deal the packet into a pile.'],
  'd turn the packet over': ['Turn the packet over.'],
  'e count any number, rest on top': ['Count any number of cards to the table and drop the rest on top.'],
  'f count an even number, rest on top': [
    'Count an even number of cards to the table and drop the rest on top.',
  ],
  'g turn the top 2': ['Turn over the top 2 cards.'],
  'h turn an even block': ['Turn over an even number of cards from the top.'],
  'i cut and turn the top 2': ['Cut and turn over the top 2.'],
  'j out-faro': ['Out-faro the packet.'],
  'k in-faro': ['In-faro the packet.'],
  'l anti-faro': ['Anti-faro the packet.'],
  'm deal 2 heaps, gather either way': ['Deal the packet into 2 piles.', 'Gather the piles in any order.'],
  'n deal 4 heaps, any order': ['Deal the packet into 4 piles.', 'Gather the piles in any order.'],
  'o milk': ['Milk the packet.'],
  'p Monge': [either(['Monge-shuffle the packet.'], ['Monge-shuffle the packet, the second beneath.'])],
  'q down-under or under-down': [
    either(['Deal the packet down-under into a pile.'], ['Deal the packet under-down into a pile.']),
  ],
  'r riffle': ['Riffle the packet.'],
  's Gilbreath': ['Deal any number of cards to the table and riffle the two packets together.'],
  't overhand': ['Overhand-shuffle the packet.'],
  'u overhand in even blocks': ['Overhand-shuffle the packet in even blocks.'],
  'v deal turning every second': ['Deal the packet into a pile, turning every second card.'],
  'w mix inside pairs': ['Shuffle within each pair.'],
  'x pairs in any order': ['Shuffle the order of the pairs.'],
  'y pairs left or turned, any order': [
    'Take pairs off the top, leaving or turning each.',
    'Shuffle the order of the pairs.',
  ],
};

/** Which mix keeps which structure, eight cards: K always, p for some starts or choices, `.` never. Common practice, no source. */
export const TABLE: readonly (readonly [Structure, string])[] = [
  [alternating, 'K K K K p p . p . . . . . . . . . p p p K K p K p'],
  [mirroredOpposites, 'p p K K p p p p p K K K K p p p p p p p p K p p p'],
  [mirroredMates, 'p p K K p p . p . K K K K p . . . p p p p K p p p'],
  [cyclicMirror, 'K K K K p p p p p p p p p p . . . p p p p K p p p'],
  [halfOffset, 'K K K K p p . p . . . . . . . . . p p p p K p p p'],
  [adjacentMates, 'p K K K p K K K p . . . . . . . . p p p K K K K K'],
  [oppositesInPairs, 'p K K K p K K K p p p p p p p p p p p p K K K K K'],
  [blockForm(4), 'p p K K p p K p p p p p p p p p p p p p p K K p p'],
  [exactPeriod(4), 'K K K K p p . p . . . . . . . . . p p p p K p p p'],
  [cyclicStack, 'K K K K p p . p . . . . . . . . . p p p p K p p p'],
  [faceClassParity, 'K K K K p p K K K . . . . . . . . p p p K . p K K'],
  [classByFace, 'K K K K K K . p . K K K K K K K K K K K K . K K p'],
  // Often printed as never kept by an out-faro; but top and bottom stay where they are, and round the packet they are neighbours.
  [keyDistance, 'K K . . p p p p p p p p p p p p p p p p p . p p p'],
  [placeParity, 'p K . . p p p p p p p p p p p p p p p p K . p K p'],
  [faceUpCount, 'K K K . K K p p p K K K K K K K K K K K K p K K p'],
  [oddAsEven, 'K K K K p p K K K p p p p p p p p p p p K p p K K'],
  [oneEndDiffers, 'K K K K K K K K K K K K K K K K K K K K K K K K K'],
];
