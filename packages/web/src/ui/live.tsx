import { createStore, useStore } from './store.ts';

interface Said {
  readonly text: string;
  /** Two places are spoken from in turn, so that the same words said twice are spoken twice. */
  readonly turn: number;
  readonly urgent: boolean;
}

const store = createStore<Said>({ text: '', turn: 0, urgent: false });

/** Says something to people who listen to the page rather than see it. */
export function say(text: string, { urgent = false } = {}): void {
  store.set({ text, turn: store.get().turn + 1, urgent });
}

export function LiveRegion() {
  const { text, turn, urgent } = useStore(store);
  const place = (isUrgent: boolean, parity: number) =>
    urgent === isUrgent && turn % 2 === parity ? text : '';
  return (
    <div className="said-only">
      <div role="status">{place(false, 0)}</div>
      <div role="status">{place(false, 1)}</div>
      <div role="alert">{place(true, 0)}</div>
      <div role="alert">{place(true, 1)}</div>
    </div>
  );
}
