/** Ways to leave a number open or to fix it, in the order offered. */
export const AMOUNT_WAYS = ['exactly', 'any', 'even', 'odd', 'at least', 'at most', 'between'] as const;
export type AmountWay = (typeof AMOUNT_WAYS)[number];

export interface AmountValue {
  readonly way: AmountWay;
  readonly n: number;
  readonly to: number;
  readonly end: 'top' | 'bottom';
}

const TYPES = new Set([
  'amount',
  'many',
  'cards',
  'topcards',
  'block',
  'severaltop',
  'severalbottom',
  'howmany',
]);

export const AMOUNT_START = 'exactly 2 4 top';

/** Blanks that say how many. */
export function isAmount(type: string): boolean {
  return TYPES.has(type);
}

/** Whether the blank says from which end as well. */
export function hasEnd(type: string): boolean {
  return type === 'block';
}

/** Ways that a blank of this type can be filled in. */
export function waysFor(type: string): readonly AmountWay[] {
  if (type === 'severaltop' || type === 'severalbottom') return ['exactly'];
  // A claim that any number may be so claims nothing.
  return type === 'howmany' ? AMOUNT_WAYS.filter((way) => way !== 'any') : AMOUNT_WAYS;
}

export function readAmount(text: string): AmountValue {
  const [, way, n, to, end] = /^(.+) (\d+) (\d+) (top|bottom)$/.exec(text) ?? [];
  return {
    way: AMOUNT_WAYS.find((one) => one === way) ?? 'exactly',
    n: Number(n ?? 2),
    to: Number(to ?? 4),
    end: end === 'bottom' ? 'bottom' : 'top',
  };
}

export function writeAmount({ way, n, to, end }: AmountValue): string {
  return `${way} ${n} ${to} ${end}`;
}

/** How many, in the words that a blank of this type reads. */
export function amountText(type: string, text: string): string {
  const { way, n, to, end } = readAmount(text);
  const place = type === 'severalbottom' ? 'bottom' : type === 'block' ? end : 'top';
  const isPlaced = !['amount', 'many', 'cards', 'howmany'].includes(type);
  if (way === 'exactly') {
    if (type === 'howmany') return `exactly ${n}`;
    if (isPlaced) return n === 1 ? `the ${place} card` : `the ${place} ${n} cards`;
    return type === 'cards' ? `${n} ${n === 1 ? 'card' : 'cards'}` : String(n);
  }
  const open = way === 'any' || way === 'even' || way === 'odd';
  const number = open
    ? way === 'any'
      ? 'any number'
      : `an ${way} number`
    : way === 'between'
      ? `${n} to ${to}`
      : `${way} ${n}`;
  if (type === 'amount') return number;
  if (type === 'many' || type === 'howmany') return open ? `${number} of` : number;
  const cards = `${number}${open ? ' of' : ''} cards`;
  return isPlaced ? `${cards} from the ${place}` : cards;
}
