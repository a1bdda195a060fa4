import type { Reader } from './setup-reader.ts';
import type { Facing, Setting } from './setup-syntax.ts';

const ways = (text: string): string[][] => text.split('|').map((way) => way.trim().split(' '));

// Longer phrasings first, where one begins with another.
const FACINGS: readonly (readonly [Facing, string[][]])[] = [
  [
    'free',
    ways(
      'face up or face down|face up or down|face down or face up|face down or up|faces up or down|either way up|any way up|' +
        'facing either way|each face up or face down|each face up or down|each face down or face up|each either way up',
    ),
  ],
  [
    'up and down',
    ways(
      'alternately face up and face down|alternately face up and down|alternating face up and face down|' +
        'alternating face up and down|face up and face down alternately|face up and down alternately',
    ),
  ],
  [
    'down and up',
    ways(
      'alternately face down and face up|alternately face down and up|alternating face down and face up|' +
        'alternating face down and up|face down and face up alternately|face down and up alternately|every second card face up',
    ),
  ],
  ['up', ways('face up|faces up|face upwards|facing up|backs down|back down')],
  ['down', ways('face down|faces down|face downwards|facing down|backs up|back up')],
];
const LIKING = ways(
  'as they like|as you like|as they please|as you please|as they wish|as you wish|as they come|as they lie|as they fall|' +
    'as it comes|at will',
);
const ORDERS = ways(
  'in any order at all|in any order whatever|in any order|in whatever order|thoroughly shuffled|well shuffled|shuffled|' +
    'thoroughly mixed|well mixed|mixed',
);
const ENDS = ways(
  'turned end for end|end for end|with ends exchanged|ends exchanged|with ends reversed|ends reversed',
);

/** Reads how cards lie or that their order is open; null, and nothing passed over, when nothing of the kind stands here. */
export function readSetting(r: Reader): Setting | null {
  for (const [facing, phrases] of FACINGS)
    if (r.eatAny(phrases)) {
      if (facing === 'free') r.eatAny(LIKING);
      return { sets: 'facing', facing };
    }
  if (r.eatAny(ENDS)) return { sets: 'ends' };
  return r.eatAny(ORDERS) ? { sets: 'order' } : null;
}

/** `face-up red cards`: a facing in front of what it speaks of. */
export function readFacingBefore(r: Reader): 'up' | 'down' | null {
  for (const facing of ['up', 'down'] as const) {
    const length = r.span(['face', facing]);
    if (length > 0 && r.shared.words.has(r.word(length))) {
      r.at += length;
      return facing;
    }
  }
  return null;
}

/** `face up` after one member of a pattern. */
export function readFacingAfter(r: Reader): 'up' | 'down' | null {
  return r.eat('face', 'up') ? 'up' : r.eat('face', 'down') ? 'down' : null;
}

export function printSetting(setting: Setting): string {
  switch (setting.sets) {
    case 'ends':
      return 'turned end for end';
    case 'order':
      return 'in any order';
    case 'facing':
      return FACING_TEXT[setting.facing];
  }
}

const FACING_TEXT: Readonly<Record<Facing, string>> = {
  up: 'face up',
  down: 'face down',
  free: 'face up or down as they like',
  'up and down': 'alternately face up and face down',
  'down and up': 'alternately face down and face up',
};
