import type { SafeRow } from './safe.ts';

interface AlsoSafeProps {
  readonly rows: readonly SafeRow[];
  readonly step: string | undefined;
  readonly onPut: (sentence: string) => void;
}

const WORDS = { safe: 'always', breaks: 'breaks it', undecided: 'not settled' } as const;

/** What else may be done before the step at the caret; each goes in at one press, the first safe one by a key. */
export function AlsoSafe({ rows, step, onPut }: AlsoSafeProps) {
  if (rows.length === 0) return null;
  const sorted = [...rows].sort((a, b) => RANK[a.verdict] - RANK[b.verdict]);
  const first = sorted.find(({ verdict }) => verdict === 'safe');
  return (
    <section className="also-safe" aria-label="Also safe here">
      <h2 className="also-safe-title">
        Also safe {step === undefined ? 'at the end of the working' : `before step ${step}`}
      </h2>
      <ul>
        {sorted.map((row) => (
          <li key={row.sentence} data-verdict={row.verdict}>
            <button type="button" className="also-safe-row" onClick={() => onPut(row.sentence)}>
              <span>{row.sentence.replace(/\.$/, '')}</span>
              <i>{WORDS[row.verdict]}</i>
            </button>
          </li>
        ))}
      </ul>
      {first !== undefined && (
        <p className="second">
          <kbd>Ctrl+Enter</kbd> puts in the first.
        </p>
      )}
    </section>
  );
}

const RANK = { safe: 0, undecided: 1, breaks: 2 } as const;
