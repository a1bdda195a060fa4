import type { Card as CardOfNote, TableData } from '@foregone/engine';
import { useLayoutEffect, useRef, type CSSProperties, type ReactNode } from 'react';
import { Card } from '../ui/card.tsx';
import { faceOf, sayCard } from '../ui/card-face.ts';
import { cardWidthFor, type PlacedPile, type Pose } from './place.ts';

interface CardsLayerProps {
  readonly cards: readonly CardOfNote[];
  /** The table as it is spoken of: what a listener hears in place of the drawing. */
  readonly table: TableData;
  readonly piles: readonly PlacedPile[];
  readonly width: number;
  readonly height: number;
  /** True where faces that lie down may be known. */
  readonly ghosts: boolean;
  /** Hands the layer a painter, which is called each frame with where every card is. */
  readonly onPainter: (paint: (poses: ReadonlyMap<number, Pose>) => void) => void;
  /** Touching a card: its pile, its place from the top, 0 first, and its number. */
  readonly onTouch: ((pile: string, place: number, card: number) => void) | undefined;
  /** Drawn over the cards. */
  readonly children?: ReactNode;
}

/** The cards themselves. React makes them once; each frame only changes their transforms. */
export function CardsLayer({
  cards,
  table,
  piles,
  width,
  height,
  ghosts,
  onPainter,
  onTouch,
  children,
}: CardsLayerProps) {
  const spots = useRef(new Map<number, HTMLElement>());
  useLayoutEffect(() => {
    onPainter((poses) => {
      for (const [id, { x, y, z, turn, spin }] of poses) {
        const spot = spots.current.get(id);
        if (spot === undefined) continue;
        const side = turn > 0.5 ? 'up' : 'down';
        if (spot.dataset['side'] !== side) spot.dataset['side'] = side;
        const squeeze = Math.max(0.04, Math.abs(Math.cos(turn * Math.PI)));
        spot.style.transform = `translate(${x.toFixed(1)}px, ${y.toFixed(1)}px) rotate(${spin.toFixed(1)}deg) scaleX(${squeeze.toFixed(3)})`;
        spot.style.zIndex = String(z);
      }
    });
  }, [onPainter]);
  const cardWidth: CSSProperties & Record<'--card-width', string> = {
    '--card-width': `${cardWidthFor(width, cards.length)}px`,
    height,
  };
  return (
    <div className="table-cards" style={cardWidth}>
      {piles.map(({ name, count, x, y, width: across }) => (
        <span
          key={`${name}${x},${y}`}
          className="pile-label second"
          style={{ left: x, top: y, width: across }}
        >
          {name} <small>{count}</small>
        </span>
      ))}
      <div aria-hidden>
        {cards.map((card) => (
          <span
            key={card.id}
            ref={(element) => {
              if (element === null) spots.current.delete(card.id);
              else spots.current.set(card.id, element);
            }}
            className="spot"
            data-touch={onTouch !== undefined}
            onClick={
              onTouch &&
              (() => {
                for (const pile of table.piles) {
                  const at = pile.cards.findIndex(({ id }) => id === card.id);
                  if (at >= 0) onTouch(pile.name, at, card.id);
                }
              })
            }
          >
            <span className="side-up">
              <Card face={faceOf(card)} up label="" />
            </span>
            <span className="side-down">
              <Card face={faceOf(card)} up={false} ghost={ghosts} label="" />
            </span>
          </span>
        ))}
      </div>
      {children}
      <Spoken cards={cards} table={table} known={ghosts} />
    </div>
  );
}

/** The piles in words, for those who do not see them. */
function Spoken({
  cards,
  table,
  known,
}: {
  readonly cards: readonly CardOfNote[];
  readonly table: TableData;
  readonly known: boolean;
}) {
  const byId = new Map(cards.map((card) => [card.id, card]));
  return (
    <div className="said-only">
      {table.piles.map((pile) => (
        <section key={pile.name} aria-label={`${pile.name}, ${pile.cards.length} cards from the top`}>
          <ol>
            {pile.cards.map(({ id, up, end }) => {
              const card = byId.get(id);
              return <li key={id}>{card === undefined ? '' : sayCard(faceOf(card), { up, end }, known)}</li>;
            })}
          </ol>
        </section>
      ))}
    </div>
  );
}
