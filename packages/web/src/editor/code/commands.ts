import type { EditorView } from '@codemirror/view';
import { insertStep, moveStep, stepAt, type TextChange } from '../steps.ts';

/** Makes a change of the text as one thing to undo, and shows where it was made. */
export function apply(view: EditorView, change: TextChange | undefined, userEvent = 'input'): boolean {
  if (change === undefined) return false;
  const { from, to, insert, caret } = change;
  view.dispatch({
    changes: { from, to, insert },
    selection: { anchor: Math.min(caret, view.state.doc.length - (to - from) + insert.length) },
    scrollIntoView: true,
    userEvent,
  });
  return true;
}

/** Changes the step at the caret with its neighbour. */
export function moveStepAtCaret(by: -1 | 1) {
  return (view: EditorView): boolean => {
    const text = view.state.doc.toString();
    const step = stepAt(text, view.state.selection.main.head);
    return step !== undefined && apply(view, moveStep(text, step.number, by), 'move.step');
  };
}

/** Puts a sentence in before the step at the caret, or at the end of the working. */
export function insertAtCaret(view: EditorView, sentence: string): boolean {
  const text = view.state.doc.toString();
  const step = stepAt(text, view.state.selection.main.head);
  return apply(view, insertStep(text, sentence, step?.number), 'input.step');
}

/** Replaces the text with as small a change as will do, so that the caret and the history keep their place. */
export function replaceText(view: EditorView, text: string, userEvent: string): void {
  const now = view.state.doc.toString();
  if (now === text) return;
  let from = 0;
  while (from < now.length && from < text.length && now[from] === text[from]) from += 1;
  let end = 0;
  const most = Math.min(now.length, text.length) - from;
  while (end < most && now[now.length - 1 - end] === text[text.length - 1 - end]) end += 1;
  view.dispatch({
    changes: { from, to: now.length - end, insert: text.slice(from, text.length - end) },
    userEvent,
  });
}
