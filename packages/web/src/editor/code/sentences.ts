import {
  snippet,
  type Completion,
  type CompletionContext,
  type CompletionResult,
} from '@codemirror/autocomplete';
import { CLAIMS, MOVES } from '@foregone/engine';
import { sectionAt } from '../steps.ts';
import { snippetOf, wordsOf } from './snippets.ts';

const BLOCKS: readonly [string, string][] = [
  ['Any number of times:', 'a block done as often as they like'],
  ['3 times:', 'a block done so often'],
  ['Either:', 'one of several ways, a bullet for each'],
  ['For each pile:', 'a block done with each pile'],
];

const working = once(() => [
  ...MOVES.map(({ title, phrases, help }) => completion(title, phrases[0], help)),
  ...BLOCKS.map(([label, detail]): Completion => ({ label, detail })),
]);

const ending = once(() => CLAIMS.map(({ title, phrases, help }) => completion(title, phrases[0], help)));

/** Offers sentences where one begins: after a number in the working, after a dash in the ending. */
export function sentences(context: CompletionContext): CompletionResult | null {
  const { state, pos, explicit } = context;
  const line = state.doc.lineAt(pos);
  const [lead] = /^[\s>]*(?:\d+[.)]|[-*+])\s+(?:.*[;:]\s+)?/.exec(line.text.slice(0, pos - line.from)) ?? [];
  if (lead === undefined) return null;
  const section = sectionAt(state.doc.toString(), pos);
  if (section !== 'working' && section !== 'ending') return null;
  const from = line.from + lead.length;
  if (!explicit && pos - from < 2) return null;
  return { from, options: section === 'working' ? working() : ending(), validFor: /^[^.;]*$/ };
}

type Phrase = (typeof MOVES)[number]['phrases'][number];

function completion(title: string, phrase: Phrase | undefined, help: string): Completion {
  // Every move and every claim has a first phrase.
  if (phrase === undefined) throw new Error(`${title} has no phrase`);
  return { label: wordsOf(phrase.parts), detail: title, info: help, apply: snippet(snippetOf(phrase.parts)) };
}

function once<T>(make: () => T): () => T {
  let made: T | undefined;
  return () => (made ??= make());
}
