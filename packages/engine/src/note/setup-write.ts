import type { Card } from '../cards/card.ts';
import { isAnonymous, isOwn, showCard, type Laid } from '../cards/show.ts';
import type { Freedom, SetUp } from '../routine/routine.ts';
import { printChoices } from './setup-kinds.ts';
import { PAIR, plural } from './setup-words.ts';

/**
 * Writes out a set-up that was found rather than read: one line a pile, every named card listed, unnamed ones counted by
 * their names. Reading the lines, with the note's own attributes beside them, gives the same piles and freedoms.
 *
 * @returns null for what no sentence of this kind can say: unnamed cards tied to mates, or some of them turned end for end
 * among others in any order
 */
export function writeSetUp(cards: readonly Card[], setUp: SetUp): string[] | null {
  if (cards.some((card) => card.attributes[PAIR] !== undefined)) return null;
  const copies = new Map<string, number>();
  for (const { name } of cards.filter((card) => !isAnonymous(card) && !isOwn(card) && card.name !== 'joker'))
    copies.set(name, (copies.get(name) ?? 0) + 1);
  const lines = setUp.piles.map(({ name, cards: lying }) => {
    const pile = new Pile(setUp.freedoms, name);
    lying.forEach(({ card, up, end }, place) => pile.add({ card: cards[card], up, end }, place));
    const most = Math.max(1, ...lying.map(({ card }) => copies.get(cards[card].name) ?? 1));
    const packs = most === 1 ? '' : `, from ${['two', 'three', 'four'][most - 2] ?? most} packs`;
    return pile.canBeSaid ? `${name}: ${pile.text}${packs}` : null;
  });
  return lines.some((line) => line === null) ? null : lines.filter((line) => line !== null);
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
  private readonly freedoms: readonly Freedom[];
  private readonly name: string;

  constructor(freedoms: readonly Freedom[], name: string) {
    this.freedoms = freedoms;
    this.name = name;
  }

  add(laid: Laid, place: number): void {
    const isListed = !isAnonymous(laid.card);
    const isFree = this.stretch('faces', place) >= 0;
    const facing = isFree ? 'free' : isListed ? 'listed' : laid.up === 1 ? 'up' : 'down';
    const order = this.stretch('order', place);
    const choice = this.choiceOf(laid.card);
    const kind = isListed ? 'cards' : `${laid.card.name} ${laid.end}`;
    const key = `${kind} ${facing} ${order} ${choice === null ? '' : this.freedoms.indexOf(choice)}`;
    const last = this.groups.at(-1);
    if (last?.key === key) last.cards.push(laid);
    else this.groups.push({ key, order, cards: [laid], facing, choice });
  }

  /** Words after a run reach back over the runs mixed with it; only facing can be said of each of them. */
  get canBeSaid(): boolean {
    return this.groups.every((group, k) => !endsSaid(group) || !joins(this.groups[k - 1], group));
  }

  get text(): string {
    let text = '';
    this.groups.forEach((group, k) => {
      const [before, after] = [this.groups[k - 1], this.groups[k + 1]];
      if (k > 0) text += joins(before, group) ? ', ' : ', then ';
      text += run(group, joins(before, group) || joins(group, after));
      if (group.order >= 0 && !joins(group, after))
        text += joins(before, group) ? ', these in any order' : ' in any order';
    });
    return text;
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
      if (freedom.free === 'attribute' && freedom.cards.includes(card.id)) return freedom;
    return null;
  }
}

/** Whether two neighbours are mixed together and so belong to one part of the line. */
function joins(a: Group | undefined, b: Group | undefined): boolean {
  return a !== undefined && b !== undefined && a.order >= 0 && a.order === b.order;
}

function endsSaid({ cards: [first] }: Group): boolean {
  return isAnonymous(first.card) && first.end === 1;
}

const FACING: Readonly<Record<Group['facing'], string>> = {
  free: ' face up or down as they like',
  up: ' face up',
  down: ' face down',
  listed: '',
};

function run(group: Group, isPart: boolean): string {
  const { cards, facing, choice } = group;
  const [first] = cards;
  if (!isAnonymous(first.card)) {
    const list = cards.map((laid) => showCard(facing === 'free' ? { ...laid, up: 0 } : laid)).join(' ');
    // Listed cards show their own faces; the rest of a part could otherwise be said of them too.
    return list + (facing === 'listed' && isPart ? ' face down' : FACING[facing]);
  }
  const noun = first.card.name.replace(/^an? /, '');
  const kind = cards.length === 1 ? noun : plural(noun);
  const each = choice === null ? '' : `, each ${printChoices(choice.attribute, choice.values)}`;
  return `${cards.length} ${kind}${each}${FACING[facing]}${endsSaid(group) ? ' turned end for end' : ''}`;
}
