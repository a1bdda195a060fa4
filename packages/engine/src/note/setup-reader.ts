import { diagnostic, type Diagnostic, type Facts, type Fix, type Range } from '../base/diagnostic.ts';
import { countAt, type SetUpToken } from './setup-tokens.ts';
import { nearestWords, type KindWord } from './setup-words.ts';

/** Diagnostics of one line that are told; a line as wrong as that is not meant as a set-up. */
const MOST_IN_LINE = 8;
/** Lines of one set-up for whose unknown words near ones are searched. */
const MOST_SEARCHED = 60;

/** What all lines of one set-up share. */
export interface Shared {
  /** Words about cards, those of the note's own attributes included. */
  readonly words: ReadonlyMap<string, KindWord>;
  searches: number;
}

export function sharing(words: ReadonlyMap<string, KindWord>): Shared {
  return { words, searches: 0 };
}

/** Walks over the tokens of one line and collects what is wrong with it. */
export class Reader {
  at = 0;
  /** A bare number of cards just before, which a pattern without a number of its own takes and clears. */
  open: number | null = null;
  readonly diagnostics: Diagnostic[] = [];
  readonly tokens: readonly SetUpToken[];
  readonly shared: Shared;
  private readonly end: number;

  constructor(tokens: readonly SetUpToken[], shared: Shared, end: number) {
    this.tokens = tokens;
    this.shared = shared;
    this.end = end;
  }

  get done(): boolean {
    return this.at >= this.tokens.length;
  }

  get token(): SetUpToken | undefined {
    return this.tokens[this.at];
  }

  /** The unquoted word or sign `k` tokens on, or an empty text. */
  word(k = 0): string {
    const token = this.tokens[this.at + k];
    return token === undefined || token.is === 'quoted' ? '' : token.text;
  }

  /** How many tokens these words take here, hyphens between them passed over; 0 when they do not stand here. */
  span(words: readonly string[], k = 0): number {
    let at = k;
    for (let i = 0; i < words.length; i++) {
      if (i > 0 && this.word(at) === '-') at++;
      if (this.word(at) !== words[i]) return 0;
      at++;
    }
    return at - k;
  }

  /** Passes over these words if they stand here. */
  eat(...words: string[]): boolean {
    const length = this.span(words);
    this.at += length;
    return length > 0;
  }

  eatAny(ways: readonly (readonly string[])[]): boolean {
    for (const words of ways) if (this.eat(...words)) return true;
    return false;
  }

  /** A number here; passes over it. */
  eatCount(): number | null {
    const count = countAt(this.tokens, this.at);
    if (count !== null) this.at += count.length;
    return count === null ? null : count.n;
  }

  /** From the token `from` to the one before the present place. */
  rangeFrom(from: number): Range {
    const first = this.tokens[from];
    const last = this.tokens[Math.max(from, this.at - 1)];
    return { from: first?.from ?? this.end, to: last?.to ?? this.end };
  }

  /** The present token, or the end of the line. */
  get here(): Range {
    const token = this.token;
    return token === undefined ? { from: this.end, to: this.end } : { from: token.from, to: token.to };
  }

  tell(code: string, range: Range, facts: Facts = {}, more: Parameters<typeof diagnostic>[3] = {}): void {
    if (this.diagnostics.length < MOST_IN_LINE) this.diagnostics.push(diagnostic(code, range, facts, more));
  }

  get failed(): boolean {
    return this.diagnostics.some(({ severity }) => severity === 'error');
  }

  /** Says that the present token is not understood, with the nearest words that would be. */
  blame(code = 'set-up-word', facts: Facts = {}): void {
    const token = this.token;
    const range = this.here;
    if (token === undefined) return this.tell('set-up-ends', range, facts);
    if (token.is === 'quoted') return this.tell('set-up-quote', range, { ...facts, word: token.text });
    if (token.is !== 'word')
      return this.tell(/["“”]/.test(token.text) ? 'set-up-open-quote' : 'set-up-sign', range, {
        ...facts,
        sign: token.text,
      });
    const near = this.near(token.text);
    this.tell(code, range, { ...facts, word: token.text, near }, { fixes: rewrites(near, range) });
  }

  near(word: string): string[] {
    if (this.shared.searches >= MOST_SEARCHED) return [];
    this.shared.searches++;
    return nearestWords(word, [...this.shared.words.keys()]);
  }

  /** Goes on to the next comma, semicolon or `then`, or to the end. */
  skip(): void {
    while (
      !this.done &&
      !(['sign', 'word'].includes(this.token?.is ?? '') && /^([,;]|then)$/.test(this.word()))
    )
      this.at++;
  }
}

export function rewrites(words: readonly string[], range: Range): Fix[] {
  return words.map((text) => ({ label: `Write ${text}`, range, text }));
}
