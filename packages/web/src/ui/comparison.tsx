import { useMemo } from 'react';
import { compare, type Stretch } from './compare.ts';
import './comparison.css';

interface ComparisonProps {
  readonly before: string;
  readonly after: string;
  readonly beforeName: string;
  readonly afterName: string;
}

/** Two texts side by side; what differs is marked in each. */
export function Comparison({ before, after, beforeName, afterName }: ComparisonProps) {
  const rows = useMemo(() => compare(before, after), [before, after]);
  return (
    <div
      className="comparison-frame"
      tabIndex={0}
      role="region"
      aria-label={`${beforeName} and ${afterName}`}
    >
      <table className="comparison">
        <thead>
          <tr>
            <th scope="col">{beforeName}</th>
            <th scope="col">{afterName}</th>
          </tr>
        </thead>
        <tbody>
          {rows.map((row, index) => (
            <tr key={index}>
              <td>{row.before?.map(mark('del'))}</td>
              <td>{row.after?.map(mark('ins'))}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}

function mark(Tag: 'del' | 'ins') {
  return function Marked({ text, changed }: Stretch, index: number) {
    return changed ? <Tag key={index}>{text}</Tag> : <span key={index}>{text}</span>;
  };
}
