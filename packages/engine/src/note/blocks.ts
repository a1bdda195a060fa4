import type { Budget } from '../base/budget.ts';
import { trouble, type Trouble } from '../base/diagnostic.ts';
import { CONDITIONS } from '../moves/conditions.ts';
import type { Move } from '../moves/move.ts';
import { SEEN } from '../moves/seeing.ts';
import { BLANKS } from '../phrases/blanks.ts';
import { phrase, printPhrases, type Phrase } from '../phrases/phrase.ts';
import type { Token } from '../phrases/tokens.ts';
import type { Args, Names, NumberRef } from '../phrases/values.ts';
import type { Chooser, NumberTest, Times } from '../routine/routine.ts';
import { withDefaults } from './clause.ts';
import { Lexicon } from './lexicon.ts';
import { sightAt } from './manner.ts';

/** What stands before the colon of a block. */
export type Head =
  | { readonly is: 'repeat'; readonly times: Times; readonly who: Chooser }
  | { readonly is: 'either'; readonly who: Chooser }
  | { readonly is: 'each'; readonly stem: string }
  /** `not` turns the two ways round; `see` is the look at the cards that gives the number which is tested. */
  | { readonly is: 'if'; readonly when: NumberTest; readonly not: boolean; readonly see?: See }
  | { readonly is: 'otherwise' };

/** A condition on the cards: the move that looks, and whether it does so unseen by the performer. */
export interface See {
  readonly move: Move;
  readonly args: Args;
  readonly secret: boolean;
}

export interface HeadReading {
  readonly head: Head;
  readonly troubles: readonly Trouble[];
}

/** A kind of block: how it is asked for, and what one asks for. */
export interface BlockForm {
  readonly id: string;
  readonly title: string;
  readonly phrases: readonly Phrase[];
  readonly help: string;
  readonly example: string;
  readonly make: (
    args: Args,
    names: Names,
  ) => { readonly head: Head; readonly troubles?: readonly Trouble[] };
}

const REPEAT = '[(repeat|do this|repeat this)]';
const THEY = '(spectator|they|spectators|he|she)';
const LIKE = '(likes|like|pleases|please|wishes|wish|wants|want|chooses|choose)';

function times(of: Times, who: Chooser = 'spectator'): { head: Head; troubles: Trouble[] } {
  const troubles = of.of !== 'any' && of.n === 0 ? [trouble('no-times')] : [];
  return { head: { is: 'repeat', times: of, who }, troubles };
}

const count = (args: Args): NumberRef => args.n as NumberRef;

function atLeast(args: Args, who: Chooser): { head: Head; troubles: Trouble[] } {
  const n = count(args);
  if (typeof n === 'number') return times({ of: 'at least', n }, who);
  // How often at least must be known before the performance begins.
  const { head } = times({ of: 'at least', n: 1 }, who);
  return { head, troubles: [trouble('number-not-literal', { name: n.var })] };
}

/** Every way to begin a block. */
export const BLOCKS: readonly BlockForm[] = [
  {
    id: 'any-times',
    title: 'any number of times',
    phrases: [
      phrase(`${REPEAT} any number of times`),
      phrase(`${REPEAT} as (often|many times) as ${THEY} ${LIKE}`),
      phrase('repeatedly'),
    ],
    help: 'The steps below are done as often as the spectator likes, or not at all.',
    example: 'Any number of times:',
    make: () => times({ of: 'any' }),
  },
  {
    id: 'your-times',
    title: 'how often is yours',
    phrases: [phrase(`you choose how often`), phrase(`${REPEAT} as (often|many times) as you choose`)],
    help: 'The steps below are done as often as the performer likes, or not at all.',
    example: 'You choose how often:',
    make: () => times({ of: 'any' }, 'performer'),
  },
  {
    id: 'times-of-whom',
    title: 'as often as you like',
    phrases: [phrase(`${REPEAT} as (often|many times) as you (like|please|wish|want)`)],
    help: 'Does not say whether the spectator or the performer decides, so it is not read.',
    example: 'As often as you like:',
    make: () => ({ ...times({ of: 'any' }), troubles: [trouble('who-repeats')] }),
  },
  {
    id: 'once-or-more',
    title: 'at least once',
    phrases: [phrase(`${REPEAT} at least once`), phrase(`${REPEAT} (once|one time) or more [times]`)],
    help: 'The steps below are done once, and again as often as the spectator likes.',
    example: 'At least once:',
    make: () => times({ of: 'at least', n: 1 }),
  },
  {
    id: 'times-or-more',
    title: 'at least so many times',
    phrases: [phrase(`${REPEAT} at least {n:number} times`), phrase(`${REPEAT} {n:number} times or more`)],
    help: 'The steps below are done so many times, and again as often as the spectator likes.',
    example: 'At least 3 times:',
    make: (args) => atLeast(args, 'spectator'),
  },
  {
    id: 'your-once-or-more',
    title: 'at least once, how often is yours',
    phrases: [phrase('you choose how often, at least once')],
    help: 'The steps below are done once, and again as often as the performer likes.',
    example: 'You choose how often, at least once:',
    make: () => times({ of: 'at least', n: 1 }, 'performer'),
  },
  {
    id: 'your-times-or-more',
    title: 'at least so many times, how often is yours',
    phrases: [phrase('you choose how often, at least {n:number} times')],
    help: 'The steps below are done so many times, and again as often as the performer likes.',
    example: 'You choose how often, at least 3 times:',
    make: (args) => atLeast(args, 'performer'),
  },
  {
    id: 'once',
    title: 'once',
    phrases: [phrase(`${REPEAT} once`)],
    help: 'The steps below are done once.',
    example: 'Once:',
    make: () => times({ of: 'exactly', n: 1 }),
  },
  {
    id: 'twice',
    title: 'twice',
    phrases: [phrase(`${REPEAT} twice`)],
    help: 'The steps below are done twice.',
    example: 'Twice:',
    make: () => times({ of: 'exactly', n: 2 }),
  },
  {
    id: 'times',
    title: 'so many times',
    phrases: [phrase(`${REPEAT} {n:number} times`), phrase(`${REPEAT} {n:number} time`)],
    help: 'The steps below are done so many times; the number may be one that was named.',
    example: '3 times:',
    make: (args) => times({ of: 'exactly', n: count(args) }),
  },
  {
    id: 'either',
    title: 'either, or',
    phrases: [
      phrase('either'),
      phrase(`${THEY} (choose|chooses) [(one|one of these)]`),
      phrase('one of these'),
    ],
    help: 'One of the bullets below, as the spectator likes.',
    example: 'Either:',
    make: () => ({ head: { is: 'either', who: 'spectator' } }),
  },
  {
    id: 'your-either',
    title: 'either, or, and the choice is yours',
    phrases: [phrase('you choose [(one|one of these)]'), phrase('you either')],
    help: 'One of the bullets below, as the performer likes.',
    example: 'You choose:',
    make: () => ({ head: { is: 'either', who: 'performer' } }),
  },
  {
    id: 'each',
    title: 'for each pile',
    phrases: [
      phrase('for (each|every) {stem:newname} [in turn]'),
      phrase('with (each|every) {stem:newname} [in turn]'),
    ],
    help: 'The steps below with each numbered pile in turn, pile 1 first; inside, it is called "that pile".',
    example: 'For each pile:',
    make: (args, names) => {
      const stem = args.stem as string;
      const some = names.piles.some(
        (name) => new RegExp(`^\\S+ \\d+$`).test(name) && name.startsWith(`${stem} `),
      );
      const troubles = some ? [] : [trouble('no-numbered-piles', { stem, known: [...names.piles] })];
      return { head: { is: 'each', stem }, troubles };
    },
  },
  ...ifForms(),
  ...CONDITIONS.map(conditionForm),
  {
    id: 'otherwise',
    title: 'otherwise',
    phrases: [phrase('otherwise'), phrase('else'), phrase('if not')],
    help: 'What is done where the step before it, an "If", does not apply.',
    example: 'Otherwise:',
    make: () => ({ head: { is: 'otherwise' } }),
  },
];

/** `If the top card is red`: the answer to a look at the cards, kept in a hidden number. */
function conditionForm({ move, wordings }: (typeof CONDITIONS)[number]): BlockForm {
  const wording = phrase(`if ${wordings[0].template}`, wordings[0].fixed);
  const [sample] = move.examples;
  const example = sample.sentence.replace(/^See whether (.*), call .*$/, 'If $1:');
  return {
    id: `if-${move.id}`,
    title: `if: ${move.title}`,
    phrases: [wording, ...wordings.slice(1).map(({ template, fixed }) => phrase(`if ${template}`, fixed))],
    help: 'The cards are looked at, for everybody to see. The steps below are done only where it is so; "Otherwise:" gives the rest.',
    example,
    make(said, names) {
      const troubles: Trouble[] = [];
      const args = withDefaults(move, { ...said, call: SEEN }, names, (one) => void troubles.push(one));
      const when: NumberTest = { test: 'number', number: SEEN, is: 'equal', n: 1 };
      return { head: { is: 'if', when, not: false, see: { move, args, secret: false } }, troubles };
    },
  };
}

function ifForms(): BlockForm[] {
  const form = (
    id: string,
    title: string,
    words: readonly string[],
    is: NumberTest['is'],
    example: string,
    more: { shift?: number; not?: boolean } = {},
  ): BlockForm => ({
    id,
    title,
    phrases: words.flatMap((said) => [phrase(`if {number:number} ${said}`), phrase(`if number ${said}`)]),
    help: 'The steps below only where the number that was named is such; "Otherwise:" gives the rest.',
    example,
    make: (args, names) => tested(args, names, is, more),
  });
  const equal = form(
    'if-equal',
    'if a number is',
    ['is {n:number}', 'was {n:number}'],
    'equal',
    'If N is 3:',
  );
  return [
    {
      ...equal,
      phrases: [...equal.phrases, phrase(`if ${THEY} (names|name|named|says|say|said) {n:number}`)],
    },
    form('if-not', 'if a number is not', ['is not {n:number}'], 'equal', 'If N is not 3:', { not: true }),
    form('if-even', 'if a number is even', ['is even'], 'even', 'If N is even:'),
    form('if-odd', 'if a number is odd', ['is odd'], 'odd', 'If N is odd:'),
    form(
      'if-at-least',
      'if a number is at least',
      ['is at least {n:number}'],
      'at least',
      'If N is at least 5:',
    ),
    form('if-at-most', 'if a number is at most', ['is at most {n:number}'], 'at most', 'If N is at most 5:'),
    form(
      'if-more',
      'if a number is more',
      ['is (more|greater) than {n:number}'],
      'at least',
      'If N is more than 5:',
      { shift: 1 },
    ),
    form(
      'if-less',
      'if a number is less',
      ['is (less|fewer|smaller) than {n:number}'],
      'at most',
      'If N is less than 5:',
      { shift: -1 },
    ),
  ];
}

function tested(
  args: Args,
  names: Names,
  is: NumberTest['is'],
  more: { shift?: number; not?: boolean },
): { head: Head; troubles: Trouble[] } {
  const troubles: Trouble[] = [];
  const said = args.number as NumberRef | undefined;
  let number = names.numbers[0] ?? '';
  if (typeof said === 'object') number = said.var;
  else if (said !== undefined) troubles.push(trouble('test-of-literal', { n: said }));
  else if (names.numbers.length === 0) troubles.push(trouble('no-number-named'));
  else if (names.numbers.length > 1) troubles.push(trouble('which-number', { known: [...names.numbers] }));
  const n = args.n as NumberRef | undefined;
  if (typeof n === 'object') troubles.push(trouble('number-not-literal', { name: n.var }));
  const bound = typeof n === 'number' ? n + (more.shift ?? 0) : 0;
  return {
    head: { is: 'if', when: { test: 'number', number, is, n: bound }, not: more.not ?? false },
    troubles,
  };
}

const LEXICON = new Lexicon<BlockForm>(BLOCKS);

export const BLOCK_WORDS = LEXICON.words;

/** The beginning of a block, without its colon, or null. */
export function readHead(tokens: readonly Token[], names: Names, work: Budget): HeadReading | null {
  return headIn(tokens, names, work) ?? unseenHead(tokens, names, work);
}

/** `In secret, if the top card is red`: only a look at the cards can be done unseen. */
function unseenHead(tokens: readonly Token[], names: Names, work: Budget): HeadReading | null {
  for (const end of ['start', 'end'] as const) {
    const { length, how } = sightAt(tokens, end);
    if (length === 0) continue;
    const rest = end === 'start' ? tokens.slice(length) : tokens.slice(0, tokens.length - length);
    const found = headIn(rest, names, work);
    if (found?.head.is !== 'if' || found.head.see === undefined) continue;
    const { secret = false, blind = false } = how;
    const troubles = blind ? [...found.troubles, trouble('looks-unseen')] : found.troubles;
    return { head: { ...found.head, see: { ...found.head.see, secret } }, troubles };
  }
  return null;
}

function headIn(tokens: readonly Token[], names: Names, work: Budget): HeadReading | null {
  const found = LEXICON.find(tokens, names, work);
  const clean = found.find(({ match }) => match.troubles.length === 0) ?? found[0];
  if (clean === undefined) return null;
  const { head, troubles = [] } = clean.owner.make(clean.match.args, names);
  return { head, troubles: [...clean.match.troubles.map((t) => t.trouble), ...troubles] };
}

function printSee({ move, args, secret }: See): string {
  const { call: _hidden, ...said } = args;
  const text = printPhrases(FORM.get(`if-${move.id}`)?.phrases ?? [], said, move.defaults, BLANKS);
  // The wordings of a condition are those of its move, which can say everything it means.
  if (text === null) throw new Error(`condition ${move.id} cannot be printed`);
  return secret ? `${text}, in secret` : text;
}

const FORM = new Map(BLOCKS.map((form) => [form.id, form]));

/** A block's head in words, without its colon. */
export function printHead(head: Head): string {
  const say = (id: string, args: Args = {}): string => {
    const text = printPhrases(FORM.get(id)?.phrases ?? [], args, {}, BLANKS);
    // Every head is made by a form that can say it.
    if (text === null) throw new Error(`block ${id} cannot be printed`);
    return text;
  };
  switch (head.is) {
    case 'repeat': {
      const { times: t, who } = head;
      const your = who === 'performer' ? 'your-' : '';
      if (t.of === 'any') return say(your === '' ? 'any-times' : 'your-times');
      if (t.of === 'at least')
        return t.n === 1 ? say(`${your}once-or-more`) : say(`${your}times-or-more`, { n: t.n });
      return t.n === 1 ? say('once') : t.n === 2 ? say('twice') : say('times', { n: t.n });
    }
    case 'either':
      return say(head.who === 'performer' ? 'your-either' : 'either');
    case 'each':
      return say('each', { stem: head.stem });
    case 'otherwise':
      return say('otherwise');
    case 'if': {
      if (head.see !== undefined) return printSee(head.see);
      const number = { var: head.when.number };
      const { is, n } = head.when;
      switch (is) {
        case 'even':
        case 'odd':
          return say(`if-${is}`, { number });
        case 'equal':
          return say(head.not ? 'if-not' : 'if-equal', { number, n });
        case 'at least':
        case 'at most':
          return say(`if-${is.replace(' ', '-')}`, { number, n });
      }
    }
  }
}
