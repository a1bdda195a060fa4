import type { EditorView } from '@codemirror/view';
import { stepsIn } from './steps.ts';

/** Line ends as the editor has them, so that places in the text are the same for it and for the engine. */
export function lined(text: string): string {
  return text.replace(/\r\n?/g, '\n');
}

export function sentenceAt(text: string, number: string | undefined): string {
  return stepsIn(text).find((one) => one.number === number)?.sentence ?? '';
}

/** How far a place of the text stands below the top of the columns. */
export function topIn(view: EditorView, at: number): number {
  const columns = view.dom.closest('.note-columns');
  if (columns === null) return 0;
  const block = view.lineBlockAt(Math.min(at, view.state.doc.length));
  return view.documentTop + block.top - columns.getBoundingClientRect().top;
}

export function pilesOf(
  tables: readonly { readonly piles: readonly { readonly name: string; readonly passing: boolean }[] }[],
): string[] {
  const names = tables.flatMap(({ piles }) =>
    piles.filter(({ passing }) => !passing).map(({ name }) => name),
  );
  return [...new Set(['the packet', ...names.map((name) => (name === 'packet' ? 'the packet' : name))])];
}
