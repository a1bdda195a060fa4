/** Published values, copied; beside each where they come from. Lists begin with the packet size named in the comment. */

/**
 * Out-faros and in-faros that restore 2 to 104 cards. OEIS A002326 and A024222; A. Elmsley, The Mathematics of the Weave Shuffle
 * (1957), in S. Minch, The Collected Works of Alex Elmsley vol. 2 (1994); P. Diaconis, R. L. Graham, W. M. Kantor, The mathematics
 * of perfect shuffles, Adv. in Appl. Math. 4 (1983) 175-196. Odd in-faros: from memory.
 */
export const OUT_FARO_ORDERS = [
  1, 2, 2, 4, 4, 3, 3, 6, 6, 10, 10, 12, 12, 4, 4, 8, 8, 18, 18, 6, 6, 11, 11, 20, 20, 18, 18, 28, 28, 5, 5,
  10, 10, 12, 12, 36, 36, 12, 12, 20, 20, 14, 14, 12, 12, 23, 23, 21, 21, 8, 8, 52, 52, 20, 20, 18, 18, 58,
  58, 60, 60, 6, 6, 12, 12, 66, 66, 22, 22, 35, 35, 9, 9, 20, 20, 30, 30, 39, 39, 54, 54, 82, 82, 8, 8, 28,
  28, 11, 11, 12, 12, 10, 10, 36, 36, 48, 48, 30, 30, 100, 100, 51, 51,
];
export const IN_FARO_ORDERS = [
  2, 2, 4, 4, 3, 3, 6, 6, 10, 10, 12, 12, 4, 4, 8, 8, 18, 18, 6, 6, 11, 11, 20, 20, 18, 18, 28, 28, 5, 5, 10,
  10, 12, 12, 36, 36, 12, 12, 20, 20, 14, 14, 12, 12, 23, 23, 21, 21, 8, 8, 52, 52, 20, 20, 18, 18, 58, 58,
  60, 60, 6, 6, 12, 12, 66, 66, 22, 22, 35, 35, 9, 9, 20, 20, 30, 30, 39, 39, 54, 54, 82, 82, 8, 8, 28, 28,
  11, 11, 12, 12, 10, 10, 36, 36, 48, 48, 30, 30, 100, 100, 51, 51, 12,
];

/** Sizes up to 250 that some number of in-faros turns end for end. OEIS A321580. */
export const IN_FARO_REVERSES = [
  1, 2, 4, 8, 10, 12, 16, 18, 24, 26, 28, 32, 36, 40, 42, 52, 56, 58, 60, 64, 66, 80, 82, 96, 98, 100, 106,
  108, 112, 120, 124, 128, 130, 136, 138, 144, 148, 156, 162, 168, 170, 172, 176, 178, 180, 184, 192, 196,
  200, 204, 208, 210, 226, 228, 240, 242, 248, 250,
];

/** Monge shuffles, 2nd on top, that restore 1 to 104 cards. OEIS A019567; W. W. Rouse Ball, Mathematical Recreations and Essays (4th ed. 1905). */
export const MONGE_OVER_ORDERS = [
  1, 2, 2, 3, 3, 6, 6, 4, 4, 6, 6, 10, 10, 14, 14, 5, 5, 18, 18, 10, 10, 12, 12, 21, 21, 26, 26, 9, 9, 30, 30,
  6, 6, 22, 22, 9, 9, 30, 30, 27, 27, 8, 8, 11, 11, 10, 10, 24, 24, 50, 50, 12, 12, 18, 18, 14, 14, 12, 12,
  55, 55, 50, 50, 7, 7, 18, 18, 34, 34, 46, 46, 14, 14, 74, 74, 24, 24, 26, 26, 33, 33, 20, 20, 78, 78, 86,
  86, 29, 29, 90, 90, 18, 18, 18, 18, 48, 48, 98, 98, 33, 33, 10, 10, 45,
];

/** The same with the 2nd beneath. Terms of OEIS A003558; that they belong to this shuffle: from memory. */
export const MONGE_UNDER_ORDERS = [
  1, 1, 3, 3, 5, 5, 4, 4, 9, 9, 11, 11, 9, 9, 5, 5, 12, 12, 12, 12, 7, 7, 23, 23, 8, 8, 20, 20, 29, 29, 6, 6,
  33, 33, 35, 35, 20, 20, 39, 39, 41, 41, 28, 28, 12, 12, 36, 36, 15, 15, 51, 51, 53, 53, 36, 36, 44, 44, 24,
  24, 20, 20, 7, 7, 65, 65, 36, 36, 69, 69, 60, 60, 42, 42, 15, 15, 20, 20, 52, 52, 81, 81, 83, 83, 9, 9, 60,
  60, 89, 89, 60, 60, 40, 40, 95, 95, 12, 12, 99, 99, 84, 84, 66, 66,
];

/** Top-and-bottom pairs that restore 1 to 104 cards, the top card of a pair above; OEIS A003558 moved by one place. */
export const MILK_ORDERS = [
  1, 1, 2, 3, 3, 5, 6, 4, 4, 9, 6, 11, 10, 9, 14, 5, 5, 12, 18, 12, 10, 7, 12, 23, 21, 8, 26, 20, 9, 29, 30,
  6, 6, 33, 22, 35, 9, 20, 30, 39, 27, 41, 8, 28, 11, 12, 10, 36, 24, 15, 50, 51, 12, 53, 18, 36, 14, 44, 12,
  24, 55, 20, 50, 7, 7, 65, 18, 36, 34, 69, 46, 60, 14, 42, 74, 15, 24, 20, 26, 52, 33, 81, 20, 83, 78, 9, 86,
  60, 29, 89, 90, 60, 18, 40, 18, 95, 48, 12, 98, 99, 33, 84, 10, 66,
];

/** Last card dealt of 1 to 104 cards, 1 = top. OEIS A006257 (under-down) and A152423 (down-under). */
export const UNDER_DOWN_LAST = [
  1, 1, 3, 1, 3, 5, 7, 1, 3, 5, 7, 9, 11, 13, 15, 1, 3, 5, 7, 9, 11, 13, 15, 17, 19, 21, 23, 25, 27, 29, 31,
  1, 3, 5, 7, 9, 11, 13, 15, 17, 19, 21, 23, 25, 27, 29, 31, 33, 35, 37, 39, 41, 43, 45, 47, 49, 51, 53, 55,
  57, 59, 61, 63, 1, 3, 5, 7, 9, 11, 13, 15, 17, 19, 21, 23, 25, 27, 29, 31, 33, 35, 37, 39, 41, 43, 45, 47,
  49, 51, 53, 55, 57, 59, 61, 63, 65, 67, 69, 71, 73, 75, 77, 79, 81,
];
export const DOWN_UNDER_LAST = [
  1, 2, 2, 4, 2, 4, 6, 8, 2, 4, 6, 8, 10, 12, 14, 16, 2, 4, 6, 8, 10, 12, 14, 16, 18, 20, 22, 24, 26, 28, 30,
  32, 2, 4, 6, 8, 10, 12, 14, 16, 18, 20, 22, 24, 26, 28, 30, 32, 34, 36, 38, 40, 42, 44, 46, 48, 50, 52, 54,
  56, 58, 60, 62, 64, 2, 4, 6, 8, 10, 12, 14, 16, 18, 20, 22, 24, 26, 28, 30, 32, 34, 36, 38, 40, 42, 44, 46,
  48, 50, 52, 54, 56, 58, 60, 62, 64, 66, 68, 70, 72, 74, 76, 78, 80,
];

/** Stacks of 2 to 13 cards that come out 1, 2, 3, ... when dealt. OEIS A378635 (under-down) and A378674 (down-under). */
export const UNDER_DOWN_STACKS = [
  [2, 1],
  [2, 1, 3],
  [4, 1, 3, 2],
  [3, 1, 5, 2, 4],
  [5, 1, 4, 2, 6, 3],
  [4, 1, 6, 2, 5, 3, 7],
  [8, 1, 5, 2, 7, 3, 6, 4],
  [5, 1, 9, 2, 6, 3, 8, 4, 7],
  [8, 1, 6, 2, 10, 3, 7, 4, 9, 5],
  [6, 1, 9, 2, 7, 3, 11, 4, 8, 5, 10],
  [11, 1, 7, 2, 10, 3, 8, 4, 12, 5, 9, 6],
  [7, 1, 12, 2, 8, 3, 11, 4, 9, 5, 13, 6, 10],
];
export const DOWN_UNDER_STACKS = [
  [1, 2],
  [1, 3, 2],
  [1, 3, 2, 4],
  [1, 5, 2, 4, 3],
  [1, 4, 2, 6, 3, 5],
  [1, 6, 2, 5, 3, 7, 4],
  [1, 5, 2, 7, 3, 6, 4, 8],
  [1, 9, 2, 6, 3, 8, 4, 7, 5],
  [1, 6, 2, 10, 3, 7, 4, 9, 5, 8],
  [1, 9, 2, 7, 3, 11, 4, 8, 5, 10, 6],
  [1, 7, 2, 10, 3, 8, 4, 12, 5, 9, 6, 11],
  [1, 12, 2, 8, 3, 11, 4, 9, 5, 13, 6, 10, 7],
];

/** Deals that restore 1, 2, 3, ... cards. Down-under: OEIS A051732 (first card dealt ends on top) and A289386 (at the bottom); under-down: computed, no source. */
export const DOWN_UNDER_KEEP_ORDERS = [
  1, 1, 2, 2, 3, 5, 6, 6, 4, 9, 4, 28, 10, 9, 14, 12, 5, 70, 18, 24, 10, 7, 210, 126, 110, 60, 26, 120, 9, 29,
  30, 60, 6, 33, 308, 42, 60, 990, 30, 374, 27, 41, 60, 2618, 840, 840, 420, 1386, 24, 15, 50, 644, 840, 53,
  18, 1386, 14, 13300, 2520, 1260, 55, 6930, 50, 60, 7,
];
export const DOWN_UNDER_ORDERS = [
  1, 2, 3, 2, 5, 6, 5, 4, 6, 6, 15, 12, 12, 30, 15, 4, 17, 18, 10, 20, 21, 14, 24, 90, 63, 26, 27, 18, 66, 12,
  210, 12, 33, 90, 35, 30, 110, 120, 120, 26, 41, 42, 105, 30, 45, 30, 60, 48, 120, 50, 42, 510, 53, 1680,
  120, 1584, 57, 336, 276, 60,
];
export const UNDER_DOWN_KEEP_ORDERS = [
  1, 2, 2, 3, 5, 6, 6, 4, 9, 4, 28, 10, 9, 14, 12, 5, 70, 18, 24, 10, 7, 210, 126, 110, 60, 26, 120, 9, 29,
  30, 60, 6, 33, 308, 42, 60, 990, 30, 374, 27, 41, 60, 2618, 840, 840, 420, 1386, 24, 15, 50, 644, 840, 53,
  18, 1386, 14, 13300, 2520, 1260, 55, 6930, 50, 60, 7, 65,
];
export const UNDER_DOWN_ORDERS = [
  1, 1, 3, 3, 2, 5, 7, 3, 9, 21, 6, 10, 13, 15, 15, 15, 30, 12, 42, 65, 12, 24, 12, 143, 25, 24, 693, 315, 24,
  27, 25, 15, 120, 285, 132, 63, 37, 12, 2145, 60, 120, 39, 43, 195, 45, 819, 40, 575, 49, 4199, 105, 2295,
  306, 120, 420, 30, 105, 252, 380, 315, 210, 8211, 54, 105, 42,
];

/** Arrangements that a cut and a turn of the top k reach from all face down: row n = 2 to 7, entry k = 1 to n. k = 2 for even n: P. Diaconis, R. Graham, Magical Mathematics (Princeton 2012) ch. 1, from memory; others computed, no source. */
export const CUT_AND_TURN_COUNTS = [
  [8, 4],
  [24, 24, 6],
  [64, 48, 64, 8],
  [160, 1920, 1920, 160, 10],
  [384, 1440, 1152, 720, 384, 12],
  [896, 322560, 322560, 161280, 322560, 896, 14],
];

/** Arrangements after one riffle of 0, 1, 2, ... cards. OEIS A000325; D. Bayer, P. Diaconis (1992). */
export const RIFFLE_COUNTS = [1, 1, 2, 5, 12, 27, 58, 121, 248, 503, 1014, 2037, 4084];

/**
 * Shortest words of faros that bring a card of 52 to the top, from place 1 on. P. Diaconis, R. Graham, The solutions to Elmsley's
 * problem, Math Horizons 14 (2007) 22-27, from memory; S. Ramnath, D. Scully, Math. Mag. 69 (1996) 361-365.
 */
export const ANY_CARD_TO_TOP_OF_52 = [
  '',
  'IOIOI',
  'OIIIII',
  'OIOI',
  'IIIII',
  'IOIOII',
  'IOI',
  'OIIIOI',
  'OOOOI',
  'IIII',
  'IOIOOI',
  'OIOII',
  'OOOOII',
  'OI',
  'IIIOI',
  'OOIIII',
  'OOOI',
  'IOIII',
  'IIIOII',
  'III',
  'OOIIOI',
  'OIOOI',
  'IOII',
  'IIIOOI',
  'OOOII',
  'OIOOII',
  'I',
  'OOIOI',
  'IIIIII',
  'IIOI',
  'OIIII',
  'OOIOII',
  'OOI',
  'IIIIOI',
  'IOOOI',
  'OIII',
  'OOIOOI',
  'IIOII',
  'IOOOII',
  'II',
  'OIIOI',
  'IOIIII',
  'IOOI',
  'OOIII',
  'OIIOII',
  'OII',
  'IOIIOI',
  'IIOOI',
  'OOII',
  'OIIOOI',
  'IOOII',
  'IIOOII',
];
