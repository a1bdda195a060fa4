import { distance } from 'fastest-levenshtein';
import { isAlias, isMap, isScalar, isSeq, parseDocument, type Document, type YAMLMap } from 'yaml';
import { diagnostic, type Diagnostic, type Range } from '../base/diagnostic.ts';
import { MOST_HEAD, MOST_HEAD_DEPTH } from './limits.ts';
import type { Confirmed, Credit, Head } from './note.ts';

const KEYS = ['title', 'minutes', 'credits', 'readings'] as const;
type Key = (typeof KEYS)[number];

export interface ReadHead {
  readonly head: Head;
  /** Where the Markdown begins. */
  readonly bodyFrom: number;
  readonly diagnostics: readonly Diagnostic[];
}

interface Found {
  title: string | null;
  minutes: number | null;
  credits: Credit[];
  readings: Confirmed[];
  place: Head['place'];
}

/** Reads the YAML between a first line `---` and the next line `---` or `...`. */
export function readHead(text: string): ReadHead {
  const start = text.startsWith('\uFEFF') ? 1 : 0;
  const found: Found = {
    title: null,
    minutes: null,
    credits: [],
    readings: [],
    place: { at: start, before: '---\nreadings:\n  - ', after: '\n---\n' },
  };
  const open = lineEnd(text, start);
  if (!/^---\s*$/.test(text.slice(start, Math.min(open, start + 100))))
    return { head: { range: null, ...found }, bodyFrom: start, diagnostics: [] };

  const close = closingFence(text, open);
  if (close === null) {
    const unclosed = diagnostic('head-unclosed', { from: start, to: start + 3 });
    return { head: { range: null, ...found, place: null }, bodyFrom: open, diagnostics: [unclosed] };
  }
  const diagnostics: Diagnostic[] = [];
  // Line ends as YAML knows them, character for character as long.
  const source = text.slice(open, close.from).replaceAll('\r\n', ' \n').replaceAll('\r', '\n');
  if (source.length > MOST_HEAD) {
    diagnostics.push(diagnostic('head-too-long', { from: start, to: start + 3 }, { most: MOST_HEAD }));
    found.place = null;
  } else {
    found.place = { at: close.from, before: 'readings:\n  - ', after: '\n' };
    diagnostics.push(...readYaml(source, open, found));
  }
  return { head: { range: { from: start, to: close.to }, ...found }, bodyFrom: close.to, diagnostics };
}

function readYaml(source: string, base: number, found: Found): Diagnostic[] {
  const whole = { from: base, to: base + source.length };
  if (isDeep(source)) return unread(found, diagnostic('head-too-deep', whole));
  const document = parsed(source);
  if (document === null) return unread(found, diagnostic('head-unreadable', whole, { reason: '' }));
  if (document.errors.length > 0) {
    const [{ code, pos }] = document.errors;
    const from = base + Math.min(pos[0], source.length);
    const range = { from, to: Math.max(from, base + Math.min(pos[1], source.length)) };
    return unread(found, diagnostic('head-unreadable', range, { reason: REASONS[code] ?? '' }));
  }
  const top = document.contents;
  if (top === null || (isScalar(top) && top.value === null)) return [];
  if (!isMap(top)) return unread(found, diagnostic('head-not-keys', whole));
  return readKeys(top, document, source, base, found);
}

/** Nothing may be written into a head that cannot be read. */
function unread(found: Found, trouble: Diagnostic): Diagnostic[] {
  found.place = null;
  return [trouble];
}

const REASONS: Readonly<Record<string, string>> = {
  DUPLICATE_KEY: 'the same key twice',
  TAB_AS_INDENT: 'a tab where spaces belong',
  BAD_INDENT: 'lines that are not indented alike, or a bracket left open',
  BLOCK_AS_IMPLICIT_KEY: 'two colons in one line',
  MISSING_CHAR: 'something left open',
  MULTIPLE_DOCS: 'more than one document',
};

function readKeys(
  top: YAMLMap,
  document: Document,
  source: string,
  base: number,
  found: Found,
): Diagnostic[] {
  const diagnostics: Diagnostic[] = [];
  const value = (node: unknown): unknown => (isAlias(node) ? node.resolve(document) : node);
  const word = (node: unknown): string | null => {
    const scalar = value(node);
    if (!isScalar(scalar)) return null;
    return typeof scalar.value === 'string'
      ? scalar.value
      : typeof scalar.value === 'number'
        ? (scalar.source ?? null)
        : null;
  };
  const number = (node: unknown): number | null => {
    const scalar = value(node);
    const n = isScalar(scalar) ? scalar.value : null;
    return typeof n === 'number' && Number.isFinite(n) && n >= 0 ? n : null;
  };
  const entries = (node: unknown): readonly unknown[] | null => {
    const list = value(node);
    return isSeq(list) ? list.items : null;
  };
  const rangeOf = (node: unknown): Range => {
    const range = isScalar(node) || isSeq(node) || isMap(node) || isAlias(node) ? node.range : null;
    return range ? { from: base + range[0], to: base + range[1] } : { from: base, to: base + source.length };
  };
  const isEmpty = (node: unknown): boolean => node === null || (isScalar(node) && node.value === null);
  const wrong = (key: Key, node: unknown): void => {
    diagnostics.push(diagnostic('head-value', rangeOf(node), { key }));
  };

  for (const pair of top.items) {
    const written = word(pair.key);
    if (written === null) continue;
    const key = KEYS.find((known) => known === written.toLowerCase());
    if (key === undefined) {
      const near = KEYS.find((known) => written.length > 3 && distance(written.toLowerCase(), known) <= 2);
      if (near === undefined) continue;
      const range = rangeOf(pair.key);
      const fixes = [{ label: near, range, text: near }];
      diagnostics.push(diagnostic('head-key', range, { key: written, near }, { severity: 'warning', fixes }));
      continue;
    }
    const node = pair.value;
    if (key === 'readings')
      found.place = isEmpty(node) ? placeUnder(pair.key, source, base) : placeInList(node, source, base);
    if (isEmpty(node)) continue;
    switch (key) {
      case 'title':
        found.title = word(node);
        if (found.title === null) wrong(key, node);
        break;
      case 'minutes':
        found.minutes = number(node);
        if (found.minutes === null) wrong(key, node);
        break;
      case 'credits':
        for (const entry of entries(node) ?? [node]) {
          const map = value(entry);
          const source = word(entry) ?? (isMap(map) ? word(map.get('source', true)) : null);
          if (source === null) wrong(key, entry);
          else found.credits.push({ for: (isMap(map) ? word(map.get('for', true)) : null) ?? '', source });
        }
        break;
      case 'readings':
        for (const entry of entries(node) ?? [node]) {
          const map = value(entry);
          const pairs = isMap(map) ? map.items : [];
          const read = pairs.map((p) => ({ word: word(p.key), taken: word(p.value) }));
          if (pairs.length === 0 || read.some((r) => r.word === null || r.taken === null)) wrong(key, entry);
          else found.readings.push(...(read as Confirmed[]));
        }
        break;
    }
  }
  return diagnostics;
}

/** Under a key without a value. */
function placeUnder(key: unknown, source: string, base: number): Head['place'] {
  const range = isScalar(key) ? key.range : null;
  if (!range) return null;
  const end = lineEnd(source, range[1]);
  return { at: base + end, before: '  - ', after: '\n' };
}

/** After the last entry of a list written line by line; a list in brackets is left to the author. */
function placeInList(node: unknown, source: string, base: number): Head['place'] {
  if (!isSeq(node) || node.flow === true || node.items.length === 0) return null;
  const last = node.items.at(-1);
  const range = isScalar(last) || isMap(last) || isSeq(last) || isAlias(last) ? last.range : null;
  const first = node.range;
  if (!range || !first) return null;
  const indent = source.slice(source.lastIndexOf('\n', first[0] - 1) + 1, first[0]);
  if (!/^ *$/.test(indent)) return null;
  // The value of the last entry ends on its line or at the start of the next one.
  const end = source[range[1] - 1] === '\n' ? range[1] : lineEnd(source, range[1]);
  return { at: base + end, before: `${indent}- `, after: '\n' };
}

function parsed(source: string): Document | null {
  try {
    return parseDocument(source, { prettyErrors: false, logLevel: 'silent', schema: 'core', merge: false });
  } catch {
    // The YAML reader collects what it finds; text that makes it give up altogether is unreadable text, no fault of ours.
    return null;
  }
}

function isDeep(source: string): boolean {
  let open = 0;
  let line = 0;
  for (let i = 0; i < source.length; i++) {
    const c = source[i];
    if (c === '\n') line = 0;
    else if (c === '[' || c === '{') {
      open++;
      line++;
    } else if (c === ']' || c === '}') open--;
    else if ((c === '-' || c === '?' || c === ':') && /\s/.test(source[i + 1] ?? ' ')) line++;
    if (open > MOST_HEAD_DEPTH || line > MOST_HEAD_DEPTH) return true;
  }
  return false;
}

function closingFence(text: string, from: number): Range | null {
  for (let at = from; at < text.length;) {
    const next = lineEnd(text, at);
    if (/^(---|\.\.\.)\s*$/.test(text.slice(at, Math.min(next, at + 100)))) return { from: at, to: next };
    at = next;
  }
  return null;
}

/** Just after the line break that ends the line at `at`. */
function lineEnd(text: string, at: number): number {
  for (let i = at; i < text.length; i++) {
    const c = text.charCodeAt(i);
    if (c === 10 || (c === 13 && text.charCodeAt(i + 1) !== 10)) return i + 1;
  }
  return text.length;
}
