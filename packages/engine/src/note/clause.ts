import type { Budget } from '../base/budget.ts';
import { trouble, type Range, type Trouble } from '../base/diagnostic.ts';
import { MOVES } from '../moves/index.ts';
import type { Move, Reading } from '../moves/move.ts';
import { printPile } from '../phrases/blanks/pile.ts';
import { tokenize, type Token } from '../phrases/tokens.ts';
import type { Args, Names, PileRef } from '../phrases/values.ts';
import type { Chooser, MoveStep } from '../routine/routine.ts';
import { MOST_WORDS } from './limits.ts';
import { blanksOfType, Lexicon, type Found } from './lexicon.ts';
import { asCommand, peelings, type Manner, type Peeled } from './manner.ts';
import { withBrought } from './names.ts';

export const MOVE_LEXICON = new Lexicon<Move>(MOVES);

/** What a sentence is read against. */
export interface Context {
  readonly names: Names;
  /** What `it` or `them` means: the pile that the sentence before spoke of or put cards on, or the piles that it made, as `piles`. */
  readonly it: PileRef | null;
}

export interface PlacedTrouble {
  readonly trouble: Trouble;
  /** Null: the whole sentence. */
  readonly range: Range | null;
}

/** One move as a sentence says it. */
export interface Clause {
  readonly move: Move;
  /** Defaults filled in. */
  readonly args: Args;
  readonly who: Chooser;
  readonly secret: boolean;
  readonly open: boolean;
  readonly blind: boolean;
  readonly may: boolean;
  readonly readings: readonly Reading[];
  readonly after: Context;
  readonly troubles: readonly PlacedTrouble[];
  /** Other moves that could be meant: there must be none. */
  readonly rivals: readonly Move[];
}

/** Reads sentences of the working, remembering those it has understood. */
export class ClauseReader {
  readonly work: Budget;
  private readonly known = new Map<string, Clause>();
  private knownFor: Context | null = null;

  constructor(work: Budget) {
    this.work = work;
  }

  /** A sentence that is one move, or null. `who` decides where the sentence does not say. */
  read(tokens: readonly Token[], context: Context, who: Chooser): Clause | null {
    if (tokens.length === 0 || tokens.length > MOST_WORDS) return null;
    if (this.knownFor?.names !== context.names || this.knownFor.it !== context.it) {
      this.known.clear();
      this.knownFor = context;
    }
    const key = `${who} ${tokens.map(({ text, quoted }) => (quoted ? `"${text}"` : text)).join(' ')}`;
    const known = this.known.get(key);
    if (known !== undefined) return known;
    // Taking a sentence apart costs something too, even where no move begins so.
    if (!this.work.spend(tokens.length)) return null;
    const clause = this.search(tokens, context, who);
    // Troubles have places, so only a clean reading serves again elsewhere.
    if (clause !== null && clause.troubles.length === 0) this.known.set(key, clause);
    return clause;
  }

  private search(tokens: readonly Token[], context: Context, who: Chooser): Clause | null {
    let best: Clause | null = null;
    const consider = ({ tokens: words, manner }: Peeled, it: PileRef | null): boolean => {
      for (const clause of this.clauses(words, manner, context, who, it))
        if (best === null || clause.troubles.length < best.troubles.length) best = clause;
      return best !== null && best.troubles.length === 0;
    };
    const ways = peelings(tokens);
    const commands = ways.flatMap(({ tokens: words, manner }) => {
      const plain = asCommand(words, MOVE_LEXICON.words);
      return plain === null ? [] : [{ tokens: plain, manner }];
    });
    const all = [...ways, ...commands];
    if (all.some((way) => consider(way, null))) return best;
    if (context.it === null || !tokens.some(({ text }) => isPronoun(text))) return best;
    const it = context.it;
    const named = all.map(({ tokens: words, manner }) => ({ tokens: withPile(words, it), manner }));
    // `it` read as an unknown pile is not what was meant, so a clean reading with the pile itself comes first.
    const literal = best as Clause | null;
    best = null;
    return named.some((way) => consider(way, it)) ? best : (literal ?? best);
  }

  private clauses(
    words: readonly Token[],
    manner: Manner,
    context: Context,
    who: Chooser,
    it: PileRef | null,
  ): Clause[] {
    const found = MOVE_LEXICON.find(words, context.names, this.work);
    if (found.length === 0) return [];
    const least = Math.min(...found.map(({ match }) => match.troubles.length));
    const best = found.filter(({ match }) => match.troubles.length === least);
    const clause = clauseOf(best[0], manner, context, who, it);
    return [{ ...clause, rivals: least === 0 ? best.slice(1).map(({ owner }) => owner) : [] }];
  }
}

function clauseOf(
  found: Found<Move>,
  manner: Manner,
  context: Context,
  who: Chooser,
  it: PileRef | null,
): Clause {
  const move = found.owner;
  const troubles: PlacedTrouble[] = [...found.match.troubles];
  const whole = (one: Trouble): void => void troubles.push({ trouble: one, range: null });
  const args = withDefaults(move, found.match.args, context.names, whole);
  move.check?.(args).forEach(whole);
  const chooser = manner.who ?? who;
  if (manner.secret && chooser === 'performer') whole(trouble('own-secret'));
  // What is done behind the spectator's back is a secret from the performer as well.
  const secret = manner.secret || (manner.blind && chooser === 'spectator');
  if (secret && manner.open) whole(trouble('secret-and-open'));
  if (manner.blind && readsFaces(move, args)) whole(trouble('looks-unseen'));
  // A sentence that is wrong in itself may bring nonsense.
  const brought = troubles.length === 0 ? (move.brings?.(args) ?? {}) : {};
  const { names, troubles: clashes } = withBrought(context.names, brought);
  clashes.forEach(whole);
  const readings = troubles.length === 0 ? (move.readings?.(args) ?? []) : [];
  return {
    move,
    args,
    who: chooser,
    secret,
    open: manner.open,
    blind: manner.blind,
    may: manner.may,
    readings: it === null ? readings : [readingOfIt(it), ...readings],
    after: { names, it: onlyPile(move, args, brought.piles ?? []) },
    troubles,
    rivals: [],
  };
}

/** What a sentence says together with what is meant where it does not say. */
export function withDefaults(move: Move, said: Args, names: Names, say: (trouble: Trouble) => void): Args {
  const args: Record<string, Args[string]> = { ...move.defaults, ...said };
  for (const name of blanksOfType(move.phrases, 'pile')) {
    const pile = args[name];
    if (name in said || typeof pile !== 'string' || names.piles.includes(pile)) continue;
    // With one pile on the table there is no other that could be meant.
    if (names.piles.length === 1) args[name] = names.piles[0];
    else say(trouble('unknown-pile', { pile, known: [...names.piles] }));
  }
  return inOneOrder(args);
}

/** Blanks in the order of their names, so that what is the same is the same as text too, however it was worded. */
export function inOneOrder(args: Args): Args {
  const entries = Object.entries(args).filter(([, value]) => value !== undefined);
  return Object.fromEntries(entries.sort(([a], [b]) => (a < b ? -1 : 1)));
}

/** Whether the cards have to be looked at for what is on them, or for which way they face. */
function readsFaces({ looks }: Move, args: Args): boolean {
  return looks !== undefined && (looks.attributes(args).length > 0 || looks.bits(args).includes('up'));
}

/** The one pile a sentence speaks of, the one where it puts cards, or the piles it makes, for the next sentence's `it` or `them`. */
function onlyPile(move: Move, args: Args, brought: readonly string[]): PileRef | null {
  const own = blanksOfType(move.phrases, 'newpile').size > 0;
  if (typeof args.plural === 'string' && !own) return args.plural;
  if (own && brought.length === 1 && !brought[0].startsWith('~')) return brought[0];
  const piles = [...blanksOfType(move.phrases, 'pile')]
    .map((name) => args[name])
    .filter((pile) => pile !== undefined);
  if (piles.length !== 1 || blanksOfType(move.phrases, 'newpile').size > 0) return null;
  const [pile] = piles;
  if (typeof pile === 'string') return pile;
  return typeof pile === 'object' && 'stem' in pile && 'n' in pile ? pile : null;
}

function readingOfIt(it: PileRef): Reading {
  return { word: 'it', taken: printPile(it), other: 'the name of the pile' };
}

export function isPronoun(text: string): boolean {
  return text === 'it' || text === 'them';
}

/** The sentence with the pile's name in place of `it`; the words keep the place of the pronoun. */
function withPile(tokens: readonly Token[], it: PileRef): readonly Token[] {
  const name = tokenize(printPile(it));
  return tokens.flatMap((token) =>
    isPronoun(token.text) && !token.quoted
      ? name.map(({ text, quoted }) => ({ ...token, text, quoted }))
      : [token],
  );
}

export function stepOf(clause: Clause, range: Range): MoveStep {
  const { move, args, who, secret, open } = clause;
  return { do: 'move', move: move.id, args, who, secret, ...(open ? { open } : {}), number: '', range };
}
