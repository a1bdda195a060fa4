import { syntaxTree } from '@codemirror/language';
import type { Range } from '@codemirror/state';
import {
  Decoration,
  ViewPlugin,
  type DecorationSet,
  type EditorView,
  type ViewUpdate,
} from '@codemirror/view';

const LINES: Readonly<Record<string, string>> = {
  ATXHeading1: 'line-title',
  ATXHeading2: 'line-section',
  ATXHeading3: 'line-section',
  Blockquote: 'line-patter',
  Frontmatter: 'line-head',
};

const MARKS: Readonly<Record<string, string>> = {
  HeaderMark: 'mark-quiet',
  QuoteMark: 'mark-quiet',
  ListMark: 'mark-number',
  Emphasis: 'mark-italic',
  StrongEmphasis: 'mark-bold',
};

/** Sets Markdown as a page is set: heads as small capitals, patter in italic, signs in second ink. */
export const ink = ViewPlugin.fromClass(
  class {
    decorations: DecorationSet;
    constructor(view: EditorView) {
      this.decorations = drawn(view);
    }
    update(update: ViewUpdate) {
      const grown = syntaxTree(update.startState) !== syntaxTree(update.state);
      if (update.docChanged || update.viewportChanged || grown) this.decorations = drawn(update.view);
    }
  },
  { decorations: (plugin) => plugin.decorations },
);

function drawn(view: EditorView): DecorationSet {
  const found: Range<Decoration>[] = [];
  const { doc } = view.state;
  for (const { from, to } of view.visibleRanges) {
    syntaxTree(view.state).iterate({
      from,
      to,
      enter(node) {
        const line = LINES[node.name];
        if (line !== undefined) {
          const last = doc.lineAt(Math.min(node.to, to)).number;
          for (let number = doc.lineAt(Math.max(node.from, from)).number; number <= last; number += 1) {
            const at = doc.line(number);
            // A block that ends at a line's beginning does not have that line.
            if (at.from >= node.to && at.from > node.from) break;
            found.push(Decoration.line({ class: line }).range(at.from));
          }
        }
        const mark = MARKS[node.name];
        if (mark !== undefined && node.to > node.from)
          found.push(Decoration.mark({ class: mark }).range(node.from, node.to));
      },
    });
  }
  return Decoration.set(found, true);
}
