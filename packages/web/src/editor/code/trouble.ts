import { setDiagnostics, type Action, type Diagnostic } from '@codemirror/lint';
import type { EditorState, TransactionSpec } from '@codemirror/state';
import type { Report } from '@foregone/engine';

/** A report's diagnostics as the editor shows them, each with the changes that would mend it. */
export function troubles(state: EditorState, { diagnostics }: Report): TransactionSpec {
  return setDiagnostics(
    state,
    diagnostics.flatMap(({ range, severity, words, remedy, fixes }): Diagnostic[] => {
      const length = state.doc.length;
      if (range.from > length) return [];
      return [
        {
          from: range.from,
          to: Math.min(range.to, length),
          severity: severity === 'reading' ? 'info' : severity,
          message: remedy === '' ? words : `${words} ${remedy}`,
          markClass: `trouble-${severity}`,
          actions: fixes.map(({ label, range: place, text }): Action => ({
            name: severity === 'reading' ? 'Yes, this is meant' : label,
            apply(view) {
              if (place.to > view.state.doc.length) return;
              view.dispatch({
                changes: { from: place.from, to: place.to, insert: text },
                userEvent: 'input.fix',
              });
            },
          })),
        },
      ];
    }),
  );
}
