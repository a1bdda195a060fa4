import { describe, expect, test } from 'vitest';
import { check } from '../../src/check.ts';
import { packetsIn, blocksIn } from '../../src/insight/start/stacking.ts';
import { DEFAULT_LIMITS } from '../../src/proving/question.ts';
import { setUpFaults } from '../../src/report/set-up-check.ts';
import { setUpFound } from '../../src/report/set-up-found.ts';
import { setUpReport } from '../../src/report/set-up-report.ts';
import { provedByWalk } from './by-walk.ts';

const RIFFLED = 'Deal any number of cards to the table and riffle the two packets together.';

function note(setUp: string, working: readonly string[], endings: readonly string[]): string {
  const steps = working.map((sentence, i) => `${i + 1}. ${sentence}`).join('\n');
  const list = endings.map((sentence) => `- ${sentence}`).join('\n');
  return `## Set-up\n\n- packet: ${setUp}\n\n## Working\n\n${steps}\n\n## Ending\n\n${list}\n`;
}

const PAIRS = note(
  '6 cards alternately red and black, face down',
  ['Cut the packet.', RIFFLED],
  ['Every pair differs in colour.'],
);
const MATES = note('AC 2H 3S 3C 2D AS, face down', ['Milk the packet.'], ['Every pair is a pair of mates.']);
const TURNED = note(
  'QH 6C 3D 8S, face down',
  ['Cut and turn over the top 2.', 'Deal the packet into a pile, turning every second card.'],
  ['Every red card faces one way and every black card the other.', 'Exactly 2 cards are face up.'],
);
const ORDER = note(
  'A-5 of spades, face down',
  ['Turn the packet over.', 'Turn the packet over.'],
  ['The packet is back in its starting order.'],
);
const EITHER = note(
  '6 cards alternately red and black, face down',
  ['Cut the packet.'],
  ['The top card is red or the bottom card is red.'],
);

function value<T>(
  found:
    | { readonly ok: true; readonly value: T }
    | { readonly ok: false; readonly error: { readonly code: string } },
): T {
  if (!found.ok) throw new Error(found.error.code);
  return found.value;
}

describe('what the start must satisfy', () => {
  test('by name, and how many packets do', () => {
    const { sentences, count, words } = value(setUpReport(check(PAIRS), DEFAULT_LIMITS));
    expect(sentences[0].needs?.structures.map(({ trade, words: said }) => `${trade} ${said}`)).toEqual([
      'S1 the colours alternate',
    ]);
    // 2 patterns of 3 red and 3 black cards, each in 3! orders.
    expect(count).toMatchObject({ orders: String(2 * 6 * 6), all: '720', patterns: '2' });
    expect(words).toBe(
      '1 sentence of the ending asks something of the start. 72 of the 720 orders of these 6 cards will do, one in 10.',
    );
  });

  test('of cards that lie face down the turnover order is an alternation, whatever their faces did is taken off', () => {
    const { sentences } = value(setUpReport(check(TURNED), DEFAULT_LIMITS));
    expect(sentences[0].needs?.structures.map(({ trade }) => trade)).toEqual(['S6']);
    expect(sentences[0].asLaid.map(({ trade, words }) => `${trade} ${words}`)).toEqual([
      'S1 the colours alternate',
    ]);
    const upAndDown = TURNED.replace('QH 6C 3D 8S, face down', 'QH^ 3D 6C^ 8S');
    const [first] = value(setUpReport(check(upAndDown), DEFAULT_LIMITS)).sentences;
    expect(first.asLaid.map(({ words }) => words)).toEqual(['all cards are alike in colour']);
  });

  test('a sentence about the starting order asks nothing of the cards', () => {
    const { sentences, count } = value(setUpReport(check(ORDER), DEFAULT_LIMITS));
    expect(sentences[0].needs?.equations).toBe(0);
    expect(sentences[0].why).toContain('for every order of them or for none');
    expect(count?.orders).toBe('120');
  });

  test('sentences that are no equations are said to be none', () => {
    const { sentences, count, words } = value(setUpReport(check(EITHER), DEFAULT_LIMITS));
    expect(sentences[0].needs).toBeNull();
    expect(count).toBeNull();
    expect(words).toContain('cannot be worked back');
  });

  test('a note that is not understood', () => {
    const found = setUpReport(check('## Set-up\n\n- packet: nothing at all\n'), DEFAULT_LIMITS);
    expect(found.ok ? '' : found.error.code).toBe('note-not-understood');
  });
});

describe.each([
  ['alternating', PAIRS, 'A-6 of hearts, A-6 of clubs'],
  ['mates', MATES, 'A-4 of spades, A-4 of clubs, A-4 of hearts'],
  ['turnover', TURNED, 'full pack'],
])('%s among the cards at hand', (_name, text, hand) => {
  const { found } = value(setUpFound(check(text), hand, DEFAULT_LIMITS));
  test('every set-up found is a note of its own that walking through all performances proves', () => {
    expect(found[0].for).toBe('looks');
    for (const one of found) {
      const { report, compiled } = check(one.note);
      expect(report.verdict).toBe('proved');
      expect(compiled.routine !== undefined && provedByWalk(compiled.routine)).toBe(true);
      expect(one.note).toContain(`- packet: ${one.line}`);
    }
  });
  test('the first is no more conspicuous than the others, and what is quick is quick', () => {
    const sum = ({ looks: { changes, neighbours, twins, steps } }: (typeof found)[number]): number =>
      2 * (neighbours - changes) + 3 * twins + steps;
    for (const one of found) expect(sum(found[0])).toBeLessThanOrEqual(sum(one));
    const quick = found.find((one) => one.for === 'new pack') ?? found[0];
    expect(quick.fromNewPack?.handlings).toBeLessThanOrEqual(found[0].fromNewPack?.handlings ?? 0);
  });
  test('no card is handled more often than it has to be', () => {
    for (const { table, fromNewPack, fromShuffled } of found) {
      const [{ cards }] = table.piles;
      expect(fromNewPack?.steps.join(' ')).toMatch(/Lay these|Take out|already/);
      expect(fromNewPack?.handlings).toBeLessThanOrEqual(2 * cards.length);
      expect(fromShuffled.steps.join(' ')).toMatch(/Go through|Look these out|Any order/);
    }
  });
});

test('packets taken out, and blocks laid down, make the packet again', () => {
  const places = [4, 0, 5, 1, 6, 2, 9, 8, 7, 3];
  const { packets, taken } = packetsIn(places);
  const next = packets.map(({ first }) => places[first]);
  expect(taken.map((from) => next[from]++)).toEqual(places);
  const laid = blocksIn(places).flatMap(({ from, to, by }) =>
    Array.from({ length: to - from + 1 }, (_, i) => places[from] + i * by),
  );
  expect(laid).toEqual(places);
});

test('where nothing can be worked back, what is laid is decided all the same', () => {
  const text = note(
    '8 cards in any order, face down',
    ['The spectator notes the top card, call it chosen.'],
    ['The top card is chosen or the bottom card is chosen.'],
  );
  const { words } = value(setUpReport(check(text), DEFAULT_LIMITS));
  expect(words).toBe('Any order of these cards will do: the note was proved for all of them.');
  const { found } = value(setUpFound(check(text), 'A-8 of hearts, A-8 of clubs', DEFAULT_LIMITS));
  for (const one of found) {
    const { compiled, report } = check(one.note);
    expect(report.verdict).toBe('proved');
    expect(compiled.routine !== undefined && provedByWalk(compiled.routine)).toBe(true);
  }
});

describe('what the set-up leaves open', () => {
  test('faces stay open: the packet must do whichever way they turn out', () => {
    const text = note(
      '4 cards alternately red and black, face up or down as they like',
      ['Cut the packet.', RIFFLED],
      ['Every pair differs in colour.'],
    );
    const { found } = value(setUpFound(check(text), 'AH 2S 3H 4S', DEFAULT_LIMITS));
    expect(found[0].line).toContain('face up or down as they like');
    const { compiled, report } = check(found[0].note);
    expect(report.verdict).toBe('proved');
    expect(compiled.routine !== undefined && provedByWalk(compiled.routine)).toBe(true);
    const down = note(
      '4 cards alternately red and black, face up or down as they like',
      ['Turn the packet over.'],
      ['All cards are face up.'],
    );
    expect(value(setUpReport(check(down), DEFAULT_LIMITS)).count?.orders).toBe('0');
  });
  test("attributes of the note's own are those of the cards at hand", () => {
    const text = note(
      'AH 2S 3D 4C, face down',
      ['Cut the packet.', RIFFLED],
      ['Every pair differs in warm.'],
    ).replace('\n\n## Working', '\n- warm: hearts, spades\n\n## Working');
    const { found } = value(setUpFound(check(text), 'AH AC 2D 2S', DEFAULT_LIMITS));
    for (const one of found) expect(check(one.note).report.verdict).toBe('proved');
  });
});

describe('the first fault of a packet', () => {
  test.each([
    ['6H 2S 3H 4S 5D 6C', true],
    ['6H 2S 4S 3H 5D 6C', false],
    ['2S 6H 4S 3H 6C 5D', true],
  ])('%s', (cards, isRight) => {
    const found = value(setUpFaults(check(PAIRS), cards, DEFAULT_LIMITS));
    expect(found.holds).toBe(isRight);
    const laid = check(PAIRS.replace('6 cards alternately red and black, face down', `${cards}, face down`));
    expect(laid.compiled.routine !== undefined && provedByWalk(laid.compiled.routine)).toBe(isRight);
    if (isRight) return;
    expect(found.first?.words).toContain('must differ in colour as they lie');
    expect(found.first?.cards).toEqual([
      { pile: 'packet', place: 2, text: '2S' },
      { pile: 'packet', place: 3, text: '4S' },
    ]);
    expect(found.mend).toBe('Exchange 4S at place 3 and 3H at place 4, and all is right.');
  });
  test('the wrong number of cards, and words that are none', () => {
    const few = setUpFaults(check(PAIRS), '6H 2S', DEFAULT_LIMITS);
    expect(few.ok ? '' : few.error.code).toBe('set-up-other-number');
    const none = setUpFaults(check(PAIRS), 'the whole lot', DEFAULT_LIMITS);
    expect(none.ok).toBe(false);
  });
});
