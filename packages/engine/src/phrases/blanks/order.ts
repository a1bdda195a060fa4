import { trouble } from '../../base/diagnostic.ts';
import { defineBlank, type BlankReading } from '../blank.ts';
import type { NumberRef, PileRef } from '../values.ts';
import { printNumber, readNumber } from './number.ts';
import { pile, printPile } from './pile.ts';

const BETWEEN = new Set(['and', 'then', '-']);

/** Numbers of piles in a row: `2 1 3`, `2-1-3`, `2, 1 and then 3`. */
export const order = defineBlank<readonly NumberRef[]>({
  type: 'order',
  what: 'the numbers of the piles in order, such as "2 1 3"',
  read: (tokens, at, names) => {
    const readings: BlankReading<readonly NumberRef[]>[] = [];
    const list: NumberRef[] = [];
    let unknown: number | undefined;
    for (let next = at; ;) {
      while (list.length > 0 && BETWEEN.has(tokens[next]?.text ?? '')) next++;
      const [reading] = readNumber(tokens, next, names);
      if (reading === undefined) break;
      const n = reading.value;
      list.push(n);
      next = reading.next;
      if (typeof n === 'number' && !names.piles.some((name) => name.endsWith(` ${n}`))) unknown ??= n;
      const value = [...list];
      readings.unshift(
        unknown === undefined
          ? { value, next }
          : {
              value,
              next,
              trouble: trouble('unknown-pile', { pile: String(unknown), known: [...names.piles] }),
            },
      );
    }
    return readings;
  },
  print: (list) => list.map(printNumber).join(' '),
  samples: [
    [2, 1, 3],
    [3, 1, 2],
    [1, 2],
    [{ var: 'n' }, 1],
  ],
});

/** Piles laid on one another, the uppermost first: `pile 1 on pile 2 on pile 3`. */
export const stack = defineBlank<readonly PileRef[]>({
  type: 'stack',
  what: 'which pile goes on which, such as "pile 1 on pile 2"',
  read: (tokens, at, names) => {
    const readings: BlankReading<readonly PileRef[]>[] = [];
    const list: PileRef[] = [];
    let wrong: BlankReading['trouble'];
    for (let next = at; ;) {
      // The longest name counts; trying all of them could take for ever with names made for it.
      const [reading] = pile.read(tokens, next, names);
      if (reading === undefined) break;
      // A pile blank only ever reads a pile.
      list.push(reading.value as PileRef);
      next = reading.next;
      wrong ??= reading.trouble;
      if (list.length > 1)
        readings.unshift({ value: [...list], next, ...(wrong === undefined ? {} : { trouble: wrong }) });
      // `Put the table back on top` is on the packet.
      const back = tokens[next]?.text === 'back' ? next + 1 : next;
      const isOnTop = tokens[back]?.text === 'on' && tokens[back + 1]?.text === 'top';
      if (isOnTop && tokens[back + 2]?.text !== 'of' && names.piles.includes('packet'))
        readings.unshift({
          value: [...list, 'packet'],
          next: back + 2,
          ...(wrong === undefined ? {} : { trouble: wrong }),
        });
      const on = tokens[next]?.text;
      if (on !== 'on' && on !== 'onto') break;
      next += tokens[next + 1]?.text === 'top' && tokens[next + 2]?.text === 'of' ? 3 : 1;
    }
    return readings;
  },
  print: (list) => list.map(printPile).join(' on '),
  samples: [
    ['pile 1', 'pile 2'],
    ['pile 3', 'pile 1', 'pile 2'],
    ['table', 'packet'],
    ['left', 'right'],
  ],
});
