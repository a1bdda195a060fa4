/** Ways that the cards of a packet can be named by picking, each with the words a set-up has for it. */
export const CARD_WAYS = [
  'any cards',
  'alternately red and black',
  'red cards, then black cards',
  'spades from the ace',
  'full pack in any order',
  'cards one by one',
] as const;
export type CardWay = (typeof CARD_WAYS)[number];

export const FACINGS = ['face down', 'face up', 'alternately face up and face down'] as const;
export type CardFacing = (typeof FACINGS)[number];

export interface CardsPicked {
  readonly way: CardWay;
  readonly count: number;
  readonly facing: CardFacing;
  /** For `cards one by one`: as they are typed or picked. */
  readonly listed: string;
}

const RANKS = ['A', '2', '3', '4', '5', '6', '7', '8', '9', '10', 'J', 'Q', 'K'] as const;
export const SUITS = [
  ['S', 'spades'],
  ['H', 'hearts'],
  ['C', 'clubs'],
  ['D', 'diamonds'],
] as const;

/** Every card of the pack in the letters a set-up is written with. */
export const PACK: readonly string[] = SUITS.flatMap(([suit]) => RANKS.map((rank) => `${rank}${suit}`));

/** Whether the number of cards is asked for. */
export function hasCount(way: CardWay): boolean {
  return way !== 'full pack in any order' && way !== 'cards one by one';
}

/** The most cards of a way. */
export function mostOf(way: CardWay): number {
  return way === 'spades from the ace' ? RANKS.length : 104;
}

/** The line of a set-up for what was picked, such as `packet: 10 cards alternately red and black, face down`. */
export function packetLine({ way, count, facing, listed }: CardsPicked): string {
  const n = Math.max(way === 'alternately red and black' ? 2 : 1, Math.min(count, mostOf(way)));
  const cards = (many: number, kind = '') => `${many} ${kind}${many === 1 ? 'card' : 'cards'}`;
  const lying = `, ${facing}`;
  switch (way) {
    case 'any cards':
      return `packet: ${cards(n)}${lying}`;
    case 'alternately red and black':
      return `packet: ${cards(n)} alternately red and black${lying}`;
    case 'red cards, then black cards': {
      const red = Math.ceil(n / 2);
      const halves = n === 1 ? cards(1, 'red ') : `${cards(red, 'red ')}, then ${cards(n - red, 'black ')}`;
      return `packet: ${halves}, all ${facing}`;
    }
    case 'spades from the ace':
      return `packet: ${n === 1 ? 'AS' : `A-${RANKS[n - 1] ?? 'K'} of spades`}${lying}`;
    case 'full pack in any order':
      return `packet: full pack in any order${lying}`;
    case 'cards one by one':
      return `packet: ${listed.trim() === '' ? 'AS' : listed.trim()}${lying}`;
  }
}
