import { describe, expect, test } from 'vitest';
import { noteText } from '../testing/note-text.ts';
import { certificateOf, check, hashOf, moments, recheckCertificate } from './check.ts';
import { DEFAULT_LIMITS } from './proving/question.ts';

const PROVED = noteText(
  ['packet: 6 cards alternately red and black, face down'],
  [
    'Any number of times: cut, then turn over the top 2 together.',
    'Deal the packet into a pile, turning every second card.',
  ],
  ['Exactly 3 cards are face up.', 'Every red card faces one way and every black card the other.'],
);

function certificate(text: string) {
  const made = certificateOf(check(text));
  if (!made.ok) throw new Error(made.error.code);
  return made.value;
}

test('SHA-256 of a text', () => {
  // FIPS 180-4, the one-block example.
  expect(hashOf('abc')).toBe('ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad');
});

describe('a certificate', () => {
  test('is accepted as it was made, and through JSON', () => {
    const answer = recheckCertificate(JSON.stringify(certificate(PROVED)));
    expect(answer).toEqual({
      ok: true,
      value: {
        title: 'A try',
        accepted: true,
        sentences: [
          { text: 'Exactly 3 cards are face up', accepted: true, fault: null },
          {
            text: 'Every red card faces one way and every black card the other',
            accepted: true,
            fault: null,
          },
        ],
      },
    });
  });

  test('of a note of which a part is proved speaks of that part only', () => {
    const partly = PROVED.replace('Exactly 3 cards', 'Exactly 4 cards');
    const made = certificate(partly);
    expect(made.sentences.map(({ proof }) => proof)).toEqual(['none', 'invariant']);
    const answer = recheckCertificate(JSON.stringify(made));
    expect(answer).toMatchObject({
      ok: true,
      value: {
        accepted: true,
        sentences: [
          { accepted: false, fault: null, silent: true },
          { accepted: true, fault: null },
        ],
      },
    });
    const nothing = { ...made, sentences: made.sentences.map(({ text }) => ({ text, proof: 'none' })) };
    expect(recheckCertificate(JSON.stringify(nothing))).toMatchObject({
      ok: true,
      value: { accepted: false },
    });
    const [, proof] = made.sentences;
    const swapped = { ...made, sentences: [proof, made.sentences[0]] };
    expect(recheckCertificate(JSON.stringify(swapped))).toMatchObject({
      ok: true,
      value: { accepted: false },
    });
  });

  test('of another note is refused by its hash, and by its proofs', () => {
    const made = certificate(PROVED);
    const note = PROVED.replace('top 2', 'top 3');
    expect(recheckCertificate(JSON.stringify({ ...made, note }))).toMatchObject({
      ok: false,
      error: { code: 'certificate-hash' },
    });
    const forged = recheckCertificate(JSON.stringify({ ...made, note, sha256: hashOf(note) }));
    expect(forged.ok && forged.value.accepted).toBe(false);
  });

  test('with a sentence left out, a note that is none, or no certificate at all, is refused', () => {
    const made = certificate(PROVED);
    const refused = (value: unknown) => recheckCertificate(JSON.stringify(value));
    expect(refused({ ...made, sentences: made.sentences.slice(1) })).toMatchObject({
      ok: false,
      error: { code: 'certificate-sentences' },
    });
    expect(refused({ ...made, note: 'x', sha256: hashOf('x') })).toMatchObject({
      ok: false,
      error: { code: 'certificate-note' },
    });
    expect(refused({ ...made, version: 2 })).toMatchObject({
      ok: false,
      error: { code: 'certificate-shape' },
    });
    expect(recheckCertificate('{')).toMatchObject({ ok: false, error: { code: 'certificate-json' } });
    const nothing = noteText(['packet: 4 cards, face down'], ['Cut the packet.'], []);
    expect(refused({ ...made, note: nothing, sha256: hashOf(nothing), sentences: [] })).toMatchObject({
      ok: false,
      error: { code: 'certificate-sentences' },
    });
  });

  test('that would take longer to check than is allowed is told so, and the caller may stop it', () => {
    const text = JSON.stringify(certificate(PROVED));
    const stopped = { ok: false, error: { code: 'certificate-budget' } };
    expect(recheckCertificate(text, { work: 20 })).toMatchObject(stopped);
    const longer = certificate(PROVED.replace('6 cards', '20 cards').replace('Exactly 3', 'Exactly 10'));
    const answer = recheckCertificate(JSON.stringify(longer), { work: 1e9, goOn: () => false });
    expect(answer).toMatchObject(stopped);
  });

  test('there is none of what is not proved', () => {
    const refuted = check(PROVED.replace('top 2', 'top 3'));
    expect(certificateOf(refuted)).toMatchObject({ ok: false, error: { code: 'certificate-not-proved' } });
    expect(certificateOf(check('nothing'))).toMatchObject({
      ok: false,
      error: { code: 'certificate-not-proved' },
    });
  });
});

test('colours that the set-up leaves open are all of them tried', () => {
  const { report } = check(
    noteText(
      ['packet: 4 cards, each red or black, face down'],
      ['Cut the packet at 1.'],
      ['The top card is black.', 'The top card is red.'],
    ),
  );
  expect(report.sentences.map(({ verdict }) => verdict)).toEqual(['refuted', 'refuted']);
  for (const { failure } of report.sentences) expect(failure?.shows).toMatch(/^place 1 has [rb]2$/);
  expect(report.sentences[0].failure?.shows).toBe('place 1 has r2');
  expect(report.sentences[1].failure?.shows).toBe('place 1 has b2');
});

test('the caller may end it at any time, and gets an honest answer', () => {
  let asked = 0;
  const { report } = check(
    noteText(
      ['packet: A-K of spades, face down'],
      ['Shuffle the packet.'],
      ['The values ascend or all cards are face down.'],
    ),
    { ...DEFAULT_LIMITS, trials: 0, goOn: () => ++asked < 3 },
  );
  expect(asked).toBe(3);
  expect(report.verdict).toBe('undecided');
});

test('have and need end with the work allowed', () => {
  const checked = check(PROVED);
  expect(moments(checked, { ...DEFAULT_LIMITS, work: 1 })).toMatchObject({
    ok: false,
    error: { code: 'budget-graph' },
  });
  expect(moments(check('nothing'))).toEqual({ ok: true, value: [] });
});

test('the report of a note is plain data', () => {
  const { report } = check(PROVED);
  expect(JSON.parse(JSON.stringify(report))).toEqual(report);
});
