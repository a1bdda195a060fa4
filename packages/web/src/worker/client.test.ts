import { describe, expect, test, vi } from 'vitest';
import { answer, answering } from './answer.ts';
import { createEngine, type WorkerLike } from './client.ts';
import { TOPICS, type Reply, type Request } from './protocol.ts';

/** A thread under the test's hand: it answers when it is told to. */
function handThread() {
  const started: { requests: Request[]; ended: boolean; reply: (reply: Reply) => void }[] = [];
  const start = (): WorkerLike => {
    const thread: WorkerLike = {
      onmessage: null,
      onerror: null,
      postMessage: (request: Request) => void state.requests.push(request),
      terminate: () => {
        state.ended = true;
      },
    };
    const state = {
      requests: [] as Request[],
      ended: false,
      reply: (reply: Reply) => thread.onmessage?.(new MessageEvent('message', { data: reply })),
    };
    started.push(state);
    return thread;
  };
  return { started, start };
}

const NONE = { ok: true, value: [] } as const;

const NOTE = `---
title: Four lamps
minutes: 3
---

## Set-up

- packet: 2S 9H 4C KD 7S AH JC 5D, face down

## Working

1. Any number of times:
   1. Cut the packet.
   2. Turn over the top 2 together.
2. Deal the packet into a pile, turning every second card.

## Ending

- Exactly 4 cards are face up.
`;

describe('the latest question wins', () => {
  test('an older one is dropped, with its thread where it goes on, and its late answer is not heard', async () => {
    vi.useFakeTimers();
    const { started, start } = handThread();
    const engine = createEngine(start);
    const first = engine.ask('moments', 'one');
    const second = engine.ask('moments', 'two');
    expect(await first).toBeUndefined();
    expect(started[0]!.ended).toBe(false);
    vi.advanceTimersByTime(1_000);
    expect(started[0]!.ended).toBe(true);
    vi.useRealTimers();
    started[1]!.reply({
      id: started[0]!.requests[0]!.id,
      kind: 'answer',
      answer: { ok: true, value: [{ text: 'old', steps: null }] },
    });
    started[1]!.reply({ id: started[1]!.requests[0]!.id, kind: 'answer', answer: NONE });
    expect(await second).toEqual(NONE);
    expect(started).toHaveLength(2);
  });

  test('a thread that is free is asked again', async () => {
    const { started, start } = handThread();
    const engine = createEngine(start);
    for (const text of ['one', 'two', 'three']) {
      const found = engine.ask('moments', text);
      started[0]!.reply({ id: started[0]!.requests.at(-1)!.id, kind: 'answer', answer: NONE });
      expect(await found).toEqual(NONE);
    }
    expect(started).toHaveLength(1);
    engine.stop();
    expect(started[0]!.ended).toBe(true);
  });

  test('a thread is kept where it takes up the next question soon', async () => {
    vi.useFakeTimers();
    const { started, start } = handThread();
    const engine = createEngine(start);
    const bits: string[] = [];
    const first = engine.ask('freedom', 'one', { about: '1', onBit: ({ text }) => bits.push(text) });
    const row = { text: 'Cut.', hands: 'cut', status: 'safe', words: '', choices: null } as const;
    started[0]!.reply({ id: 1, kind: 'bit', bit: row });
    const second = engine.ask('freedom', 'one', { about: '2' });
    expect(await first).toBeUndefined();
    started[0]!.reply({ id: 2, kind: 'begun' });
    vi.advanceTimersByTime(1_000);
    expect(started).toHaveLength(1);
    started[0]!.reply({ id: 2, kind: 'answer', answer: '' });
    expect(await second).toBe('');
    expect(bits).toEqual(['Cut.']);

    void engine.ask('freedom', 'one', { about: '3' });
    const fourth = engine.ask('moments', 'two');
    vi.advanceTimersByTime(1_000);
    expect(started.map(({ ended }) => ended)).toEqual([true, false]);
    expect(started[1]!.requests.map(({ ask }) => ask)).toEqual(['moments']);
    started[1]!.reply({ id: 4, kind: 'answer', answer: NONE });
    expect(await fourth).toEqual(NONE);
    vi.useRealTimers();
  });

  test('progress is passed on, a fault is thrown and the next question gets a new thread', async () => {
    const { started, start } = handThread();
    const engine = createEngine(start);
    const onProgress = vi.fn<(spent: number) => void>();
    const found = engine.ask('check', 'x', { onProgress });
    started[0]!.reply({ id: 1, kind: 'progress', spent: 7 });
    started[0]!.reply({ id: 1, kind: 'fault', message: 'broken' });
    await expect(found).rejects.toThrow('broken');
    expect(onProgress).toHaveBeenCalledExactlyOnceWith(7);
    void engine.ask('check', 'y');
    expect(started).toHaveLength(2);
    engine.stop();
  });
});

describe('what the thread answers', () => {
  const ask = (text: string, time = 10_000) =>
    answer(
      'check',
      text,
      { time },
      () => performance.now(),
      () => {},
    );

  test('a report, and what the shelf files the note under', () => {
    const { report, digest } = ask(NOTE);
    expect(report.verdict).toBe('proved');
    expect(digest).toMatchObject({ cards: 8, minutes: 3 });
    expect(digest.moves).toContain('complete cut');
    expect(digest.moves).toHaveLength(3);
  });

  test('the same note without what keeps it true', () => {
    expect(ask(NOTE.replace('top 2', 'top 3')).report.verdict).toBe('refuted');
  });

  test('a text that is no note', () => {
    expect(ask('\u0000\uD800 # <script>').report.verdict).not.toBe('proved');
  });

  test('what crosses to the page can be cloned', () => {
    expect(structuredClone(ask(NOTE))).toEqual(ask(NOTE));
    const found = answer(
      'moments',
      NOTE,
      { time: 10_000 },
      () => performance.now(),
      () => {},
    );
    expect(structuredClone(found)).toEqual(found);
    expect(found.ok).toBe(true);
  });

  test('freedom, row by row, and how the ending fails with one of them', () => {
    const about = (ask: 'freedom' | 'changes' | 'breaking', what: string) =>
      answering(ask, NOTE, {
        bounds: { time: 60_000 },
        clock: () => performance.now(),
        progress: () => {},
        about: what,
      });
    const rows = [...about('freedom', '2')];
    expect(structuredClone(rows)).toEqual(rows);
    expect(rows.some((row) => 'hands' in row && row.hands === 'cut' && row.status === 'safe')).toBe(true);
    const breaks = rows.find((row) => 'hands' in row && row.status === 'unsafe')!;
    const failure = about('breaking', JSON.stringify(['2', breaks.text])).next().value;
    expect(failure).toMatchObject({ shows: expect.any(String) });
    expect([...about('changes', '2')].length).toBeGreaterThan(0);
  });

  test.each(TOPICS)('what there is to say of the %s', (topic) => {
    const { words } = answer(
      'insight',
      NOTE,
      { time: 60_000 },
      () => performance.now(),
      () => {},
      topic,
    );
    expect(words).toMatch(/\.$/);
  });

  test('slips, one by one', () => {
    const rows = [
      ...answering('slips', NOTE, {
        bounds: { time: 60_000 },
        clock: () => performance.now(),
        progress: () => {},
        about: '',
      }),
    ];
    expect(structuredClone(rows)).toEqual(rows);
    expect(new Set(rows.map(({ step }) => step)).has('2')).toBe(true);
    expect(rows.some(({ verdict }) => verdict !== 'harmless')).toBe(true);
  });

  test('structures by their names, each once', () => {
    const pairs = NOTE.replace(/- packet:.*/, '- packet: 8 cards alternately red and black, face down')
      .replace(/1\. Any[^]*turning every second card\./, '1. Cut the packet.')
      .replace('Exactly 4 cards are face up.', 'Every pair has one of each colour.');
    const names = answer(
      'structures',
      pairs,
      { time: 60_000 },
      () => performance.now(),
      () => {},
    );
    expect(names.length).toBeGreaterThan(0);
    expect(new Set(names).size).toBe(names.length);
  });

  test('when time is up the engine stops and does not claim a proof', () => {
    let now = 0;
    const hard = NOTE.replace(/- packet:.*/, '- packet: full pack in any order, face down').replace(
      'Exactly 4',
      'Exactly 26',
    );
    const { report } = answer(
      'check',
      hard,
      { time: 5 },
      () => (now += 10),
      () => {},
    );
    expect(report.verdict).not.toBe('refuted');
  });
});
