import { useCallback, useEffect, useRef, useState } from 'react';
import { prefersStillness } from '../ui/preferences.ts';
import { poseAt, type Timeline } from './timeline.ts';
import type { Pose } from './place.ts';

export interface Playhead {
  /** Milliseconds from the start; changes when a scene is passed and when motion stops, not every frame. */
  readonly time: number;
  readonly moving: boolean;
  readonly speed: number;
  readonly setSpeed: (speed: number) => void;
  /** Shows one moment and stops. */
  readonly scrub: (time: number) => void;
  /** Plays from here to the end. */
  readonly play: () => void;
  readonly pause: () => void;
  readonly setPainter: (paint: (poses: ReadonlyMap<number, Pose>) => void) => void;
}

/** Moves through a timeline. When the timeline grows, what is new is played; reduced motion shows its end at once. */
export function usePlayhead(timeline: Timeline): Playhead {
  const [time, setTime] = useState(0);
  const [moving, setMoving] = useState(false);
  const [speed, setSpeed] = useState(1);
  const at = useRef(0);
  const paint = useRef<(poses: ReadonlyMap<number, Pose>) => void>(() => {});
  const known = useRef(timeline);

  const show = useCallback(
    (to: number) => {
      at.current = Math.max(0, Math.min(to, timeline.length));
      paint.current(poseAt(timeline, at.current));
      setTime(at.current);
    },
    [timeline],
  );

  useEffect(() => {
    const grew = timeline.length > known.current.length;
    known.current = timeline;
    if (grew && !prefersStillness()) setMoving(true);
    else {
      setMoving(false);
      show(timeline.length);
    }
  }, [timeline, show]);

  useEffect(() => {
    if (!moving) return;
    let last: number | undefined;
    let frame = requestAnimationFrame(function step(now) {
      at.current = Math.min(timeline.length, at.current + (last === undefined ? 0 : (now - last) * speed));
      last = now;
      paint.current(poseAt(timeline, at.current));
      if (at.current >= timeline.length) {
        setMoving(false);
        setTime(at.current);
      } else frame = requestAnimationFrame(step);
    });
    return () => cancelAnimationFrame(frame);
  }, [moving, timeline, speed]);

  const setPainter = useCallback(
    (painter: (poses: ReadonlyMap<number, Pose>) => void) => {
      paint.current = painter;
      painter(poseAt(timeline, at.current));
    },
    [timeline],
  );

  return {
    time,
    moving,
    speed,
    setSpeed,
    setPainter,
    scrub: (to) => {
      setMoving(false);
      show(to);
    },
    play: () => {
      if (at.current >= timeline.length) at.current = 0;
      if (prefersStillness()) show(timeline.length);
      else setMoving(true);
    },
    pause: () => {
      setMoving(false);
      setTime(at.current);
    },
  };
}
