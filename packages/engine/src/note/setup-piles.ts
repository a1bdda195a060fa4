import type { Range } from '../base/diagnostic.ts';
import { isCard } from './setup-cards.ts';
import type { Reader } from './setup-reader.ts';
import { readRun } from './setup-runs.ts';
import { readSetting } from './setup-settings.ts';
import type { Mateable, PileLine, Run, RunReading, Setting, Span } from './setup-syntax.ts';

/** A line of the set-up about one pile, while it is read. */
interface Draft {
  readonly runs: Run[];
  readonly starts: number[];
  readonly spans: Span[];
  readonly all: Setting[];
  packs: number;
}

const EMPTY = [['empty'], ['nothing'], ['no', 'cards']];

/** Reads what follows the colon; `r` stands behind it. */
export function readPileLine(r: Reader, pile: string, range: Range): PileLine {
  const draft: Draft = { runs: [], starts: [], spans: [], all: [], packs: 1 };
  const line = (): PileLine => ({ is: 'pile', pile, ...draft, range });
  const start = r.at;
  if (r.eatAny(EMPTY) && r.done) return line();
  r.at = start;
  if (r.done) {
    r.tell(
      'set-up-nothing',
      r.here,
      { pile },
      {
        fixes: [{ label: 'Write empty', range: r.here, text: ' empty' }],
      },
    );
    return line();
  }
  let joint: Joint = 'start';
  while (!r.done) {
    if (!readItem(r, draft, joint)) r.skip();
    joint = readJoint(r);
    if (joint === 'none') {
      if (r.done) break;
      // Cards and ranges of cards may stand in a row without commas.
      if (isListed(draft.runs.at(-1)) && isCard(r)) continue;
      r.blame('set-up-joint');
      r.skip();
      joint = readJoint(r);
      if (joint === 'none') break;
    } else if (r.done) r.blame();
  }
  draft.spans.sort((a, b) => a.to - b.to || a.from - b.from);
  return line();
}

type Joint = 'start' | 'comma' | 'and' | 'then' | 'none';

function isListed(run: Run | undefined): boolean {
  return run?.what.is === 'cards' || run?.what.is === 'ranks';
}

function readJoint(r: Reader): Joint {
  const comma = r.eat(',');
  const then = r.eat(';') || r.eat('and', 'then') || r.eat('then') || r.eat('followed', 'by');
  if (then) {
    r.eat(',');
    return 'then';
  }
  if (r.eat('and') || r.eat('with')) return 'and';
  return comma ? 'comma' : 'none';
}

/** One run with what is said of it, or something said of the runs before it. */
function readItem(r: Reader, draft: Draft, joint: Joint): boolean {
  const start = r.at;
  if (joint !== 'then' && draft.runs.length > 0 && readSettings(r, draft, joint)) {
    while (readSettings(r, draft, joint));
    return true;
  }
  if (joint === 'then' && draft.runs.length > 0 && !draft.starts.includes(draft.runs.length))
    draft.starts.push(draft.runs.length);
  const last = draft.runs.at(-1);
  const isOpen =
    last?.what.is === 'count' &&
    last.what.tests.length === 0 &&
    !last.what.any &&
    draft.spans.every((s) => s.to < draft.runs.length - 1);
  r.open = joint === 'comma' && isOpen && last.what.is === 'count' ? last.what.n : null;
  const wasOpen = r.open !== null;
  const run = readRun(r);
  if (run === null) return false;
  if (wasOpen && r.open === null && run.what.is === 'pattern') draft.runs.pop();
  r.open = null;
  addRun(draft, run, r.rangeFrom(start), joint);
  while (readSettings(r, draft, 'none'));
  return true;
}

function addRun(draft: Draft, { what, facing, mixed }: RunReading, range: Range, joint: Joint): void {
  const last = draft.runs.at(-1);
  const index = draft.runs.length;
  const isNewPart = draft.starts.includes(index);
  const base = what.is === 'mates' ? what.base : what;
  const list = base.is === 'cards' ? base.cards : null;
  // Cards in a row are one list, commas or not, as long as nothing was said of the first of them.
  if (
    last?.what.is === 'cards' &&
    list !== null &&
    !isNewPart &&
    joint !== 'start' &&
    !draft.spans.some((span) => span.to === index - 1)
  ) {
    const cards = [...last.what.cards, ...list];
    const all: Mateable = { is: 'cards', cards };
    draft.runs[index - 1] = {
      what: what.is === 'mates' ? { ...what, base: all } : all,
      range: { from: last.range.from, to: range.to },
    };
    return;
  }
  // `then a shuffled pack`: what is mixed here is this run alone.
  if (mixed && index > 0 && !isNewPart) draft.starts.push(index);
  draft.runs.push({ what, range });
  if (mixed) draft.spans.push({ from: index, to: index, setting: { sets: 'order' }, range });
  if (facing === null) return;
  const setting = { sets: 'facing', facing } as const;
  // What stands in front of one run is not said of those before it: these lie face down, as always.
  for (let k = reachOf(draft, index, setting); k < index; k++)
    draft.spans.push({
      from: k,
      to: k,
      setting: { sets: 'facing', facing: 'down' },
      range: draft.runs[k].range,
    });
  draft.spans.push({ from: index, to: index, setting, range });
}

/** The first run that a setting after run `last` speaks of: back to the last `then`, or to where the like was said before. */
function reachOf(draft: Draft, last: number, setting: Setting): number {
  let from = draft.starts.reduce((best, start) => (start <= last ? Math.max(best, start) : best), 0);
  for (const span of draft.spans)
    if (span.setting.sets === setting.sets && span.to <= last) from = Math.max(from, span.to + 1);
  return from;
}

/** Whether `in any order` was said of another single run of this part in the same way, right behind it: then it is said of one run again. */
function isOfOneRun(draft: Draft, last: number, setting: Setting): boolean {
  if (setting.sets !== 'order') return false;
  const part = draft.starts.reduce((best, start) => (start <= last ? Math.max(best, start) : best), 0);
  return draft.spans.some(
    ({ from, to, setting: { sets } }) => sets === 'order' && from === to && to < last && to >= part,
  );
}

/** Settings after a run or after a comma; false when none stands here. */
function readSettings(r: Reader, draft: Draft, joint: Joint): boolean {
  const start = r.at;
  const packs = readPacks(r);
  if (packs !== null) {
    draft.packs = packs;
    return true;
  }
  const all = r.eat('all');
  const these = !all && (r.eat('these') || r.eat('both'));
  const setting = readSetting(r);
  if (setting === null) {
    r.at = start;
    return false;
  }
  const range = r.rangeFrom(start);
  const to = draft.runs.length - 1;
  const parts = draft.starts.filter((at) => at <= to).length + 1;
  if (all && parts > 1) {
    if (draft.all.some(({ sets }) => sets === setting.sets))
      r.tell('set-up-said-twice', range, { what: setting.sets });
    else draft.all.push(setting);
    return true;
  }
  const isOwn = joint === 'none' && !all && !these && isOfOneRun(draft, to, setting);
  const from = isOwn ? to : all && setting.sets === 'order' ? 0 : reachOf(draft, to, setting);
  const isRepeated = draft.spans.some(
    (span) => span.setting.sets === setting.sets && span.from === from && span.to === to,
  );
  if (from > to || isRepeated) {
    r.tell('set-up-said-twice', range, { what: setting.sets });
    return true;
  }
  draft.spans.push({ from, to, setting, range });
  if (!all && !these) noteReach(r, { from, to, setting, range }, joint, start, parts);
  return true;
}

/** Says how far back words reach where a reader could think otherwise. */
function noteReach(r: Reader, span: Span, joint: Joint, start: number, parts: number): void {
  const runs = span.to - span.from + 1;
  if (joint === 'none' ? runs === 1 : parts === 1) return;
  // From the end of the last run, its comma included, to the words themselves.
  const isJoined = /^(,|and|with)$/.test(r.tokens[start - 1]?.text ?? '');
  const last = r.tokens[start - (isJoined ? 2 : 1)];
  const gap = { from: last?.to ?? span.range.from, to: span.range.from };
  const these = runs === 1 ? ' ' : parts === 1 ? ', ' : ', these ';
  r.tell(
    'set-up-reach',
    span.range,
    { what: span.setting.sets, runs, parts },
    {
      severity: 'reading',
      fixes: [
        { label: 'Say it of these cards only', range: gap, text: these },
        ...(parts > 1 ? [{ label: 'Say it of the whole pile', range: gap, text: ', all ' }] : []),
      ],
    },
  );
}

function readPacks(r: Reader): number | null {
  const start = r.at;
  if (r.eat('from')) {
    const n = r.eatCount();
    if (n !== null && n >= 1 && n <= 4 && (r.eat('packs') || r.eat('decks') || (n === 1 && r.eat('pack'))))
      return n;
  }
  r.at = start;
  return null;
}
