import { useEffect } from 'react';
import { Button } from './button.tsx';
import { Icon } from './icons.tsx';
import { say } from './live.tsx';
import { createStore, useStore } from './store.ts';

export interface NoticeAction {
  readonly label: string;
  readonly run: () => void;
}

export interface Notice {
  readonly text: string;
  readonly tone?: 'pencil' | 'brick';
  readonly action?: NoticeAction;
  /** Milliseconds until it goes by itself; without it, it stays until dismissed. */
  readonly lasts?: number;
}

interface Numbered extends Notice {
  readonly id: number;
}

const MOST = 3;
const store = createStore<readonly Numbered[]>([]);
let last = 0;

/** Shows a line at the foot of the page, and says it. Gives back a way to take it away again. */
export function notify(notice: Notice): () => void {
  const id = ++last;
  store.set([...store.get(), { ...notice, id }].slice(-MOST));
  say(notice.action === undefined ? notice.text : `${notice.text} ${notice.action.label} is offered.`);
  return () => dismiss(id);
}

function dismiss(id: number): void {
  store.set(store.get().filter((notice) => notice.id !== id));
}

export function Notices() {
  const notices = useStore(store);
  return (
    <section className="notices" aria-label="Notices">
      {notices.map((notice) => (
        <Line key={notice.id} notice={notice} />
      ))}
    </section>
  );
}

function Line({ notice }: { readonly notice: Numbered }) {
  const { id, lasts } = notice;
  useEffect(() => {
    if (lasts === undefined) return undefined;
    const timer = setTimeout(() => dismiss(id), lasts);
    return () => clearTimeout(timer);
  }, [id, lasts]);
  const { action } = notice;
  return (
    <div className="notice" data-tone={notice.tone ?? 'pencil'}>
      <span>{notice.text}</span>
      {action !== undefined && (
        <Button
          tone="quiet"
          onPress={() => {
            dismiss(id);
            action.run();
          }}
        >
          <span className="pencil">{action.label}</span>
        </Button>
      )}
      <Button tone="icon" label="Dismiss" onPress={() => dismiss(id)}>
        <Icon name="close" />
      </Button>
    </div>
  );
}
