import { CLAIMS } from '../packages/engine/src/claims/index.ts';
import { MOVES } from '../packages/engine/src/moves/index.ts';
import {
  AWAITED,
  ENDINGS,
  PREDICTIONS,
  PROCEDURES,
  STRUCTURES,
  type Heading,
  type StructureHeading,
} from './catalogue.ts';
import { anchor, page, table } from './generate-parts.ts';
import type { ShelfNote } from './generate-shelf.ts';
import type { TestUses } from './generate-test-uses.ts';

interface Module {
  readonly id: string;
  readonly title: string;
  readonly page: 'moves' | 'endings';
  readonly examples: number;
}

/** One heading with what stands for it. */
export interface Row extends Heading {
  readonly modules: readonly Module[];
  readonly notes: readonly ShelfNote[];
  readonly examples: number;
  /** Test files, as paths in packages/engine. */
  readonly tests: readonly string[];
}

export interface Coverage {
  readonly procedures: readonly Row[];
  readonly structures: readonly Row[];
  readonly endings: readonly Row[];
  readonly predictions: readonly Row[];
}

const MOVE_MODULES = MOVES.map(({ id, title, examples }): Module => ({
  id,
  title,
  page: 'moves',
  examples: examples.length,
}));
const CLAIM_MODULES = CLAIMS.map(({ id, title, examples }): Module => ({
  id,
  title,
  page: 'endings',
  examples: examples.length,
}));

/** Every heading with its modules, the notes that use it and the tests that speak of it. */
export function coverageOf(notes: readonly ShelfNote[], uses: TestUses): Coverage {
  const row = (
    heading: Heading,
    modules: readonly Module[],
    own: readonly ShelfNote[],
    tests: readonly string[] = [],
  ): Row => ({
    key: heading.key,
    title: heading.title,
    modules,
    notes: own,
    examples: modules.reduce((sum, { examples }) => sum + examples, 0),
    tests: [...new Set([...tests, ...modules.flatMap(({ id }) => uses.get(id) ?? [])])].sort(),
  });
  const isMove = (key: string) => MOVE_MODULES.filter((_, i) => MOVES[i].procedures.includes(key));
  const isClaim = (key: string) => CLAIM_MODULES.filter((_, i) => CLAIMS[i].endings.includes(key));
  return {
    procedures: PROCEDURES.map((heading) => {
      const modules = isMove(heading.key);
      const ids = new Set(modules.map(({ id }) => id));
      const own = notes.filter(({ steps, cards }) =>
        heading.used === undefined ? steps.some(({ move }) => ids.has(move)) : heading.used(steps, cards),
      );
      return row(heading, modules, own);
    }),
    structures: STRUCTURES.map((heading) => {
      const modules = [
        ...MOVE_MODULES.filter(
          ({ id }) => heading.moves?.includes(id) === true || procedureOf(id, heading.key),
        ),
        ...CLAIM_MODULES.filter(({ id }) => heading.endings?.includes(id) === true),
      ];
      // Modules serve many structures, so that the tests that use them say little; the tests of the structure are named.
      return {
        ...row(
          heading,
          modules,
          notes.filter((note) => hasStructure(note, heading)),
        ),
        tests: heading.tests,
      };
    }),
    endings: ENDINGS.map((heading) => {
      const modules = isClaim(heading.key);
      return row(
        heading,
        modules,
        notes.filter(({ endings }) => modules.some(({ id }) => endings.has(id))),
      );
    }),
    predictions: PREDICTIONS.map((heading) => {
      const modules = CLAIM_MODULES.filter(({ id }) => heading.endings.includes(id));
      const own = notes.filter(
        ({ predicts, endings }) => predicts && modules.some(({ id }) => endings.has(id)),
      );
      return row(heading, modules, own);
    }),
  };
}

function procedureOf(id: string, key: string): boolean {
  return MOVES.some((move) => move.id === id && move.procedures.includes(key));
}

function hasStructure(note: ShelfNote, { setUp, endings, moves }: StructureHeading): boolean {
  return (
    setUp?.test(note.setUp) === true ||
    endings?.some((id) => note.endings.has(id)) === true ||
    moves?.some((id) => note.steps.some(({ move }) => move === id)) === true
  );
}

/** Procedures and endings without a module or without a note. */
export function gapsIn({ procedures, endings }: Coverage): string[] {
  return [...procedures, ...endings].flatMap(({ key, title, modules, notes }) => {
    const lacks = [...(modules.length === 0 ? ['module'] : []), ...(notes.length === 0 ? ['note'] : [])];
    return lacks.length === 0 ? [] : [`${key} (${title}) has no ${lacks.join(' and no ')}`];
  });
}

/** Gaps that nobody awaits. */
export function unexpectedGaps(coverage: Coverage, awaited: readonly string[] = AWAITED): string[] {
  return gapsIn(coverage).filter((gap) => !awaited.includes(gap.split(' ')[0]));
}

/** Names that modules and the catalogue use of each other and that are not there. */
export function strayNames(isFile: (path: string) => boolean): string[] {
  const known = new Set([...PROCEDURES, ...STRUCTURES, ...ENDINGS].map(({ key }) => key));
  const moves = new Set(MOVES.map(({ id }) => id));
  const claims = new Set(CLAIMS.map(({ id }) => id));
  const among = (names: readonly string[] | undefined, all: ReadonlySet<string>, key: string): string[] =>
    (names ?? []).filter((name) => !all.has(name)).map((name) => `the catalogue names ${name} at ${key}`);
  return [
    ...MOVES.flatMap(({ id, procedures }) => procedures.map((key) => ({ id, key }))),
    ...CLAIMS.flatMap(({ id, endings }) => endings.map((key) => ({ id, key }))),
  ]
    .filter(({ key }) => !known.has(key))
    .map(({ id, key }) => `${id} names ${key}, which is not in the catalogue`)
    .concat(STRUCTURES.flatMap((one) => among(one.endings, claims, one.key)))
    .concat(STRUCTURES.flatMap((one) => among(one.moves, moves, one.key)))
    .concat(PREDICTIONS.flatMap((one) => among(one.endings, claims, one.key)))
    .concat(
      STRUCTURES.flatMap(({ key, tests }) =>
        tests.filter((file) => !isFile(file)).map((file) => `the catalogue names ${file} at ${key}`),
      ),
    );
}

const MOST_TESTS = 4;
const MOST_NOTES = 6;

export function coveragePage(coverage: Coverage): string {
  const gaps = gapsIn(coverage);
  const part = (title: string, about: string, what: string, rows: readonly Row[]): string[] => [
    `## ${title}`,
    about,
    table(['', what, 'Sentences', 'Notes', 'Tests'], rows.map(cells)),
  ];
  return page([
    '# What of the trade is covered',
    'Each line is a procedure, a structure, an ending or a kind of prediction of the trade, with the sentences that say it, the notes of the shelf that use it, and the tests that speak of it. Every example of a module is run as a test; files of tests are those of `packages/engine` in which a sentence of the module occurs.',
    gaps.length === 0
      ? 'Every procedure and every ending has a sentence and a note.'
      : `Still empty:\n\n${gaps.map((gap) => `- ${gap}`).join('\n')}`,
    ...part('Procedures', 'What hands do.', 'Procedure', coverage.procedures),
    ...part(
      'Structures',
      'What is true of a packet. A structure is said by a set-up, stated by an ending, or rested upon by a move; recognised in a note by these.',
      'Structure',
      coverage.structures,
    ),
    ...part('Endings', 'What is claimed.', 'Ending', coverage.endings),
    ...part(
      'Predictions',
      'What is written down before: notes with a section _Prediction_.',
      'Prediction',
      coverage.predictions,
    ),
  ]);
}

function cells({ key, title, modules, notes, examples, tests }: Row): string[] {
  const files = tests.map((file) => `[${nameOf(file)}](../packages/engine/${file})`);
  return [
    key,
    title,
    modules.map((one) => `[${one.title}](generated/${one.page}.md#${anchor(one.title)})`).join(', '),
    short(
      notes.map((note) => `[${note.title}](../notes/${note.file})`),
      MOST_NOTES,
    ),
    [
      ...(examples === 0 ? [] : [`${examples} example${examples === 1 ? '' : 's'}`]),
      ...(tests.length === 0 ? [] : [short(files, MOST_TESTS)]),
    ].join(', '),
  ];
}

function short(links: readonly string[], most: number): string {
  const more = links.length - most;
  return [...links.slice(0, most), ...(more > 0 ? [`${more} more`] : [])].join(', ');
}

function nameOf(file: string): string {
  return file.replace(/^.*\//, '').replace(/\.test\.ts$/, '');
}
