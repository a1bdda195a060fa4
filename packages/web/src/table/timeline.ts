import type { Scene, TableData } from '@foregone/engine';
import { place, type Placed, type Pose } from './place.ts';

/** One motion: from one table to the next, in milliseconds from the start of the performance. */
interface Stretch {
  readonly from: Placed;
  readonly to: Placed;
  readonly start: number;
  readonly end: number;
}

/** A whole performance in time. Every frame, forward, backward or still, is `poseAt` some moment of it. */
export interface Timeline {
  readonly stretches: readonly Stretch[];
  /** When each scene begins; one more entry for the end. */
  readonly scenes: readonly number[];
  readonly length: number;
  readonly last: Placed;
}

const BEAT = 280;
const LONGEST_SCENE = 2600;
const SHORTEST_BEAT = 45;

/** The motions of a performance so far, on a table of this width. */
export function timelineOf(start: TableData, scenes: readonly Scene[], width: number): Timeline {
  const stretches: Stretch[] = [];
  const begins: number[] = [];
  let at = 0;
  let last = place(start, width);
  for (const scene of scenes) {
    begins.push(at);
    const beat = Math.max(SHORTEST_BEAT, Math.min(BEAT, LONGEST_SCENE / Math.max(1, scene.beats.length)));
    for (const { after } of scene.beats) {
      const to = place(after, width);
      stretches.push({ from: last, to, start: at, end: at + beat });
      at += beat;
      last = to;
    }
  }
  return { stretches, scenes: [...begins, at], length: at, last };
}

function ease(p: number): number {
  return p < 0.5 ? 4 * p ** 3 : 1 - (-2 * p + 2) ** 3 / 2;
}

function between(a: Pose, b: Pose, p: number): Pose {
  const moved = Math.hypot(b.x - a.x, b.y - a.y);
  const travels = moved > 0.5 || a.turn !== b.turn || a.spin !== b.spin;
  const lift = Math.sin(Math.PI * p) * Math.min(46, moved * 0.22);
  return {
    x: a.x + (b.x - a.x) * p,
    y: a.y + (b.y - a.y) * p - lift,
    z: travels && p > 0 && p < 1 ? 1000 + Math.max(a.z, b.z) : p < 1 ? a.z : b.z,
    turn: a.turn + (b.turn - a.turn) * p,
    spin: a.spin + (b.spin - a.spin) * p,
  };
}

/** Where every card is at a moment. */
export function poseAt(timeline: Timeline, time: number): ReadonlyMap<number, Pose> {
  const { stretches, last } = timeline;
  let low = 0;
  let high = stretches.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (stretches[middle]!.end <= time) low = middle + 1;
    else high = middle;
  }
  const stretch = stretches[low];
  if (stretch === undefined) return last.poses;
  const { from, to, start, end } = stretch;
  const p = ease(Math.min(1, Math.max(0, (time - start) / (end - start))));
  const poses = new Map<number, Pose>();
  for (const [id, b] of to.poses) poses.set(id, between(from.poses.get(id) ?? b, b, p));
  return poses;
}

/** The piles as they are labelled at a moment: those the motion leads to. */
export function pilesAt(timeline: Timeline, time: number): Placed {
  const stretch = timeline.stretches.find(({ end }) => time < end);
  return stretch === undefined ? timeline.last : time <= stretch.start ? stretch.from : stretch.to;
}

/** The scene that is going on at a moment; -1 before anything has been done. */
export function sceneAt({ scenes }: Timeline, time: number): number {
  let found = -1;
  for (let i = 0; i + 1 < scenes.length; i++) if (scenes[i]! < time || (time === 0 && i === -1)) found = i;
  return found;
}
