import { useEffect, useState } from 'react';
import { useStore } from '../ui/store.ts';
import { createEngine } from '../worker/client.ts';
import { openDesk, type Desk, type Known } from './desk.ts';

/** A pause in typing after which the engine reads. */
const PAUSE = 180;

/** What the engine knows of the text; it works in a thread of its own and never holds up a key. */
export function useDesk(text: string, performance: number, step: string | undefined): Known {
  const [desk, setDesk] = useState<Desk>();
  useEffect(() => {
    const opened = openDesk(createEngine());
    setDesk(opened);
    return () => opened.stop();
  }, []);
  useEffect(() => {
    if (desk === undefined) return undefined;
    const timer = setTimeout(() => desk.want({ text, performance, step }), PAUSE);
    return () => clearTimeout(timer);
  }, [desk, text, performance, step]);
  return useStore(desk?.known ?? NO_DESK);
}

const NO_DESK = {
  get: (): Known => NO_KNOWLEDGE,
  set: () => {},
  subscribe: () => () => {},
};
const NO_KNOWLEDGE: Known = {
  reading: undefined,
  report: undefined,
  play: undefined,
  moments: undefined,
  safe: undefined,
  busy: undefined,
  fault: undefined,
};
