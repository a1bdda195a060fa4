import { compile, type Compiled } from '../../src/note/compile.ts';
import { read } from '../../src/note/read.ts';
import type { Step, Sentence } from '../../src/routine/routine.ts';

const SET_UP = '- packet: A-8 of clubs, face down';

export function shortNote(working: string, ending = '- All cards are face down.', setUp = SET_UP): string {
  return `## Set-up\n${setUp}\n\n## Working\n${working}\n\n## Ending\n${ending}\n`;
}

export function compiled(working: string, ending?: string, setUp?: string): Compiled {
  return compile(read(shortNote(working, ending, setUp)));
}

/** What stands against a note, without readings: `code "place"`. */
export function troubles(working: string, ending?: string, setUp?: string): string[] {
  const text = shortNote(working, ending, setUp);
  return compile(read(text))
    .diagnostics.filter(({ severity }) => severity !== 'reading')
    .map(({ code, range }) => `${code} "${text.slice(range.from, range.to)}"`);
}

/** The steps of a working that is understood, told shortly: `1 cut`, `2 repeat any [2.1 cut by you in secret]`. */
export function told(working: string, setUp?: string): string[] {
  const { routine, diagnostics } = compiled(working, undefined, setUp);
  if (routine === undefined)
    throw new Error(diagnostics.map(({ code, facts }) => `${code} ${JSON.stringify(facts)}`).join('\n'));
  return routine.steps.map(tell);
}

function tell(step: Step): string {
  const inside = (steps: readonly Step[]): string => `[${steps.map(tell).join(', ')}]`;
  const by = 'who' in step && step.who === 'performer' ? ' by you' : '';
  switch (step.do) {
    case 'move':
      return `${step.number} ${step.move}${by}${step.secret ? ' in secret' : ''}`;
    case 'repeat': {
      const { times } = step;
      const n = times.of === 'any' ? '' : ` ${typeof times.n === 'number' ? times.n : times.n.var}`;
      return `${step.number} repeat ${times.of}${n}${by} ${inside(step.body)}`;
    }
    case 'either':
      return `${step.number} either${by} ${step.branches.map(inside).join(' or ')}`;
    case 'each':
      return `${step.number} each ${step.stem} ${inside(step.body)}`;
    case 'if': {
      const { number, is, n } = step.when;
      return `${step.number} if ${number} ${is} ${n} ${inside(step.then)} else ${inside(step.otherwise)}`;
    }
  }
}

/** The sentence of the ending that is understood, told shortly. */
export function toldEnding(ending: string, setUp?: string): string {
  const { routine, diagnostics } = compiled('1. Cut the packet.', ending, setUp);
  if (routine === undefined)
    throw new Error(diagnostics.map(({ code, facts }) => `${code} ${JSON.stringify(facts)}`).join('\n'));
  return routine.endings.map(({ sentence }) => tellSentence(sentence)).join('; ');
}

function tellSentence(sentence: Sentence): string {
  switch (sentence.says) {
    case 'claim':
      return sentence.claim;
    case 'and':
    case 'or':
      return `${sentence.says}(${sentence.parts.map(tellSentence).join(', ')})`;
    case 'not':
      return `not(${tellSentence(sentence.part)})`;
    case 'if':
      return `if(${tellSentence(sentence.when)}, ${tellSentence(sentence.then)})`;
    case 'exactly when':
      return `iff(${tellSentence(sentence.left)}, ${tellSentence(sentence.right)})`;
    case 'up to':
      return `upto-${sentence.by}-${sentence.pile}(${tellSentence(sentence.part)})`;
  }
}
