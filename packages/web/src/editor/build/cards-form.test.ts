import { check } from '@foregone/engine';
import { describe, expect, test } from 'vitest';
import { CARD_WAYS, FACINGS, PACK, packetLine } from './cards-form.ts';

const troubles = (line: string) =>
  check(`## Set-up\n- ${line}\n\n## Working\n1. Cut the packet.\n\n## Ending\n- Every card is face down.\n`)
    .report.diagnostics.filter(({ severity }) => severity === 'error')
    .map(({ words }) => `${line}: ${words}`);

describe('cards that are picked', () => {
  test.each(CARD_WAYS)('%s are understood, however they lie', (way) => {
    for (const facing of FACINGS)
      for (const count of [1, 2, 10, 13, 52]) {
        const line = packetLine({ way, count, facing, listed: 'AS 2H KD' });
        expect(troubles(line)).toEqual([]);
      }
  });

  test('the whole pack, each card once', () => {
    expect(new Set(PACK).size).toBe(52);
    expect(
      troubles(
        packetLine({ way: 'cards one by one', count: 0, facing: 'face down', listed: PACK.join(' ') }),
      ),
    ).toEqual([]);
  });

  test('too many are as many as there may be', () => {
    expect(packetLine({ way: 'spades from the ace', count: 40, facing: 'face up', listed: '' })).toBe(
      'packet: A-K of spades, face up',
    );
  });
});
