import type { Layout } from '../pictures/layout.ts';
import { folded } from './fold.ts';
import type { Form, Variant } from './form.ts';
import { FORMS } from './forms.ts';
import type { Found, SlotRow } from './found.ts';
import { rowsOf, valueOf } from './holding.ts';
import { classesOf, type SlotClasses, type SlotVectors } from './slot-vectors.ts';
import type { Subject } from './subject.ts';

/**
 * Structures of every pile and of every two that follow from what holds on the vectors, the strongest first; those that follow from
 * stronger ones are left out, and so is what only says what `isTrivial` does.
 */
export function recognise(
  vectors: SlotVectors,
  layout: Layout,
  subject: Subject,
  isTrivial: (row: SlotRow) => boolean = () => false,
): Found[] {
  return folded(structuresIn(vectors, layout, subject), vectors, isTrivial);
}

/** All of them, those too that follow from others. */
export function structuresIn(vectors: SlotVectors, layout: Layout, subject: Subject): Found[] {
  if (vectors.list.length === 0) return [];
  const classes = PAIRED.has(subject.is) ? classesOf(vectors) : { of: [], opposite: [] };
  const piles = slotsOfPiles(layout);
  const cards = layout.sizes.reduce((sum, size) => sum + size, 0);
  const all: Found[] = [];
  const look = (form: Form, some: readonly Pile[]): void => {
    if (form.whole === true && some[0].slots.length < cards) return;
    const slots = slotsFor(subject, some, cards);
    for (const variant of variantsOf(form, some[0].slots.length, subject, some[1]?.slots.length ?? 0)) {
      const found = test(form, variant, vectors, classes, slots, some, subject);
      if (found !== null) all.push(found);
    }
  };
  for (const form of FORMS) {
    if (!form.fits(subject)) continue;
    for (const [i, pile] of piles.entries())
      if (form.piles === 1) look(form, [pile]);
      else if (piles.length <= MOST_PILES) for (const other of piles.slice(i + 1)) look(form, [pile, other]);
  }
  return all;
}

const made = new WeakMap<Subject, Map<string, readonly Variant[]>>();

/** Every moment with piles of these sizes asks for the same. */
function variantsOf(form: Form, n: number, subject: Subject, m: number): readonly Variant[] {
  let known = made.get(subject);
  if (known === undefined) made.set(subject, (known = new Map<string, readonly Variant[]>()));
  const key = `${form.id} ${n} ${m}`;
  let variants = known.get(key);
  if (variants === undefined) known.set(key, (variants = form.variants(n, subject, m)));
  return variants;
}

/** Subjects of which pairs are told. */
const PAIRED: ReadonlySet<Subject['is']> = new Set<Subject['is']>(['class', 'two cards', 'one off']);

/** Two cards are read on every slot one after the other: the places of a pile come twice. */
function slotsFor({ is }: Subject, piles: readonly Pile[], cards: number): readonly number[] {
  const slots = piles.flatMap((pile) => pile.slots);
  return is === 'two cards' ? [...slots, ...slots.map((slot) => slot + cards)] : slots;
}

// Two by two, more piles than this make more lines than anybody reads.
const MOST_PILES = 8;

interface Pile {
  readonly name: string;
  readonly slots: readonly number[];
}

function slotsOfPiles({ names, sizes }: Layout): Pile[] {
  let first = 0;
  return names.flatMap((name, i): Pile[] => {
    const slots = Array.from({ length: sizes[i] }, (_, k) => first + k);
    first += sizes[i];
    // Small piles in the middle of a mix have names of their own that nobody says.
    return name.startsWith('~') ? [] : [{ name, slots }];
  });
}

function test(
  form: Form,
  variant: Variant,
  vectors: SlotVectors,
  classes: SlotClasses,
  slots: readonly number[],
  piles: readonly Pile[],
  subject: Subject,
): Found | null {
  const { pattern } = variant;
  const value = valueOf(pattern, vectors, classes, slots, subject);
  if (value === null) return null;
  const names = piles.map(({ name }) => name);
  return {
    form: form.id,
    variant: variant.key,
    trade: subject.joinsFacing ? (JOINED[form.id] ?? form.trade) : form.trade,
    subject: subject.id,
    relation: subject.words.noun,
    piles: names,
    name: form.name(subject),
    words: variant.say(subject, value, names),
    pattern,
    ring: variant.ring,
    value,
    rank: 0,
    rows: rowsOf(pattern, value, vectors.p, slots),
  };
}

/** Facing joined to a class has headings of its own. */
export const JOINED: Readonly<Record<string, string>> = { alternating: 'S6', 'all-alike': 'S7' };
