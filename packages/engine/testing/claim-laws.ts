import fc from 'fast-check';
import type { Claim } from '../src/claims/claim.ts';
import { holds, readsOf, type Formula } from '../src/claims/formula.ts';
import { meaningOf } from '../src/claims/sentence.ts';
import { BLANKS } from '../src/phrases/blanks.ts';
import { printPhrases } from '../src/phrases/phrase.ts';
import type { Args, Kind } from '../src/phrases/values.ts';
import { cardsIn } from '../src/pictures/layout.ts';
import {
  claimTable,
  claimTables,
  exitOf,
  laidCards,
  namedTables,
  readClaim,
  slotView,
} from './claim-tables.ts';
import { isTrue } from './claim-truth.ts';
import { argsOf, argsOfPhrase, wordingsOf } from './claim-wordings.ts';
import { namesFor, type LaidCard, type Table } from './packets.ts';

/** The laws every claim passes; each throws with the claim, the sentence and the table that break it. */

function demand(holdsTrue: boolean, otherwise: string): void {
  if (!holdsTrue) throw new Error(otherwise);
}

/** As text, whatever the order of the keys, absent or undefined alike. */
function stable(value: unknown): string {
  const sorted = (_key: string, part: unknown): unknown =>
    part !== null && typeof part === 'object' && !Array.isArray(part)
      ? Object.fromEntries(Object.entries(part).sort(([a], [b]) => (a < b ? -1 : 1)))
      : part;
  return JSON.stringify(value, sorted) ?? 'undefined';
}

function agree(found: unknown, wanted: unknown, where: string): void {
  demand(stable(found) === stable(wanted), `${where}\n  found  ${stable(found)}\n  wanted ${stable(wanted)}`);
}

/** Every part is there and reads like a sentence. */
export function isComplete(claim: Claim): void {
  demand(/^[a-z0-9]+(-[a-z0-9]+)*$/.test(claim.id), `id ${claim.id}`);
  demand(/^\S.*\S$/.test(claim.title), `title ${claim.title}`);
  demand(
    claim.endings.length > 0 && claim.endings.every((e) => /^C\d+$/.test(e)),
    `endings ${claim.endings.join(' ')}`,
  );
  demand(/^[A-Z"].*\.$/.test(claim.help), `help ${claim.help}`);
  demand(/^[A-Z"].*\.$/.test(claim.caution), `caution ${claim.caution}`);
  const truths = new Set(claim.examples.map((example) => example.holds));
  demand(
    claim.phrases.length > 0 && truths.size === 2,
    'phrases, an example that holds and one that does not',
  );
}

/** The examples are true, nobody else reads them, and printing leaves their meaning alone. */
export function examplesAreTrue(claim: Claim, claims: readonly Claim[]): void {
  for (const { table: text, sentence, holds: wanted } of claim.examples) {
    const table = claimTable(text);
    const names = namesFor(table);
    const [args] = readClaim(claim, sentence, names);
    demand(args !== undefined, `${claim.id} does not read "${sentence}"`);
    const exit = exitOf(table);
    const meaning = claim.meaning(args, exit);
    if (!meaning.ok) throw new Error(`"${sentence}" on ${text}: ${stable(meaning.error)}`);
    const view = slotView(laidCards(table));
    agree(holds(meaning.value.formula, view), wanted, `${text} | ${sentence}`);
    const whole = meaningOf({ says: 'claim', claim: claim.id, args }, exit);
    agree(whole.ok && holds(whole.value.formula, view), wanted, `simplified: ${text} | ${sentence}`);
    const printed = printPhrases(claim.phrases, args, claim.defaults, BLANKS);
    agree(printed === null ? null : readClaim(claim, printed, names)[0], args, `printed "${printed}"`);
    for (const other of claims)
      demand(
        other === claim || readClaim(other, sentence, names).length === 0,
        `"${sentence}" is read by ${other.id}`,
      );
  }
}

/** What a phrase says is read back as the same, in every wording, and printing is settled after once. */
export function phrasesReadBack(claim: Claim, numRuns = 12): void {
  for (const phrase of claim.phrases) {
    fc.assert(
      fc.property(argsOfPhrase(claim, phrase), (args) => {
        const own = printPhrases([phrase], args, claim.defaults, BLANKS);
        if (own === null) throw new Error(`"${phrase.template}" cannot say its own ${stable(args)}`);
        readsAs(claim, own, args);
        const printed = printPhrases(claim.phrases, args, claim.defaults, BLANKS);
        if (printed === null) throw new Error(`${claim.id} cannot say ${stable(args)}`);
        readsAs(claim, printed, args);
      }),
      { numRuns },
    );
    fc.assert(
      fc.property(wordingsOf(claim, phrase), ({ text, args }) => readsAs(claim, text, args)),
      { numRuns },
    );
  }
}

function readsAs(claim: Claim, sentence: string, args: Args): void {
  const readings = readClaim(claim, sentence);
  demand(readings.length > 0, `${claim.id} cannot read its own "${sentence}"`);
  for (const reading of readings) agree(reading, args, `"${sentence}"`);
}

/** Sentences a claim accepts, the same each time. */
export function sampleSentences(claim: Claim, each = 8): string[] {
  const texts = claim.phrases.flatMap((phrase) =>
    fc.sample(wordingsOf(claim, phrase), { numRuns: each, seed: 1 }).map(({ text }) => text),
  );
  return [...new Set([...claim.examples.map(({ sentence }) => sentence), ...texts])];
}

/** Sentences of one claim that another reads too; there should be none. */
export function clashes(claims: readonly Claim[]): string[] {
  const found: string[] = [];
  for (const claim of claims)
    for (const sentence of sampleSentences(claim))
      for (const other of claims)
        if (other !== claim && readClaim(other, sentence).length > 0)
          found.push(`"${sentence}" of ${claim.id} is read by ${other.id}`);
  return found;
}

/** Every number the formula depends on is looked at only as declared: other attributes and bits are out of reach. */
function readsAsDeclared(
  formula: Formula,
  laid: readonly LaidCard[],
  allowed: ReadonlySet<string>,
  where: string,
): void {
  const visit = (part: Formula): void => {
    switch (part.is) {
      case 'known':
        return;
      case 'and':
      case 'or':
        return part.parts.forEach(visit);
      case 'not':
        return visit(part.part);
      case 'if':
        return [part.when, part.then].forEach(visit);
      case 'exactly when':
        return [part.left, part.right].forEach(visit);
      case 'equal':
      case 'order':
      case 'judged':
        for (const { slot, coef, measure } of part.terms) {
          demand(Number.isInteger(slot) && laid[slot] !== undefined, `${where}: slot ${slot}`);
          demand(Number.isInteger(coef), `${where}: coefficient ${coef}`);
          const { card, bits } = laid[slot];
          for (const attribute of measure.attributes)
            demand(
              allowed.has(attribute),
              `${where}: ${measure.id} reads ${attribute}, which the claim does not declare`,
            );
          const guarded = new Proxy(card.attributes, {
            get: (target, key) => {
              demand(
                measure.attributes.includes(String(key)),
                `${where}: ${measure.id} looks at ${String(key)}`,
              );
              return target[String(key)];
            },
          });
          const value = measure.of({ ...card, attributes: guarded }, (bit) => {
            demand(measure.bits.includes(bit), `${where}: ${measure.id} looks at ${bit}`);
            return bits.has(bit) ? 1 : 0;
          });
          demand(Number.isInteger(value), `${where}: ${measure.id} reads ${value}`);
        }
    }
  };
  visit(formula);
}

/** The same table to a formula: whatever it does not read is changed. */
function alike(laid: readonly LaidCard[], formula: Formula, seed: number): LaidCard[] {
  const reads = readsOf(formula);
  return laid.map(({ card, bits }, i) => {
    const other = laid[(i * 7 + seed) % laid.length];
    const entries = Object.keys(card.attributes).map((attribute) => [
      attribute,
      (reads.attributes.has(attribute) ? card : other.card).attributes[attribute],
    ]);
    const id = reads.attributes.has('id') ? card.id : card.id + 100;
    const name = reads.attributes.has('name') || reads.attributes.has('id') ? card.name : 'other';
    const kept = ['up', 'end', 'chosen'].filter((bit) => (reads.bits.has(bit) ? bits : other.bits).has(bit));
    return { card: { id, name, attributes: Object.fromEntries(entries) }, bits: new Set(kept) };
  });
}

/** On small tables: there is always a meaning or a trouble, it is true when the sentence is, and simplifying keeps it. */
export function meaningIsSound(
  claim: Claim,
  numRuns = 80,
  allArgs: fc.Arbitrary<Args> = argsOf(claim),
  tables: fc.Arbitrary<Table> = claimTables,
): void {
  fc.assert(
    fc.property(allArgs, tables, fc.nat({ max: 50 }), (args, table, seed) => {
      const exit = exitOf(table, startFor(table, seed));
      const where = `${printPhrases(claim.phrases, args, claim.defaults, BLANKS) ?? claim.id}`;
      const meaning = claim.meaning(args, exit);
      const whole = meaningOf({ says: 'claim', claim: claim.id, args }, exit);
      agree(whole.ok, meaning.ok, `${where}: simplified`);
      if (!meaning.ok || !whole.ok) {
        if (!meaning.ok) demand(/^[a-z]+(-[a-z]+)*$/.test(meaning.error.code), `${where}: code`);
        return;
      }
      const { formula } = meaning.value;
      const laid = laidCards(table);
      demand(laid.length === cardsIn(exit.layout), 'every slot has a card');
      const allowed = new Set([...(claim.attributes?.(args) ?? []), 'id', 'name']);
      readsAsDeclared(formula, laid, allowed, where);
      readsAsDeclared(whole.value.formula, laid, allowed, where);
      const said = holds(formula, slotView(laid));
      agree(holds(formula, slotView(alike(laid, formula, seed))), said, `${where}: of cards alike`);
      agree(holds(whole.value.formula, slotView(laid)), said, `${where}: simplified`);
      agree(said, isTrue(claim.id, args, table, exit.start), `${where}\n on ${shown(table)}`);
    }),
    { numRuns },
  );
}

const CERTAIN: readonly Kind[] = [
  { tests: [{ test: 'bit', bit: 'chosen' }] },
  { tests: [{ test: 'card', name: '10C' }] },
  { tests: [{ test: 'card', name: 'lamp' }] },
];
const CARD_BLANKS = ['card', 'a', 'b', 'c'];

/** The same for a claim about one certain card, where that card is there and cards differ. */
export function certainCardIsSound(claim: Claim, numRuns = 80): void {
  const certain = fc.constantFrom(...CERTAIN);
  const allArgs = fc
    .tuple(argsOf(claim), certain, certain, certain, certain)
    .map(([args, ...cards]): Args => {
      const said = CARD_BLANKS.filter((name) => args[name] !== undefined);
      return { ...args, ...Object.fromEntries(said.map((name, i) => [name, cards[i]])) };
    });
  meaningIsSound(claim, numRuns, allArgs, namedTables);
}

/** A card that lacks an attribute that is spoken of is a trouble, whatever else. */
export function lackingIsTrouble(claim: Claim): void {
  fc.assert(
    fc.property(argsOf(claim), claimTables, (args, table) => {
      const bare = [...table.piles].map(
        ([name, cards]) =>
          [name, cards.map(({ card, bits }) => ({ card: { ...card, attributes: {} }, bits }))] as const,
      );
      const exit = exitOf({ ...table, piles: new Map(bare) });
      const meaning = claim.meaning(args, exit);
      const [first] = claim.attributes?.(args) ?? [];
      if (first === undefined) return;
      const wanted = { code: 'unknown-attribute', facts: { attribute: first, card: exit.cards[0].name } };
      agree(meaning.ok ? meaning.value : meaning.error, wanted, claim.id);
      agree(claim.check?.(args, exit.cards)[0], wanted, claim.id);
    }),
    { numRuns: 20 },
  );
}

/** Starting orders: as the cards lie now, the reverse, or something else. */
function startFor(table: Table, seed: number): Record<string, number[]> {
  const piles = [...table.piles].filter(([name]) => seed % 5 !== 4 || name !== 'packet');
  return Object.fromEntries(
    piles.map(([name, cards]) => {
      const ids = cards.map(({ card }) => card.id);
      return [
        name,
        seed % 3 === 0 ? ids : seed % 3 === 1 ? ids.reverse() : [...ids.slice(1), ...ids.slice(0, 1)],
      ];
    }),
  );
}

function shown({ piles, numbers }: Table): string {
  const lines = [...piles].map(
    ([name, cards]) =>
      `${name}: ${cards.map(({ card, bits }) => `${card.name}(${[...bits].join()})`).join(' ')}`,
  );
  return `${lines.join('; ')} ${stable(numbers)}`;
}
