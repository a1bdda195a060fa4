/**
 * An order in which to fill slots so that equations are settled soon after they are begun. `about` are the slots each equation speaks
 * of.
 */
export function slotOrder(slots: number, about: readonly (readonly number[])[]): number[] {
  // Members of a family speak of the same slots: one of them is enough.
  const distinct = [...new Map(about.map((list) => [[...list].sort((a, b) => a - b).join(), list])).values()];
  const at = Array.from({ length: slots }, (): number[] => []);
  distinct.forEach((list, i) => list.forEach((slot) => at[slot].push(i)));
  const left = distinct.map((list) => list.length);
  const order: number[] = [];
  const todo = new Set(Array.from({ length: slots }, (_, slot) => slot));
  while (todo.size > 0) {
    let best = -1;
    let most = [-1, 0];
    for (const slot of todo) {
      let [begun, fresh] = [0, 0];
      for (const i of at[slot])
        if (left[i] < distinct[i].length) begun += 1 / left[i];
        else if (left[i] > 1) fresh++;
      if (begun > most[0] || (begun === most[0] && -fresh > most[1])) [best, most] = [slot, [begun, -fresh]];
    }
    todo.delete(best);
    order.push(best);
    for (const i of at[best]) left[i]--;
  }
  return order;
}
