import { diagnostic, type Diagnostic } from '../base/diagnostic.ts';
import type { AttributeValue, Card } from '../cards/card.ts';
import { parseCardName } from '../cards/names.ts';
import { cardsNamed, ownNames, targetKeys } from './setup-named.ts';
import { printTarget } from './setup-print.ts';
import { rewrites } from './setup-reader.ts';
import type { AttributeLine, CardRef, PileLine, Target } from './setup-syntax.ts';
import { nearest, PACK_ATTRIBUTES } from './setup-words.ts';

/** Cards for which near names are searched when an attribute names them and the piles do not. */
const MOST_SEARCHED = 20;

/** What is wrong between the attributes of one's own and the piles. */
export function checkAttributes(
  attributes: readonly AttributeLine[],
  piles: readonly PileLine[],
): Diagnostic[] {
  const named = cardsNamed(piles);
  const own = ownNames(piles).map((name) => `"${name}"`);
  const found: Diagnostic[] = [];
  let searches = 0;
  for (const { attribute, entries } of attributes)
    for (const { target, range } of entries) {
      if (PACK_ATTRIBUTES.includes(attribute) && attribute !== 'value' && isOfPack(target)) {
        found.push(
          diagnostic('set-up-pack-attribute', range, { name: attribute, card: printTarget(target) }),
        );
        continue;
      }
      const keys = targetKeys(target);
      if (keys.length === 0 || keys.some((key) => named.has(key)) || isAnyJoker(target, named)) continue;
      const isOwn = target.is === 'card' && target.ref.is === 'own';
      const near = isOwn && searches++ < MOST_SEARCHED ? nearest(printTarget(target), own) : [];
      found.push(
        diagnostic(
          'set-up-not-there',
          range,
          { card: printTarget(target), near },
          { severity: 'warning', fixes: rewrites(near, range) },
        ),
      );
    }
  return found;
}

function isOfPack(target: Target): boolean {
  return target.is !== 'card' || target.ref.is === 'pip';
}

function isAnyJoker(target: Target, named: ReadonlySet<string>): boolean {
  const isJoker = target.is === 'card' && target.ref.is === 'joker' && target.ref.colour === null;
  return isJoker && (named.has('red joker') || named.has('black joker'));
}

/** Names of one's own that would be read as other cards: `"10C"`, `"a red card"`, `"joker"`. */
export function checkNames(piles: readonly PileLine[]): Diagnostic[] {
  return piles.flatMap(({ runs }) =>
    runs.flatMap(({ what, range }) => {
      const refs = what.is === 'cards' ? what.cards : what.is === 'copies' ? [{ ref: what.ref, range }] : [];
      return refs
        .filter(({ ref }) => isTaken(ref))
        .map((card) =>
          diagnostic('set-up-own-name', card.range, { name: card.ref.is === 'own' ? card.ref.name : '' }),
        );
    }),
  );
}

function isTaken(ref: CardRef): boolean {
  return (
    ref.is === 'own' &&
    (parseCardName(ref.name) !== null || /^an?\s/i.test(ref.name) || /joker$/i.test(ref.name))
  );
}

/** The note's own attributes with the values they have among the cards. */
export function valuesOf(
  attributes: readonly AttributeLine[],
  cards: readonly Card[],
): [string, readonly AttributeValue[]][] {
  return attributes
    .filter(({ attribute }) => !PACK_ATTRIBUTES.includes(attribute))
    .map(({ attribute, yesNo, entries }) => {
      if (yesNo) return [attribute, ['yes', 'no']];
      const had = new Set(cards.map((card) => card.attributes[attribute]));
      const values = [...new Set(entries.map(({ value }) => value))].filter((value) => had.has(value));
      return [attribute, values.length > 0 ? values : [entries[0]?.value ?? 'none']];
    });
}
