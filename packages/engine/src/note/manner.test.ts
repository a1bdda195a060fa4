import { describe, expect, test } from 'vitest';
import { format } from './format.ts';
import { compile } from './compile.ts';
import { read } from './read.ts';

const note = (sentence: string): string => `## Set-up
- packet: A-8 of clubs face down

## Working
1. ${sentence}

## Ending
- All cards are face down.
`;

function told(sentence: string): string {
  const { routine, diagnostics } = compile(read(note(sentence)));
  if (routine === undefined)
    return diagnostics
      .filter(({ severity }) => severity === 'error')
      .map(({ code }) => code)
      .join();
  return routine.steps
    .map((step) => {
      const inner = step.do === 'either' ? step.branches[0][0] : step;
      if (inner.do !== 'move') return inner.do;
      const how = [
        inner.who === 'performer' ? 'you' : '',
        inner.secret ? 'secret' : '',
        inner.open ? 'open' : '',
      ];
      return [step.do === 'either' ? 'may' : '', inner.move, ...how].filter((word) => word !== '').join(' ');
    })
    .join(', ');
}

describe('seen or unseen', () => {
  test.each([
    ['Cut the packet openly.', 'cut open'],
    ['Openly, the spectator cuts the packet.', 'cut open'],
    ['The spectator openly cuts the packet.', 'cut open'],
    ['The spectator cuts the packet, in full view.', 'cut open'],
    ['The spectator names a number from 1 to 3, aloud, call it N.', 'name-number open'],
    ['The spectator names a number from 1 to 3, in secret, call it N.', 'name-number secret'],
    ['The spectator may cut the packet, in secret.', 'may cut secret'],
    ['The spectator may openly cut the packet.', 'may cut open'],
    ['The spectator cuts the packet behind their back.', 'cut secret'],
    ['Under the table, the spectator cuts the packet.', 'cut secret'],
    ['You cut the packet behind your back.', 'cut you'],
    ['You cut the packet under the table.', 'cut you'],
    ['You cut the packet in secret.', 'own-secret'],
    ['Cut the packet openly, in secret.', 'secret-and-open'],
    ['The spectator takes out the red cards behind their back.', 'looks-unseen'],
    ['You take out the face-up cards under the table.', 'looks-unseen'],
    ['You turn every card face down behind your back.', 'turn-all you'],
  ])('%s', (sentence, what) => {
    expect(told(sentence)).toBe(what);
  });

  test('openly is written, and what the performer does behind the back is left as it is', () => {
    expect(format(note('openly cut the packet'))).toBe(note('Cut the packet, openly.'));
    const behind = note('You cut the packet behind your back.');
    expect(format(behind)).toBe(behind);
  });
});
