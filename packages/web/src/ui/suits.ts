import type { Suit } from './card-face.ts';

/** The suits as outlines in a square of 100, so that no font has to know them and paper shows what the screen shows. */
export const SUIT_PATHS: Readonly<Record<Suit, string>> = {
  hearts:
    'M50 94C22 70 5 52 5 31C5 16 15 7 27 7C37 7 45 12 50 22C55 12 63 7 73 7C85 7 95 16 95 31C95 52 78 70 50 94Z',
  diamonds: 'M50 3C60 21 72 36 87 50C72 64 60 79 50 97C40 79 28 64 13 50C28 36 40 21 50 3Z',
  spades:
    'M50 4C37 26 7 42 7 63C7 76 16 84 27 84C36 84 42 80 46 73C45 83 41 91 34 97L66 97C59 91 55 83 54 73C58 80 64 84 73 84C84 84 93 76 93 63C93 42 63 26 50 4Z',
  clubs:
    'M50 5A21 21 0 0 1 67 38.5A21.5 21.5 0 1 1 54 67C55 81 59 91 66 97L34 97C41 91 45 81 46 67A21.5 21.5 0 1 1 33 38.5A21 21 0 0 1 50 5Z',
};
