import { expect, test } from 'vitest';
import { readAs } from '../../testing/packets.ts';
import { MOVES } from './index.ts';

/** Sentences as people of the trade write them, and the one move each of them is. */
const PHRASINGS: Readonly<Record<string, readonly string[]>> = {
  cut: [
    'Cut.',
    'Cut the packet',
    'Cut the packet and complete the cut.',
    'Cut at an even number.',
    'Cut the packet exactly at 8',
    'Cut the packet at about half (20 to 32).',
    'Give the packet a straight cut.',
    'Cut the top 5 cards to the bottom.',
    'Cut pile 2 at a multiple of 4',
    'Cut the packet at half.',
    'Cut the packet in half and complete the cut',
    'Cut the packet at fewer than 10.',
    'Cut the packet at 3 or more',
  ],
  'cut-off': [
    'Cut off some cards to the table',
    'Cut off a packet.',
    'Cut off about half (10 to 16) cards.',
    'Cut off fewer than 10 cards to the pocket, call it N.',
    'Cut off any number of cards and keep them in the pocket',
    'Pocket the top 3 cards.',
    'Put the top card on pile 2',
  ],
  'cut-turn': [
    'Cut and turn over two.',
    'CATO',
    'Cut the packet and turn over the top two cards as a block',
    'Cut and turn over the top 2 together',
    'Cut the packet at 5 and turn over an even number of cards from the top.',
  ],
  'cut-heaps': [
    'Cut the packet into three heaps and reassemble them in any order.',
    'Cut the packet into 3 packets and put them together in any cyclic order',
    'Cut the packet into 3 piles and gather them in the order 2 3 1',
  ],
  'cut-piles': ['Cut the packet into two piles.', 'Cut the packet into 4 equal heaps'],
  'turn-packet': [
    'Turn the packet over.',
    'Turn over the packet end over end',
    'Flip the whole packet over',
    'Turn pile 2 over sideways',
  ],
  'turn-block': [
    'Turn over the top 2 together.',
    'Turn over the top two as one',
    'Turn the top 3 cards over as a block.',
    'Turn the top card over',
    'Turn over the top half of pile 1.',
    'Flip over the bottom 4 cards',
    'Turn over an even number of cards from the top',
  ],
  'turn-card': [
    'Turn the 3rd card over.',
    'Turn over the third card',
    'Turn the top card over in place.',
    'Turn the bottom card face up',
    'Turn over the 2nd card from the bottom',
    'Reverse any card.',
    'Turn any card face up',
  ],
  'turn-each': [
    'Turn each of the top 4 cards over in place',
    'Turn the top 4 cards over one by one in place.',
  ],
  'turn-all': [
    'Turn every face-up card face down.',
    'Right the cards of pile 1',
    'Turn every card face down',
  ],
  'deal-turning': [
    'Deal the packet into a pile, turning every second card.',
    'Deal into a pile, turning every other card over',
    'Deal the packet to the table, turning every second card, beginning with the first',
  ],
  'turn-alternate': [
    'Turn every second card in place.',
    'Turn over every other card',
    'Spread the packet from hand to hand, turning every second card over.',
  ],
  'leave-or-turn': [
    'Take pairs off the packet, leaving or turning each.',
    'Take pairs off the top, leaving or turning each, and lay each on top or beneath',
    'Deal pairs off the top, swapping each',
    'Take an even number of cards at a time off the packet, turning or leaving each',
    'Take blocks of 4 off the top of the packet, turning each, laying each beneath',
  ],
  'lay-by-words': [
    'Lay out the packet by the words "eel" and "loo".',
    'Lay the pairs out by the words "MUTUS", "NOMEN", "DEDIT" and "COCIS"',
  ],
  'rotate-packet': ['Rotate the packet on the table.', 'Rotate pile 1 half a turn'],
  'rotate-block': ['Rotate the top half of the packet', 'Rotate the bottom 5 cards end for end'],
  'rotate-card': ['Rotate the 4th card.', 'Rotate the top card in place', 'Rotate any card'],
  transfer: [
    'Transfer 3 cards singly from top to bottom.',
    'Move three cards one by one from the top to the bottom',
    'Shift any number of cards from top to bottom as a block',
    'Transfer N cards from the top to the bottom of pile 1',
  ],
  'transfer-letters': [
    'Transfer one card from top to bottom for each letter of "lamp".',
    'Spell "lamp", transferring a card from top to bottom for each letter',
  ],
  bury: [
    'Bury the top card.',
    'Bury the top 3 cards somewhere in the middle',
    'Put the top card back in the middle',
  ],
  'move-card': [
    'Put the top card on the bottom.',
    'Move the bottom card to the top',
    'Transfer the top card to the bottom',
    'Put the top card beneath the packet',
    'Move the 3rd card to the 5th place',
  ],
  'swap-cards': ['Swap the top two cards.', 'Exchange the 2nd card and the bottom card of pile 1'],
  haymow: ['Give the packet a haymow shuffle'],
  'name-number': [
    'The spectator names a number from 1 to 15, call it N.',
    'Name any number between 5 and 10, call it N',
    'Think of an even number from 2 to 12, call it secret',
    'The spectator rolls a die, call the number D.',
  ],
  'note-card': [
    'The spectator notes the Nth card, call it chosen.',
    'They peek at any card, call it chosen',
    'The spectator looks at the bottom card of the table, call it mine',
    'Remember the top card, call it first',
    'The spectator thinks of one of the top 5 cards, call it chosen',
  ],
  'take-out': [
    'Remove the 3rd card to the pocket',
    'The spectator takes any card, call it chosen',
    'Draw the top card from pile 1',
  ],
  'put-back': ['Return the table to the packet anywhere', 'Insert pile 1 into the packet in the middle'],
  'exchange-piles': ['Exchange pile 1 and pile 2', 'Swap the left with the right'],
  fold: [
    'Turn pile 1 over onto pile 2',
    'Turn over pile 1 beneath pile 2',
    'Fold pile 1 onto pile 3 end over end',
  ],
  'hand-across': [
    'Hand 3 cards from the left across to the right',
    'Pass any number of cards from anywhere in the left to the right, turning them over',
  ],
  'count-pile': ['Count the packet, call the number N', 'Count the cards in pile 1, call it K'],
  'choose-pile': ['The spectator points to any pile, call its number N'],
  'say-pile': ['The spectator says which pile holds chosen, call its number N'],
  'gather-with': ['Gather the piles with pile N in the middle', 'Pick up the heaps with heap 2 on top'],
};

test.each(
  Object.entries(PHRASINGS).flatMap(([id, sentences]) => sentences.map((text) => [text, id] as const)),
)('%s (%s)', (text, id) => {
  expect(MOVES.filter((move) => readAs(move, text).length > 0).map((move) => move.id)).toEqual([id]);
});

test.each([
  // Words the trade uses, but which leave open what decides: said otherwise or not at all.
  'Cut the packet at about half',
  'Cut the packet into two',
  'Turn the packet',
  'Turn over',
  'Deal into a pile, turning every card',
  'Bury the card',
  'Exchange',
])('%s is no sentence', (text) => {
  expect(MOVES.filter((move) => readAs(move, text).length > 0).map((move) => move.id)).toEqual([]);
});
