import { moveById } from '../../src/moves/index.ts';
import { isOpenByNature, START, type Key } from '../../src/moves/move.ts';
import type { Routine, Sentence, Step } from '../../src/routine/routine.ts';
import { exitAt } from './judge.ts';
import { MomentKeys, settle, type Moment } from './machine.ts';
import { startsOf, type Start } from './starts.ts';
import { layoutOfTable, seenTable, tableKey, type Bits } from './table.ts';
import { sentenceAt } from './truth.ts';
import { startMoment, TooBig } from './walk.ts';
import { nextOf, type WayOn } from './ways-on.ts';

/** How often the endless repetitions may go round again: the spectators' beyond that count as well done, the performer's as failed. */
export interface Patience {
  readonly spectators: number;
  readonly performer: number;
}

/** One of the performances that the performer cannot tell from one another by now. */
interface Possible {
  readonly start: Start;
  readonly moment: Moment;
}

/**
 * Whether the performer can make all sentences true, tried by plain recursion over what may have become public: the performer
 * needs one choice that is good in all cases that look alike, the spectators try everything. Shares with the engine the moves'
 * own options and the meaning of sentences, nothing else.
 */
export function canWin(
  routine: Routine,
  sentences: readonly Sentence[],
  bits: Bits,
  patience: Patience,
  most: number,
): boolean {
  return new NaiveGame(sentences, bits, most).wins(
    startsOf(routine).map((start) => ({ start, moment: startMoment(routine, start) })),
    patience,
  );
}

class NaiveGame {
  private readonly known = new Map<string, boolean>();
  private readonly keys = new MomentKeys();
  private readonly ids = new Map<Start, number>();
  private readonly sentences: readonly Sentence[];
  private readonly bits: Bits;
  private readonly most: number;

  constructor(sentences: readonly Sentence[], bits: Bits, most: number) {
    this.sentences = sentences;
    this.bits = bits;
    this.most = most;
  }

  /** All these are possible; what is seen of where the working stands is looked at first. */
  wins(possible: readonly Possible[], patience: Patience): boolean {
    const looks = new Map<string, Possible[]>();
    for (const one of this.afterTheUnseen(possible)) {
      const seen = this.appearance(one);
      looks.set(seen, [...(looks.get(seen) ?? []), one]);
    }
    return [...looks.values()].every((alike) => this.winsAlike(alike, patience));
  }

  private winsAlike(alike: readonly Possible[], patience: Patience): boolean {
    const key = `${patience.spectators} ${patience.performer} ${alike
      .map((one) => this.idOf(one))
      .sort()
      .join('&')}`;
    const known = this.known.get(key);
    if (known !== undefined) return known;
    if (this.known.size >= this.most) throw new TooBig(`more than ${this.most} cases`);
    const answer = this.winsHere(alike, patience);
    this.known.set(key, answer);
    return answer;
  }

  private winsHere(alike: readonly Possible[], patience: Patience): boolean {
    const [{ decision }] = alike.map(({ moment }) => settle(moment));
    if (decision.decide === 'nothing: it is over') return alike.every((one) => this.isTrue(one));
    const all = alike.map((one) => this.waysFrom(one));
    // Somebody who cannot go on has failed.
    if (all.some((ways) => ways === null)) return false;
    const ways = all as (readonly WayOn[])[];
    const { step } = decision;
    if (step.do === 'move' && step.who === 'spectator' && !isOpen(step))
      return this.wins(this.toTheEnd(alike, step), patience);
    const keys = [...new Set(ways.flatMap((list) => list.map(({ key }) => key)))];
    const byKey = (key: Key): Possible[] =>
      alike.flatMap(({ start }, i) =>
        ways[i].filter((way) => way.key === key).map((way) => ({ start, moment: way.to })),
      );
    const rounds = (key: Key): Patience | null => {
      if (step.do !== 'repeat' || key !== 'again') return patience;
      const { spectators, performer } = patience;
      if (step.who === 'spectator')
        return spectators === 0 ? null : { performer, spectators: spectators - 1 };
      return performer === 0 ? null : { spectators, performer: performer - 1 };
    };
    if (step.who === 'spectator')
      return keys.every((key) => {
        const left = rounds(key);
        return left === null || this.wins(byKey(key), left);
      });
    // Nothing to choose anywhere: it is done, and shows what it depends on.
    if (ways.every((list) => list.length === 1)) return keys.every((key) => this.wins(byKey(key), patience));
    return keys.some((key) => {
      const left = rounds(key);
      const always = ways.every((list) => list.some((way) => way.key === key));
      return always && left !== null && this.wins(byKey(key), left);
    });
  }

  /** A step in plain view whose choice is not known, in every way, to its end. */
  private toTheEnd(alike: readonly Possible[], step: Step): Possible[] {
    const ended: Possible[] = [];
    const seen = new Set<string>();
    const go = (one: Possible): void => {
      const id = this.idOf(one);
      if (seen.has(id)) return;
      seen.add(id);
      const ways = this.waysFrom(one);
      if (ways === null) ended.push(one);
      else
        for (const { to } of ways) {
          const next = { start: one.start, moment: to };
          if (to.phase === START) ended.push(next);
          else go(next);
        }
    };
    if (step.do === 'move') alike.forEach(go);
    return ended;
  }

  private afterTheUnseen(possible: readonly Possible[]): Possible[] {
    const ready = new Map<string, Possible>();
    const seen = new Set<string>();
    const go = (one: Possible): void => {
      const { moment, decision } = settle(one.moment);
      const here = { start: one.start, moment };
      const id = this.idOf(here);
      if (seen.has(id)) return;
      seen.add(id);
      const hidden = decision.decide !== 'nothing: it is over' && isHidden(decision.step);
      const ways = hidden ? this.waysFrom(here) : null;
      if (ways === null) ready.set(id, here);
      else for (const { to } of ways) go({ start: one.start, moment: to });
    };
    possible.forEach(go);
    return [...ready.values()];
  }

  private waysFrom({ start, moment }: Possible): readonly WayOn[] | null {
    const next = nextOf(moment, start.cards, this.bits);
    return next.is === 'stuck' ? null : next.is === 'exit' ? [] : next.ways;
  }

  /** What is plain to see: which step the working stands at, which pile has its turn, and what is looked at in full view. */
  private appearance({ start, moment }: Possible): string {
    const { decision } = settle(moment);
    if (decision.decide === 'nothing: it is over') return 'over';
    const { step } = decision;
    const turns = moment.frames.flatMap((frame) => (frame.rest === 'piles' ? [frame.left.length] : []));
    const place = `${step.range.from}-${step.range.to} ${step.do} ${typeof moment.phase} ${moment.phase} ${turns.join()}`;
    if (step.do !== 'move' || (step.who === 'spectator' && !isOpen(step))) return place;
    const { looks } = moveById(step.move);
    if (looks === undefined) return place;
    const { table, numbers, phase } = moment;
    const view = { layout: layoutOfTable(table), phase, numbers, seen: undefined };
    const seen = looks.observe(step.args, seenTable(table, start.cards, this.bits), view);
    return `${place} ${typeof seen} ${String(seen)}`;
  }

  private isTrue({ start, moment }: Possible): boolean {
    return this.sentences.every((sentence) => {
      const said = sentenceAt(sentence)(exitAt(start, moment), this.bits);
      if (!said.ok) throw new Error(`makes no sense: ${said.error.code}`);
      return said.value.test(moment.table);
    });
  }

  private idOf({ start, moment }: Possible): string {
    let id = this.ids.get(start);
    if (id === undefined) this.ids.set(start, (id = this.ids.size));
    return `${id}|${this.keys.place(moment)}|${tableKey(moment.table)}`;
  }
}

function isOpen(step: Extract<Step, { do: 'move' }>): boolean {
  if (step.who === 'performer') return true;
  return !step.secret && (step.open === true || isOpenByNature(moveById(step.move), step.args));
}

/** Done where nobody sees that it is done: a spectator's move in secret, or something of the spectator's around nothing else. */
function isHidden(step: Step): boolean {
  if (step.do === 'move') return step.who === 'spectator' && step.secret;
  if ((step.do === 'repeat' || step.do === 'either') && step.who === 'performer') return false;
  const inside =
    step.do === 'either'
      ? step.branches.flat()
      : step.do === 'if'
        ? [...step.then, ...step.otherwise]
        : step.body;
  return inside.length > 0 && inside.every(isHidden);
}
