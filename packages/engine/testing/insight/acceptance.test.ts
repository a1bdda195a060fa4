import { describe, expect, test } from 'vitest';
import { check } from '../../src/check.ts';
import { Freedom } from '../../src/insight/freedom/freedom.ts';
import { withSteps, type Place } from '../../src/insight/altering/places.ts';
import { decide } from '../../src/proving/decide.ts';
import { DEFAULT_LIMITS } from '../../src/proving/question.ts';
import { structuresReport } from '../../src/report/structures.ts';
import { pierLanterns } from './pier-lanterns.ts';

const SIZES = [12, 16, 20, 52];

function opened(cards: number) {
  const text = pierLanterns(cards);
  const checked = check(text);
  const { decision } = checked;
  const { routine } = checked.compiled;
  if (decision === undefined || routine === undefined) throw new Error(`not understood: ${text}`);
  const freedom = Freedom.of(routine, decision, DEFAULT_LIMITS);
  if (!freedom.ok) throw new Error('nothing is proved');
  const place = (id: string): Place => {
    const found = freedom.value.places.find((one) => one.id === id);
    if (found === undefined) throw new Error(`no place ${id}`);
    return found;
  };
  return { text, decision, routine, freedom: freedom.value, place };
}

describe.each(SIZES)('%i cards', (cards) => {
  const { text, decision, routine, freedom, place } = opened(cards);

  test('the ending is proved', () => {
    expect(decision.verdict).toBe('proved');
  });

  test('before the deals the packet alternates, and the ending needs mirror pairs only', () => {
    const steps = structuresReport(decision, text, DEFAULT_LIMITS);
    const [moment] = steps.find(({ number }) => number === '3')?.moments ?? [];
    expect(moment.certain[0]).toMatchObject({
      trade: 'S6',
      name: 'turnover order',
      words: 'neighbours face the same way exactly where they differ in colour',
    });
    const [needed] = moment.needed;
    expect(needed?.structures.map(({ trade, name, words }) => ({ trade, name, words }))).toEqual([
      {
        trade: 'S2',
        name: 'mirrored',
        words: 'mirror pairs, counted from both ends, face the same way exactly where they differ in colour',
      },
    ]);
    expect(needed?.rest).toEqual([]);
    expect(needed?.equations).toBe(cards / 2);
    expect(needed?.structures[0].picture.arcs).toHaveLength(cards / 2);
  });

  test('it lists the deals, weaves and jogs that this allows, and no others', { timeout: 120_000 }, () => {
    const rows = new Map([...freedom.at(place('3'))].map((row) => [row.text, row]));
    const safe = [
      'Cut the packet.',
      'Deal the packet into one pile.',
      'Deal the packet into 2 piles; Gather the piles left on right.',
      'Deal the packet into 2 piles; Gather the piles right on left.',
      'Out-faro the packet.',
      'In-faro the packet.',
      'Anti-faro the packet.',
      'Take pairs off the packet, leaving or turning each.',
    ];
    for (const sentence of safe)
      expect(`${sentence} ${rows.get(sentence)?.verdict}`).toBe(`${sentence} safe`);
    const unsafe = [
      'Milk the packet.',
      'Riffle the packet.',
      'Shuffle the packet.',
      'Strip out any number of cards and put them on top.',
    ];
    for (const sentence of unsafe)
      expect(`${sentence} ${rows.get(sentence)?.verdict}`).not.toBe(`${sentence} safe`);
    expect(rows.get('Turn over any number of cards from the top.')?.which?.narrowed?.text).toBe(
      'Turn over an even number of cards from the top.',
    );
    // Every verdict of these again, by deciding the whole routine with the sentence put in.
    for (const sentence of [...safe, ...unsafe]) {
      const row = rows.get(sentence);
      if (row === undefined) continue;
      const { verdict } = decide(withSteps(routine, place('3'), row.steps));
      expect(`${sentence} ${verdict}`).toBe(`${sentence} ${row.verdict === 'safe' ? 'proved' : 'refuted'}`);
    }
  });

  test('what is unsafe comes with a performance that fails', () => {
    const row = freedom.try(
      place('3'),
      '',
      [...freedom.at(place('3'))].find((one) => one.verdict === 'unsafe')?.steps ?? [],
    );
    if (row === null) throw new Error('it fits, since it was offered');
    const { sentences } = freedom.performanceWith(place('3'), row.steps);
    expect(sentences[0].failure?.shortest).toBe(true);
  });
});

test('in the middle of the deals only what mirror pairs allow', () => {
  const { freedom, place } = opened(16);
  const rows = new Map([...freedom.at(place('5'))].map((row) => [row.text, row.verdict]));
  expect(rows.get('Out-faro the packet.')).toBe('safe');
  expect(rows.get('Anti-faro the packet.')).toBe('safe');
  // The packet no longer alternates, so that a cut would part the mirror pairs.
  expect(rows.get('Cut the packet.')).not.toBe('safe');
});
