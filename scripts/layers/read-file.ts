import { parseSync, Visitor } from 'vite';

/** One place where a file names another module. */
export interface Import {
  /** As written, without a bundler's query; undefined where it is computed and nobody can tell. */
  readonly module: string | undefined;
  readonly line: number;
}

/** Something in a file that pure source may not use. */
export interface Impurity {
  readonly what: string;
  readonly line: number;
}

export interface FileFacts {
  readonly imports: readonly Import[];
  readonly impurities: readonly Impurity[];
  /** The first thing that is wrong with the file's syntax, if any. */
  readonly broken: string | undefined;
}

type Names = Parameters<ConstructorParameters<typeof Visitor>[0]['Identifier'] & {}>[0];
type Node = { readonly type: string; readonly start: number };

// The engine is compiled without the DOM's and Node's names; most of these are the language's own, so types let them by.
const bannedNames = new Map([
  ['Date', 'Date (the clock belongs to the caller)'],
  ['Intl', 'Intl (its answers depend on the machine)'],
  ['globalThis', 'globalThis (a way round the types)'],
  ['console', 'console (what is printed, and where, belongs to the caller)'],
]);
// A performance is also something in our trade, so only the clock's own members give the other kind away.
const clockMembers = new Set(['now', 'timeOrigin', 'mark', 'measure']);

/** Reads what a source file imports, type imports, re-exports and `import()` included, and what impure names it uses. */
export function readFile(path: string, text: string): FileFacts {
  const parsed = parseSync(path, text);
  const imports: Import[] = [];
  const impurities: Impurity[] = [];
  const lineAt = (offset: number): number => text.slice(0, offset).split('\n').length;
  const name = (source: Node | null | undefined): void => {
    if (source === null || source === undefined) return;
    const value = 'value' in source && typeof source.value === 'string' ? source.value : undefined;
    imports.push({ module: value?.replace(/\?.*$/, ''), line: lineAt(source.start) });
  };
  const blame = (what: string, node: Node): void => {
    impurities.push({ what, line: lineAt(node.start) });
  };

  // Places where an identifier is only the name of a property and means nothing outside its object.
  const labels = new Set<Node>();
  const label = (node: { readonly key: Node; readonly computed?: boolean; readonly shorthand?: boolean }) => {
    if (node.computed !== true && node.shorthand !== true) labels.add(node.key);
  };

  new Visitor({
    ImportDeclaration: (node) => name(node.source),
    ExportNamedDeclaration: (node) => name(node.source),
    ExportAllDeclaration: (node) => name(node.source),
    ImportExpression: (node) => name(node.source),
    TSImportType: (node) => name(node.source),
    TSExternalModuleReference: (node) => name(node.expression),
    VariableDeclaration: (node) => {
      if (node.declare === true) blame('declare (claims a name the types do not have)', node);
    },
    Property: label,
    PropertyDefinition: label,
    MethodDefinition: label,
    AccessorProperty: label,
    TSPropertySignature: label,
    TSMethodSignature: label,
    MemberExpression: (node) => {
      const member = node.computed || node.property.type !== 'Identifier' ? undefined : node.property.name;
      if (!node.computed) labels.add(node.property);
      if (member !== undefined && /^(toLocale|localeCompare$)/.test(member)) {
        blame(`${member} (its answer depends on the machine)`, node);
      }
      if (node.object.type !== 'Identifier') return;
      if (node.object.name === 'performance' && clockMembers.has(member ?? '')) {
        blame('performance (the clock belongs to the caller)', node);
      }
      if (node.object.name !== 'Math') return;
      labels.add(node.object);
      if (member === undefined || member === 'random') {
        blame('Math.random, or a computed name on Math (chance belongs to the caller)', node);
      }
    },
    Identifier: (node: Names) => {
      if (labels.has(node)) return;
      const banned = bannedNames.get(node.name);
      if (banned !== undefined) blame(banned, node);
      if (node.name === 'Math') blame('Math as a value (Math.random could be taken from it)', node);
    },
  }).visit(parsed.program);

  for (const match of text.matchAll(/^\s*\/\/\/\s*<reference\b/gm)) {
    impurities.push({
      what: '/// <reference> (adds names the types do not have)',
      line: lineAt(match.index),
    });
  }
  return { imports, impurities, broken: parsed.errors[0]?.message };
}
