import { useRef } from 'react';

/** The same function for the life of a component, doing what the latest one does: what is drawn with it need not be drawn anew. */
export function useLatest<Given extends readonly unknown[], Got>(
  run: (...given: Given) => Got,
): (...given: Given) => Got {
  const latest = useRef(run);
  latest.current = run;
  const stable = useRef((...given: Given) => latest.current(...given));
  return stable.current;
}
