import { useId } from 'react';
import { AMOUNT_WAYS, hasEnd, readAmount, waysFor, writeAmount, type AmountValue } from './amounts.ts';
import type { Field } from './phrase-form.ts';

interface FieldProps {
  readonly field: Field;
  /** Names of piles that the note knows. */
  readonly piles: readonly string[];
  readonly onChange: (value: string) => void;
}

const SUGGESTED: Readonly<Record<string, readonly string[]>> = {
  kind: ['cards', 'red cards', 'black cards', 'hearts', 'aces', 'court cards', 'face-up cards'],
  onekind: ['red card', 'black card', 'chosen card', 'ace of spades', 'court card'],
  those: ['the red cards', 'the black cards', 'the aces', 'the face-up cards'],
  state: ['face up', 'face down', 'red', 'black', 'hearts'],
  onestate: ['face up', 'face down', 'red', 'black', 'chosen'],
  groups: ['every pair', 'every block of 4', 'every mirror pair', 'each pile', 'each half'],
  relation: ['colour', 'suit', 'value', 'rank', 'parity'],
  relations: ['colours', 'suits', 'values', 'ranks'],
  place: ['the top card', 'the bottom card', 'the 3rd card', 'the 3rd card from the bottom'],
  spot: ['the top', 'the bottom', 'the 5th place'],
  newpile: ['the table', 'the tray', 'the left hand'],
  blocks: ['pairs', 'blocks of 4'],
  nth: ['2nd', '3rd', 'other'],
};

const WAY_WORDS: Readonly<Record<(typeof AMOUNT_WAYS)[number], string>> = {
  exactly: 'exactly',
  any: 'any number',
  even: 'an even number',
  odd: 'an odd number',
  'at least': 'at least',
  'at most': 'at most',
  between: 'from … to …',
};

/** The control that fits one blank of a sentence. */
export function FieldControl({ field, piles, onChange }: FieldProps) {
  const id = useId();
  const { control, label, type, value } = field;
  if (control === 'add') {
    return (
      <label className="tick">
        <input
          type="checkbox"
          checked={value !== ''}
          onChange={({ target }) => onChange(target.checked ? 'yes' : '')}
        />
        {label}
      </label>
    );
  }
  if (control === 'amount') return <AmountControl field={field} onChange={onChange} />;
  return (
    <div className="field">
      <label htmlFor={id}>{label}</label>
      {control === 'choose' ? (
        <select id={id} className="input" value={value} onChange={({ target }) => onChange(target.value)}>
          {field.options.map(([key, words]) => (
            <option key={key} value={key}>
              {words}
            </option>
          ))}
        </select>
      ) : (
        <>
          <input
            id={id}
            className="input"
            value={value}
            inputMode={control === 'number' ? 'numeric' : 'text'}
            autoComplete="off"
            list={`${id}-list`}
            onChange={({ target }) => onChange(target.value)}
          />
          <datalist id={`${id}-list`}>
            {[...new Set([...(control === 'pile' ? piles : []), ...(SUGGESTED[type] ?? [])])].map((one) => (
              <option key={one} value={one} />
            ))}
          </datalist>
        </>
      )}
    </div>
  );
}

function AmountControl({ field, onChange }: Pick<FieldProps, 'field' | 'onChange'>) {
  const { label, type, value } = field;
  const amount = readAmount(value);
  const change = (part: Partial<AmountValue>) => onChange(writeAmount({ ...amount, ...part }));
  const number = (name: 'n' | 'to', words: string) => (
    <input
      className="input"
      type="number"
      min={0}
      max={999}
      aria-label={words}
      value={amount[name]}
      onChange={({ target }) => change({ [name]: Math.max(0, Math.trunc(Number(target.value)) || 0) })}
    />
  );
  const isOpen = amount.way === 'any' || amount.way === 'even' || amount.way === 'odd';
  return (
    <fieldset className="field amount">
      <legend className="label">{label}</legend>
      <select
        className="input"
        aria-label={`${label}: how free`}
        value={amount.way}
        onChange={({ target }) =>
          change({ way: AMOUNT_WAYS.find((way) => way === target.value) ?? 'exactly' })
        }
      >
        {waysFor(type).map((way) => (
          <option key={way} value={way}>
            {WAY_WORDS[way]}
          </option>
        ))}
      </select>
      {!isOpen && number('n', `${label}: number`)}
      {amount.way === 'between' && number('to', `${label}: up to`)}
      {hasEnd(type) && (
        <select
          className="input"
          aria-label={`${label}: from which end`}
          value={amount.end}
          onChange={({ target }) => change({ end: target.value === 'bottom' ? 'bottom' : 'top' })}
        >
          <option value="top">from the top</option>
          <option value="bottom">from the bottom</option>
        </select>
      )}
    </fieldset>
  );
}
