import { describe, expect, test } from 'vitest';
import { check } from '../../src/check.ts';
import { DEFAULT_LIMITS } from '../../src/proving/question.ts';
import { structuresReport, type MomentStructures, type StructureData } from '../../src/report/structures.ts';

// Every structure of the trade's list that is linear, in both spaces: certain of a packet that has it, needed by an ending that asks
// for it. Definitions as usual in the trade; common practice, no source.

interface Note {
  readonly setUp: string | readonly string[];
  readonly working?: readonly string[];
  readonly ending?: string;
}

function momentsOf({ setUp, working = ['Cut the packet at 0.'], ending = 'All cards are face down.' }: Note) {
  const lines = (typeof setUp === 'string' ? [`packet: ${setUp}`] : setUp)
    .map((line) => `- ${line}`)
    .join('\n');
  const steps = working.map((sentence, i) => `${i + 1}. ${sentence}`).join('\n');
  const text = `## Set-up\n\n${lines}\n\n## Working\n\n${steps}\n\n## Ending\n\n- ${ending}\n`;
  const { decision, report } = check(text);
  if (decision === undefined) throw new Error(JSON.stringify(report.diagnostics.map(({ words }) => words)));
  const all = structuresReport(decision, text, DEFAULT_LIMITS);
  const first = all.find(({ number }) => number === '1')?.moments[0];
  const last = all.find(({ number }) => number === '')?.moments[0];
  if (first === undefined || last === undefined) throw new Error('no moments');
  return { first, last };
}

const said = (list: readonly StructureData[]): string[] =>
  list.map(({ trade, words }) => `${trade} ${words}`);
const needed = ({ needed: [one] }: MomentStructures): string[] => said(one?.structures ?? []);

describe('certain', () => {
  test.each([
    ['S1', { setUp: '8 cards alternately red and black, face down' }, 'S1 the colours alternate'],
    ['S1 in odd and even', { setUp: 'AC 2C 3C 4C 7C 8C, face down' }, 'S1 the parities alternate'],
    [
      'S2',
      { setUp: 'AC 5C 2C 2S 5S AS, face down' },
      'S2 mirror pairs, counted from both ends, are alike in value',
    ],
    [
      'S3',
      { setUp: '5C 2C 2S 5S AS 9H 9D AC, face down' },
      'S3 cards whose places add up to 5, counted round 8, are alike in value',
    ],
    [
      'S4',
      { setUp: 'AC 5C 2C 8C AS 5S 2S 8S, face down' },
      'S4 cards half the packet apart are alike in value',
    ],
    [
      'S5',
      { setUp: 'AC AS 9H 9D 2C 2S, face down' },
      'S5 the two cards of each pair from the top are alike in value',
    ],
    [
      'S6',
      {
        setUp: '6 cards alternately red and black, face down',
        working: ['Cut and turn over the top 2.', 'Cut and turn over the top 2.'],
      },
      'S6 neighbours face the same way exactly where they differ in colour',
      'last',
    ],
    [
      'S7',
      {
        setUp: '6 cards alternately red and black, face down',
        working: ['Cut and turn over the top 2.', 'Deal the packet into a pile, turning every second card.'],
      },
      'S7 all cards face the same way exactly where they are alike in colour',
      'last',
    ],
    [
      'S8 exact',
      { setUp: 'clubs hearts spades repeated, 9 cards, face down' },
      'S8 cards 3 places apart are alike in suit',
    ],
    [
      'S8 blocks',
      {
        setUp: 'clubs hearts spades repeated, 9 cards, face down',
        working: ['Deal any number of cards to the table and riffle the two packets together.'],
      },
      'S8 every block of 3 from the top has one of each suit',
      'last',
    ],
    [
      'S9',
      {
        setUp: [
          'left: 3 red cards in any order, face down',
          'right: 3 black cards in any order, face down',
          // With these two piles alone it would be true of every arrangement.
          'aside: 4 cards alternately red and black, face down',
        ],
        working: [
          'Hand 2 cards from the left across to the right.',
          'Shuffle the right.',
          'Hand 2 cards from the right across to the left.',
        ],
      },
      'S9 there are as many red cards in left as other cards in right',
      'last',
    ],
    [
      'S10',
      {
        setUp: '6 cards alternately red and black, face down',
        working: ['Cut and turn over the top 2.', 'Cut and turn over the top 2.'],
      },
      'S10 there are as many face-up cards at the odd places as at the even ones',
      'last',
    ],
    [
      'S12',
      {
        setUp: '3 cards, QH, 2 cards, 9C, 1 card, face down',
        working: ['Cut the packet.', 'Cut the packet.'],
        ending: 'Going round, the 9C is 3 places below the QH.',
      },
      'S12 going round, the QH lies 3 places above the 9C',
      'last',
    ],
    [
      'S13',
      { setUp: '13 cards in Si Stebbins order, face down', working: ['Cut the packet.'] },
      'S13 the values go up by 3 each time, counting round after 13',
      'last',
    ],
    [
      'S14',
      { setUp: '3C 9C 5C 2C QH 9H 5H JH, face down' },
      'S14 the values of mirror pairs, counted from both ends, add up to 14',
    ],
    [
      'S15 in rows',
      { setUp: '2C 5C 9C 3D 6D 10D 4S 7S JS, face down' },
      'S15 laid out in rows of 3, the values of cards at opposite corners of any block come to the same',
    ],
    [
      'S15 total',
      {
        setUp: 'AC 4D 3S 6H 7C AH, face down',
        working: ['Turn every second card over in place.', 'Turn the packet over.', 'Cut the packet.'],
      },
      'S15 the face-up cards come to 11 in value',
      'last',
    ],
    ['S17', { setUp: windowsOf4() }, 'S17', 'first'],
    [
      'S25',
      { setUp: `2C 5C' 9C 3D, face down`, working: ['Riffle the packet.', 'Turn the packet over.'] },
      'S25 the 5C points one way and all other cards the other',
      'last',
    ],
  ] as const)('%s', (_name, note: Note, wanted, where: 'first' | 'last' = 'first') => {
    const found = said(momentsOf(note)[where].certain);
    expect(found.some((one) => one.startsWith(wanted)) ? wanted : found).toBe(wanted);
  });
});

/** 15 colours of which every four in a row, going round, are different: each is like the one 3 before where the one 4 before is black. */
function windowsOf4(): string {
  const x = [0, 0, 0, 1];
  while (x.length < 15) x.push((x[x.length - 4] + x[x.length - 3]) % 2);
  return `${x.map((one) => (one === 1 ? 'red' : 'black')).join(' ')}, face down`;
}

describe('needed', () => {
  const CARDS = '8 cards alternately red and black, face down';
  test.each([
    ['S1', { setUp: CARDS, ending: 'The colours alternate.' }, 'S1 the colours alternate'],
    [
      'S2',
      { setUp: CARDS, ending: 'Every mirror pair differs in colour.' },
      'S2 mirror pairs, counted from both ends, differ in colour',
    ],
    [
      'S3',
      { setUp: CARDS, working: ['Cut the packet at 3.'], ending: 'Every mirror pair differs in colour.' },
      'S3 cards whose places add up to 7, counted round 8, differ in colour',
    ],
    [
      'S4',
      { setUp: CARDS, ending: 'Every pair half a packet apart agrees in colour.' },
      'S4 cards half the packet apart are alike in colour',
    ],
    [
      'S5',
      { setUp: CARDS, ending: 'Every pair differs in colour.' },
      'S5 the two cards of each pair from the top differ in colour',
    ],
    [
      'S5 from S2',
      { setUp: CARDS, working: ['Milk the packet.'], ending: 'Every pair differs in colour.' },
      'S2 mirror pairs, counted from both ends, differ in colour',
    ],
    [
      'S4 from S2',
      { setUp: CARDS, working: ['Milk the packet.'], ending: 'Every mirror pair agrees in colour.' },
      'S4 cards half the packet apart are alike in colour',
    ],
    [
      'S2 from S5',
      { setUp: CARDS, working: ['Monge-shuffle the packet.'], ending: 'Every mirror pair agrees in colour.' },
      'S5 the two cards of each pair from the top are alike in colour',
    ],
    [
      'S1 from S5',
      {
        setUp: CARDS,
        working: [
          'Cut the packet.',
          'Deal any number of cards to the table and riffle the two packets together.',
        ],
        ending: 'Every pair differs in colour.',
      },
      'S1 the colours alternate',
    ],
    [
      'S6',
      {
        setUp: CARDS,
        working: ['Cut and turn over the top 2.', 'Deal the packet into a pile, turning every second card.'],
        ending: 'Every red card faces one way and every black card the other.',
      },
      'S6 neighbours face the same way exactly where they differ in colour',
    ],
    [
      'S7',
      {
        setUp: CARDS,
        working: ['Turn over the top 2 cards.', 'Turn over the top 2 cards.'],
        ending: 'Every red card faces one way and every black card the other.',
      },
      'S7 all cards face the same way exactly where they are alike in colour',
    ],
    [
      'S8 exact',
      {
        setUp: 'clubs hearts spades repeated, 9 cards, face down',
        ending: 'The suits repeat every 3 cards.',
      },
      'S8 cards 3 places apart are alike in suit',
    ],
    [
      'S8 blocks',
      {
        setUp: 'clubs hearts spades repeated, 9 cards, face down',
        ending: 'Every three has one of each suit.',
      },
      'S8 every block of 3 from the top has one of each suit',
    ],
    [
      'S9',
      {
        setUp: ['left: 3 red cards in any order, face down', 'right: 3 black cards in any order, face down'],
        working: ['Cut the left.'],
        ending: 'There are as many red cards in the left as black cards in the right.',
      },
      'S9',
    ],
    [
      'S10',
      {
        setUp: CARDS,
        working: ['Deal the packet into a pile, turning every second card.'],
        ending: 'Exactly 4 cards are face up.',
      },
      'S10 there are as many face-up cards at the odd places as at the even ones',
    ],
    [
      'S12',
      {
        setUp: '3 cards, QH, 2 cards, 9C, 1 card, face down',
        working: ['Cut the packet.'],
        ending: 'Going round, the 9C is 3 places below the QH.',
      },
      'S12 going round, the QH lies 3 places above the 9C',
    ],
    [
      'S13',
      { setUp: '13 cards in Si Stebbins order, face down', ending: 'The values go up by 3.' },
      'S13 the values go up by 3 each time, counting round after 13',
    ],
    [
      'S14',
      {
        setUp: 'A-4 of hearts, then 10-K of spades, face down',
        working: ['Milk the packet.'],
        ending: 'Every pair totals 14.',
      },
      'S14 the values of mirror pairs, counted from both ends, add up to 14',
    ],
    [
      'S25',
      {
        setUp: `2C 5C' 9C 3D, face down`,
        working: ['Riffle the packet.'],
        ending: 'The 5C is the only card pointing the other way.',
      },
      'S25',
    ],
  ] as const)('%s', (_name, note: Note, wanted) => {
    const found = needed(momentsOf(note).first);
    expect(found.some((one) => one.startsWith(wanted)) ? wanted : found).toBe(wanted);
  });

  test('nothing is told twice, and what no structure says is told as an equation', () => {
    const { first } = momentsOf({ setUp: CARDS, ending: 'The 2nd card and the 5th card differ in colour.' });
    expect(first.needed[0]?.structures).toEqual([]);
    expect(first.needed[0]?.rest).toEqual(['the cards at places 2 and 5 differ in colour']);
    const alternate = momentsOf({ setUp: CARDS, ending: 'The colours alternate.' }).first;
    expect(needed(alternate)).toEqual(['S1 the colours alternate']);
  });
});

test('sums of mates travel into two piles and back', () => {
  const { first, last } = momentsOf({
    setUp: ['left: A-4 of hearts, face down', 'right: 10-K of spades, face down'],
    working: ['Cut the left at 0.'],
    ending: 'Every pair from the top of the left and the bottom of the right totals 14.',
  });
  const wanted =
    'S14 the values of the cards of left and right, taken one from its top and the other from its bottom, add up to 14';
  expect(said(last.certain)).toContain(wanted);
  expect(needed(first)).toEqual([wanted]);
});

describe('lost and gained by a step', () => {
  test('a count of any number loses the alternation; a deal that turns every second card makes the faces tell', () => {
    const { first } = momentsOf({
      setUp: '8 cards alternately red and black, face down',
      working: ['Count any number of cards to the table and drop the rest on top.'],
    });
    expect(said(first.lost)).toContain('S1 the colours alternate');
    expect(said(first.gained)).toEqual([]);
    const dealt = momentsOf({
      setUp: '8 cards alternately red and black, face down',
      working: ['Deal the packet into a pile, turning every second card.'],
    });
    expect(said(dealt.first.gained)).toContain(
      'S7 all cards face the same way exactly where they are alike in colour',
    );
  });
});
