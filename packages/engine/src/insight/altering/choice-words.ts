import type { Key } from '../../moves/move.ts';
import { START } from '../../moves/move.ts';
import type { Amount } from '../../phrases/values.ts';
import type { Mix, Outcome } from './mix.ts';

/** Some numbers out of more, in words, and as an amount that a sentence can leave open, where there is one. */
export interface NumberPattern {
  readonly words: string;
  readonly amount: Amount | null;
}

/** What the numbers `some` have that the others of `all` lack. Both ascending, `some` among `all`, neither empty. */
export function patternOf(some: readonly number[], all: readonly number[]): NumberPattern {
  if (some.length === 1) return { words: `${some[0]} only`, amount: { of: 'exactly', n: some[0] } };
  const isAll = (test: (n: number) => boolean): boolean => all.every((n) => test(n) === some.includes(n));
  const multiples = some.filter((n) => n > 0).length;
  for (let k = 2; multiples > 1 && k <= all[all.length - 1]; k++) {
    if (isAll((n) => n % k === 0)) {
      const words = k === 2 ? 'even numbers only' : `multiples of ${k} only`;
      return { words, amount: { of: 'multiple', k, plus: 0 } };
    }
    if (k === 2 && isAll((n) => n % 2 === 1))
      return { words: 'odd numbers only', amount: { of: 'multiple', k, plus: 1 } };
  }
  const [low, high] = [some[0], some[some.length - 1]];
  if (some.length > 2 && isAll((n) => n >= low && n <= high)) {
    if (low === all[0]) return { words: `up to ${high}`, amount: { of: 'at most', n: high } };
    if (high === all[all.length - 1]) return { words: `from ${low} on`, amount: { of: 'at least', n: low } };
    return { words: `${low} to ${high}`, amount: { of: 'range', from: low, to: high } };
  }
  const missing = all.filter((n) => !some.includes(n));
  if (missing.length <= 3 && some.length > missing.length)
    return { words: `all but ${listed(missing.map(String))}`, amount: null };
  for (let k = 3; k <= all.length / 2; k++)
    for (let rest = 1; rest < k; rest++)
      if (isAll((n) => n % k === rest))
        return {
          words: `numbers that leave ${rest} when divided by ${k}`,
          amount: { of: 'multiple', k, plus: rest },
        };
  return { words: `${listed(some.map(String))} only`, amount: null };
}

/** `a`, `a and b`, `a, b and c`. */
export function listed(words: readonly string[]): string {
  if (words.length < 2) return words.join('');
  return `${words.slice(0, -1).join(', ')} and ${words[words.length - 1]}`;
}

// Longer than this, ways are counted instead.
const MOST_WORDS = 150;

/** A few ways in words, whose own words may have commas in them; null where they would be too many to take in. */
export function sayWays(words: readonly string[]): string | null {
  const said = words.some((one) => /[,;]| and /.test(one)) ? words.join('; or ') : listed(words);
  return said.length <= MOST_WORDS ? `${said} only` : null;
}

/** What was chosen in one doing of a mix, in the words of its moves. */
export function sayOutcome({ graph }: Mix, { keys }: Pick<Outcome, 'keys'>): string {
  const words: string[] = [];
  let at = graph.start;
  let open = 0;
  while (!graph.locations[at].exit) {
    const begun = graph.locations[at];
    const taken: Key[] = [];
    let isOpen = false;
    do {
      const { edges } = graph.waysFrom(at);
      const isChoice = edges.length > 1;
      const edge = isChoice ? edges.find(({ key }) => key === keys[open]) : edges[0];
      // The keys are those of a way through this graph.
      if (edge === undefined) throw new Error('a way of a mix that is none');
      if (isChoice) open++;
      isOpen ||= isChoice;
      taken.push(edge.key);
      at = edge.to;
    } while (graph.locations[at].phase !== START);
    const instruction = graph.instructionOf(begun);
    if (!isOpen || instruction?.do !== 'move') continue;
    words.push(instruction.move.say(instruction.args, taken, graph.view(begun)) || taken.join(' '));
  }
  return words.join('; ');
}
