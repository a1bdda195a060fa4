import type { Facts, Severity } from '../../base/diagnostic.ts';
import { printPile } from '../../phrases/blanks/pile.ts';

/**
 * What a code means in words, one module each. `shown` provokes it: the module is message, help page and test at once.
 */
export interface Message {
  readonly code: string;
  readonly severity: Severity;
  /** What is the matter, in a sentence. */
  readonly words: (facts: Facts) => string;
  /** What to do about it, in a sentence. */
  readonly remedy: (facts: Facts) => string;
  readonly shown: Shown;
}

/**
 * A note with `⟦` and `⟧` around the place that is blamed, and the facts. `note`: reading it says so. `performance`: it reads
 * well, and some performance gets stuck at the step marked. `judging`: it reads well, and judging the sentence marked of the
 * ending says so. `program`: told of budgets and certificates, which no text of a note brings about.
 */
export type Shown =
  | { readonly by: 'note' | 'performance' | 'judging'; readonly note: string; readonly facts: Facts }
  | { readonly by: 'program'; readonly facts: Facts };

export function defineMessage(message: Message): Message {
  return message;
}

export function onReading(note: string, facts: Facts = {}): Shown {
  return { by: 'note', note, facts };
}

export function onPerforming(note: string, facts: Facts = {}): Shown {
  return { by: 'performance', note, facts };
}

export function onJudging(note: string, facts: Facts = {}): Shown {
  return { by: 'judging', note, facts };
}

export function byProgram(facts: Facts = {}): Shown {
  return { by: 'program', facts };
}

const SET_UP = '- packet: A-8 of clubs, face down';
const ENDING = '- All cards are face down.';

/** A whole note around one of its sections. */
export function noteOf(part: { head?: string; setUp?: string; working?: string; ending?: string }): string {
  const { head = '', setUp = SET_UP, working = '1. Cut the packet.', ending = ENDING } = part;
  return `${head}## Set-up\n${setUp}\n\n## Working\n${working}\n\n## Ending\n${ending}\n`;
}

/** A list in words: `a, b and c`. */
export function listed(fact: Facts[string] | undefined, joint: 'and' | 'or' = 'and'): string {
  const all = Array.isArray(fact) ? (fact as readonly string[]) : fact === undefined ? [] : [String(fact)];
  if (all.length < 2) return all.join('');
  return `${all.slice(0, -1).join(', ')} ${joint} ${all.at(-1) as string}`;
}

/** `1 card`, `3 cards`. */
export function counted(fact: Facts[string] | undefined, noun: string): string {
  return `${String(fact)} ${noun}${fact === 1 ? '' : 's'}`;
}

/** A name of one letter is written as a capital. */
export function named(fact: Facts[string] | undefined): string {
  const name = String(fact);
  return name.length === 1 ? name.toUpperCase() : name;
}

/** A pile as sentences call it: `the packet`, `pile 2`. */
export function pileOf(fact: Facts[string] | undefined): string {
  return printPile(text(fact));
}

/** Names of numbers, those of one letter as capitals. */
export function namesOf(fact: Facts[string] | undefined): readonly string[] {
  return Array.isArray(fact) ? (fact as readonly string[]).map((name) => named(name)) : [];
}

/** A fact as it stands. */
export function text(fact: Facts[string] | undefined): string {
  return listed(fact);
}

/** The near sentences, or else what to do without them. */
export function orNear(facts: Facts, otherwise: string): string {
  const near = listed(
    (facts.nearest as readonly string[] | undefined)?.map((one) => `"${one}"`),
    'or',
  );
  if (near !== '') return `Write ${near}.`;
  const expected = listed(facts.expected, 'or');
  return expected === '' ? otherwise : `Here belongs ${expected}.`;
}

// More names than that help nobody.
const MOST_LISTED = 6;

/** The names there are, or else how to make one. */
export function haveInstead(facts: Facts, otherwise: string): string {
  const known = namesOf(facts.known).slice(0, MOST_LISTED);
  return known.length === 0 ? otherwise : `Write ${listed(known, 'or')}, or else: ${otherwise}`;
}
