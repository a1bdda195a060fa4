import type { Formula } from '../../src/claims/formula.ts';
import { layoutOf } from '../../src/pictures/layout.ts';
import type { Failure, SentenceDecision } from '../../src/proving/decision.ts';
import { COST_OFF, COST_STEP } from '../../src/routine/graph.ts';
import type { Routine, Sentence } from '../../src/routine/routine.ts';
import { pack, unpack } from '../naive/cost.ts';
import { exitAt, type Judged } from '../naive/judge.ts';
import { sentenceAt } from '../naive/truth.ts';
import { meaningOf } from '../../src/claims/sentence.ts';
import { replay } from '../naive/replay.ts';
import type { Start } from '../naive/starts.ts';
import { lying, tableKey, tableOf } from '../naive/table.ts';
import type { Case } from './cases.ts';

/** What the engine said of one sentence against what the walk found; throws with the difference. */
export function compare(made: Case, index: number, decided: SentenceDecision): void {
  const judged = made.judged[index];
  const { sentence } = made.routine.endings[index];
  if (judged.verdict === 'senseless') {
    // With an attribute left open, a sentence may make sense of the cards as they may be and not as they are.
    if (made.routine.setUp.freedoms.some(({ free }) => free === 'attribute')) return;
    // Which exit is asked first is the engine's own affair; but nothing is certain of a senseless sentence.
    if (decided.verdict === 'refuted' || decided.verdict === 'undecided') return;
    throw new Error(`engine: ${decided.verdict} (${decided.method}), walk: ${judged.trouble.code}`);
  }
  if (decided.verdict !== judged.verdict)
    throw new Error(`engine: ${decided.verdict} (${decided.method}), walk: ${describe(judged)}`);
  if (judged.verdict === 'refuted') {
    if (decided.failure === undefined) throw new Error('refuted without a failing performance');
    fails(made, sentence, decided.failure, judged);
  }
}

function describe(judged: Judged): string {
  return judged.verdict === 'refuted' ? `refuted at ${JSON.stringify(unpack(judged.cost))}` : judged.verdict;
}

/** The engine's failing performance is possible, fails, and is the cheapest there is. */
function fails(
  made: Case,
  sentence: Sentence,
  failure: Failure,
  judged: Judged & { verdict: 'refuted' },
): void {
  const { routine, bits } = made;
  const start = startOf(made, failure);
  const keys = failure.way.path.filter((edge) => edge.kind !== 'set-up').map((edge) => edge.key);
  const { end, moment, cost } = replay(routine, start, keys, bits);
  const said = pack(
    Math.floor(failure.way.cost / COST_OFF),
    Math.floor((failure.way.cost % COST_OFF) / COST_STEP),
    failure.way.cost % COST_STEP,
  );
  const where = `keys ${JSON.stringify(keys)}`;
  if (said !== cost) throw new Error(`cost said ${show(said)}, done ${show(cost)}, ${where}`);
  if (failure.shortest && cost !== judged.cost)
    throw new Error(`cost ${show(cost)}, least ${show(judged.cost)}, ${where}`);
  if (end === 'under way') throw new Error(`the failing performance does not end: ${where}`);
  if ((end === 'stuck') !== (failure.stuck !== undefined)) throw new Error(`it is ${end} after ${where}`);
  if (end === 'exit') {
    const said = sentenceAt(sentence)(exitAt(start, moment), bits);
    if (!said.ok) throw new Error(`the sentence makes no sense after ${where}`);
    if (said.value.test(moment.table)) throw new Error(`the sentence is true after ${where}`);
  }
}

const show = (cost: number): string => JSON.stringify(unpack(cost));

/** The start the engine speaks of, its own exchanges and turns done by hand, found among those there are. */
function startOf(made: Case, { way }: Failure): Start {
  const layout = layoutOf(made.routine.setUp.piles.map((pile) => [pile.name, pile.cards.length] as const));
  let slot = 0;
  const piles = new Map(
    layout.names.map((name, i) => {
      const slots = Array.from({ length: layout.sizes[i] }, () => slot++);
      return [
        name,
        slots.map((s) => lying(way.start.cards[s].id, way.start.bits[s] & 1, (way.start.bits[s] >> 1) & 1)),
      ];
    }),
  );
  for (const edge of way.path) {
    if (edge.kind !== 'set-up' || edge.key === 'begin') continue;
    const [, what, name, place] = /^(swap|turn) (.+) (\d+)$/.exec(String(edge.key)) ?? [];
    const pile = piles.get(name);
    if (pile === undefined) throw new Error(`the set-up does ${String(edge.key)}`);
    const at = Number(place);
    if (what === 'turn') pile[at] ^= 1;
    else [pile[at], pile[at + 1]] = [pile[at + 1], pile[at]];
  }
  const key = tableKey(tableOf(piles));
  const asThese = (start: Start): boolean =>
    way.start.cards.every((card) => JSON.stringify(start.cards[card.id]) === JSON.stringify(card));
  const found = made.walks.find(({ start }) => tableKey(start.table) === key && asThese(start));
  if (found === undefined) throw new Error('the engine starts from a table that the set-up does not allow');
  return found.start;
}

/** True when a formula is a conjunction of equations over fields: in whole numbers or modulo a prime. */
export function isEquations(formula: Formula): boolean {
  switch (formula.is) {
    case 'known':
      return true;
    case 'equal':
      return formula.mod === undefined || isPrime(formula.mod);
    case 'and':
      return formula.parts.every(isEquations);
    default:
      return false;
  }
}

function isPrime(n: number): boolean {
  if (n < 2) return false;
  for (let d = 2; d * d <= n; d++) if (n % d === 0) return false;
  return true;
}

/** True when the sentence is a conjunction of equations wherever a performance ends, for all cards as they may turn out. */
export function isEquationsEverywhere({ walks }: Case, sentence: Sentence): boolean {
  const cards = walks.flatMap(({ start }) => start.cards);
  const known = new Set<string>();
  return walks.every(({ exits, start }) =>
    exits.every((node) => {
      const exit = { ...exitAt(start, node.moment), cards };
      const key = JSON.stringify([exit.layout, exit.numbers]);
      if (known.has(key)) return true;
      known.add(key);
      const meaning = meaningOf(sentence, exit);
      return meaning.ok && isEquations(meaning.value.formula);
    }),
  );
}

/** The routine as text, to be pasted into a test. */
export function written(routine: Routine): string {
  return JSON.stringify(routine);
}
