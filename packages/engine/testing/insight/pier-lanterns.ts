/**
 * A turnover note of our own whose ending needs less and less on the way: the working ends with deals into piles, and only mirror pairs
 * are wanted there, though the whole packet still alternates.
 */
export function pierLanterns(cards: number): string {
  return `---
title: Pier lanterns
minutes: 6
credits:
  - for: the turnover principle
    source: P. Diaconis and R. Graham, Magical Mathematics, Princeton 2012, chapter 1
---

Lanterns hang along both sides of a pier, a red one and a black one to every post. The wind turns them as it likes, and they are
counted in baskets for the winter. Hung up again two by two, a pair that faces the same way never matches, and one that does not always
does.

## Set-up

- packet: ${cards} cards alternately red and black, face down

## Working

1. Any number of times:
   1. Cut the packet.
   2. Turn over the top 2 together.

   > "Wind. Cut, and turn two over as one, as long as you like."

2. Take pairs off the packet, leaving or turning each.
3. Deal the packet into 4 piles.
4. Gather the piles left on right.
5. Deal the packet into 2 piles.
6. Gather the piles right on left.
7. Milk the packet.

   > "Out come the pairs, one from the sea end and one from the land end."

## Ending

- Every pair faces the same way exactly when it differs in colour.
`;
}
