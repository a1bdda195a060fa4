import { useEffect, useLayoutEffect, useState, type RefObject } from 'react';

/** Width of an element in pixels, kept as the window changes. */
export function useWidth(place: RefObject<HTMLElement | null>): number {
  const [width, setWidth] = useState(720);
  useLayoutEffect(() => {
    const element = place.current;
    if (element === null) return;
    const measure = () => setWidth(Math.max(240, Math.floor(element.clientWidth)));
    measure();
    const observer = new ResizeObserver(measure);
    observer.observe(element);
    return () => observer.disconnect();
  }, [place]);
  return width;
}

/** Minutes and seconds since it began to run; it stands still while it does not. */
export function useClock(running: boolean): string {
  const [seconds, setSeconds] = useState(0);
  useEffect(() => {
    if (!running) return;
    const timer = setInterval(() => setSeconds((s) => s + 1), 1000);
    return () => clearInterval(timer);
  }, [running]);
  return `${Math.floor(seconds / 60)}:${String(seconds % 60).padStart(2, '0')}`;
}
