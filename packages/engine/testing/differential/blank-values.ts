import type { Blank } from '../../src/phrases/blank.ts';
import { BLANKS } from '../../src/phrases/blanks.ts';
import type { Phrase } from '../../src/phrases/phrase.ts';
import type { Part } from '../../src/phrases/template.ts';
import type { Amount, Args, ArgValue, Kind, KindTest, NumberRef, PileRef } from '../../src/phrases/values.ts';
import type { Dice } from './dice.ts';
import type { Scope } from './scope.ts';

/** Blanks filled at random, in a way that few cards and the names in scope can answer. */

/** The args of one phrase, as if read from a sentence; parts that may be left out sometimes are. */
export function makeArgs(phrase: Phrase, defaults: Args, scope: Scope, dice: Dice): Args {
  const args = { ...defaults, ...fill(phrase.parts, scope, dice), ...phrase.fixed };
  return 'rows' in args && 'columns' in args ? { ...args, ...rowsOf(args.pile, scope, dice) } : args;
}

/** Rows and columns that just hold the pile, most of the time. */
function rowsOf(ref: ArgValue, scope: Scope, dice: Dice): Args {
  const size = typeof ref === 'string' ? scope.sizes[ref] : undefined;
  if (size === undefined || dice.chance(10)) return {};
  const rows = dice.of([2, 1, 3, size].filter((n) => size % n === 0));
  return { rows, columns: size / rows };
}

function fill(parts: readonly Part[], scope: Scope, dice: Dice): Args {
  let args: Args = {};
  for (const part of parts) {
    switch (part.part) {
      case 'words':
        break;
      case 'blank': {
        const blank = BLANKS[part.type];
        if (blank === undefined) throw new Error(`a blank of unknown type ${part.type}`);
        args = { ...args, [part.name]: makeValue(blank, scope, dice) };
        break;
      }
      case 'choice':
        args = { ...args, [part.name]: dice.of(part.values).value };
        break;
      case 'either':
        args = { ...args, ...fill(dice.of(part.ways), scope, dice) };
        break;
      case 'optional':
        if (dice.chance(60)) args = { ...args, ...fill(dice.of(part.ways), scope, dice) };
        break;
    }
  }
  return args;
}

export function makeValue(blank: Blank, scope: Scope, dice: Dice): ArgValue {
  switch (blank.type) {
    case 'number':
      return number(scope, dice);
    case 'amount':
    case 'cards':
    case 'topcards':
    case 'many':
      return amount(scope, dice);
    case 'block':
      return { end: dice.chance(30) ? 'bottom' : 'top', cards: amount(scope, dice) };
    case 'place':
    case 'spot':
    case 'nthcard':
      return { end: dice.chance(30) ? 'bottom' : 'top', n: number(scope, dice) };
    case 'nth':
      return 2 + dice.below(3);
    case 'howmany':
      return dice.chance(60) ? { of: 'exactly', n: number(scope, dice) } : amount(scope, dice);
    case 'kind':
    case 'onekind':
    case 'those':
      return kind(scope, dice, 0);
    case 'class':
    case 'thiscard':
    case 'state':
    case 'onestate':
      return kind(scope, dice, 1);
    case 'relation':
    case 'relations':
    case 'numeric': {
      // Mostly what these cards have; what they lack must be answered too.
      const has = blank.samples.filter(
        (name) =>
          name === 'facing' ||
          name === 'orientation' ||
          (typeof name === 'string' && scope.cards.some((c) => name in c.attributes)),
      );
      return dice.of(has.length > 0 && dice.chance(95) ? has : blank.samples);
    }
    case 'mark':
      return scope.marks.length > 0 ? dice.of(scope.marks) : 'chosen';
    case 'onecard':
      return dice.of(scope.cards).name;
    case 'pipcard':
      return dice.of(['AC', '2H', '6S', '10C']);
    case 'cardlist':
      return shuffled(
        scope.cards.map((card) => card.name),
        dice,
      ).slice(0, 1 + dice.below(scope.cards.length));
    case 'rank': {
      const { value } = dice.of(scope.cards).attributes;
      return typeof value === 'number' ? value : 1 + dice.below(4);
    }
    case 'words':
      return shuffled(['as', 'two', 'lamp'], dice).slice(0, 2 + dice.below(2));
    case 'allwords':
      return dice.of([
        ['eel', 'loo'],
        ['loo', 'lee'],
      ]);
    case 'word':
      return dice.of(['i', 'as', 'two', 'lamp', 'three']);
    case 'order':
      return shuffled(
        pilesIn(scope).map((name) => Number(name.slice(5))),
        dice,
      );
    case 'sequence':
      return shuffled(
        Array.from({ length: 1 + dice.below(4) }, (_, i) => i + 1),
        dice,
      );
    case 'stack': {
      const piles = scope.there.length > 1 ? scope.there : scope.piles;
      return shuffled(piles, dice).slice(0, dice.chance(70) ? piles.length : 2);
    }
    case 'pile':
      return pile(scope, dice);
    case 'newpile':
      return dice.chance(40)
        ? pile(scope, dice)
        : dice.of(['table', 'pile 1', 'pile 2', 'pile 3', 'left', 'hand']);
    case 'newname':
      return dice.of(['n', 'k', 'm']);
    default:
      return adapted(dice.of(blank.samples), scope, dice);
  }
}

/** A sample of a type that is not known here, with its numbers, piles, marks and kinds exchanged for some that there are. */
function adapted(sample: ArgValue, scope: Scope, dice: Dice): ArgValue {
  if (typeof sample === 'number') return sample > scope.cards.length ? small(scope, dice) : sample;
  if (typeof sample !== 'object') return sample;
  if (Array.isArray(sample)) return sample.map((part: ArgValue) => adapted(part, scope, dice));
  if ('tests' in sample) return kind(scope, dice, 0);
  if ('of' in sample) return amount(scope, dice);
  if ('var' in sample) return number(scope, dice);
  return Object.fromEntries(
    Object.entries(sample).map(([name, part]) => [
      name,
      name === 'pile' || name === 'other' ? pile(scope, dice) : adapted(part as ArgValue, scope, dice),
    ]),
  ) as ArgValue;
}

function pilesIn(scope: Scope): string[] {
  const known = scope.there.filter((name) => /^pile \d+$/.test(name));
  return known.length > 1 ? known : ['pile 1', 'pile 2'];
}

function shuffled<T>(list: readonly T[], dice: Dice): T[] {
  const from = [...list];
  return list.map(() => from.splice(dice.below(from.length), 1)[0]);
}

function small(scope: Scope, dice: Dice): number {
  return [1, 2, 3, 4, 0, scope.cards.length, scope.cards.length + 1][
    dice.weighted([25, 28, 18, 12, 4, 10, 3])
  ];
}

function number(scope: Scope, dice: Dice): NumberRef {
  if (scope.numbers.length > 0 && dice.chance(45)) return { var: dice.of(scope.numbers) };
  return small(scope, dice);
}

function amount(scope: Scope, dice: Dice): Amount {
  const n = (): NumberRef => number(scope, dice);
  switch (dice.below(10)) {
    case 0:
    case 1:
      return { of: 'any' };
    case 9:
      return { of: 'half' };
    case 2:
      return { of: 'range', from: 1 + dice.below(2), to: 2 + dice.below(3) };
    case 3:
      return { of: 'at least', n: n() };
    case 4:
      return { of: 'at most', n: n() };
    case 5:
      return { of: 'multiple', k: 2 + dice.below(2), plus: dice.below(2) };
    default:
      return { of: 'exactly', n: n() };
  }
}

function pile(scope: Scope, dice: Dice): PileRef {
  if (scope.that !== null && dice.chance(60))
    return { stem: scope.that.stem, n: { var: scope.that.counter } };
  if (scope.numbers.length > 0 && scope.piles.some((p) => p.startsWith('pile ')) && dice.chance(10))
    return { stem: 'pile', n: { var: dice.of(scope.numbers) } };
  const known = scope.there.length > 0 && dice.chance(90) ? scope.there : scope.piles;
  return dice.of(known);
}

function kind(scope: Scope, dice: Dice, least: 0 | 1): Kind {
  const length = Math.max(least, dice.weighted([6, 78, 16]));
  return { tests: Array.from({ length }, () => test(scope, dice)) };
}

function test(scope: Scope, dice: Dice): KindTest {
  const denied = dice.chance(20) ? { not: true } : {};
  const card = dice.of(scope.cards);
  switch (dice.weighted([50, 30, 15, scope.marks.length > 0 ? 25 : 0])) {
    case 0: {
      const [attribute, value] = dice.of(Object.entries(card.attributes));
      return { test: 'attribute', attribute, values: [value], ...denied };
    }
    case 1:
      return { test: 'bit', bit: dice.chance(25) ? 'end' : 'up', ...denied };
    case 2:
      return { test: 'card', name: card.name, ...denied };
    default:
      return { test: 'bit', bit: dice.of(scope.marks), ...denied };
  }
}
