import { expect, test } from 'vitest';
import { moveById } from '../../moves/index.ts';
import { isStuck, START, type Key } from '../../moves/move.ts';
import { SLIPS } from './index.ts';
import type { SlipExample, SlipWay } from './slip.ts';
import { move } from '../../../testing/naive/write.ts';
import { act, layoutOfTable, parseTable, printTable } from '../../../testing/packets.ts';
import { handledIn } from './possible.ts';

function oneOf(ways: readonly SlipWay[], key: Key): SlipWay {
  const found = ways.find((way) => way.key === key);
  if (found === undefined) throw new Error(`${key} is none of ${ways.map((way) => way.key).join(', ')}`);
  return found;
}

const ALL = SLIPS.flatMap((slip) =>
  slip.examples.map((example) => [slip.id, example.sentence, slip, example] as const),
);

test.each(ALL)('%s: %s', (_id, _sentence, slip, example: SlipExample) => {
  const step = move(example.sentence);
  const own = moveById(step.move);
  let table = parseTable(example.before);
  const view = { layout: layoutOfTable(table), phase: START, numbers: table.numbers, seen: undefined };
  const options = own.options(step.args, view);
  if (isStuck(options)) throw new Error('stuck');
  const [choice] = example.choices;
  const option = choice === undefined ? options[0] : options.find(({ key }) => key === choice);
  if (option === undefined) throw new Error(`no choice ${choice}`);
  if (slip.when === 'instead') {
    const way = oneOf(slip.ways({ step, move: own, view, option }), example.slip[0]);
    for (const action of way.actions) table = act(table, action);
  } else {
    for (const action of option.actions) table = act(table, action);
    const handled = handledIn(option.actions, layoutOfTable(table));
    slip.decisions.forEach((ways, i) => {
      for (const action of oneOf(ways(handled, layoutOfTable(table)), example.slip[i]).actions)
        table = act(table, action);
    });
  }
  expect(printTable(table)).toBe(printTable(parseTable(example.after)));
});

test('no two are called alike, and every one has an example', () => {
  expect(new Set(SLIPS.map(({ id }) => id)).size).toBe(SLIPS.length);
  expect(new Set(SLIPS.map(({ title }) => title)).size).toBe(SLIPS.length);
  expect(SLIPS.filter(({ examples }) => examples.length === 0)).toEqual([]);
});
