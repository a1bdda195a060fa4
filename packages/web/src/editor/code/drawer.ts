import { StateEffect, StateField } from '@codemirror/state';
import { Decoration, EditorView, WidgetType, type DecorationSet } from '@codemirror/view';

/** Opens a place for the margin's words beneath the line that holds this position; null closes it. */
export const setDrawer = StateEffect.define<number | null>();

class DrawerWidget extends WidgetType {
  readonly place: HTMLElement;
  constructor(place: HTMLElement) {
    super();
    this.place = place;
  }
  override eq(other: DrawerWidget): boolean {
    return other.place === this.place;
  }
  toDOM(): HTMLElement {
    return this.place;
  }
  override ignoreEvent(): boolean {
    return true;
  }
}

/** On a narrow page the margin is a drawer under the step at the caret; `place` is filled by the room. */
export function drawer(place: HTMLElement) {
  const widget = Decoration.widget({ widget: new DrawerWidget(place), block: true, side: 1 });
  return StateField.define<DecorationSet>({
    create: () => Decoration.none,
    update(held, transaction) {
      let next = transaction.docChanged ? held.map(transaction.changes) : held;
      for (const effect of transaction.effects) {
        if (!effect.is(setDrawer)) continue;
        const doc = transaction.newDoc;
        next =
          effect.value === null
            ? Decoration.none
            : Decoration.set(widget.range(doc.lineAt(Math.min(effect.value, doc.length)).to));
      }
      return next;
    },
    provide: (field) => EditorView.decorations.from(field),
  });
}
