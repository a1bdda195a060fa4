import fc from 'fast-check';
import type { Claim } from '../src/claims/claim.ts';
import { BLANKS } from '../src/phrases/blanks.ts';
import type { Phrase } from '../src/phrases/phrase.ts';
import type { Part } from '../src/phrases/template.ts';
import type { Args, ArgValue } from '../src/phrases/values.ts';

/** The args a phrase can have, its blanks filled with samples, optional parts said or not. */
export function argsOfPhrase(claim: Claim, phrase: Phrase): fc.Arbitrary<Args> {
  return sequence(phrase.parts).map((args) => ({ ...claim.defaults, ...args, ...phrase.fixed }));
}

export function argsOf(claim: Claim): fc.Arbitrary<Args> {
  return fc.oneof(...claim.phrases.map((phrase) => argsOfPhrase(claim, phrase)));
}

function sequence(parts: readonly Part[]): fc.Arbitrary<Record<string, ArgValue>> {
  return fc.tuple(...parts.map(onePart)).map((all) => Object.assign({}, ...all) as Record<string, ArgValue>);
}

function onePart(part: Part): fc.Arbitrary<Record<string, ArgValue>> {
  switch (part.part) {
    case 'words':
      return fc.constant({});
    case 'blank': {
      const blank = BLANKS[part.type];
      if (blank === undefined) throw new Error(`unknown blank type ${part.type}`);
      return fc.constantFrom(...blank.samples).map((value) => ({ [part.name]: value }));
    }
    case 'choice':
      return fc.constantFrom(...part.values).map(({ value }) => ({ [part.name]: value }));
    case 'either':
      return fc.oneof(...part.ways.map(sequence));
    case 'optional':
      return fc.oneof(fc.constant({}), ...part.ways.map(sequence));
  }
}

/** A sentence a phrase accepts, by any of its wordings, with the args it then has. */
export function wordingsOf(claim: Claim, phrase: Phrase): fc.Arbitrary<{ text: string; args: Args }> {
  return wording(phrase.parts).map(({ words, args }) => ({
    text: words.join(' '),
    args: { ...claim.defaults, ...args, ...phrase.fixed },
  }));
}

interface Wording {
  readonly words: readonly string[];
  readonly args: Record<string, ArgValue>;
}

function wording(parts: readonly Part[]): fc.Arbitrary<Wording> {
  return fc.tuple(...parts.map(wordingOfPart)).map((all) => ({
    words: all.flatMap(({ words }) => words),
    args: Object.assign({}, ...all.map(({ args }) => args)) as Record<string, ArgValue>,
  }));
}

function wordingOfPart(part: Part): fc.Arbitrary<Wording> {
  switch (part.part) {
    case 'words':
      return fc.constant({ words: [part.printed], args: {} });
    case 'blank': {
      const blank = BLANKS[part.type];
      return fc
        .constantFrom(...blank.samples)
        .map((value) => ({ words: [blank.print(value)], args: { [part.name]: value } }));
    }
    case 'choice':
      return fc
        .constantFrom(...part.values.flatMap(({ value, forms }) => forms.map((form) => ({ value, form }))))
        .map(({ value, form }) => ({ words: form, args: { [part.name]: value } }));
    case 'either':
      return fc.oneof(...part.ways.map(wording));
    case 'optional':
      return fc.oneof(fc.constant({ words: [], args: {} }), ...part.ways.map(wording));
  }
}
