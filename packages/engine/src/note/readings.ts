import { diagnostic, type Diagnostic, type Fix } from '../base/diagnostic.ts';
import type { Reading } from '../moves/move.ts';
import type { Confirmed, Head } from './note.ts';
import type { TakenReading } from './outcome.ts';

const plain = (text: string): string => text.toLowerCase().replace(/\s+/g, ' ').trim();

/** Whether the head of the note says that a word is meant as it was taken. */
export function isConfirmed(reading: Reading, confirmed: readonly Confirmed[]): boolean {
  return confirmed.some(
    ({ word, taken }) => plain(word) === plain(reading.word) && plain(taken) === plain(reading.taken),
  );
}

/** The reading as something to say, with the change that confirms it. */
export function readingOf(taken: SaidReading, place: Head['place']): Diagnostic {
  const { range, reading, code = 'reading', fixes = [] } = taken;
  const facts = { word: reading.word, taken: reading.taken, other: reading.other };
  const all = [...confirmation(reading, place), ...fixes];
  return diagnostic(code, range, facts, { severity: 'reading', fixes: all });
}

/** A reading that something else than a move's sentence asks for keeps its own code and changes. */
interface SaidReading extends TakenReading {
  readonly code?: string;
  readonly fixes?: readonly Fix[];
}

/** An order known by name that the set-up took in one of its forms, as a reading; null for any other diagnostic. */
export function orderTaken({ code, range, facts, fixes }: Diagnostic): SaidReading | null {
  if (code !== 'set-up-order-taken') return null;
  const say = (fact: unknown): string => (typeof fact === 'string' ? fact : '');
  return {
    range,
    reading: { word: say(facts.word), taken: say(facts.taken), other: say(facts.other) },
    code,
    fixes,
  };
}

/** Writes a reading into the head of the note, where it is no longer raised. */
export function confirmation(reading: Reading, place: Head['place']): Fix[] {
  if (place === null) return [];
  const { at, before, after } = place;
  const entry = `${scalar(reading.word)}: ${scalar(reading.taken)}`;
  return [
    { label: `${reading.word}: ${reading.taken}`, range: { from: at, to: at }, text: before + entry + after },
  ];
}

/** A word that YAML could take for something else is put in quotes. */
function scalar(text: string): string {
  const isPlain =
    /^\p{L}[\p{L}\p{N} ,;.'’()-]*$/u.test(text) && !/^(true|false|null|yes|no|on|off)$/i.test(text);
  return isPlain ? text : JSON.stringify(text);
}
