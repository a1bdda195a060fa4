import { autocompletion, closeBrackets, completionKeymap } from '@codemirror/autocomplete';
import { defaultKeymap, history, historyKeymap } from '@codemirror/commands';
import { codeFolding, foldEffect, foldKeymap } from '@codemirror/language';
import { forEachDiagnostic, linter, lintKeymap } from '@codemirror/lint';
import { highlightSelectionMatches, search, searchKeymap } from '@codemirror/search';
import { EditorSelection, EditorState, type Extension } from '@codemirror/state';
import { drawSelection, EditorView, highlightActiveLine, keymap, type Command } from '@codemirror/view';
import { styleNonce } from '../../ui/style-policy.ts';
import { noteLanguage } from '../steps.ts';
import { moveStepAtCaret } from './commands.ts';
import { ink } from './ink.ts';
import { sentences } from './sentences.ts';
import { understoodWords } from './understood.ts';

interface EditorOptions {
  readonly parent: HTMLElement;
  readonly text: string;
  readonly extensions: readonly Extension[];
  readonly onFormat: () => void;
  readonly onSafe: () => void;
}

/** Takes the first mending that the trouble at the caret offers. */
const mend: Command = (view) => {
  const { head } = view.state.selection.main;
  let done = false;
  forEachDiagnostic(view.state, ({ actions }, from, to) => {
    if (done || head < from || head > to) return;
    const [first] = actions ?? [];
    if (first === undefined) return;
    done = true;
    // Changing the text while its troubles are gone through would change them underfoot.
    queueMicrotask(() => first.apply(view, from, to));
  });
  return done;
};

/** The page as an editor: words, keys and marks; what is drawn in it comes by effects. */
export function createEditor({ parent, text, extensions, onFormat, onSafe }: EditorOptions): EditorView {
  const run = (task: () => void): Command => {
    return () => {
      task();
      return true;
    };
  };
  const view = new EditorView({
    parent,
    state: EditorState.create({
      doc: text,
      extensions: [
        EditorView.cspNonce.of(styleNonce),
        EditorView.contentAttributes.of({ 'aria-label': 'Text of the note', spellcheck: 'true' }),
        EditorView.lineWrapping,
        noteLanguage,
        // For as long as the page is open; after that the note's own history goes on.
        history({ minDepth: 1_000_000 }),
        drawSelection(),
        highlightActiveLine(),
        highlightSelectionMatches(),
        codeFolding({ placeholderText: 'title, minutes, credits …' }),
        search({ top: true }),
        closeBrackets(),
        autocompletion({ override: [sentences], icons: false }),
        linter(null),
        ink,
        understoodWords,
        keymap.of([
          { key: 'Alt-ArrowUp', run: moveStepAtCaret(-1), preventDefault: true },
          { key: 'Alt-ArrowDown', run: moveStepAtCaret(1), preventDefault: true },
          { key: 'Mod-Shift-f', run: run(onFormat), preventDefault: true },
          { key: 'Alt-Enter', run: mend },
          { key: 'Mod-Enter', run: run(onSafe) },
          ...completionKeymap,
          ...lintKeymap,
          ...searchKeymap,
          ...historyKeymap,
          ...foldKeymap,
          ...defaultKeymap,
        ]),
        ...extensions,
      ],
    }),
  });
  foldHead(view);
  return view;
}

/** Closes the note's head: what it says stands at the head of the page. */
function foldHead(view: EditorView): void {
  const text = view.state.doc.toString();
  const head = /^---\r?\n[\s\S]*?\n---(?=\r?\n|$)/.exec(text);
  if (head === null) return;
  view.dispatch({
    effects: foldEffect.of({ from: 3, to: head[0].length }),
    selection: EditorSelection.cursor(Math.min(text.length, head[0].length + 1)),
  });
}
