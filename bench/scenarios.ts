/** The routines that are timed, as notes. */

/** Everything the turnover principle bears, one thing after the other, in an alternating packet. */
export function turnover(cards: number): string {
  return note(
    `packet: ${cards} cards alternately red and black, face down`,
    [
      'Any number of times: cut the packet, then turn over the top 2 together.',
      'Take pairs off the packet, leaving or turning each.',
      'Deal the packet into a pile, turning every second card.',
      'Riffle the packet.',
      'Shuffle the packet.',
      'Deal the packet into 4 piles.',
      'Gather the piles in any order.',
      'Deal the packet into 2 piles.',
      'Gather the piles in any order.',
      'Out-faro the packet.',
      'In-faro the packet.',
      'Milk the packet.',
    ],
    'Every red card faces one way and every black card the other.',
  );
}

/** The part of it that can be said without repetition, so that peers who cannot repeat without end have a fair question. */
export function shortTurnover(cards: number): string {
  return note(
    `packet: ${cards} cards alternately red and black, face down`,
    [
      'Cut the packet, then turn over the top 2 together.',
      'Take pairs off the packet, leaving or turning each.',
      'Deal the packet into a pile, turning every second card.',
      'Riffle the packet.',
    ],
    'Every red card faces one way and every black card the other.',
  );
}

const KINDS: Readonly<Record<number, readonly [cards: (cards: number) => string, ending: string]>> = {
  4: [
    (cards) => `clubs hearts spades diamonds repeated, ${cards} cards, face down`,
    'Every four has one card of each suit.',
  ],
  13: [
    () => 'A-K of clubs, A-K of hearts, A-K of spades, A-K of diamonds, face down',
    'Every block of 13 has one card of each value.',
  ],
};

/** Ten steps after which only mirror pairs matter, though the whole packet alternates for long; `put` is one more before the last. */
export function mirrorPairs(cards: number, put?: string): string {
  return note(
    `packet: ${cards} cards alternately red and black, face down`,
    [
      'Any number of times:\n   1. Cut the packet.\n   2. Turn over the top 2 together.',
      'Take pairs off the packet, leaving or turning each.',
      'Deal the packet into 4 piles.',
      'Gather the piles left on right.',
      'Deal the packet into 2 piles.',
      'Gather the piles right on left.',
      ...(put === undefined ? [] : [put]),
      'Out-faro the packet.',
      'Milk the packet.',
    ],
    'Every pair faces the same way exactly when it differs in colour.',
  );
}

/** K kinds in rotation, some cards dealt off, riffled together: every block of K shows each kind. Pushed off, it fails. */
export function dealAndRiffle(cards: number, kinds: number, broken = false): string {
  const [packet, ending] = KINDS[kinds];
  return note(
    `packet: ${packet(cards)}`,
    [
      `${broken ? 'Push off' : 'Deal'} any number of cards to the table.`,
      'Riffle the packet and the table together.',
    ],
    ending,
  );
}

/** A location effect: which card is chosen matters, and nothing else of the cards. */
export function notedCard(cards: number): string {
  return note(
    `packet: ${cards} cards in any order, face down`,
    [
      'The spectator notes any card, call it chosen.',
      'Deal the packet into 4 piles.',
      'The spectator says which pile holds chosen, call its number N.',
      'Gather the piles with pile N on top.',
      'Deal the packet into 4 piles.',
      'The spectator says which pile holds chosen, call its number N.',
      'Gather the piles with pile N on top.',
      'Deal the packet into 4 piles.',
      'The spectator says which pile holds chosen, call its number N.',
      'Gather the piles with pile N on top.',
    ],
    'The chosen card is among the top 11 cards.',
  );
}

/** Different cards and a sentence that is no equation: nothing but a complete search settles it. */
export function everyOrder(cards: number): string {
  return note(
    `packet: A-${cards} of spades, face down`,
    ['Any number of times: cut the packet, then turn over the top 2 together.'],
    'An even number of cards are face up or the values ascend.',
  );
}

function note(setUp: string, working: readonly string[], ending: string): string {
  const steps = working.map((step, i) => `${i + 1}. ${step}`).join('\n');
  return `# A routine for the clock\n\n## Set-up\n\n- ${setUp}\n\n## Working\n\n${steps}\n\n## Ending\n\n- ${ending}\n`;
}
