import { describe, expect, test } from 'vitest';
import type { Engine } from '../worker/client.ts';
import { openDesk } from './desk.ts';
import { MIXES } from './safe.ts';

/** An engine under the test's hand. */
function handEngine() {
  const asked: {
    ask: string;
    text: string;
    about: string | undefined;
    settle: (answer: unknown) => void;
    fail: (error: Error) => void;
  }[] = [];
  const engine: Engine = {
    ask: (ask, text, options) =>
      new Promise((resolve, reject) => {
        // The latest question wins, as with the real one.
        asked.at(-1)?.settle(undefined);
        asked.push({
          ask,
          text,
          about: options?.about,
          settle: resolve as (answer: unknown) => void,
          fail: reject,
        });
      }),
    stop: () => {},
  };
  return { engine, asked };
}

const settled = () => new Promise((resolve) => setTimeout(resolve));

describe('what is asked of the engine', () => {
  test('one question after the other, then rest', async () => {
    const { engine, asked } = handEngine();
    const desk = openDesk(engine);
    desk.want({ text: 'a', performance: 0 });
    for (const answer of [
      { understood: [] },
      { report: { verdict: 'proved' } },
      null,
      { ok: true, value: [] },
      ['proved', 'refuted'],
    ]) {
      asked.at(-1)!.settle(answer);
      await settled();
    }
    expect(asked.map(({ ask }) => ask)).toEqual(['read', 'check', 'play', 'moments', 'verdicts']);
    expect(desk.known.get()).toMatchObject({
      report: { text: 'a', value: { verdict: 'proved' } },
      busy: undefined,
    });
    desk.want({ text: 'a', performance: 0 });
    expect(desk.known.get().safe?.value).toEqual([
      { sentence: MIXES[0], verdict: 'safe' },
      { sentence: MIXES[1], verdict: 'breaks' },
    ]);
    expect(asked).toHaveLength(5);
    desk.want({ text: 'a', performance: 1 });
    expect(asked.at(-1)).toMatchObject({ ask: 'play', about: '1' });
  });

  test('a newer text is asked about at once, and the older answer is not kept', async () => {
    const { engine, asked } = handEngine();
    const desk = openDesk(engine);
    desk.want({ text: 'a', performance: 0 });
    desk.want({ text: 'b', performance: 0 });
    await settled();
    expect(asked.map(({ text }) => text)).toEqual(['a', 'b']);
    asked[1]!.settle({ understood: [] });
    await settled();
    expect(desk.known.get().reading?.text).toBe('b');
    expect(asked.at(-1)).toMatchObject({ ask: 'check', text: 'b' });
  });

  test('a fault is told once and does not stop the rest', async () => {
    const { engine, asked } = handEngine();
    const desk = openDesk(engine);
    desk.want({ text: 'a', performance: 0 });
    asked[0]!.fail(new Error('broken'));
    await settled();
    expect(desk.known.get().fault).toBe('broken');
    expect(asked.at(-1)!.ask).toBe('check');
  });
});
