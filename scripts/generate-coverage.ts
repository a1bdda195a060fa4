import type { Claim } from '../packages/engine/src/claims/claim.ts';
import { CLAIMS } from '../packages/engine/src/claims/index.ts';
import type { Move } from '../packages/engine/src/moves/move.ts';
import { MOVES } from '../packages/engine/src/moves/index.ts';
import { FORMS } from '../packages/engine/src/structures/forms.ts';
import { JOINED } from '../packages/engine/src/structures/recognise.ts';
import { ENDINGS, PREDICTIONS } from './catalogue-endings.ts';
import { STRUCTURES } from './catalogue-structures.ts';
import { PROCEDURES, type Heading } from './catalogue.ts';
import { anchor, page, table } from './generate-parts.ts';
import type { ShelfNote } from './generate-shelf.ts';
import type { TestUses } from './generate-test-uses.ts';

interface Module {
  readonly id: string;
  readonly title: string;
  /** Where it is told, from the page; a page of the reference, or its source. */
  readonly link: string;
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

const onPage =
  (name: string) =>
  ({ id, title, examples }: Pick<Move | Claim, 'id' | 'title' | 'examples'>): Module => ({
    id,
    title,
    link: `generated/${name}.md#${anchor(title)}`,
    examples: examples.length,
  });
const MOVE_MODULES = MOVES.map(onPage('moves'));
const CLAIM_MODULES = CLAIMS.map(onPage('endings'));
const inSource = (file: string): Module => ({
  id: file,
  title: file.replace(/^.*\//, '').replace(/\.ts$/, ''),
  link: `../packages/engine/${file}`,
  examples: 0,
});
/** The forms by which the engine recognises a structure. */
const formsOf = (key: string): Module[] =>
  FORMS.filter(({ id, trade }) => trade === key || JOINED[id] === key).map(({ id }) =>
    inSource(`src/structures/forms/${id}.ts`),
  );

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
      const moves = isMove(heading.key);
      const ids = new Set(moves.map(({ id }) => id));
      const own = notes.filter((note) =>
        heading.used === undefined ? note.steps.some(({ move }) => ids.has(move)) : heading.used(note),
      );
      return row(heading, [...moves, ...(heading.files ?? []).map(inSource)], own, heading.tests);
    }),
    structures: STRUCTURES.map((heading) => {
      const modules = [
        ...MOVE_MODULES.filter(
          ({ id }) => heading.moves?.includes(id) === true || procedureOf(id, heading.key),
        ),
        ...CLAIM_MODULES.filter(({ id }) => heading.endings?.includes(id) === true),
        ...formsOf(heading.key),
        ...(heading.files ?? []).map(inSource),
      ];
      // Modules serve many structures, so that the tests that use them say little; the tests of the structure are named.
      return {
        ...row(
          heading,
          modules,
          notes.filter((note) => note.structures.has(heading.key) || heading.rests?.(note) === true),
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

/** Lines with an empty cell: no module, no note or no test. */
export function gapsIn({ procedures, structures, endings, predictions }: Coverage): string[] {
  return [...procedures, ...structures, ...endings, ...predictions].flatMap((row) => {
    const { key, title, modules, notes, examples, tests } = row;
    const lacks = [
      ...(modules.length === 0 ? ['module'] : []),
      ...(notes.length === 0 ? ['note'] : []),
      ...(examples === 0 && tests.length === 0 ? ['test'] : []),
    ];
    return lacks.length === 0 ? [] : [`${key} (${title}) has no ${lacks.join(' and no ')}`];
  });
}

/** All test files that the page names. */
export function testsIn({ procedures, structures, endings, predictions }: Coverage): string[] {
  const rows = [...procedures, ...structures, ...endings, ...predictions];
  return [...new Set(rows.flatMap(({ tests }) => tests))].sort();
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
      [...PROCEDURES, ...STRUCTURES].flatMap(({ key, files = [], tests = [] }) =>
        [...files, ...tests]
          .filter((file) => !isFile(file))
          .map((file) => `the catalogue names ${file} at ${key}`),
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
    'Each line is a procedure, a structure, an ending or a kind of prediction of the trade, with the sentences that say it, the notes of the shelf that use it, and the tests that speak of it. Every example of a module is run as a test; files of tests are those of `packages/engine` in which a sentence of the module occurs, and `npm test` makes sure that each of them ran and passed.',
    gaps.length === 0 ? 'No line is empty.' : `Empty:\n\n${gaps.map((gap) => `- ${gap}`).join('\n')}`,
    ...part('Procedures', 'What hands do.', 'Procedure', coverage.procedures),
    ...part(
      'Structures',
      'What is true of a packet. A note rests on a structure where it is recognised in what the ending needs at some moment of the working; structures that no equations tell are known by the set-up, the moves and the ending that use them.',
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
    modules.map((one) => `[${one.title}](${one.link})`).join(', '),
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
