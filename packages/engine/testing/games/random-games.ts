/** Small games at random, written as notes, so that the reading of who knows what is tried with them. */

export type Random = () => number;

const of = <T>(random: Random, list: readonly T[]): T => list[Math.floor(random() * list.length)];

const CARDS = ['AS', '2H', '3C', '4D'];
const SEEN = ['', '', ', openly', ', in secret'];

const SPECTATOR = [
  'Cut the packet',
  'Transfer some cards from the top to the bottom',
  'Turn over the packet',
  'The spectator may turn over the packet',
  'Turn over any card in place',
  'Move the bottom card to the top',
  'The spectator may turn the top card over in place',
  'Exchange the top and bottom cards',
];
const PERFORMER = [
  'You cut the packet',
  'You may turn over the packet',
  'You may exchange the top and bottom cards',
  'You turn over any card in place',
  'You may turn the top card over in place',
  'You turn every card face down in place',
];
const KNOWING = [
  'The spectator thinks of any card, call it chosen',
  'The spectator names a number from 1 to 2, call it N',
  'The spectator thinks of a number from 0 to 1, call it N',
];
const ENDINGS = [
  'The top card is the AS.',
  'The top card is face up.',
  'All cards are face down.',
  'Exactly 1 card is face up.',
  'The bottom card is the 2H.',
  'The AS is face up.',
];
const OF_CHOSEN = [
  'The chosen card is the top card.',
  'The chosen card is face up.',
  'The chosen card is the AS.',
];

interface Scope {
  readonly marks: boolean;
  readonly numbers: boolean;
}

/** A note of a game; not every one of them can be read, since the performer may rest on secrets. */
export function randomNote(random: Random): string {
  const cards = CARDS.slice(0, 2 + Math.floor(random() * 3));
  let scope: Scope = { marks: false, numbers: false };
  const lines: string[] = [];
  const count = 2 + Math.floor(random() * 4);
  const add = (text: string): void =>
    void lines.push(`${lines.filter((l) => /^\d/.test(l)).length + 1}. ${text}`);
  for (let i = 0; i < count; i++) {
    const roll = random();
    if (roll < 0.28) add(`${of(random, SPECTATOR)}${of(random, SEEN)}.`);
    else if (roll < 0.5) add(`${of(random, PERFORMER)}.`);
    else if (roll < 0.62) {
      const sentence = of(random, KNOWING);
      if (sentence.includes('chosen')) scope = { ...scope, marks: true };
      else scope = { ...scope, numbers: true };
      add(`${sentence}${of(random, SEEN)}.`);
    } else if (roll < 0.74) {
      add(`${of(random, ['Either:', 'You choose:', 'The spectator chooses one of these:'])}`);
      for (let k = 0; k < 2; k++) lines.push(`   - ${simple(random)}.`);
    } else if (roll < 0.82) {
      add(`${of(random, ['Any number of times:', 'You choose how often:', '2 times:', 'At least once:'])}`);
      lines.push(`   1. ${simple(random)}.`);
      if (random() < 0.4) lines.push(`   2. ${simple(random)}.`);
    } else if (roll < 0.9 && scope.numbers) {
      add(`${of(random, ['If N is 1:', 'If N is even:', 'N times:'])}`);
      lines.push(`   1. ${simple(random)}.`);
    } else if (scope.marks) {
      add('Deal the packet into 2 piles.');
      add('The spectator says which pile holds chosen, call its number M.');
      add(of(random, ['You gather the piles in any order.', 'Gather the piles left on right.']));
      scope = { ...scope, numbers: true };
    } else add(`${of(random, PERFORMER)}.`);
  }
  const endings = [of(random, scope.marks ? [...ENDINGS, ...OF_CHOSEN, ...OF_CHOSEN] : ENDINGS)];
  if (random() < 0.3) endings.push(of(random, ENDINGS));
  const facing = of(random, ['face down', 'face up']);
  const open = random() < 0.15 ? 'in any order, ' : '';
  return [
    '## Set-up',
    `- packet: ${cards.join(' ')}, ${open}${facing}`,
    '## Working',
    ...lines,
    '## Ending',
    ...endings.map((sentence) => `- ${sentence}`),
    '',
  ].join('\n');
}

function simple(random: Random): string {
  return random() < 0.5 ? `${of(random, SPECTATOR)}${of(random, SEEN)}` : of(random, PERFORMER);
}
