import { sampler, wordsOf, type Part, type Sampler } from '../code/snippets.ts';
import { amountText, isAmount, AMOUNT_START } from './amounts.ts';

/** What a person has filled in so far, by the place of the blank in its phrase. */
export type Filled = Readonly<Record<string, string>>;

/** One thing to fill in. */
export interface Field {
  readonly key: string;
  readonly label: string;
  readonly control: 'number' | 'amount' | 'pile' | 'text' | 'choose' | 'add';
  readonly type: string;
  readonly value: string;
  /** For `choose`: value and words. */
  readonly options: readonly (readonly [string, string])[];
}

/** The fields of a phrase, those of parts that were added included. */
export function fieldsOf(parts: readonly Part[], filled: Filled): Field[] {
  const seen = new Set<string>();
  const labels = new Map<string, number>();
  return walk(parts, filled, '', sampler(parts))
    .fields.filter(({ key }) => !seen.has(key) && seen.add(key))
    .map((field) => {
      const count = (labels.get(field.label) ?? 0) + 1;
      labels.set(field.label, count);
      return count === 1 ? field : { ...field, label: `${field.label} (${count})` };
    });
}

/** The sentence as filled in, with its stop. */
export function sentenceOf(parts: readonly Part[], filled: Filled): string {
  const text = walk(parts, filled, '', sampler(parts))
    .words.filter((word) => word !== '')
    .join(' ')
    .replace(/ ([,:])/g, '$1');
  return `${text.slice(0, 1).toUpperCase()}${text.slice(1)}.`;
}

/** How often a step can be done by itself. */
export const REPEATS = ['once', 'any number of times', 'at least once'] as const;

/** The sentence as a block of its own that is done so often. */
export function repeated(sentence: string, often: (typeof REPEATS)[number]): string {
  if (often === 'once') return sentence;
  const begun = `${often.slice(0, 1).toUpperCase()}${often.slice(1)}`;
  return `${begun}: ${sentence.slice(0, 1).toLowerCase()}${sentence.slice(1)}`;
}

/**
 * The wording that is offered first: for a move the one it is printed in, for an ending the one that leaves most to fill in, as
 * others only fix a number of it.
 */
export function firstWording(
  phrases: readonly { readonly parts: readonly Part[] }[],
  isEnding: boolean,
): number {
  if (!isEnding) return 0;
  const blanks = phrases.map(({ parts }) => new Set(blanksIn(parts).split(' ')).size);
  return blanks.indexOf(Math.max(...blanks));
}

interface Walked {
  readonly fields: readonly Field[];
  readonly words: readonly string[];
}

function walk(parts: readonly Part[], filled: Filled, path: string, sample: Sampler): Walked {
  const fields: Field[] = [];
  const words: string[] = [];
  const inside = (way: readonly Part[], at: string) => {
    const inner = walk(way, filled, at, sample);
    fields.push(...inner.fields);
    words.push(...inner.words);
  };
  parts.forEach((part, index) => {
    const key = `${path}${index}`;
    switch (part.part) {
      case 'words':
        words.push(part.printed);
        break;
      case 'blank': {
        // A blank that stands twice in a sentence is filled once.
        const { name, type } = part;
        const value = filled[name] ?? (isAmount(type) ? AMOUNT_START : sample(type, name));
        fields.push({
          key: name,
          label: labelOf(name, type),
          control: controlOf(type),
          type,
          value,
          options: [],
        });
        words.push(isAmount(type) ? amountText(type, value) : value);
        break;
      }
      case 'choice': {
        const value = filled[part.name] ?? part.values[0]?.value ?? '';
        const options = part.values.map(
          (one) => [one.value, one.value === '' ? '(nothing)' : one.value] as const,
        );
        if (options.length > 1) {
          fields.push({
            key: part.name,
            label: labelOf(part.name, ''),
            control: 'choose',
            type: '',
            value,
            options,
          });
        }
        words.push(value);
        break;
      }
      case 'either': {
        const ways = part.ways.filter(
          (way, at) => at === 0 || blanksIn(way) !== blanksIn(part.ways[0] ?? []),
        );
        const chosen = Number(filled[key] ?? 0);
        if (ways.length > 1) {
          const options = ways.map((way, at) => [String(at), wordsOf(way) || '(nothing)'] as const);
          fields.push({
            key,
            label: 'in these words',
            control: 'choose',
            type: '',
            value: String(chosen),
            options,
          });
        }
        inside(ways[chosen] ?? [], `${key}.`);
        break;
      }
      case 'optional': {
        const ways = part.ways.filter((way) => blanksIn(way) !== '');
        ways.forEach((way, at) => {
          const own = `${key}+${at}`;
          const value = filled[own] ?? '';
          fields.push({
            key: own,
            label: `… ${wordsOf(way).replace(/^\W+/, '').toLowerCase()}`,
            control: 'add',
            type: '',
            value,
            options: [],
          });
          if (value !== '') inside(way, `${own}.`);
        });
      }
    }
  });
  return { fields, words };
}

/** The names of the blanks of a wording, as one text to tell wordings apart by. */
function blanksIn(parts: readonly Part[]): string {
  return parts
    .flatMap((part) => {
      if (part.part === 'words') return [];
      if (part.part === 'blank' || part.part === 'choice') return [part.name];
      return part.ways.map(blanksIn);
    })
    .filter((name) => name !== '')
    .join(' ');
}

function controlOf(type: string): Field['control'] {
  if (isAmount(type)) return 'amount';
  if (type === 'number') return 'number';
  return type === 'pile' || type === 'newpile' ? 'pile' : 'text';
}

const LABELS: Readonly<Record<string, string>> = {
  pile: 'pile',
  newpile: 'onto which pile',
  newname: 'name it',
  mark: 'the card called',
  howmany: 'how many',
  kind: 'which cards',
  onekind: 'which card',
  oneofclass: 'which card',
  those: 'which cards',
  class: 'which cards',
  state: 'are',
  onestate: 'is',
  groups: 'taken together',
  relation: 'by',
  relations: 'which of them',
  place: 'place',
  places: 'places',
  spot: 'where to',
  tally: 'cards counted',
  blocks: 'in what groups',
  nth: 'every so many',
  order: 'order of the piles',
};

/** Names of blanks that say little by themselves. */
const NAMES: Readonly<Record<string, string>> = {
  plural: 'called',
  stem: 'called',
  into: 'into how many',
  to: 'to which pile',
  how: 'how',
  call: 'name it',
};

function labelOf(name: string, type: string): string {
  const named = NAMES[name];
  if (named !== undefined) return named;
  const label = LABELS[type];
  return label ?? name;
}
