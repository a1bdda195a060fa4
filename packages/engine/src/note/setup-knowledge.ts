import type { AttributeValue } from '../cards/card.ts';
import { RANKS, valueOf, type PipCard } from '../cards/names.ts';
import { attributesOf, PACK, parityOf } from '../cards/pack.ts';
import { refKey, type AttributeLine, type CardRef, type Target, type Test } from './setup-syntax.ts';
import { PACK_ATTRIBUTES } from './setup-words.ts';

type Attributes = Record<string, AttributeValue>;

/** Everything that is known of cards once the note's own attributes are. */
export interface Knowledge {
  /** Attributes of a card that is named. */
  readonly of: (ref: CardRef) => Readonly<Attributes>;
  /** What all cards that pass the tests have in common; null when there is no such card. */
  readonly known: (tests: readonly Test[]) => Readonly<Attributes> | null;
  /** The cards of one pack that pass the tests, clubs, hearts, spades, diamonds, ace to king. */
  readonly pips: (tests: readonly Test[]) => readonly PipCard[];
}

/** @param own names of the cards of one's own that the set-up lays out */
export function knowledge(lines: readonly AttributeLine[], own: Iterable<string>): Knowledge {
  // Attributes of the pack first: the parity of a value, and kinds such as `odd`, rest on them.
  const changes = lines.filter((line) => PACK_ATTRIBUTES.includes(line.attribute)).map(indexed);
  const additions = lines.filter((line) => !PACK_ATTRIBUTES.includes(line.attribute)).map(indexed);
  const memo = new Map<string, Readonly<Attributes>>();
  function of(ref: CardRef): Readonly<Attributes> {
    const key = refKey(ref);
    let found = memo.get(key);
    if (found === undefined) memo.set(key, (found = attributesOfRef(ref, changes, additions)));
    return found;
  }
  const pack = PACK.map((card): CardRef => ({ is: 'pip', card }));
  const world = [...pack, ...[...own].map((name): CardRef => ({ is: 'own', name }))];
  const passes = (ref: CardRef, tests: readonly Test[]): boolean => {
    const attributes = of(ref);
    return tests.every(({ attribute, value }) => attributes[attribute] === value);
  };
  const pips = new Map<string, readonly PipCard[]>();
  const common = new Map<string, Readonly<Attributes> | null>();
  return {
    of,
    known(tests) {
      // Of a card of which nothing is said, not even that it is one of these, nothing is known.
      if (tests.length === 0) return {};
      const key = JSON.stringify(tests);
      let found = common.get(key);
      if (found === undefined) {
        found = inCommon(world.filter((ref) => passes(ref, tests)).map(of));
        common.set(key, found);
      }
      return found;
    },
    pips(tests) {
      const key = JSON.stringify(tests);
      let found = pips.get(key);
      if (found === undefined) {
        found = PACK.filter((_card, i) => passes(pack[i], tests));
        pips.set(key, found);
      }
      return found;
    },
  };
}

function inCommon(all: readonly Readonly<Attributes>[]): Readonly<Attributes> | null {
  if (all.length === 0) return null;
  const [first, ...rest] = all;
  return Object.fromEntries(
    Object.entries(first).filter(([name, value]) => rest.every((other) => other[name] === value)),
  );
}

function attributesOfRef(
  ref: CardRef,
  changes: readonly Indexed[],
  additions: readonly Indexed[],
): Attributes {
  const attributes: Attributes = builtIn(ref);
  for (const { attribute, valueFor } of changes) {
    const value = valueFor(ref, attributes);
    if (value !== undefined) attributes[attribute] = value;
  }
  if (typeof attributes.value === 'number') attributes.parity = parityOf(attributes.value);
  const base = { ...attributes };
  for (const { attribute, yesNo, valueFor } of additions) {
    const value = valueFor(ref, base) ?? (yesNo ? 'no' : undefined);
    if (value !== undefined) attributes[attribute] = value;
  }
  return attributes;
}

interface Indexed {
  readonly attribute: string;
  readonly yesNo: boolean;
  /** The value that the last entry speaking of the card gives it. */
  readonly valueFor: (ref: CardRef, attributes: Readonly<Attributes>) => AttributeValue | undefined;
}

/** Entries about one card are looked up, so that only kinds and ranges, of which there are few, are tried one by one. */
function indexed({ attribute, yesNo, entries }: AttributeLine): Indexed {
  type Entry = { readonly at: number; readonly target: Target; readonly value: AttributeValue };
  const cards = new Map<string, Entry>();
  const wide = new Map<string, Entry>();
  entries.forEach(({ target, value }, at) => {
    if (target.is === 'card') cards.set(refKey(target.ref), { at, target, value });
    else wide.set(JSON.stringify(target), { at, target, value });
  });
  return {
    attribute,
    yesNo,
    valueFor(ref, attributes) {
      let best = cards.get(refKey(ref));
      const jokers = ref.is === 'joker' ? cards.get('joker') : undefined;
      if (jokers !== undefined && jokers.at > (best?.at ?? -1)) best = jokers;
      for (const entry of wide.values())
        if (entry.at > (best?.at ?? -1) && aims(entry.target, ref, attributes)) best = entry;
      return best?.value;
    },
  };
}

function builtIn(ref: CardRef): Attributes {
  if (ref.is === 'pip') return { ...attributesOf(ref.card) };
  if (ref.is === 'own') return {};
  return ref.colour === null ? { rank: 'joker' } : { rank: 'joker', colour: ref.colour };
}

function aims(target: Target, ref: CardRef, attributes: Readonly<Attributes>): boolean {
  switch (target.is) {
    case 'card':
      return refKey(target.ref) === refKey(ref);
    case 'ranks':
      return (
        ref.is === 'pip' && ref.card.suit === target.suit && ranksBetween(target).includes(ref.card.rank)
      );
    case 'kind':
      return target.tests.every(({ attribute, value }) => attributes[attribute] === value);
  }
}

/** The ranks of a range in its own direction, both ends included. */
export function ranksBetween({
  from,
  to,
}: {
  from: PipCard['rank'];
  to: PipCard['rank'];
}): PipCard['rank'][] {
  const [a, b] = [valueOf(from), valueOf(to)];
  const ranks = RANKS.slice(Math.min(a, b) - 1, Math.max(a, b));
  return a <= b ? [...ranks] : [...ranks].reverse();
}
