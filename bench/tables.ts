/** A table in letters, columns in line, the first to the left and figures to the right. */
export function drawn(head: readonly string[], rows: readonly (readonly string[])[]): string {
  const all = [head, ...rows];
  const widths = head.map((_, k) => Math.max(...all.map((row) => row[k].length)));
  return all
    .map((row) =>
      row
        .map((cell, k) => (k === 0 ? cell.padEnd(widths[k]) : cell.padStart(widths[k])))
        .join('  ')
        .trimEnd(),
    )
    .join('\n');
}

/** Milliseconds with as many places as they deserve. */
export function ms(value: number): string {
  return Number.isNaN(value) ? '-' : value < 10 ? value.toFixed(1) : value.toFixed(0);
}
