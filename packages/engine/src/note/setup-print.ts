import { printCardName } from '../cards/names.ts';
import { namedOrder } from '../cards/stacks.ts';
import { printChoices, printKind } from './setup-kinds.ts';
import { printSetting } from './setup-settings.ts';
import {
  refKey,
  type AttributeLine,
  type CardRef,
  type Element,
  type Listed,
  type PileLine,
  type SetUpLine,
  type Setting,
  type Span,
  type Target,
  type Test,
  type What,
} from './setup-syntax.ts';

/** A line as `format` writes it; what was not understood keeps its words. */
export function printLine(line: SetUpLine): string {
  switch (line.is) {
    case 'unread':
      return line.text;
    case 'attribute':
      return printAttribute(line);
    case 'pile':
      return `${line.pile}: ${printRuns(line)}`;
  }
}

function printRuns(line: PileLine): string {
  if (line.runs.length === 0) return 'empty';
  let text = '';
  line.runs.forEach(({ what }, k) => {
    if (k > 0) text += line.starts.includes(k) ? ', then ' : ', ';
    text += printWhat(what);
    for (const span of inOrder(line.spans.filter(({ to }) => to === k))) {
      const several = span.from < span.to || isOfLast(what, span.setting);
      text += (reachesOver(span, line) ? ', all ' : joint(line, several, what)) + printSetting(span.setting);
    }
  });
  for (const setting of line.all) text += `, all ${printSetting(setting)}`;
  return line.packs > 1 ? `${text}, from ${['two', 'three', 'four'][line.packs - 2]} packs` : text;
}

/** Whether words speak of runs of which the like was said before: only `all` reaches over that. */
function reachesOver(span: Span, { spans }: PileLine): boolean {
  return spans.some(
    (other) =>
      other !== span &&
      other.setting.sets === span.setting.sets &&
      span.from <= other.from &&
      other.to <= span.to,
  );
}

/** What stands between a run and words about it, or about several runs or members when `several`. */
function joint(line: PileLine, several: boolean, what: What): string {
  if (several) return line.starts.length > 0 ? ', these ' : ', ';
  return line.runs.length === 1 && (what.is === 'cards' || what.is === 'each') ? ', ' : ' ';
}

/** Whether words right behind a pattern would be taken for its last member's own. */
function isOfLast(what: What, setting: Setting): boolean {
  return (
    setting.sets === 'facing' && what.is === 'pattern' && what.elements.some(({ facing }) => facing !== null)
  );
}

const KINDS_OF_SETTING: readonly Setting['sets'][] = ['facing', 'ends', 'order'];

function inOrder<T extends Span>(spans: readonly T[]): T[] {
  const place = ({ setting }: T): number => KINDS_OF_SETTING.indexOf(setting.sets);
  // Words about one run stand next to it.
  const isWide = ({ from, to }: T): number => (from < to ? 1 : 0);
  return [...spans].sort((a, b) => isWide(a) - isWide(b) || place(a) - place(b));
}

/** A run without what is said of how it lies. */
export function printWhat(what: What): string {
  switch (what.is) {
    case 'cards':
      return printList(what.cards);
    case 'ranks':
      return `${what.from}-${what.to} of ${what.suit}`;
    case 'count':
      return printCount(what);
    case 'copies':
      return `${what.n} ${what.ref.is === 'joker' && what.n !== 1 ? `${refKey(what.ref)}s` : printRef(what.ref)}`;
    case 'each':
      return `${printCount(what)}, each ${printChoices(what.attribute, what.values)}`;
    case 'pattern':
      return printPattern(what);
    case 'set':
      return what.tests.length === 0 ? 'full pack' : `all ${printKind(what.tests, 'many')}`;
    case 'rest':
      return `rest of the ${what.tests.length === 0 ? 'pack' : printKind(what.tests, 'many')}`;
    case 'order': {
      const cards = what.n === 52 ? 'full pack' : `${what.n} ${what.n === 1 ? 'card' : 'cards'}`;
      return `${cards} in ${namedOrder(what.order).title}${what.start === null ? '' : ` from ${printCardName(what.start)}`}`;
    }
    case 'mates': {
      const base = printWhat(what.base);
      if (what.order === 'torn') return `${base} torn in half and stacked`;
      if (what.order === 'beside') return `${base}, each followed by its mate`;
      return `${base} and their mates in ${what.order === 'mirror' ? 'mirror' : 'the same'} order`;
    }
  }
}

function printCount({ n, any, tests }: { n: number; any: boolean; tests: readonly Test[] }): string {
  return `${any ? 'any ' : ''}${n} ${printKind(tests, n === 1 ? 'one' : 'many')}`;
}

export function printRef(ref: CardRef): string {
  switch (ref.is) {
    case 'pip':
      return printCardName(ref.card);
    case 'own':
      return `"${ref.name}"`;
    case 'joker':
      return refKey(ref);
  }
}

function printList(cards: readonly Listed[]): string {
  return cards.map(({ ref, up, end }) => printRef(ref) + (up ? '^' : '') + (end ? "'" : '')).join(' ');
}

function printPattern(what: Extract<What, { is: 'pattern' }>): string {
  const { style, n, tests, elements } = what;
  const last = elements.length - 1;
  // How only the last lies would be taken for how all lie.
  const isLastOnly = elements.every(({ facing }, k) => (k === last) === (facing !== null));
  if (style === 'alternately' && last > 0 && !isLastOnly && !elements.some(isFacingOnly)) {
    const members = elements.map((element) => printElement(element, printKind(element.tests, 'adjective')));
    return `${printCount({ n, any: false, tests })} alternately ${members.join(' and ')}`;
  }
  // Two kinds that would be read as one, such as `red` and `odd`, are kept apart by their noun.
  const merge = elements.some(({ tests: [first] }, k) => {
    const before = k === 0 || first === undefined ? [] : elements[k - 1].tests;
    return before.length > 0 && before.every(({ attribute }) => attribute !== first.attribute);
  });
  const members = elements.map((element) => {
    if (element.ref !== null || element.tests.length === 0) return printElement(element, 'card');
    const kind = printKind(element.tests, 'adjective');
    const isSuit = element.tests.length === 1 && element.tests[0].attribute === 'suit';
    return printElement(element, style === 'repeated' && isSuit ? `${kind}s` : merge ? `${kind} card` : kind);
  });
  const row = members.join(' ');
  return style === 'once' ? row : `${row} repeated, ${n} ${n === 1 ? 'card' : 'cards'}`;
}

function isFacingOnly({ ref, tests, facing }: Element): boolean {
  return ref === null && tests.length === 0 && facing !== null;
}

function printElement(element: Element, kind: string): string {
  const { ref, facing } = element;
  const card = ref !== null ? printRef(ref) : isFacingOnly(element) ? '' : kind;
  return [card, facing === null ? '' : `face ${facing}`].filter((word) => word !== '').join(' ');
}

function printAttribute({ attribute, entries, yesNo }: AttributeLine): string {
  const name = attribute === 'value' ? 'values' : attribute;
  const printed = entries.map(({ target, value }) => {
    const text = printTarget(target);
    if (yesNo) return text;
    return typeof value === 'number' ? `${text} ${value}` : `${text} = ${value}`;
  });
  return `${name}: ${printed.join(', ')}`;
}

export function printTarget(target: Target): string {
  switch (target.is) {
    case 'card':
      return printRef(target.ref);
    case 'ranks':
      return `${target.from}-${target.to} of ${target.suit}`;
    case 'kind':
      return printKind(target.tests, 'many');
  }
}
