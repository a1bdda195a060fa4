/** What was meant to be reached, beside what was. */
export interface Target {
  readonly what: string;
  readonly limit: number;
  readonly unit: string;
  readonly found: number;
  /** True where more is better. */
  readonly atLeast?: boolean;
}

export function isMet({ limit, found, atLeast = false }: Target): boolean {
  return atLeast ? found >= limit : found < limit;
}

export function targetRow(target: Target): string[] {
  const { what, limit, unit, found, atLeast = false } = target;
  const figure = (n: number): string =>
    n >= 1000 ? Math.round(n).toLocaleString('en') : n < 10 ? n.toFixed(1) : n.toFixed(0);
  return [
    what,
    `${atLeast ? 'at least' : 'below'} ${figure(limit)} ${unit}`,
    `${figure(found)} ${unit}`,
    isMet(target) ? 'met' : 'MISSED',
  ];
}
