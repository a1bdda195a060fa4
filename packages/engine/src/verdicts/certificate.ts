/**
 * A proof as plain data. A checker that shares the moves with the prover but nothing of its search can verify it; the format is
 * documented in docs/certificate.md and has its own version.
 */
export const CERTIFICATE_FORMAT = 'foregone-certificate';
export const CERTIFICATE_VERSION = 1;

export interface Certificate {
  readonly format: typeof CERTIFICATE_FORMAT;
  readonly version: typeof CERTIFICATE_VERSION;
  /** The note that was proved, whole, so that the certificate can be checked by itself. */
  readonly note: string;
  /** SHA-256 of the note in UTF-8, hexadecimal. */
  readonly sha256: string;
  /** One for each sentence of the ending, in the note's order. */
  readonly sentences: readonly SentenceProof[];
}

export type SentenceProof =
  /** The certificate says nothing of this sentence. */
  | { readonly text: string; readonly proof: 'none' }
  | { readonly text: string; readonly proof: 'sizes' }
  | { readonly text: string; readonly proof: 'invariant'; readonly families: readonly FamilyProof[] }
  | { readonly text: string; readonly proof: 'closed set'; readonly set: ClosedSet }
  | {
      readonly text: string;
      readonly proof: 'closed set then invariant';
      readonly set: ClosedSet;
      readonly families: readonly FamilyProof[];
    }
  | { readonly text: string; readonly proof: 'rule'; readonly rule: RuleProof };

/**
 * What the performer chooses at every moment where there is a choice. A moment is named by where the working stands and a digest of
 * all tables that are possible there by what is public; the checker plays against it with every choice of the spectators'.
 */
export interface RuleProof {
  readonly attributes: readonly string[];
  readonly bits: readonly string[];
  /** States of knowledge that the rule leads to, and no fewer tables than are possible in all of them. */
  readonly beliefs: number;
  readonly tables: number;
  readonly choices: readonly RuleChoice[];
}

export interface RuleChoice {
  readonly at: string;
  readonly digest: string;
  readonly key: string | number;
}

/** Every table that can be reached, tables told apart by these attributes and bits only; the checker makes the set anew. */
export interface ClosedSet {
  readonly attributes: readonly string[];
  readonly bits: readonly string[];
  readonly tables: number;
  readonly digest: string;
}

/** Equations over the field of p elements that hold at every location for each member. */
export interface FamilyProof {
  readonly p: number;
  /** Columns a slot. */
  readonly d: number;
  /** Constants of a vector; the first is 1 for every member. */
  readonly m: number;
  readonly members: readonly MemberProof[];
  /** How handling acts on the columns, by operation on bits (in decimal): for each column its combination and constant. */
  readonly under: Readonly<
    Record<string, readonly { readonly columns: readonly number[]; readonly constant: number }[]>
  >;
  /** For each location a basis of equations, each sparse: index, value, index, value, ... */
  readonly locations: Readonly<Record<string, readonly (readonly number[])[]>>;
}

/** What the columns measure for one member. */
export interface MemberProof {
  /** Kinds of bits that the columns look at; setting s has bit i of s for the i-th. */
  readonly bits: readonly string[];
  /** For each column: its value for every card of the universe (in order) and every setting, cards outermost. */
  readonly columns: readonly (readonly number[])[];
  readonly constants: readonly number[];
}
