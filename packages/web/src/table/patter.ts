import { compile, read } from '@foregone/engine';

/** What is said at each step, by the number of the note's item it stands under. */
export function patterOf(text: string): ReadonlyMap<string, string> {
  const found = new Map<string, string>();
  const walk = (items: ReturnType<typeof compile>['outline']): void => {
    for (const { number, patter, items: inner } of items) {
      if (patter.length > 0) found.set(number, patter.join(' '));
      walk(inner);
    }
  };
  walk(compile(read(text)).outline);
  return found;
}

/** The patter of a step or of the nearest item it stands in: step `1.2b` of item `1.2` of item `1`. */
export function patterAt(patter: ReadonlyMap<string, string>, number: string): string {
  for (let at = number; at !== ''; at = at.replace(/(?:[a-z]+|\.?\d+)$/, '')) {
    const said = patter.get(at);
    if (said !== undefined) return said;
  }
  return '';
}
