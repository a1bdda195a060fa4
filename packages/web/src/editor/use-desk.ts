import { useEffect, useState } from 'react';
import { useStore } from '../ui/store.ts';
import { createEngine } from '../worker/client.ts';
import { NOTHING_KNOWN, openDesk, type Desk, type Known, type Wanted } from './desk.ts';

/** A pause in typing after which the engine reads, in milliseconds. */
const PAUSE = 30;

/** What the engine knows of the text; it works in a thread of its own and never holds up a key. */
export function useDesk({ text, performance, step, breaking }: Wanted): Known {
  const [desk, setDesk] = useState<Desk>();
  useEffect(() => {
    const opened = openDesk(createEngine(), createEngine());
    setDesk(opened);
    return () => opened.stop();
  }, []);
  useEffect(() => {
    if (desk === undefined) return undefined;
    const timer = setTimeout(() => desk.want({ text, performance, step, breaking }), PAUSE);
    return () => clearTimeout(timer);
  }, [desk, text, performance, step, breaking]);
  return useStore(desk?.known ?? NO_DESK);
}

const NO_DESK = {
  get: (): Known => NOTHING_KNOWN,
  set: () => {},
  subscribe: () => () => {},
};
