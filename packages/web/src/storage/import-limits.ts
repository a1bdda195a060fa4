/** What an import may at most bring in; a note is a few thousand letters, so all of it is generous. */
export const IMPORT_LIMITS = {
  /** Bytes of one note. */
  note: 1_000_000,
  /** Notes in one import. */
  count: 2_000,
  /** Bytes of all notes together. */
  total: 50_000_000,
  /** Bytes of a zip as it comes. */
  zip: 50_000_000,
  /** Files in a zip or a folder that are looked at, notes or not. */
  entries: 20_000,
  /** Milliseconds. */
  time: 15_000,
} as const;

export type ImportLimits = { readonly [Name in keyof typeof IMPORT_LIMITS]: number };

/** Why something was not brought in. */
export type Refusal = 'too long' | 'not text' | 'damaged' | 'too many' | 'too much' | 'too slow' | 'empty';

export interface Refused {
  readonly name: string;
  readonly why: Refusal;
}

export interface Imported {
  readonly texts: readonly string[];
  readonly refused: readonly Refused[];
  /** Files that are no notes, such as pictures; they are passed over. */
  readonly others: number;
}

/** Whether a file may be a note, by its name. */
export function isNoteName(path: string): boolean {
  const name = path.split('/').at(-1) ?? '';
  return /\.(?:md|markdown|txt)$/i.test(name) && !name.startsWith('.') && !path.startsWith('__MACOSX/');
}

/** The text in some bytes, or undefined where they are not text. */
export function textIn(bytes: Uint8Array): string | undefined {
  try {
    const text = new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(bytes);
    return text.includes('\0') ? undefined : text;
  } catch {
    return undefined;
  }
}
