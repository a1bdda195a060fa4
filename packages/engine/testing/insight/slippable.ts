export function noteOf(setUp: string, working: string, ...endings: readonly string[]): string {
  const lines = setUp.includes(':') ? setUp : `packet: ${setUp}`;
  return `## Set-up\n\n- ${lines}\n\n## Working\n\n${working.trim()}\n\n## Ending\n\n${endings.map((one) => `- ${one}`).join('\n')}\n`;
}

/** Proved notes of a few cards: loops, branches, named numbers, several piles, looks at cards, sentences that are no equations. */
export const slippable: readonly (readonly [string, string])[] = [
  [
    'turnover for ever, then a deal turning every second card',
    noteOf(
      '4 cards alternately red and black, face down',
      `
1. Any number of times:
   1. Cut the packet.
   2. Turn over the top 2 together.
2. Deal the packet into a pile, turning every second card.
`,
      'Exactly 2 cards are face up.',
    ),
  ],
  [
    'deals, a gathering and a milk',
    noteOf(
      '4 cards alternately red and black, face down',
      `
1. Cut the packet.
2. Deal the packet into 2 piles.
3. Gather the piles left on right.
4. Milk the packet.
`,
      'Every pair differs in colour.',
      'All cards are face down.',
    ),
  ],
  [
    'a deal and a riffle',
    noteOf(
      '4 cards alternately red and black, face down',
      `
1. Deal any number of cards to the table and riffle the two packets together.
2. Cut off 2 cards to the left.
`,
      'The left has 1 red card.',
    ),
  ],
  [
    'a count, and one heap on another',
    noteOf(
      '5 cards, face down',
      `
1. Cut off 2 cards to the table.
2. Turn the packet over.
3. Put the packet on the table.
`,
      'Exactly 3 cards are face up.',
      'The top card is face up.',
    ),
  ],
  [
    'a number named and counted again',
    noteOf(
      '6 cards, face down',
      `
1. Deal 1 to 5 cards to the table, call it N.
2. Put the table on the packet.
3. Turn over the top N cards together.
4. Deal N cards to the table.
`,
      'All cards in the packet are face down.',
    ),
  ],
  [
    'one way or another, and a fixed number of rounds',
    noteOf(
      'AC 2H 2C AS, face down',
      `
1. 2 times:
   1. Out-faro the packet.
2. Either:
   - Turn the packet over.
   - Deal the packet into a pile; Turn the packet over.
`,
      'Every mirror pair agrees in value.',
    ),
  ],
  [
    'down and under',
    noteOf(
      'A-5 of spades, face down',
      `
1. Deal the packet down-under until one card is left.
`,
      'The top card of the packet is the 2S.',
    ),
  ],
  [
    'no equation: one or the other',
    noteOf(
      '4 cards alternately red and black, face down',
      `
1. Cut the packet.
2. Cut the packet at 2.
3. Turn the top card over.
`,
      'The top card is red or the 2nd card is red.',
      'Exactly 1 card is face up.',
    ),
  ],
  [
    'a word spelled, a range dealt',
    noteOf(
      'A-6 of spades, face down',
      `
1. Deal one card to the table for each letter of "sun".
2. Put the table on the packet.
3. Deal 2 to 4 cards to the left.
`,
      'The bottom card of the left is the 3S.',
    ),
  ],
  [
    'a look: as many as a card says',
    noteOf(
      '3S AS 2S 4S, face down',
      `
1. Deal as many cards as the value of the bottom card of the packet to the table.
2. Put the packet on the table.
3. Turn the table over.
`,
      'All cards are face up.',
    ),
  ],
];
