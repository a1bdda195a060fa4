import type { AttributeValue, Card } from '../cards/card.ts';
import { isAnonymous, isOwn, showCard, type Laid } from '../cards/show.ts';
import type { Freedom, SetUp } from '../routine/routine.ts';
import { printChoices } from './setup-kinds.ts';
import { PAIR, plural } from './setup-words.ts';

/**
 * Writes out a set-up that was found rather than read: one line a pile, every named card listed, unnamed ones counted by
 * their names. Reading the lines gives the same piles and freedoms; own attributes and pairings need lines of their own.
 */
export function writeSetUp(cards: readonly Card[], setUp: SetUp): string[] {
  const copies = new Map<string, number>();
  for (const { name } of cards.filter((card) => !isAnonymous(card) && !isOwn(card)))
    copies.set(name, (copies.get(name) ?? 0) + 1);
  return setUp.piles.map(({ name, cards: lying }) => {
    const pile = new Pile(cards, setUp.freedoms, name);
    lying.forEach(({ card, up, end }, place) => pile.add({ card: cards[card], up, end }, place));
    const most = Math.max(1, ...lying.map(({ card }) => copies.get(cards[card].name) ?? 1));
    return `${name}: ${pile.text()}${most > 1 ? `, from ${['two', 'three', 'four'][most - 2] ?? most} packs` : ''}`;
  });
}

/** Neighbours that one run can hold. */
interface Group {
  readonly key: string;
  readonly order: number;
  readonly cards: Laid[];
  readonly facing: 'listed' | 'up' | 'down' | 'free';
  readonly choice: Extract<Freedom, { free: 'attribute' }> | null;
}

class Pile {
  private readonly groups: Group[] = [];
  private readonly cards: readonly Card[];
  private readonly freedoms: readonly Freedom[];
  private readonly name: string;

  constructor(cards: readonly Card[], freedoms: readonly Freedom[], name: string) {
    this.cards = cards;
    this.freedoms = freedoms;
    this.name = name;
  }

  add(laid: Laid, place: number): void {
    const free = this.stretch('faces', place) >= 0;
    const order = this.stretch('order', place);
    const choice = this.choiceOf(laid.card);
    const isListed = !isAnonymous(laid.card);
    const facing = free ? 'free' : isListed ? 'listed' : laid.up === 1 ? 'up' : 'down';
    const kind = isListed ? 'cards' : `${laid.card.name} ${laid.end} ${pairing(laid.card)}`;
    const which = choice === null ? -1 : this.freedoms.indexOf(choice);
    const key = `${kind} ${facing} ${order} ${which}`;
    const last = this.groups.at(-1);
    if (last?.key === key) last.cards.push(laid);
    else this.groups.push({ key, order, cards: [laid], facing, choice });
  }

  text(): string {
    let text = '';
    this.groups.forEach((group, k) => {
      const before = this.groups[k - 1];
      const after = this.groups[k + 1];
      if (k > 0) text += before.order === group.order && group.order >= 0 ? ', ' : ', then ';
      text += run(group);
      if (group.order < 0 || after?.order === group.order) return;
      text += before?.order === group.order ? ', these in any order' : ' in any order';
    });
    return text === '' ? 'empty' : text;
  }

  /** Which freedom of this sort covers a place; -1 for none. */
  private stretch(free: 'faces' | 'order', place: number): number {
    return this.freedoms.findIndex(
      (one) =>
        one.free === free && one.pile === this.name && one.from <= place && place < one.from + one.count,
    );
  }

  private choiceOf(card: Card): Group['choice'] {
    for (const freedom of this.freedoms)
      if (freedom.free === 'attribute' && freedom.cards.some((id) => this.cards[id] === card)) return freedom;
    return null;
  }
}

function pairing(card: Card): AttributeValue {
  return card.attributes[PAIR] === undefined ? '' : 'paired';
}

function run({ cards, facing, choice }: Group): string {
  const [first] = cards;
  const way =
    facing === 'free'
      ? ' face up or down as they like'
      : facing === 'up'
        ? ' face up'
        : facing === 'down'
          ? ' face down'
          : '';
  if (!isAnonymous(first.card))
    return cards.map((laid) => showCard(facing === 'free' ? { ...laid, up: 0 } : laid)).join(' ') + way;
  const noun = first.card.name.replace(/^an? /, '');
  const kind = cards.length === 1 ? noun : plural(noun);
  const each = choice === null ? '' : `, each ${printChoices(choice.attribute, choice.values)}`;
  return `${cards.length} ${kind}${each}${way}${first.end === 1 ? ' turned end for end' : ''}`;
}
