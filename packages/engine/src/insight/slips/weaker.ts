import type { Card } from '../../cards/card.ts';
import { claimById } from '../../claims/index.ts';
import { BLANKS } from '../../phrases/blanks.ts';
import { printPhrases } from '../../phrases/phrase.ts';
import type { Amount, Args, ArgValue, Groups, Kind } from '../../phrases/values.ts';
import type { Ending, Sentence } from '../../routine/routine.ts';

// More than this of one ending helps nobody.
const MOST = 24;

/** An ending that says less than one of the note. */
export interface Less {
  readonly ending: Ending;
  /** Endings that say more than this one, by their texts: the note's own, and those on the way from it. */
  readonly above: ReadonlySet<string>;
}

/**
 * Endings that say less than a sentence, the strongest first: what would still be worth saying if the sentence failed. Whatever makes the
 * sentence true makes each of them true.
 */
export function weakerThan(ending: Ending, cards: readonly Card[]): Less[] {
  const found = new Map<string, { ending: Ending; above: Set<string> }>();
  const own = printed(ending.sentence);
  let layer: readonly { sentence: Sentence; above: ReadonlySet<string> }[] = [
    { sentence: ending.sentence, above: new Set([ending.text]) },
  ];
  while (layer.length > 0 && found.size < MOST) {
    const next: { sentence: Sentence; above: ReadonlySet<string> }[] = [];
    for (const { sentence, above } of layer)
      for (const less of lessThan(sentence, cards)) {
        const text = printed(less);
        if (text === null || text === own) continue;
        const known = found.get(text);
        for (const more of above) known?.above.add(more);
        if (known !== undefined) continue;
        found.set(text, { ending: { text, range: ending.range, sentence: less }, above: new Set(above) });
        next.push({ sentence: less, above: new Set([...above, text]) });
      }
    layer = next;
  }
  return [...found.values()].slice(0, MOST);
}

/** Those that are not said already by what says more and is certain as well. */
export function strongest(all: readonly Less[], isCertain: (text: string) => boolean): Ending[] {
  return all
    .filter(({ ending, above }) => isCertain(ending.text) && ![...above].some(isCertain))
    .map(({ ending }) => ending);
}

/** Endings that say the contrary of a sentence, or of what it says least of: after a mishap just these may have become certain. */
export function contraryTo(ending: Ending): Ending[] {
  const { sentence, range } = ending;
  if (sentence.says !== 'claim') return [];
  const { claim, args } = sentence;
  const other = CONTRARY[claim];
  const made: Sentence[] = [
    ...(other === undefined || !('relation' in args) ? [] : [{ ...sentence, claim: other }]),
    ...parity(args.n).map((n): Sentence => {
      const plus = n.of === 'multiple' ? 1 - n.plus : 0;
      return { ...sentence, args: { ...args, n: { of: 'multiple', k: 2, plus } } };
    }),
  ];
  return made.flatMap((one) => {
    const text = printed(one);
    return text === null ? [] : [{ text, range, sentence: one }];
  });
}

const CONTRARY: Readonly<Record<string, string>> = { agree: 'differ', differ: 'agree' };

/** A claim as the note would write it; null for what is joined of several, or cannot be said. */
function printed(sentence: Sentence): string | null {
  if (sentence.says !== 'claim') return null;
  const { phrases, defaults } = claimById(sentence.claim);
  const text = printPhrases(phrases, sentence.args, defaults, BLANKS);
  return text === null ? null : `${text.slice(0, 1).toUpperCase()}${text.slice(1)}`;
}

/** One step down. */
function lessThan(sentence: Sentence, cards: readonly Card[]): Sentence[] {
  if (sentence.says === 'and') return sentence.parts.flatMap((part) => [part, ...lessThan(part, cards)]);
  if (sentence.says !== 'claim') return [];
  const { claim, args } = sentence;
  const say = (id: string, other: Args): Sentence => ({ says: 'claim', claim: id, args: other });
  return [
    ...coarser(claim, args.relation).map((relation) => say(claim, { ...args, relation })),
    ...ofKind(claim, args, cards).map((state) => say(claim, { ...args, state })),
    ...oneWay(claim, args).map((other) => say('same-way', other)),
    ...parity(args.n).map((n) => say(claim, { ...args, n })),
    ...single(claim, args).map((other) => say(claim, other)),
  ];
}

/** What agrees in the first agrees in the second. */
const COARSER: Readonly<Record<string, readonly string[]>> = {
  mates: ['value', 'colour'],
  halves: ['rank', 'suit'],
  rank: ['value'],
  value: ['parity'],
  suit: ['colour'],
};

/** What differs in the first differs in the second. */
const FINER: Readonly<Record<string, readonly string[]>> = {
  parity: ['value'],
  value: ['rank'],
  colour: ['suit'],
};

function coarser(claim: string, relation: ArgValue): readonly string[] {
  if (typeof relation !== 'string') return [];
  if (claim === 'agree') return COARSER[relation] ?? [];
  return claim === 'differ' ? (FINER[relation] ?? []) : [];
}

/** A card at a place: then a card of its value, its suit, its colour. */
function ofKind(claim: string, { state }: Args, cards: readonly Card[]): Kind[] {
  if (claim !== 'place-is' || typeof state !== 'object' || !('tests' in state)) return [];
  const [only, ...others] = state.tests;
  if (only === undefined || others.length > 0 || only.not === true) return [];
  const kind = (attribute: string, value: string | number): Kind => ({
    tests: [{ test: 'attribute', attribute, values: [value] }],
  });
  const attributes =
    only.test === 'card'
      ? cards.find(({ name }) => name === only.name)?.attributes
      : only.test === 'attribute' && only.values.length === 1
        ? cards.find((card) => card.attributes[only.attribute] === only.values[0])?.attributes
        : undefined;
  if (attributes === undefined) return [];
  const names =
    only.test === 'card'
      ? ['rank' in attributes ? 'rank' : 'value', 'suit', 'colour']
      : only.test === 'attribute' && only.attribute === 'suit'
        ? ['colour']
        : [];
  return names.flatMap((name) => {
    const value = attributes[name];
    return value === undefined ? [] : [kind(name, value)];
  });
}

/** All face up, or all face down: all one way. */
function oneWay(claim: string, { kind, state, pile }: Args): Args[] {
  if (claim !== 'all-are' || typeof state !== 'object' || !('tests' in state)) return [];
  const [only, ...others] = state.tests;
  if (others.length > 0 || only?.test !== 'bit' || (only.bit !== 'up' && only.bit !== 'end')) return [];
  return [{ kind, bit: only.bit, ...(pile === undefined ? {} : { pile }) }];
}

/** Exactly so many: an even or an odd number. */
function parity(n: ArgValue): Amount[] {
  if (typeof n !== 'object' || !('of' in n) || n.of !== 'exactly' || typeof n.n !== 'number') return [];
  return [{ of: 'multiple', k: 2, plus: n.n % 2 }];
}

/** Every pair, four or mirror pair: the outermost one. */
function single(claim: string, { groups, ...rest }: Args): Args[] {
  if (claim !== 'agree' && claim !== 'differ' && claim !== 'one-of-each') return [];
  if (typeof groups !== 'object' || !('groups' in groups)) return [];
  const at = (places: Groups): Args => ({ ...rest, places });
  if (groups.groups === 'blocks')
    return [at({ groups: 'end', end: groups.from, size: groups.size, pile: groups.pile })];
  if (groups.groups !== 'mirror') return [];
  const spot = (end: 'top' | 'bottom') => ({ place: { end, n: 1 }, pile: groups.pile });
  return [at({ groups: 'spots', spots: [spot('top'), spot('bottom')] })];
}
