import { claimById } from '../claims/index.ts';
import { moveById } from '../moves/index.ts';
import { BLANKS } from '../phrases/blanks.ts';
import { printPile } from '../phrases/blanks/pile.ts';
import { printPhrases } from '../phrases/phrase.ts';
import { SEEN } from '../moves/seeing.ts';
import type { Ending, IfStep, MoveStep, Sentence, Step } from '../routine/routine.ts';
import { printHead, type Head } from './blocks.ts';
import { printChance } from './chance.ts';
import { isCondition } from './outline.ts';
import { lowerFirst, printClause, upperFirst } from './print-clause.ts';

/**
 * A step in words, on one line: `Cut the packet.`, `Any number of times: cut the packet; turn over the top card.` For people:
 * a block inside a block is not told from what follows it; `printWorking` writes what can be read again.
 */
export function printStep(step: Step): string {
  return `${upperFirst(words(step))}.`;
}

function words(step: Step, see?: MoveStep): string {
  const inner = (steps: readonly Step[]): string =>
    steps.length === 0
      ? 'do nothing'
      : taken(steps)
          .map((one) => lowerFirst(words(...one)))
          .join('; ');
  switch (step.do) {
    case 'move':
      return printMove(step);
    case 'repeat':
    case 'each':
      return `${printHead(headOf(step))}: ${inner(step.body)}`;
    case 'either':
      return `${printHead(headOf(step))}: ${step.branches.map(inner).join(', or ')}`;
    case 'if': {
      const { head, first, second } = sidesOf(step, see);
      const otherwise = second === null ? '' : `; otherwise: ${inner(second)}`;
      // By itself the block does not say what was looked at before it.
      const apart = step.when.number === SEEN && see === undefined;
      return `${apart ? 'If so' : printHead(head)}: ${inner(first)}${otherwise}`;
    }
  }
}

/** Steps one by one, a block together with the look at the cards that it rests on. */
function taken(steps: readonly Step[]): (readonly [Step, MoveStep?])[] {
  return steps.flatMap((step, i): (readonly [Step, MoveStep?])[] => {
    const before = steps[i - 1];
    if (isCondition(step) && steps[i + 1]?.do === 'if') return [];
    return step.do === 'if' && before?.do === 'move' && isCondition(before) ? [[step, before]] : [[step]];
  });
}

/** The head a block was made from. */
function headOf(step: Exclude<Step, MoveStep | IfStep>): Head {
  switch (step.do) {
    case 'repeat':
      return { is: 'repeat', times: step.times, who: step.who };
    case 'either':
      return { is: 'either', who: step.who };
    case 'each':
      return { is: 'each', stem: step.stem };
  }
}

/** What an `If` says and what an `Otherwise` after it. One without steps of its own is a denial, where a denial can be said. */
function sidesOf(
  { when, then, otherwise }: IfStep,
  see: MoveStep | undefined,
): { head: Head; first: readonly Step[]; second: readonly Step[] | null } {
  if (see !== undefined) {
    const { args, secret } = see;
    const head: Head = { is: 'if', when, not: false, see: { move: moveById(see.move), args, secret } };
    return { head, first: then, second: otherwise.length > 0 ? otherwise : null };
  }
  const not = then.length === 0 && otherwise.length > 0 && when.is === 'equal';
  const head: Head = { is: 'if', when, not };
  if (not) return { head, first: otherwise, second: null };
  return { head, first: then, second: otherwise.length > 0 ? otherwise : null };
}

/** A move in words, without its stop. */
export function printMove(step: MoveStep): string {
  const move = moveById(step.move);
  const text = printClause({
    move,
    args: step.args,
    who: step.who,
    secret: step.secret,
    open: step.open === true,
  });
  // The phrases of a move can say everything it can mean; that is a law of moves.
  if (text === null) throw new Error(`${step.move} cannot say ${JSON.stringify(step.args)}`);
  return text;
}

/** The steps as the Markdown of a working, a line or more for each, that reads back as the same steps. */
export function printWorking(steps: readonly Step[], indent = ''): string {
  let number = 0;
  const lines: string[] = [];
  const item = (text: string): void => void lines.push(`${indent}${++number}. ${text}`);
  const under = (body: readonly Step[]): void => {
    const inner = `${indent}${' '.repeat(`${number}. `.length)}`;
    if (body.length === 0) lines.push(`${inner}1. Do nothing.`);
    else lines.push(printWorking(body, inner));
  };
  for (const [step, see] of taken(steps)) {
    if (step.do === 'move') {
      item(`${printMove(step)}.`);
      continue;
    }
    if (step.do === 'if') {
      const { head, first, second } = sidesOf(step, see);
      item(`${printHead(head)}:`);
      under(first);
      if (second === null) continue;
      item('Otherwise:');
      under(second);
      continue;
    }
    item(`${printHead(headOf(step))}:`);
    if (step.do !== 'either') under(step.body);
    else
      for (const branch of step.branches)
        lines.push(printBranch(branch, `${indent}${' '.repeat(`${number}. `.length)}`));
  }
  return lines.join('\n');
}

/** A bullet: moves on one line, else a list of its own beside the dot. */
function printBranch(branch: readonly Step[], indent: string): string {
  if (branch.length === 0) return `${indent}- Do nothing.`;
  if (!branch.every((step) => step.do === 'move'))
    return `${indent}- ${printWorking(branch, `${indent}  `).trimStart()}`;
  return `${indent}- ${branch.map((step, i) => (i === 0 ? printMove(step) : lowerFirst(printMove(step)))).join('; ')}.`;
}

/** A sentence of the ending with the chance that is asked of it, in words, with its stop. */
export function printEnding({ sentence, chance }: Pick<Ending, 'sentence' | 'chance'>): string {
  if (chance === undefined) return printSentence(sentence);
  return `${upperFirst(printChance(chance))}, ${lowerFirst(printSentence(sentence))}`;
}

/** A sentence of the ending in words, with its stop; brackets where the joins would else be read otherwise. */
export function printSentence(sentence: Sentence): string {
  return `${upperFirst(says(sentence))}.`;
}

function says(sentence: Sentence): string {
  switch (sentence.says) {
    case 'claim': {
      const claim = claimById(sentence.claim);
      const text = printPhrases(claim.phrases, sentence.args, claim.defaults, BLANKS);
      // The phrases of a claim can say everything it can mean; that is a law of claims.
      if (text === null) throw new Error(`${sentence.claim} cannot say ${JSON.stringify(sentence.args)}`);
      return lowerFirst(text);
    }
    case 'and':
    case 'or': {
      const joint = sentence.says === 'and' ? ' and ' : ', or ';
      return sentence.parts.map((part) => grouped(part, sentence.says === 'or' ? ['and'] : [])).join(joint);
    }
    case 'not':
      return `it is not true that ${grouped(sentence.part, ['and', 'or', 'not', 'if', 'exactly when'])}`;
    case 'if':
      return `if ${grouped(sentence.when, ['and', 'or'])}, then ${grouped(sentence.then, ['and', 'or'])}`;
    case 'exactly when':
      return `${grouped(sentence.left, ['and', 'or'])} exactly when ${grouped(sentence.right, ['and', 'or'])}`;
    case 'up to': {
      const part = grouped(sentence.part, ['and', 'or', 'not', 'if', 'exactly when', 'up to']);
      const pile = printPile(sentence.pile);
      if (sentence.by === 'turn') return `${part}, up to turning ${pile} over`;
      return sentence.pile === 'packet' ? `${part}, up to a cut` : `${part}, up to a cut of ${pile}`;
    }
  }
}

/** A part that would join differently is put in brackets; so is a claim whose own words look like a join. */
function grouped(part: Sentence, plain: readonly Sentence['says'][]): string {
  const text = says(part);
  if (part.says === 'claim')
    return /\b(and|or|but|if|then|exactly when|up to)\b/.test(text) ? `(${text})` : text;
  return plain.includes(part.says) ? text : `(${text})`;
}
