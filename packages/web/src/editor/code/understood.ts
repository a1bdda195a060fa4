import { StateEffect, StateField, type EditorState, type Range, type Text } from '@codemirror/state';
import { Decoration, EditorView, hoverTooltip, type DecorationSet } from '@codemirror/view';
import { MOVES, type Report } from '@foregone/engine';
import type { ChoiceAt, Understood } from '../../worker/protocol.ts';

/** What the page draws under the author's words. */
export interface Underlined {
  readonly understood: readonly Understood[];
  readonly choices: readonly ChoiceAt[];
  readonly report: Report | undefined;
}

export const setUnderlined = StateEffect.define<Underlined>();

const HAIRLINE = Decoration.mark({ class: 'understood' });
const FREE = Decoration.mark({ class: 'free' });

interface Held extends Underlined {
  readonly marks: DecorationSet;
}

/** Keeps underlines where the words are while the author types; the next reading replaces them. */
const underlinedField = StateField.define<Held>({
  create: () => ({ understood: [], choices: [], report: undefined, marks: Decoration.none }),
  update(held, transaction) {
    let next = held;
    if (transaction.docChanged) {
      const understood = held.understood.map((one) => ({
        ...one,
        range: {
          from: transaction.changes.mapPos(one.range.from, 1),
          to: transaction.changes.mapPos(one.range.to, -1),
        },
      }));
      next = { ...held, understood, marks: held.marks.map(transaction.changes) };
    }
    for (const effect of transaction.effects) {
      if (effect.is(setUnderlined)) {
        next = { ...effect.value, marks: marksOf(effect.value, transaction.newDoc) };
      }
    }
    return next;
  },
  provide: (field) => EditorView.decorations.from(field, ({ marks }) => marks),
});

function marksOf({ understood, choices }: Underlined, doc: Text): DecorationSet {
  const marks: Range<Decoration>[] = [];
  for (const { range, kind, number } of understood) {
    if (range.to > doc.length || range.from >= range.to) continue;
    marks.push(HAIRLINE.range(range.from, range.to));
    const open = choices.find((choice) => choice.number === number);
    if (kind !== 'step' || open === undefined || open.ways < 2) continue;
    const { from, to } = freeWords(doc.sliceString(range.from, range.to));
    if (to > from) marks.push(FREE.range(range.from + from, range.from + to));
  }
  return Decoration.set(marks, true);
}

const OPEN_WORDS =
  /\b(?:(?:any|some|at least|at most|about|between|an? (?:even|odd))\b[^,.;:]*?(?:number|times|place|order|\d+(?: to \d+)?|half)|anywhere|somewhere|freely|either (?:way|half)|leav(?:e|ing)(?: or (?:turn|swap)(?:ing)?)+|as they like)\b/i;

/** The words of a sentence that give a choice away, else the word that does the deed. */
export function freeWords(sentence: string): { readonly from: number; readonly to: number } {
  const open = OPEN_WORDS.exec(sentence) ?? /[\p{L}'’-]+/u.exec(sentence);
  return open === null ? { from: 0, to: 0 } : { from: open.index, to: open.index + open[0].length };
}

/** The innermost understood sentence at a place. */
export function understoodAt(state: EditorState, at: number): Understood | undefined {
  return state
    .field(underlinedField)
    .understood.filter(({ range }) => range.from <= at && at <= range.to)
    .sort((a, b) => a.range.to - a.range.from - (b.range.to - b.range.from))[0];
}

/** What is said of a sentence when somebody points at it or asks about it. */
export function explained(state: EditorState, at: number): readonly string[] {
  const one = understoodAt(state, at);
  if (one === undefined) return [];
  const { report, choices } = state.field(underlinedField);
  if (one.kind === 'set-up') return ['Set-up', 'These cards are understood.'];
  if (one.kind === 'ending') {
    const sentence = report?.sentences.find(
      ({ range }) => range.from < one.range.to && one.range.from < range.to,
    );
    return sentence === undefined
      ? ['Ending', 'Understood; not yet decided.']
      : ['Ending', sentence.why, sentence.by];
  }
  const move = MOVES.find(({ id }) => id === one.move);
  const choice = choices.find(({ number }) => number === one.number);
  const readings = report?.readings.filter(({ number }) => number === one.number) ?? [];
  return [
    `${one.number} · ${move?.title ?? 'block of steps'}`,
    ...(move === undefined ? [] : [move.help, move.caution]),
    ...(choice === undefined ? [] : [sayChoice(choice)]),
    ...readings.map(({ word, taken }) => `“${word}” is taken to mean: ${taken}.`),
  ].filter((line) => line !== '');
}

/** `The spectator chooses among 8 ways.` Inside a mix, it is the first decision of several that is counted. */
export function sayChoice({ who, ways }: ChoiceAt): string {
  const person = who === 'spectator' ? 'The spectator' : 'The performer';
  return ways < 2 ? 'Nothing is chosen here.' : `${person} chooses among ${ways} ways.`;
}

const explanation = hoverTooltip((view, at) => {
  const lines = explained(view.state, at);
  if (lines.length === 0) return null;
  const range = understoodAt(view.state, at)?.range ?? { from: at, to: at };
  return {
    pos: range.from,
    end: range.to,
    above: true,
    create: () => {
      const dom = document.createElement('div');
      dom.className = 'explanation';
      lines.forEach((line, index) => {
        const paragraph = document.createElement('p');
        paragraph.textContent = line;
        if (index === 0) paragraph.className = 'explanation-title';
        dom.append(paragraph);
      });
      return { dom };
    },
  };
});

export const understoodWords = [underlinedField, explanation];
