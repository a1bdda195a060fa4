import type { FreedomRowData } from '@foregone/engine';
import { memo, useState } from 'react';
import type { SafeRows } from './desk.ts';
import { sentenceFor, sorted } from './safe.ts';

interface AlsoSafeProps {
  readonly safe: SafeRows;
  /** True while the rows speak of an earlier text. */
  readonly isOld: boolean;
  /** The sentence of the step in whose place a row is put in; empty where one is put in before a step. */
  readonly instead: string;
  readonly onPut: (sentence: string) => void;
  /** Shows how the ending fails with a row put in. */
  readonly onShow: (row: string) => void;
  /** Takes the step out in whose place a row could be put in. */
  readonly onTakeOut: () => void;
}

const HANDS: Readonly<Record<FreedomRowData['hands'], string>> = {
  cut: 'Cut',
  mix: 'Mix',
  deal: 'Deal',
  gather: 'Gather',
  turn: 'Turn over',
  order: 'Put in order',
  choose: 'Choose',
  'hand over': 'Hand over',
};

/** What else may be done at the caret; each goes in at one press, the first by a key. */
export const AlsoSafe = memo(function AlsoSafe({
  safe,
  isOld,
  instead,
  onPut,
  onShow,
  onTakeOut,
}: AlsoSafeProps) {
  const { at, rows, isAll, ended } = safe;
  const { safe: groups, others } = sorted(rows);
  const first = groups[0]?.[1][0];
  if (isAll && rows.length === 0 && ended === '') return null;
  return (
    <section className="also-safe" aria-label="Also safe here" aria-busy={!isAll || isOld}>
      <h2 className="also-safe-title">{titleOf(safe)}</h2>
      {at.isInstead && (
        <p>
          Without step {at.step}
          {instead === '' ? '' : `, “${instead.replace(/\.$/, '')}”,`} it always works. Press a row to put it
          there instead, or{' '}
          <button type="button" className="link" onClick={onTakeOut}>
            take step {at.step} out
          </button>
          .
        </p>
      )}
      <div className="also-safe-groups">
        {groups.map(([hands, found]) => (
          <Group
            key={hands}
            name={HANDS[hands]}
            rows={found}
            first={first}
            wordOf={(row) => (row.status === 'safe' ? 'always' : row.words)}
            onPress={(row) => onPut(sentenceFor(row))}
          />
        ))}
      </div>
      {isAll && groups.length === 0 && <p>Nothing else is safe here.</p>}
      {!isAll && <p className="second">Looking for more …</p>}
      {ended !== '' && <p className="second">{ended}</p>}
      {others.length > 0 && (
        <details className="also-breaks">
          <summary>Not safe here: {others.reduce((sum, [, found]) => sum + found.length, 0)}</summary>
          <div className="also-safe-groups">
            {others.map(([hands, found]) => (
              <Group
                key={hands}
                name={HANDS[hands]}
                rows={found}
                wordOf={(row) => (row.status === 'undecided' ? `not settled: ${row.words}` : breaks(row))}
                onPress={(row) => onShow(row.text)}
              />
            ))}
          </div>
        </details>
      )}
    </section>
  );
});

/** Rows of a group that are seen at once. */
const FEW = 4;

interface GroupProps {
  readonly name: string;
  readonly rows: readonly FreedomRowData[];
  /** The row that a key puts in. */
  readonly first?: FreedomRowData | undefined;
  readonly wordOf: (row: FreedomRowData) => string;
  readonly onPress: (row: FreedomRowData) => void;
}

function Group({ name, rows, first, wordOf, onPress }: GroupProps) {
  const [isOpen, setIsOpen] = useState(false);
  const more = rows.length - FEW;
  return (
    <div className="also-safe-group" role="group" aria-label={name}>
      <h3>{name}</h3>
      <ul>
        {(isOpen ? rows : rows.slice(0, FEW)).map((row) => (
          <li key={row.text} data-status={row.status}>
            <button type="button" className="also-safe-row" onClick={() => onPress(row)}>
              <span>{(sentenceFor(row) || row.text).replace(/\.$/, '')}</span>
              <i>
                {row === first && <kbd>Ctrl+Enter</kbd>} {wordOf(row)}
              </i>
            </button>
          </li>
        ))}
      </ul>
      {more > 0 && (
        <button type="button" className="link also-more" onClick={() => setIsOpen(!isOpen)}>
          {isOpen ? 'fewer' : `${more} more`}
          <span className="said-only"> to {name.toLowerCase()}</span>
        </button>
      )}
    </div>
  );
}

function breaks({ status, words }: FreedomRowData): string {
  return status === 'some' ? `${words} · else it breaks: show` : 'breaks it: show';
}

function titleOf({ at: { step, isInstead } }: SafeRows): string {
  if (isInstead) return `Safe in place of step ${step}`;
  return step === undefined ? 'Also safe at the end of the working' : `Also safe before step ${step}`;
}
