import type { FreedomRowData } from '@foregone/engine';
import { useState } from 'react';
import { Button } from '../ui/button.tsx';
import type { SafeRows } from './desk.ts';
import { sentenceFor, sorted } from './safe.ts';

interface AlsoSafeProps {
  readonly safe: SafeRows;
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
export function AlsoSafe({ safe, instead, onPut, onShow, onTakeOut }: AlsoSafeProps) {
  const { at, rows, isAll, ended } = safe;
  const { safe: groups, others } = sorted(rows);
  const first = groups[0]?.[1][0];
  if (isAll && rows.length === 0 && ended === '') return null;
  return (
    <section className="also-safe" aria-label="Also safe here" aria-busy={!isAll}>
      <h2 className="also-safe-title">{titleOf(safe)}</h2>
      {at.isInstead && (
        <p>
          Step {at.step} is what breaks it{instead === '' ? '' : `: “${instead.replace(/\.$/, '')}”`}. Press a
          row to put it there instead, or{' '}
          <button type="button" className="link" onClick={onTakeOut}>
            take step {at.step} out
          </button>
          .
        </p>
      )}
      <div className="also-safe-groups">
        {groups.map(([hands, found]) => (
          <Group key={hands} name={HANDS[hands]} rows={found} first={first} onPut={onPut} />
        ))}
      </div>
      {isAll && groups.length === 0 && <p>Nothing else is safe here.</p>}
      {!isAll && <p className="second">Looking for more …</p>}
      {ended !== '' && <p className="second">{ended}</p>}
      {others.length > 0 && (
        <details className="also-breaks">
          <summary>Not safe here: {others.length}</summary>
          <ul>
            {others.map((row) => (
              <li key={row.text} className="also-safe-row">
                <span>{row.text.replace(/\.$/, '')}</span>
                {row.status === 'undecided' ? (
                  <i>not settled{row.words === '' ? '' : `: ${row.words}`}</i>
                ) : (
                  <i>
                    {row.status === 'some' ? `${row.words} · ` : ''}
                    <Button
                      tone="brick"
                      label={`Show how it breaks: ${row.text}`}
                      onPress={() => onShow(row.text)}
                    >
                      show how it breaks
                    </Button>
                  </i>
                )}
              </li>
            ))}
          </ul>
        </details>
      )}
    </section>
  );
}

/** Rows of a group that are seen at once. */
const FEW = 4;

interface GroupProps {
  readonly name: string;
  readonly rows: readonly FreedomRowData[];
  readonly first: FreedomRowData | undefined;
  readonly onPut: (sentence: string) => void;
}

function Group({ name, rows, first, onPut }: GroupProps) {
  const [isOpen, setIsOpen] = useState(false);
  const more = rows.length - FEW;
  return (
    <section className="also-safe-group" aria-label={name}>
      <h3>{name}</h3>
      <ul>
        {(isOpen ? rows : rows.slice(0, FEW)).map((row) => (
          <li key={row.text}>
            <button type="button" className="also-safe-row" onClick={() => onPut(sentenceFor(row))}>
              <span>{sentenceFor(row).replace(/\.$/, '')}</span>
              <i>
                {row === first && <kbd>Ctrl+Enter</kbd>} {row.status === 'safe' ? 'always' : row.words}
              </i>
            </button>
          </li>
        ))}
      </ul>
      {more > 0 && (
        <Button
          tone="quiet"
          label={isOpen ? `Fewer: ${name}` : `${more} more: ${name}`}
          onPress={() => setIsOpen(!isOpen)}
        >
          {isOpen ? 'fewer' : `${more} more`}
        </Button>
      )}
    </section>
  );
}

function titleOf({ at: { step, isInstead } }: SafeRows): string {
  if (isInstead) return `Safe in place of step ${step}`;
  return step === undefined ? 'Also safe at the end of the working' : `Also safe before step ${step}`;
}
