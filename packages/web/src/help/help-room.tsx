import { CLAIMS, MOVES, wordingOf } from '@foregone/engine';
import { repository } from '../storage/repository.ts';
import { Button } from '../ui/button.tsx';
import { addressOf, go } from '../ui/routes.ts';
import { GUIDE } from './guide.ts';
import { KEYS } from './key-map.ts';
import { Markdown } from './markdown.tsx';
import './help.css';

const HANDS: readonly (readonly [string, string])[] = [
  ['cut', 'Cut'],
  ['deal', 'Deal and count'],
  ['turn', 'Turn over'],
  ['mix', 'Mix'],
  ['gather', 'Gather'],
  ['choose', 'Choose and name'],
  ['hand over', 'Hand over'],
  ['order', 'Put in order'],
];

/** Help: the guide, every move and every form of ending with an example, and the keys. */
export function HelpRoom({ page }: { readonly page: string }) {
  const [kind = '', name = ''] = page.split('/');
  return (
    <article className="help paper">
      <nav aria-label="Help" className="help-nav">
        <ul>
          {GUIDE.map((one) => (
            <li key={one.name}>
              <HelpLink to={`guide/${one.name}`} page={page}>
                {one.title}
              </HelpLink>
            </li>
          ))}
          <li>
            <HelpLink to="moves" page={page}>
              Moves
            </HelpLink>
          </li>
          <li>
            <HelpLink to="endings" page={page}>
              Endings
            </HelpLink>
          </li>
          <li>
            <HelpLink to="keys" page={page}>
              Keys
            </HelpLink>
          </li>
        </ul>
      </nav>
      <div className="help-page">{pageOf(kind, name)}</div>
    </article>
  );
}

function pageOf(kind: string, name: string) {
  switch (kind) {
    case 'moves':
      return name === '' ? <Moves /> : <MovePage id={name} />;
    case 'endings':
      return name === '' ? <Endings /> : <EndingPage id={name} />;
    case 'keys':
      return <Keys />;
    default:
      return <Guide name={name} />;
  }
}

interface HelpLinkProps {
  readonly to: string;
  readonly page: string;
  readonly children: string;
}

function HelpLink({ to, page, children }: HelpLinkProps) {
  const isHere = page === to || page.startsWith(`${to}/`);
  return (
    <a href={addressOf({ room: 'help', page: to })} aria-current={isHere ? 'page' : undefined}>
      {children}
    </a>
  );
}

function Guide({ name }: { readonly name: string }) {
  const page = GUIDE.find((one) => one.name === name) ?? GUIDE[0];
  if (page === undefined) return <h1>Help</h1>;
  return (
    <Markdown
      text={page.text}
      fence={(info, code) => (
        <figure className="help-note">
          <pre tabIndex={0} aria-label="A note">
            {code}
          </pre>
          {info.startsWith('note') && (
            <figcaption>
              <Button tone="pencil" onPress={() => void openCopy(code)}>
                Open a copy
              </Button>
            </figcaption>
          )}
        </figure>
      )}
    />
  );
}

async function openCopy(text: string) {
  const note = await repository.createNote(text);
  go({ room: 'note', id: note.id });
}

function Moves() {
  return (
    <>
      <h1>Moves</h1>
      <p>What the hands do, in the words of the working.</p>
      {HANDS.map(([hands, name]) => (
        <section key={hands}>
          <h2>{name}</h2>
          <ul className="help-list">
            {MOVES.filter((move) => move.hands === hands).map(({ id, title }) => (
              <li key={id}>
                <a href={addressOf({ room: 'help', page: `moves/${id}` })}>{title}</a>
              </li>
            ))}
          </ul>
        </section>
      ))}
    </>
  );
}

function Endings() {
  return (
    <>
      <h1>Endings</h1>
      <p>What may be said of the cards at the end, each to be proved on its own.</p>
      <ul className="help-list">
        {CLAIMS.map(({ id, title }) => (
          <li key={id}>
            <a href={addressOf({ room: 'help', page: `endings/${id}` })}>{title}</a>
          </li>
        ))}
      </ul>
    </>
  );
}

function MovePage({ id }: { readonly id: string }) {
  const move = MOVES.find((one) => one.id === id);
  if (move === undefined) return <Moves />;
  return (
    <>
      <h1>{move.title}</h1>
      <p>{move.help}</p>
      {move.caution !== '' && <p className="second">{move.caution}</p>}
      <Wordings phrases={move.phrases.map(wordingOf)} synonyms={move.synonyms} />
      <h2>Examples</h2>
      {move.examples.map(({ before, sentence, choices, after }) => (
        <dl key={`${before} ${sentence} ${choices.join()}`} className="help-example">
          <div>
            <dt>Before</dt>
            <dd>{before}</dd>
          </div>
          <div>
            <dt>Sentence</dt>
            <dd>
              {sentence}
              {choices.length > 0 && <i className="second"> chosen: {choices.join(', ')}</i>}
            </dd>
          </div>
          <div>
            <dt>After</dt>
            <dd>{after}</dd>
          </div>
        </dl>
      ))}
      <p className="second">From the top, left to right. ^ is face up, ' is turned end for end.</p>
    </>
  );
}

function EndingPage({ id }: { readonly id: string }) {
  const claim = CLAIMS.find((one) => one.id === id);
  if (claim === undefined) return <Endings />;
  return (
    <>
      <h1>{claim.title}</h1>
      <p>{claim.help}</p>
      {claim.caution !== '' && <p className="second">{claim.caution}</p>}
      <Wordings phrases={claim.phrases.map(wordingOf)} synonyms={claim.synonyms} />
      <h2>Examples</h2>
      {claim.examples.map(({ table, sentence, holds }) => (
        <dl key={`${table} ${sentence}`} className="help-example">
          <div>
            <dt>Cards</dt>
            <dd>{table}</dd>
          </div>
          <div>
            <dt>Sentence</dt>
            <dd>{sentence}</dd>
          </div>
          <div>
            <dt>Holds</dt>
            <dd>{holds ? 'yes' : 'no'}</dd>
          </div>
        </dl>
      ))}
    </>
  );
}

function Wordings({
  phrases,
  synonyms,
}: {
  readonly phrases: readonly string[];
  readonly synonyms: readonly string[];
}) {
  return (
    <>
      <h2>How it is written</h2>
      <ul className="help-wordings">
        {phrases.map((words) => (
          <li key={words}>{words}</li>
        ))}
      </ul>
      <p className="second">
        What stands in square brackets may be left out; of words with a bar between them, take one; what
        stands in pointed brackets is filled in.
        {synonyms.length > 0 && ` Also called: ${synonyms.join(', ')}.`}
      </p>
    </>
  );
}

function Keys() {
  return (
    <>
      <h1>Keys</h1>
      {KEYS.map(({ room, keys }) => (
        <section key={room}>
          <h2>{room}</h2>
          <dl className="help-keys">
            {keys.map(([key, what]) => (
              <div key={key}>
                <dt>
                  <kbd>{key}</kbd>
                </dt>
                <dd>{what}</dd>
              </div>
            ))}
          </dl>
        </section>
      ))}
    </>
  );
}
