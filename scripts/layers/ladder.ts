/**
 * Who may import whom. A unit (a top folder of the engine or of the workbench, or a whole package) may import units on
 * rungs above its own line in this list, and itself; units on one rung are blind to each other.
 */
export const ladder: readonly (readonly string[])[] = [
  ['base'],
  ['cards'],
  ['phrases', 'pictures'],
  ['moves', 'claims'],
  ['routine'],
  ['verdicts'],
  ['note', 'proving', 'recheck'],
  ['structures'],
  ['insight'],
  ['report'],
  ['check'],
  // The engine's public names. Other packages see the engine through this file only.
  ['index'],
  ['sheets'],
  ['cli', 'web/ui', 'web/storage', 'web/worker'],
  // The rooms of the workbench. A room reaches another by its address only.
  ['web/shelf', 'web/editor', 'web/table', 'web/laboratory', 'web/print', 'web/help'],
  ['web/app'],
];

/** Packages whose source may use Node's own modules. */
export const nodePackages: readonly string[] = ['cli'];

/** Files that stand alone at the head of the engine's source and are a unit by themselves. */
const engineFiles: ReadonlySet<string> = new Set(['check', 'index']);

/** The unit a source file belongs to, or undefined where the ladder has no place for it. */
export function unitOf(file: string): string | undefined {
  const [packages, name, src, first, ...more] = file.split('/');
  if (packages !== 'packages' || src !== 'src' || name === undefined || first === undefined) return undefined;
  const isFile = more.length === 0;
  if (name === 'web') {
    const room = `web/${first}`;
    return isFile || rungOf(room) === undefined ? undefined : room;
  }
  if (name !== 'engine') return rungOf(name) === undefined || isInEngine(name) ? undefined : name;
  const unit = isFile ? first.replace(/\.tsx?$/, '') : first;
  if (engineFiles.has(unit) !== isFile) return undefined;
  return rungOf(unit) !== undefined && isInEngine(unit) ? unit : undefined;
}

/** The number of a unit's rung, counted from 0 at the bottom of the ladder. */
export function rungOf(unit: string): number | undefined {
  const rung = ladder.findIndex((units) => units.includes(unit));
  return rung === -1 ? undefined : rung;
}

function isInEngine(unit: string): boolean {
  return (rungOf(unit) ?? Infinity) <= (rungOf('index') ?? -1);
}
