import { attributesOf, PACK } from '../cards/pack.ts';
import { dealt, type Supply } from './setup-deal.ts';
import { ranksBetween } from './setup-knowledge.ts';
import { refKey, type CardRef, type PileLine, type Target } from './setup-syntax.ts';

// Cards of a set-up are counted only as far as it can hold them.
const ENOUGH = 209;

/** Every card that the piles name, as keys, what is said by `all spades` or `rest of the pack` included. */
export function cardsNamed(piles: readonly PileLine[]): Set<string> {
  return new Set(refsIn(piles, PACK_SUPPLY).map(refKey));
}

/** Names of one's own cards in the piles, none twice. */
export function ownNames(piles: readonly PileLine[]): string[] {
  const names = new Map<string, string>();
  for (const ref of refsIn(piles, NOTHING))
    if (ref.is === 'own' && !names.has(refKey(ref))) names.set(refKey(ref), ref.name);
  return [...names.values()];
}

/** The cards an attribute names one by one, as keys; none for a kind. */
export function targetKeys(target: Target): string[] {
  switch (target.is) {
    case 'card':
      return [refKey(target.ref)];
    case 'ranks':
      return ranksBetween(target).map((rank) => refKey({ is: 'pip', card: { rank, suit: target.suit } }));
    case 'kind':
      return [];
  }
}

const PACK_SUPPLY: Supply = {
  pips: (tests) =>
    PACK.filter((card) => tests.every(({ attribute, value }) => attributesOf(card)[attribute] === value)),
  rest: () => PACK,
};
const NOTHING: Supply = { pips: () => [], rest: () => [] };

function refsIn(piles: readonly PileLine[], supply: Supply): CardRef[] {
  return piles.flatMap(({ runs }) =>
    runs.flatMap(({ what }) => dealt(what, supply, ENOUGH).flatMap(({ ref }) => (ref === null ? [] : [ref]))),
  );
}
