import { isCard, readList, readRanks } from './setup-cards.ts';
import { readCounted } from './setup-counts.ts';
import { printKind, readKind } from './setup-kinds.ts';
import { mated } from './setup-mates.ts';
import { eatAlternately, goesInTurn, readAlternating, readRepeated } from './setup-patterns.ts';
import type { Reader } from './setup-reader.ts';
import { readOrder, readSet } from './setup-sets.ts';
import { readFacingAfter } from './setup-settings.ts';
import type { RunReading, What } from './setup-syntax.ts';

/** Reads one run of cards; null when it is not understood, which has then been said. */
export function readRun(r: Reader): RunReading | null {
  const start = r.at;
  const plain = (what: What | null): RunReading | null =>
    what === null ? null : { what, facing: null, mixed: false };
  const the = r.eat('the');
  const cut = readRanks(r);
  if (cut !== null) return plain(mated(r, { is: 'ranks', ...cut }));
  const named = readOrder(r, 52);
  if (named !== null) return plain(named);
  const set = readSet(r);
  if (set !== null) return set;
  // `ten of clubs` begins with a number too.
  const counted = isCard(r) ? 'nothing' : readCounted(r, start, the);
  if (counted !== 'nothing') return counted;
  return plain(readMembersOrList(r));
}

function readMembersOrList(r: Reader): What | null {
  const start = r.at;
  const list = readList(r);
  if (list.length > 0) {
    const asPattern = goesInTurn(r);
    if (!asPattern && !r.shared.words.has(r.word())) return mated(r, { is: 'cards', cards: list });
    r.at = start;
    return readRepeated(r, start);
  }
  // A list of nothing but slips has told them already.
  if (r.at > start) return null;
  if (eatAlternately(r)) return readAlternatelyFirst(r);
  const kind = readKind(r);
  if (kind === null && readFacingAfter(r) === null) {
    r.blame();
    return null;
  }
  r.at = start;
  const pattern = readRepeated(r, start);
  if (pattern === null || pattern.style !== 'once') return pattern;
  // `red black black` is a row of single cards; `clubs hearts` or `red` alone lacks its number.
  const single = r.tokens
    .slice(start, r.at)
    .every(({ text }) => !(r.shared.words.get(text)?.plural ?? false));
  if (
    single &&
    pattern.elements.length > 1 &&
    pattern.elements.every((e) => e.tests.length > 0 || e.ref !== null)
  )
    return pattern;
  r.tell('set-up-kind-count', r.rangeFrom(start), { kind: printKind(kind?.tests ?? [], 'many') });
  return null;
}

function readAlternatelyFirst(r: Reader): What | null {
  const elements = readAlternating(r);
  if (elements === null) return null;
  const start = r.at;
  r.eat(',');
  const n = r.eatCount();
  if (n !== null && (r.eat('cards') || r.eat('card') || r.eat('in', 'all')))
    return { is: 'pattern', style: 'alternately', n, tests: [], elements };
  r.at = start;
  r.tell('set-up-pattern-count', r.here, { length: elements.length });
  return null;
}
