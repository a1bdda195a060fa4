import { sayCard, type CardFace, type Lie } from './card-face.ts';
import { fitName } from './own-name.ts';
import { SUIT_PATHS } from './suits.ts';

interface CardProps extends Lie {
  readonly face: CardFace;
  /** A face-down card whose face the viewer may know shows it faintly. */
  readonly ghost?: boolean;
  /** Said instead of the usual words; an empty text makes the drawing silent, for lists that say the cards themselves. */
  readonly label?: string;
}

/** Width and height of a card in its own units; look.md asks for 7:10 and corners of 7 in 66. */
export const CARD = { width: 70, height: 100, corner: 7.4 } as const;

/** One of our typographic cards. Its size comes from `--card-width`. */
export function Card({ face, up, end = false, ghost = false, label }: CardProps) {
  const said = label ?? sayCard(face, { up, end }, ghost);
  return (
    <svg
      className="card"
      viewBox={`0 0 ${CARD.width} ${CARD.height}`}
      {...(said === '' ? { 'aria-hidden': true } : { role: 'img', 'aria-label': said })}
    >
      <g transform={end ? `rotate(180 ${CARD.width / 2} ${CARD.height / 2})` : undefined}>
        {up ? <Front face={face} /> : <Back face={ghost ? face : undefined} />}
      </g>
    </svg>
  );
}

function Stock({ className }: { readonly className: string }) {
  return (
    <rect
      className={className}
      x={0.5}
      y={0.5}
      width={CARD.width - 1}
      height={CARD.height - 1}
      rx={CARD.corner}
    />
  );
}

function Front({ face }: { readonly face: CardFace }) {
  return (
    <>
      <Stock className="stock" />
      <Index face={face} />
      {face.kind === 'pip' && <SuitMark suit={face.suit} x={32} y={58} size={32} />}
      {face.kind === 'colour' && <ColourMark colour={face.colour} x={48} y={74} size={13} />}
    </>
  );
}

function Back({ face }: { readonly face: CardFace | undefined }) {
  return (
    <>
      <Stock className="back" />
      <g className="hatch">
        {HATCH.map(([from, to]) => (
          <line key={from} x1={8} y1={from} x2={62} y2={to} />
        ))}
      </g>
      <rect className="panel" x={8} y={8} width={54} height={84} rx={3} />
      <circle className="top-end" cx={35} cy={19} r={6.5} />
      {face !== undefined && face.kind !== 'any' && (
        <g className="ghost" transform="translate(0 24)">
          <Index face={face} />
        </g>
      )}
    </>
  );
}

// Each line runs down to the left between the sides of the panel; those that would leave it above or below are left out.
const HATCH: readonly (readonly [number, number])[] = Array.from({ length: 8 }, (_, line) => [
  16 + 54 * 0.55 + line * 6,
  16 + line * 6,
]);

function Index({ face }: { readonly face: CardFace }) {
  switch (face.kind) {
    // Only its lying one way or the other can be told.
    case 'any':
      return <rect className="frame" x={6.5} y={6.5} width={57} height={87} rx={4} />;
    case 'pip':
      return (
        <>
          <text
            className={`rank suit-${face.suit}`}
            x={8}
            y={26}
            fontSize={25}
            letterSpacing={face.rank === '10' ? -2.2 : 0}
          >
            {face.rank}
          </text>
          <SuitMark suit={face.suit} x={8} y={31} size={15} />
        </>
      );
    case 'colour':
      return (
        <text className={`rank colour-${face.colour}`} x={8} y={22} fontSize={16}>
          {face.colour}
        </text>
      );
    case 'own': {
      const { lines, size } = fitName(face.name);
      return (
        <>
          {lines.map((line, index) => (
            <text key={index} className="own" x={7} y={10 + size * (0.6 + 1.15 * index)} fontSize={size}>
              {line}
            </text>
          ))}
          <rect className="frame" x={4.5} y={4.5} width={61} height={91} rx={4} />
        </>
      );
    }
  }
}

function ColourMark(place: {
  readonly colour: 'red' | 'black';
  readonly x: number;
  readonly y: number;
  readonly size: number;
}) {
  // Open for red and filled for black, as in the pictures of packets, so that no eye has to tell the colours apart.
  return place.colour === 'red' ? (
    <circle className="ring colour-red" cx={place.x} cy={place.y} r={place.size - 2.5} />
  ) : (
    <circle className="colour-black" cx={place.x} cy={place.y} r={place.size} />
  );
}

function SuitMark(place: {
  readonly suit: keyof typeof SUIT_PATHS;
  readonly x: number;
  readonly y: number;
  readonly size: number;
}) {
  return (
    <path
      className={`suit-${place.suit}`}
      d={SUIT_PATHS[place.suit]}
      transform={`translate(${place.x} ${place.y}) scale(${place.size / 100})`}
    />
  );
}
