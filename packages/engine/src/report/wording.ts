import type { Phrase } from '../phrases/phrase.ts';
import type { Part } from '../phrases/template.ts';

/** What stands in a wording for a blank of each type; other types go by their own name. */
const BLANK_WORDS: Readonly<Record<string, string>> = {
  amount: 'number or range',
  block: 'top cards',
  blocks: 'blocks',
  cards: 'so many cards',
  class: 'such cards',
  groups: 'every pair, every four ...',
  howmany: 'how many',
  kind: 'such cards',
  newname: 'name',
  newpile: 'new pile',
  nthcard: 'nth card',
  number: 'number',
  onekind: 'such card',
  oneofclass: 'one such card',
  onestate: 'such',
  order: 'order of piles',
  pile: 'pile',
  place: 'place',
  places: 'places',
  predicate: 'such',
  relation: 'colour, suit ...',
  relations: 'colours, suits ...',
  spot: 'place',
  state: 'such',
  tally: 'such cards',
  topcards: 'top cards',
};

/** A phrase for people: `[...]` may be left out, `(a | b)` is one of these, `<pile>` is a blank to fill. */
export function wordingOf({ parts }: Phrase): string {
  const text = printed(parts).replace(/ ,/g, ',').replace(/\s+/g, ' ').trim();
  return text.slice(0, 1).toUpperCase() + text.slice(1);
}

function printed(parts: readonly Part[]): string {
  return parts
    .map((part) => {
      switch (part.part) {
        case 'words':
          return part.printed;
        case 'blank':
          return `<${BLANK_WORDS[part.type] ?? part.type}>`;
        case 'choice':
          return `(${part.values.map(({ value }) => value).join(' | ')})`;
        case 'optional':
          return `[${part.ways.map(printed).join(' | ')}]`;
        case 'either': {
          const ways = part.ways.map(printed).filter((way) => way !== '');
          // One way that says nothing means that the others may be left out.
          return ways.length < part.ways.length ? `[${ways.join(' | ')}]` : `(${ways.join(' | ')})`;
        }
      }
    })
    .filter((text) => text !== '')
    .join(' ');
}
