import { wordsOf } from './tokens.ts';

/**
 * The parts of a phrase. Written: plain words; `[x|y]` may be left out; `(x|y)` one of these, the first is printed;
 * `{name:type}` a typed blank; `{name=a|b~c}` a blank whose value is one of the words given, with synonyms after `~`.
 */
export type Part =
  | { readonly part: 'words'; readonly words: readonly string[]; readonly printed: string }
  | { readonly part: 'optional'; readonly ways: readonly (readonly Part[])[] }
  | { readonly part: 'either'; readonly ways: readonly (readonly Part[])[] }
  | { readonly part: 'blank'; readonly name: string; readonly type: string }
  | { readonly part: 'choice'; readonly name: string; readonly values: readonly ChoiceValue[] };

export interface ChoiceValue {
  readonly value: string;
  readonly forms: readonly (readonly string[])[];
}

export function parseTemplate(template: string): readonly Part[] {
  let at = 0;
  function ways(close: string): Part[][] {
    const all: Part[][] = [];
    for (;;) {
      all.push(sequence());
      const stop = template[at++];
      if (stop === close) return all;
      if (stop !== '|') throw new Error(`phrase "${template}": expected ${close} at ${at}`);
    }
  }
  function blank(): Part {
    const end = template.indexOf('}', at);
    const inner = template.slice(at, end);
    at = end + 1;
    const typed = /^(\w+):([\w-]+)$/.exec(inner);
    if (typed !== null) return { part: 'blank', name: typed[1], type: typed[2] };
    const chosen = /^(\w+)=(.+)$/.exec(inner);
    if (chosen === null) throw new Error(`phrase "${template}": blank {${inner}}`);
    const values = chosen[2].split('|').map((option) => {
      const forms = option.split('~');
      return { value: forms[0].trim(), forms: forms.map(wordsOf) };
    });
    return { part: 'choice', name: chosen[1], values };
  }
  function sequence(): Part[] {
    const parts: Part[] = [];
    while (at < template.length) {
      const c = template[at];
      if (c === ']' || c === ')' || c === '|') break;
      at++;
      if (c === '[') parts.push({ part: 'optional', ways: ways(']') });
      else if (c === '(') parts.push({ part: 'either', ways: ways(')') });
      else if (c === '{') parts.push(blank());
      else {
        let end = at;
        while (end < template.length && !'[](){}|'.includes(template[end])) end++;
        const printed = template.slice(at - 1, end).trim();
        at = end;
        if (printed !== '') parts.push({ part: 'words', words: wordsOf(printed), printed });
      }
    }
    return parts;
  }
  const parts = sequence();
  if (at < template.length) throw new Error(`phrase "${template}": stray ${template[at]}`);
  return parts;
}

/** Names of all blanks, in order of appearance. */
export function blankNames(parts: readonly Part[]): string[] {
  return parts.flatMap((part) => {
    if (part.part === 'blank' || part.part === 'choice') return [part.name];
    return part.part === 'words' ? [] : part.ways.flatMap((way) => blankNames(way));
  });
}

/** Words one of which a match must begin with; null when a blank may come first. */
export function firstWords(parts: readonly Part[]): ReadonlySet<string> | null {
  const words = new Set<string>();
  for (const part of parts) {
    if (part.part === 'blank') return null;
    if (part.part === 'words') {
      if (part.words.length === 0) continue;
      words.add(part.words[0]);
      return words;
    }
    if (part.part === 'choice') {
      for (const { forms } of part.values)
        for (const form of forms) {
          if (form.length === 0) return null;
          words.add(form[0]);
        }
      return words;
    }
    for (const way of part.ways) {
      const inner = firstWords(way);
      if (inner === null) return null;
      for (const word of inner) words.add(word);
    }
    if (part.part === 'either') return words;
  }
  return words.size === 0 ? null : words;
}
