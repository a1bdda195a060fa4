import type { Range } from '../base/diagnostic.ts';
import type { AttributeValue } from '../cards/card.ts';
import { readCard, readRanks } from './setup-cards.ts';
import { readKind } from './setup-kinds.ts';
import type { Reader } from './setup-reader.ts';
import type { AttributeLine, Target } from './setup-syntax.ts';
import { isPileName, KIND_WORDS, PACK_ATTRIBUTES, PAIR } from './setup-words.ts';

/** What a line looks like before anything else of the set-up is known. */
export type Look = 'pile' | 'attribute' | 'either';

const SPELLINGS: Readonly<Record<string, string>> = {
  values: 'value',
  color: 'colour',
  colours: 'colour',
  colors: 'colour',
};

export function attributeName(name: string): string {
  return SPELLINGS[name] ?? name;
}

/**
 * Tells `warm: hearts, diamonds, "lamp"` from `left: 7H "lamp"`. A pile gives each kind of card a number, so bare kinds and
 * given values make an attribute; a list of nothing but cards is a pile unless its cards already lie in one, which only
 * the whole set-up can say.
 */
export function lookOf(r: Reader, name: string): Look {
  if (attributeName(name) === 'value') return 'attribute';
  if (isPileName(name)) return 'pile';
  const words = r.tokens.slice(r.at).filter((token) => token.is !== 'quoted');
  if (words.some(({ text }) => text === '=')) return 'attribute';
  const start = r.at;
  let units = 0;
  let isAttribute = false;
  let clean = true;
  do {
    const unit = readUnit(r);
    if (unit === null) clean = false;
    else {
      units++;
      if (unit.target.is === 'kind' || unit.value !== null) isAttribute = true;
    }
  } while (clean && r.at < r.tokens.length && (r.eat(',') || r.eat('and')));
  const whole = clean && r.done;
  r.at = start;
  if (whole) return isAttribute ? 'attribute' : 'either';
  // A kind without a number and a comma after it cannot begin a pile, unless it begins a pattern.
  const isPattern = words.some(({ text }) => /^(repeated|alternately|alternating|turn|times)$/.test(text));
  return isAttribute && units > 0 && !isPattern ? 'attribute' : 'pile';
}

interface Unit {
  readonly target: Target;
  readonly value: AttributeValue | null;
}

function readUnit(r: Reader): Unit | null {
  r.eat('the');
  r.eat('all');
  const target = readTarget(r);
  if (target === null) return null;
  const equals = r.eat('=');
  const token = r.token;
  if (token === undefined || token.is !== 'word' || (!equals && !/^\d+$/.test(token.text)))
    return equals ? null : { target, value: null };
  r.at++;
  return { target, value: /^\d{1,6}$/.test(token.text) ? Number(token.text) : token.text };
}

function readTarget(r: Reader): Target | null {
  const before = r.diagnostics.length;
  const ranks = readRanks(r);
  if (ranks !== null && r.diagnostics.length === before) return { is: 'ranks', ...ranks };
  const ref = readCard(r);
  if (ref !== null) return { is: 'card', ref };
  if (r.eat('jokers')) return { is: 'card', ref: { is: 'joker', colour: null } };
  const kind = readKind(r);
  return kind === null || kind.tests.length === 0 ? null : { is: 'kind', tests: kind.tests };
}

/** Reads what follows the colon of an attribute of one's own. */
export function readAttributeLine(r: Reader, written: string, nameRange: Range, range: Range): AttributeLine {
  const attribute = attributeName(written);
  const entries: { target: Target; value: AttributeValue; range: Range }[] = [];
  let valued: boolean | null = null;
  if (isTaken(attribute)) r.tell('set-up-attribute-name', nameRange, { name: written });
  if (r.done) r.tell('set-up-attribute-empty', r.here, { name: written });
  while (!r.done) {
    const start = r.at;
    const unit = readUnit(r);
    if (unit === null) {
      r.blame('set-up-attribute-of');
      r.skip();
    } else {
      const has = unit.value !== null;
      if ((valued ?? has) !== has || (!has && PACK_ATTRIBUTES.includes(attribute)))
        r.tell('set-up-attribute-value', r.rangeFrom(start), { name: written });
      else if (attribute === 'value' && typeof unit.value === 'string')
        r.tell('set-up-value-number', r.rangeFrom(start), { value: unit.value });
      else entries.push({ target: unit.target, value: unit.value ?? 'yes', range: r.rangeFrom(start) });
      valued ??= has;
    }
    const comma = r.eat(',');
    if (r.eat('and') || comma || r.done) continue;
    r.blame('set-up-attribute-of');
    r.at++;
    r.skip();
    r.eat(',');
  }
  return { is: 'attribute', attribute, entries, yesNo: valued !== true, range };
}

// A word that already says something of cards cannot name an attribute: `red: "lamp"` is written `colour: "lamp" = red`.
function isTaken(attribute: string): boolean {
  return (
    attribute === PAIR ||
    attribute === 'name' ||
    attribute === 'parity' ||
    (KIND_WORDS.has(attribute) && !PACK_ATTRIBUTES.includes(attribute)) ||
    ['up', 'end', 'joker', 'face', 'id'].includes(attribute)
  );
}
