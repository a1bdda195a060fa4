import type { Facing, PileLine, Setting } from './setup-syntax.ts';

/** Neighbouring places of a pile, top 0. */
export interface Stretch {
  readonly from: number;
  readonly count: number;
}

export function overlap(a: Stretch, b: Stretch): number {
  return Math.max(0, Math.min(a.from + a.count, b.from + b.count) - Math.max(a.from, b.from));
}

/** How each run faces; runs of one `group` alternate through as one. */
export function facesOf(line: PileLine): { facing: Facing; group: number }[] {
  const all = line.all.find((setting) => setting.sets === 'facing');
  const faces: { facing: Facing; group: number }[] = line.runs.map(() => ({
    facing: all?.sets === 'facing' ? all.facing : 'down',
    group: -1,
  }));
  line.spans.forEach(({ from, to, setting }, group) => {
    if (setting.sets === 'facing')
      for (let k = from; k <= to; k++) faces[k] = { facing: setting.facing, group };
  });
  return faces;
}

/** Whether a card lies face up: `own` is its mark in the list, `flip` how many came before it in its group. */
export function lies(facing: Facing, own: 'up' | 'down' | null, flip: number): 0 | 1 {
  if (facing === 'free') return 0;
  if (own !== null) return own === 'up' ? 1 : 0;
  if (facing === 'up' || facing === 'down') return facing === 'up' ? 1 : 0;
  return (flip % 2 === 0) === (facing === 'up and down') ? 1 : 0;
}

/** Whether something is said of a run, by its own words or by those about the whole line. */
export function isSaid(line: PileLine, index: number, sets: Setting['sets']): boolean {
  return (
    line.all.some((setting) => setting.sets === sets) ||
    line.spans.some((span) => span.setting.sets === sets && span.from <= index && index <= span.to)
  );
}

/** Stretches of places whose runs pass, neighbours joined. */
export function spansOf(
  line: PileLine,
  starts: readonly number[],
  passes: (index: number) => boolean,
): Stretch[] {
  const spans: { from: number; count: number }[] = [];
  line.runs.forEach((_run, index) => {
    const [from, end] = [starts[index], starts[index + 1]];
    if (!passes(index) || from === end) return;
    const last = spans.at(-1);
    if (last !== undefined && last.from + last.count === from) last.count += end - from;
    else spans.push({ from, count: end - from });
  });
  return spans;
}

/** Each saying of `in any order` is one stretch, for two neighbours mixed apart are not mixed together. */
export function orders(line: PileLine, starts: readonly number[]): Stretch[] {
  const total = starts[starts.length - 1];
  if (line.all.some(({ sets }) => sets === 'order')) return [{ from: 0, count: total }];
  return line.spans
    .filter(({ setting }) => setting.sets === 'order')
    .filter(
      (span, _k, all) =>
        !all.some((other) => other !== span && other.from <= span.from && span.to <= other.to),
    )
    .map(({ from, to }) => ({ from: starts[from], count: starts[to + 1] - starts[from] }))
    .filter(({ count }) => count > 0);
}
