import type { Card } from '../cards/card.ts';
import type { Naming } from './naming.ts';
import { list } from './places.ts';
import { nameTrait, USUAL_ATTRIBUTES } from './traits.ts';

export interface Likeness {
  /** Said of cards that are alike in everything measured: `are alike in colour`. */
  readonly said: string;
  /** Said of two cards for what they differ in: `differ in colour`. */
  readonly opposite: (totals: readonly number[]) => string;
}

/** Words for two or more cards having the same values, all members of a family of 0/1 columns together. */
export function alikeIn(naming: Naming): Likeness {
  const { bits, cards, traits } = naming;
  const single = traits.length === 1 ? traits[0][0] : undefined;
  const settings = Array.from({ length: 1 << bits.length }, (_, s) => s);
  const vector = (card: Card, s: number): string => naming.vectorOf(card, s).join();
  const [first] = cards;
  if (bits.length === 1 && cards.every((card) => settings.every((s) => vector(card, s) === vector(first, s))))
    return alikeInBit(bits[0]);
  if (bits.length === 0) {
    const attribute = attributeOf(
      cards.map((card) => vector(card, 0)),
      cards,
    );
    if (attribute !== undefined && single !== undefined)
      return { said: `are alike in ${attribute}`, opposite: () => `differ in ${attribute}` };
    if (attribute !== undefined)
      return { said: `are alike in ${attribute}`, opposite: (totals) => eachIn(naming, totals) };
  }
  const isTied = (card: Card): boolean => naming.vectorOf(card, 0)[0] !== naming.vectorOf(card, 1)[0];
  if (bits.length === 1 && bits[0] === 'up' && single !== undefined && cards.every(isTied)) {
    const classes = cards.map((card) => vector(card, 0));
    const attribute = attributeOf(classes, cards);
    const trait = nameTrait({ bits: [], of: (card) => naming.vectorOf(card, 0)[0] }, cards);
    const what = attribute ?? `being ${trait.one}`;
    return {
      said: `face the same way exactly where they are alike in ${what}`,
      opposite: () => `face the same way exactly where they differ in ${what}`,
    };
  }
  const said = `are alike in ${list(traits.map(([trait]) => `being ${trait.one}`))}`;
  return { said, opposite: (totals) => eachIn(naming, totals) };
}

function alikeInBit(bit: string): Likeness {
  if (bit === 'up') return { said: 'face the same way', opposite: () => 'face opposite ways' };
  if (bit === 'end') return { said: 'point the same way', opposite: () => 'point opposite ways' };
  return { said: `are alike in being ${bit}`, opposite: () => `differ in being ${bit}` };
}

function eachIn({ traits }: Naming, totals: readonly number[]): string {
  const differ = traits.filter((_, i) => totals[i] !== 0).map(([trait]) => `being ${trait.one}`);
  const alike = traits.filter((_, i) => totals[i] === 0).map(([trait]) => `being ${trait.one}`);
  return [
    ...(alike.length > 0 ? [`are alike in ${list(alike)}`] : []),
    ...(differ.length > 0 ? [`differ in ${list(differ)}`] : []),
  ].join(' and ');
}

/** The attribute that sorts the cards into just these classes. */
function attributeOf(classes: readonly string[], cards: readonly Card[]): string | undefined {
  const attributes = new Set([...USUAL_ATTRIBUTES, ...cards.flatMap((card) => Object.keys(card.attributes))]);
  return [...attributes].find((attribute) => {
    const values = cards.flatMap((card) => card.attributes[attribute] ?? []);
    if (values.length < cards.length) return false;
    const pairs = new Set(values.map((value, i) => `${classes[i]}|${value}`));
    return pairs.size === new Set(values).size && pairs.size === new Set(classes).size;
  });
}
