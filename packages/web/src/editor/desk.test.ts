import { describe, expect, test } from 'vitest';
import type { Engine } from '../worker/client.ts';
import { openDesk } from './desk.ts';

/** An engine under the test's hand. */
function handEngine() {
  const asked: {
    ask: string;
    text: string;
    about: string | undefined;
    bit: (bit: unknown) => void;
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
          bit: (bit) => (options?.onBit as ((bit: unknown) => void) | undefined)?.(bit),
          settle: resolve as (answer: unknown) => void,
          fail: reject,
        });
      }),
    stop: () => {},
  };
  return { engine, asked };
}

const settled = () => new Promise((resolve) => setTimeout(resolve));

const PROVED = { report: { verdict: 'proved' } };
const REFUTED = { report: { verdict: 'refuted' } };
const ROW = { text: 'Cut.', hands: 'cut', status: 'safe', words: '', choices: null } as const;
const NOTE = '## Working\n\n1. One.\n2. Two.\n';

describe('what is asked of the engine', () => {
  test('one question after the other, then rest', async () => {
    const { engine, asked } = handEngine();
    const { engine: besides, asked: more } = handEngine();
    const desk = openDesk(engine, besides);
    desk.want({ text: 'a', performance: 0 });
    for (const answer of [{ understood: [] }, PROVED, null, { ok: true, value: [] }]) {
      asked.at(-1)!.settle(answer);
      await settled();
    }
    more.at(-1)!.bit(ROW);
    expect(desk.known.get().safe?.value).toMatchObject({ rows: [ROW], isAll: false });
    more.at(-1)!.settle('');
    await settled();
    expect(asked.map(({ ask }) => ask)).toEqual(['read', 'check', 'play', 'moments']);
    expect(more.map(({ ask }) => ask)).toEqual(['freedom']);
    expect(more.at(-1)).toMatchObject({ text: 'a', about: 'end' });
    expect(desk.known.get()).toMatchObject({ report: { text: 'a' }, busy: undefined });
    expect(desk.known.get().safe?.value).toMatchObject({ rows: [ROW], isAll: true, ended: '' });
    desk.want({ text: 'a', performance: 0 });
    expect(asked).toHaveLength(4);
    desk.want({ text: 'a', performance: 1 });
    expect(asked.at(-1)).toMatchObject({ ask: 'play', about: '1' });
  });

  test('what would be safe in place of the step that breaks a note, and how a row of it fails', async () => {
    const { engine, asked } = handEngine();
    const { engine: besides, asked: more } = handEngine();
    const desk = openDesk(engine, besides);
    desk.want({ text: NOTE, performance: 0, step: '1' });
    for (const answer of [{ understood: [] }, REFUTED, null, { ok: true, value: [] }]) {
      asked.at(-1)!.settle(answer);
      await settled();
    }
    expect(more.at(-1)!.ask).toBe('verdicts');
    more.at(-1)!.settle(['proved', 'refuted']);
    await settled();
    expect(desk.known.get().breakers?.value).toEqual(['2']);
    expect(more.at(-1)).toMatchObject({ ask: 'freedom', about: 'end', text: NOTE.replace('2. Two.\n', '') });
    // Asked for while rows still come: the person comes first, the rows go on after that.
    more.at(-1)!.bit(ROW);
    desk.want({ text: NOTE, performance: 0, step: '1', breaking: 'Riffle.' });
    expect(more.at(-1)).toMatchObject({ ask: 'breaking', about: '["end","Riffle."]' });
    more.at(-1)!.settle(null);
    await settled();
    expect(desk.known.get().breaking).toEqual({ text: NOTE, row: 'Riffle.', value: null });
    expect(more.at(-1)!.ask).toBe('freedom');
    expect(desk.known.get().safe?.value.rows).toEqual([ROW]);
  });

  test('a newer text is asked about at once, and the older answer is not kept', async () => {
    const { engine, asked } = handEngine();
    const { engine: besides } = handEngine();
    const desk = openDesk(engine, besides);
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
    const { engine: besides } = handEngine();
    const desk = openDesk(engine, besides);
    desk.want({ text: 'a', performance: 0 });
    asked[0]!.fail(new Error('broken'));
    await settled();
    expect(desk.known.get().fault).toBe('broken');
    expect(asked.at(-1)!.ask).toBe('check');
  });
});
