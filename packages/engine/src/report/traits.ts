import type { AttributeValue, Card } from '../cards/card.ts';
import { isAnonymous, shortName } from '../cards/show.ts';
import { attributeTest, bitTest, denied, inOrder } from '../phrases/blanks/card-words.ts';
import { printKind } from '../phrases/blanks/kind.ts';
import { printPredicate } from '../phrases/blanks/predicate.ts';
import type { KindTest } from '../phrases/values.ts';

/** What is measured on one card: a number for each card and each setting of its bits, with the words for it. */
export interface Trait {
  /** Said of one card after `is`: `red`, `a heart`, `face up`. */
  readonly one: string;
  /** Said of one card for which it is 0. */
  readonly not: string;
  /** Such cards: `red cards`, `face-up hearts`. */
  readonly many: string;
  /** Said of several cards after `are`. */
  readonly are: string;
  /** True when it is 0 or 1 on every card. */
  readonly isYesNo: boolean;
  /** Least and greatest value it takes. */
  readonly least: number;
  readonly most: number;
  /** Its value on a card; `bit` tells the card's bits. */
  readonly of: (card: Card, bit: (name: string) => number) => number;
}

/** A function on cards, to be put in words. */
export interface Unnamed {
  readonly bits: readonly string[];
  /** `setting` has bit i for the i-th kind. */
  readonly of: (card: Card, setting: number) => number;
}

/**
 * Finds the plainest words for a function: they are true of exactly the cards on which it is 1, or of the sums it makes. With `p`
 * it is only known modulo p, and numbers that an attribute gives are taken as they are.
 */
export function nameTrait(unnamed: Unnamed, cards: readonly Card[], p = Infinity): Trait {
  const { bits, of } = unnamed;
  const settings = Array.from({ length: 1 << bits.length }, (_, s) => s);
  const values = cards.map((card) => settings.map((s) => of(card, s)));
  const isYesNo = values.flat().every((value) => value === 0 || value === 1);
  const amount = isYesNo ? undefined : amountOf(values, cards, bits, p);
  const measure = amount?.of ?? of;
  const flat = cards.flatMap((card) => settings.map((s) => measure(card, s)));
  const words = amount?.words ?? nameYesNo(values, cards, bits);
  return {
    ...words,
    isYesNo,
    least: Math.min(...flat),
    most: Math.max(...flat),
    of: (card, bit) =>
      measure(
        card,
        bits.reduce((s, name, i) => s | (bit(name) << i), 0),
      ),
  };
}

type Words = Pick<Trait, 'one' | 'not' | 'many' | 'are'>;

/** A set of cards by what they have in common, or by their names. */
type Some = { readonly tests: readonly KindTest[] } | { readonly names: readonly string[] };

function wordsFor(some: Some, more: readonly KindTest[] = []): Words {
  if ('names' in some) {
    const list = some.names.join(', ');
    const way = more.length === 0 ? '' : ` and ${printPredicate(more, 'one')}`;
    const kind = printKind({ tests: more }, 'many');
    return {
      one: `one of ${list}${way}`,
      not: `none of ${list}${way}`,
      many: `${kind} among ${list}`,
      are: `among ${list}${way}`,
    };
  }
  const ordered = inOrder([...more, ...some.tests]);
  const not =
    ordered.length === 1
      ? printPredicate([denied(ordered[0])], 'one')
      : `not both ${printPredicate(ordered, 'one')}`;
  return {
    one: printPredicate(ordered, 'one'),
    not,
    many: printKind({ tests: ordered }, 'many'),
    are: printPredicate(ordered, 'many'),
  };
}

function nameYesNo(
  values: readonly (readonly number[])[],
  cards: readonly Card[],
  bits: readonly string[],
): Words {
  const settings = values[0]?.length ?? 1;
  const everywhere = (s: number): string => values.map((row) => row[s]).join('');
  const columns = Array.from({ length: settings }, (_, s) => everywhere(s));
  const distinct = [...new Set(columns)];
  const zero = '0'.repeat(values.length);
  if (distinct.length === 1) return wordsFor(cardsOf(columns[0], cards));
  const one = '1'.repeat(values.length);
  // The same cards in some settings, none in the others.
  if (distinct.length === 2 && distinct.includes(zero)) {
    const bitsOnly = bitTests(
      columns.map((column) => column !== zero),
      bits,
    );
    const which = distinct.find((column) => column !== zero) ?? one;
    if (bitsOnly !== null) return wordsFor(which === one ? { tests: [] } : cardsOf(which, cards), bitsOnly);
  }
  if (distinct.length === 2 && distinct[1] === flipped(distinct[0])) {
    const isOn = columns.map((column) => column !== columns[0]);
    const bitsOnly = bitTests(isOn, bits);
    if (bitsOnly?.length === 1) {
      const some = wordsFor(cardsOf(columns[0], cards));
      const way = printPredicate(bitsOnly, 'one');
      const one_ = `either ${some.one} or ${way} and not both`;
      return {
        one: one_,
        not: `both or neither of ${some.one} and ${way}`,
        many: `cards that are either ${some.are} or ${way} and not both`,
        are: `either ${some.are} or ${way} and not both`,
      };
    }
  }
  const cases = columns.flatMap((column, s) =>
    column === zero
      ? []
      : [`${settingWords(s, bits)}: ${column === one ? 'any card' : wordsFor(cardsOf(column, cards)).one}`],
  );
  const list = cases.join('; ');
  return {
    one: `one of these (${list})`,
    not: `none of these (${list})`,
    many: `cards among these (${list})`,
    are: `among these (${list})`,
  };
}

function flipped(column: string): string {
  return [...column].map((c) => (c === '1' ? '0' : '1')).join('');
}

function settingWords(s: number, bits: readonly string[]): string {
  return printPredicate(
    bits.map((bit, i) => (((s >> i) & 1) === 1 ? bitTest(bit) : denied(bitTest(bit)))),
    'one',
  );
}

/** Tests on bits that hold in exactly these settings, or null when no conjunction of them does. */
function bitTests(isOn: readonly boolean[], bits: readonly string[]): KindTest[] | null {
  const on = isOn.flatMap((yes, s) => (yes ? [s] : []));
  const tests = bits.flatMap((bit, i): KindTest[] => {
    if (on.every((s) => ((s >> i) & 1) === 1)) return [bitTest(bit)];
    return on.every((s) => ((s >> i) & 1) === 0) ? [denied(bitTest(bit))] : [];
  });
  return on.length === 1 << (bits.length - tests.length) ? tests : null;
}

export const USUAL_ATTRIBUTES = ['colour', 'suit', 'rank', 'parity', 'court', 'value'];
// More values than that are no shorter than the cards' names.
const MOST_VALUES = 4;

/** The cards with a 1. */
function cardsOf(column: string, cards: readonly Card[]): Some {
  const isIn = (i: number): boolean => column[i] === '1';
  const attributes = [
    ...new Set([...USUAL_ATTRIBUTES, ...cards.flatMap((card) => Object.keys(card.attributes))]),
  ];
  let best: { tests: KindTest[]; size: number } | undefined;
  for (const attribute of attributes) {
    const inside = new Set<AttributeValue>();
    const outside = new Set<AttributeValue | undefined>();
    cards.forEach((card, i) => {
      const value = card.attributes[attribute];
      if (isIn(i)) inside.add(value ?? '');
      else outside.add(value);
    });
    if (cards.some((card, i) => isIn(i) && card.attributes[attribute] === undefined)) continue;
    if ([...inside].some((value) => outside.has(value)) || inside.size === 0) continue;
    const consider = (tests: KindTest[], size: number): void => {
      if (size <= MOST_VALUES && (best === undefined || size < best.size)) best = { tests, size };
    };
    consider([attributeTest(attribute, ...inside)], inside.size);
    const others = [...outside].filter((value) => value !== undefined);
    if (others.length === outside.size && others.length > 0)
      consider([denied(attributeTest(attribute, ...others))], others.length + 0.5);
  }
  if (best !== undefined) return { tests: best.tests };
  const found = cards.filter((_, i) => isIn(i));
  const names = [...new Set(found.map(shortName))];
  const rest = new Set(cards.filter((_, i) => !isIn(i)).map(shortName));
  if (names.length === 1 && !rest.has(names[0]) && !isAnonymous(found[0]))
    return { tests: [{ test: 'card', name: found[0].name }] };
  if (rest.size === 1 && !names.includes([...rest][0])) {
    const [other] = cards.filter((_, i) => !isIn(i));
    if (!isAnonymous(other)) return { tests: [denied({ test: 'card', name: other.name })] };
  }
  // Nothing that they have in common tells them apart from the others.
  return { names };
}

/** A sum of numbers: the values of the cards, or a number of one's own. */
function amountOf(
  values: readonly (readonly number[])[],
  cards: readonly Card[],
  bits: readonly string[],
  p: number,
): { words: Words; of: Unnamed['of'] } | undefined {
  const attributes = [...new Set(cards.flatMap((card) => Object.keys(card.attributes)))];
  const settings = values[0]?.length ?? 1;
  const on = Array.from({ length: settings }, (_, s) => values.some((row) => row[s] !== 0));
  const tests = on.every(Boolean) ? [] : bitTests(on, bits);
  const fits = (value: number, wanted: number): boolean =>
    p === Infinity ? value === wanted : (value - wanted) % p === 0;
  const attribute = attributes.find((name) =>
    values.every((row, i) =>
      row.every((value, s) => !on[s] || fits(value, Number(cards[i].attributes[name]))),
    ),
  );
  const said = (words: string): Words => ({ one: words, not: words, many: words, are: words });
  if (attribute !== undefined && tests !== null) {
    const name = attribute === 'value' ? 'values' : `${attribute}s`;
    const words = said(`${name} of the ${printKind({ tests }, 'many')}`);
    return { words, of: (card, s) => (on[s] ? Number(card.attributes[attribute]) : 0) };
  }
  const list = cards.map((card, i) => `${shortName(card)} ${[...new Set(values[i])].join('/')}`).join(', ');
  const byCard = new Map(cards.map((card, i) => [card, values[i]]));
  return { words: said(`numbers (${list})`), of: (card, s) => byCard.get(card)?.[s] ?? 0 };
}
