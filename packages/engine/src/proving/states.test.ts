import { expect, test } from 'vitest';
import { seeded } from '../base/seeded.ts';
import { States } from './states.ts';

const SLOTS = 6;

/** Many more states than one chunk holds, some of them often. */
function* met(): Generator<{ location: number; codes: number[] }> {
  const random = seeded(7);
  for (let i = 0; i < 120_000; i++)
    yield {
      location: Math.floor(random() * 3),
      codes: Array.from({ length: SLOTS }, () => Math.floor(random() * 8)),
    };
}

test.each([false, true])('finds the number of every state it has met, codes wide: %s', (wide) => {
  const states = new States(SLOTS, wide);
  const plain = new Map<string, number>();
  const into = new Uint16Array(SLOTS);
  for (const { location, codes } of met()) {
    const key = `${location} ${codes.join()}`;
    const known = plain.get(key);
    const state = states.find(location, codes);
    if (state !== (known ?? plain.size)) throw new Error(`${key} is ${state}, not ${known ?? plain.size}`);
    plain.set(key, state);
  }
  expect(states.count).toBe(plain.size);
  expect(plain.size).toBeGreaterThan(3 * 2 ** 14);
  for (const [key, state] of plain) {
    states.read(state, into);
    if (`${states.locationOf(state)} ${into.join()}` !== key) throw new Error(`${key} is kept otherwise`);
  }
});

test('how a state is reached stays with it, also when more are met', () => {
  const states = new States(SLOTS, false);
  let number = 0;
  for (const { location, codes } of met()) {
    const state = states.find(location, codes);
    if (state < number) continue;
    states.reach(state, state - 1, state * 2, state + 0.5);
    if (state % 3 === 0) states.finish(state);
    number++;
  }
  for (let state = 0; state < number; state++) {
    const kept = [states.parentOf(state), states.viaOf(state), states.costOf(state), states.isDone(state)];
    const wanted = [state - 1, state * 2, state + 0.5, state % 3 === 0];
    if (kept.join() !== wanted.join()) throw new Error(`${state}: ${kept.join()}`);
  }
  expect(number).toBe(states.count);
});
