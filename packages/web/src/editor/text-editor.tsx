import { EditorView } from '@codemirror/view';
import { useEffect, useRef } from 'react';
import { drawer } from './code/drawer.ts';
import { createEditor } from './code/editor.ts';

interface TextEditorProps {
  readonly text: string;
  /** Where the drawer's words are put; the same element for the life of the page. */
  readonly drawerPlace: HTMLElement;
  readonly onReady: (view: EditorView) => void;
  readonly onText: (text: string) => void;
  readonly onCaret: (at: number) => void;
  /** Lines stand elsewhere than before, or others are in sight: those between these places of the text. */
  readonly onLines: (inSight: { readonly from: number; readonly to: number }) => void;
  readonly onFormat: () => void;
  readonly onSafe: () => void;
}

/** The page itself. The editor keeps the text; `text` is only what it opens with. */
export function TextEditor(props: TextEditorProps) {
  const place = useRef<HTMLDivElement>(null);
  const told = useRef(props);
  told.current = props;

  useEffect(() => {
    const parent = place.current;
    if (parent === null) return undefined;
    const view = createEditor({
      parent,
      text: told.current.text,
      onFormat: () => told.current.onFormat(),
      onSafe: () => told.current.onSafe(),
      extensions: [
        drawer(told.current.drawerPlace),
        EditorView.updateListener.of((update) => {
          if (update.docChanged) told.current.onText(update.state.doc.toString());
          if (update.docChanged || update.selectionSet)
            told.current.onCaret(update.state.selection.main.head);
          if (update.geometryChanged || update.docChanged || update.viewportChanged)
            told.current.onLines(update.view.viewport);
        }),
      ],
    });
    told.current.onReady(view);
    return () => view.destroy();
  }, []);

  return <div className="editor" ref={place} />;
}
