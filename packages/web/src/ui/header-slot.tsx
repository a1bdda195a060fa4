import { useState, type ReactNode } from 'react';
import { createPortal } from 'react-dom';
import { createStore, useStore } from './store.ts';

const place = createStore<HTMLElement | null>(null);

/** Where the header leaves room for what the open room has to say: a title, whether it is saved. */
export function HeaderPlace() {
  const [settle] = useState(() => (element: HTMLElement | null) => place.set(element));
  return <div className="header-place" ref={settle} />;
}

/** Puts its children into the header's free place. */
export function InHeader({ children }: { readonly children: ReactNode }) {
  const element = useStore(place);
  return element === null ? null : createPortal(children, element);
}
