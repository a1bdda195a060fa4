import { describe, expect, test } from 'vitest';
import type { Step } from '../../src/routine/routine.ts';
import type { Pattern } from '../../src/structures/form.ts';
import { FORMS } from '../../src/structures/forms.ts';
import { structuresIn } from '../../src/structures/recognise.ts';
import type { Subject } from '../../src/structures/subject.ts';
import { either } from '../naive/write.ts';
import { outcomes, type Came } from '../published/outcomes.ts';
import { words, type Laid } from '../published/structures.ts';
import { followedThrough, laidRoutine } from './laid-routine.ts';

const MIXES: Readonly<Record<string, readonly (string | Step)[]>> = {
  nothing: [],
  'a cut': ['Cut the packet.'],
  'an even cut': ['Cut the packet at an even number.'],
  'count any number': ['Count any number of cards to the table and drop the rest on top.'],
  'turn an even block': ['Turn over an even number of cards from the top.'],
  'cut and turn two, twice': ['Cut and turn over the top 2.', 'Cut and turn over the top 2.'],
  'in-faro': ['In-faro the packet.'],
  'two heaps, any order': ['Deal the packet into 2 piles.', 'Gather the piles in any order.'],
  'three heaps, any order': ['Deal the packet into 3 piles.', 'Gather the piles in any order.'],
  milk: ['Milk the packet.'],
  'Monge, either': [either(['Monge-shuffle the packet.'], ['Monge-shuffle the packet, the second beneath.'])],
  'deal any number and riffle': [
    'Deal any number of cards to the table and riffle the two packets together.',
  ],
  riffle: ['Riffle the packet.'],
  'deal, turning every second': ['Deal the packet into a pile, turning every second card.'],
  'within each pair': ['Shuffle within each pair.'],
  'turn and riffle': ['Turn over any number of cards from the top and riffle them into the rest.'],
};

function laidAfter(start: readonly Laid[], came: readonly Came[]): Laid[] {
  return came.map(({ from, up, end }) => {
    const card = start[from - 1];
    return { x: card.x, up: card.up ^ up, end: card.end ^ end };
  });
}

/** What a subject reads on a card, said anew. */
function readAs(subject: Subject, first: number): (card: Laid) => number {
  switch (subject.id) {
    case 'kind':
      return ({ x }) => x;
    case 'kind with facing':
      return ({ x, up }) => (x === first ? 0 : 1) ^ up;
    case 'class kind':
      return ({ x }) => (x === first ? 1 : 0);
    case 'facing':
      return ({ up }) => up;
    case 'count up':
      return ({ up }) => up;
    default: {
      const kind = Number(/k(\d)$/.exec(subject.id)?.[1]);
      if (subject.id.startsWith('card ')) return ({ x }) => (x === kind ? 1 : 0);
      if (!subject.id.startsWith('count kind') || Number.isNaN(kind))
        throw new Error(`what is ${subject.id}?`);
      return ({ x, up }) => (x === kind && up === 1 ? 1 : 0);
    }
  }
}

/** Whether all packets have a pattern, with one sum or count for all. */
function haveAll(pattern: Pattern, packets: readonly (readonly number[])[], values: number): boolean {
  const one = (list: readonly number[]): boolean => new Set(list).size === 1;
  switch (pattern.of) {
    case 'pairs':
      return packets.every((packet) =>
        pattern.pairs.every(([a, b]) => (packet[a] === packet[b]) === (pattern.relation === 'alike')),
      );
    case 'one of each':
      return packets.every((packet) =>
        pattern.groups.every((group) => new Set(group.map((p) => packet[p])).size === values),
      );
    case 'same sum':
      return one(packets.flatMap((packet) => pattern.groups.map((group) => sum(packet, group))));
    case 'same step':
      throw new Error('counted round: see the cyclic stacks');
    case 'parity':
      return packets.every((packet) =>
        pattern.groups.every((group) => sum(packet, group) % 2 === pattern.odd),
      );
    case 'balanced':
    case 'total':
      throw new Error('of numbers: see the definitions');
    case 'count': {
      const counts = packets.map((packet) => sum(packet, pattern.plus) - sum(packet, pattern.minus));
      return one(counts) && (counts[0] !== 0 || pattern.minus.length > 0);
    }
  }
}

function sum(packet: readonly number[], places: readonly number[]): number {
  return places.reduce((total, place) => total + packet[place], 0);
}

/** Two classes face down, two with faces showing class and place, and three classes. */
const STARTS: readonly (readonly Laid[])[] = [
  ...words(6, 2)
    .filter((word) => word[0] === 0 && word.includes(1))
    .map((word) => word.map((x) => ({ x, up: 0, end: 0 }))),
  ...words(6, 2)
    .filter((word) => word[0] === 0 && word.includes(1) && sum(word, [1, 2, 3]) === 1)
    .map((word) => word.map((x, i) => ({ x, up: (x + i) % 2, end: 0 }))),
  ...[
    [0, 1, 2, 0, 1, 2],
    [0, 1, 2, 2, 1, 0],
    [0, 0, 1, 1, 2, 2],
    [2, 0, 1, 1, 2, 0],
    [0, 1, 2, 1, 0, 2],
  ].map((word) => word.map((x) => ({ x, up: 0, end: 0 }))),
];

describe.each(Object.entries(MIXES))('%s', (_name, mix) => {
  const ways = outcomes(6, ...mix);
  test('certain is what every performance has, and all of it', { timeout: 60_000 }, () => {
    for (const start of STARTS) {
      const packets = ways.map((came) => laidAfter(start, came));
      const { followed, graph, ends } = followedThrough(laidRoutine(start, mix));
      const [end] = ends;
      expect(ends).toHaveLength(1);
      for (const subject of followed.subjects) {
        const vectors = followed.vectorsAt(end, subject);
        if (vectors === null) throw new Error(`${subject.id} was not followed`);
        // Two cards: where the one is, then where the other is.
        const reads =
          subject.is === 'two cards'
            ? [...subject.id.matchAll(/k(\d)/g)].map(
                ([, kind]) =>
                  ({ x }: Laid) =>
                    x === Number(kind) ? 1 : 0,
              )
            : [readAs(subject, start[0].x)];
        const numbers = packets.map((packet) => reads.flatMap((read) => packet.map(read)));
        const found = structuresIn(vectors, graph.locations[end].layout, subject);
        const said = found.map(({ form, variant }) => `${form} ${variant}`);
        const wanted = FORMS.filter((form) => form.piles === 1 && form.fits(subject)).flatMap((form) =>
          form
            .variants(6, subject, 0)
            .filter(({ pattern }) => haveAll(pattern, numbers, subject.measures.length))
            .map(({ key }) => `${form.id} ${key}`),
        );
        expect({ start: start.map(({ x }) => x).join(''), subject: subject.id, said }).toEqual({
          start: start.map(({ x }) => x).join(''),
          subject: subject.id,
          said: wanted,
        });
      }
    }
  });
});
