import { Icon } from '../ui/icons.tsx';
import type { Performing } from './use-stage.ts';

/** How the ending stands on the cards as they came to lie. */
export function Summary({ performing }: { readonly performing: Performing }) {
  if (performing.stuck) return <p className="summary brick">The working cannot go on from here.</p>;
  if (!performing.ended) return null;
  return (
    <section className="summary" aria-label="The ending on these cards">
      <ul>
        {performing.judged.map(({ text, holds, shows }) => (
          <li key={text} className={holds === true ? 'pencil' : 'brick'}>
            <Icon name={holds === true ? 'proved' : 'refuted'} />
            <span>
              {text}: {holds === true ? 'true' : 'false'}
              {shows !== '' && <small> {shows}</small>}
            </span>
          </li>
        ))}
      </ul>
    </section>
  );
}
