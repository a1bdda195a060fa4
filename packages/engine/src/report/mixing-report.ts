import type { Trouble } from '../base/diagnostic.ts';
import { good, type Result } from '../base/result.ts';
import { toNumber } from '../base/rational.ts';
import { riffleCount, rifflesAmong, type FinalOrders } from '../insight/mixing/final-orders.ts';
import { mixingOf, wellMixed, type Mixing } from '../insight/mixing/mixing.ts';
import { riffleDistance } from '../insight/mixing/riffle-distance.ts';
import type { Limits } from '../proving/question.ts';
import { answered, type Asked } from './asked.ts';
import { counted, grouped } from './words.ts';

/** How a figure was got: exactly, or from so many random performances. */
export type Got =
  { readonly how: 'exact' } | { readonly how: 'sampled'; readonly runs: number; readonly seed: number };

/** A mean, and what it is for a packet in any order at all. */
export type MeanData = Got & { readonly mean: number; readonly mixed: number };

export interface OrdersData {
  /** Strings of digits; equal where `exact`. */
  readonly least: string;
  readonly most: string;
  readonly exact: boolean;
  /** How it was got, in words. */
  readonly how: string;
}

export type PlacesData = Got & {
  /** Mean distance of a card's place from an even chance of every place: 0 even, near 1 certain. */
  readonly mean: number;
  /** The likeliest end of any card; places counted from 1. */
  readonly worst: { readonly place: number; readonly to: number; readonly chance: number };
};

export interface RifflesData {
  readonly count: number;
  /** Total variation distance from a packet in any order, 1 at the beginning and 0 when well mixed. */
  readonly distance: number;
  /** True where the working is nothing but these riffles. */
  readonly whole: boolean;
}

/** How mixed the cards are at the end, and how mixed they look. */
export interface MixingReport {
  /** A string of digits; null where they were not counted or go on without end. */
  readonly performances: string | null;
  readonly orders: OrdersData | null;
  /** All ways in which the cards could lie. */
  readonly all: string;
  readonly travel: MeanData | null;
  readonly places: PlacesData | null;
  readonly rising: MeanData | null;
  /** Cards that still lie under the card they lay under, as a share. */
  readonly neighbours: MeanData | null;
  readonly riffles: RifflesData | null;
  readonly words: string;
}

export interface MixingOptions {
  readonly seed: number;
  /** Random performances. */
  readonly runs: number;
  /** Tables that may be followed to count final orders. */
  readonly states: number;
}

export const MIXING: MixingOptions = { seed: 1, runs: 2000, states: 40_000 };

/** Numbers of performances and final orders, how far cards travel and how even their places are, rising sequences and riffles. */
export function mixingReport(
  asked: Asked,
  options: Partial<MixingOptions>,
  limits: Limits,
): Result<MixingReport, Trouble> {
  return answered(asked, limits, ({ decision, routine }) => {
    const { seed, runs, states } = { ...MIXING, ...options };
    const mixing = mixingOf(decision, { states, runs, seed }, limits);
    const n = decision.graph.cards;
    const { all } = mixing;
    const whole = riffleCount(routine.steps);
    const count = whole ?? rifflesAmong(routine.steps);
    const riffles =
      count === 0 ? null : { count, distance: toNumber(riffleDistance(n, count)), whole: whole !== null };
    const { looks, places } = mixing;
    const mixed = wellMixed(n);
    const sampled = looks === null ? null : { how: 'sampled' as const, runs: looks.runs, seed };
    const mean = (is: number, well: number): MeanData | null =>
      sampled === null ? null : { ...sampled, mean: is, mixed: well };
    const got = places === null ? null : places.how === 'exact' ? { how: 'exact' as const } : sampled;
    const report = {
      performances: mixing.performances,
      orders: mixing.orders === null ? null : ordersData(mixing.orders),
      all: String(all),
      travel:
        got === null || places === null
          ? null
          : { ...got, mean: places.evenness.travel, mixed: mixed.travel },
      places:
        got === null || places === null
          ? null
          : { ...got, mean: places.evenness.mean, worst: places.evenness.worst },
      rising: looks === null ? null : mean(looks.rising, mixed.rising),
      neighbours: looks === null ? null : mean(looks.neighbours, mixed.neighbours),
      riffles,
    };
    return good({ ...report, words: `${sayIs(mixing, riffles, all)} ${sayLooks(report)}` });
  });
}

function ordersData({ least, most, by, mostBy }: FinalOrders): OrdersData {
  const how = {
    search: 'every table that can come about was followed',
    riffles: 'riffles leave the orders with at most 2^k rising sequences after k of them, and all of these',
    bounds:
      mostBy === 'performances'
        ? 'the least is what was met before the search ended, the most is the number of performances'
        : 'the least is what was met before the search ended, the most is every order there is',
  }[by];
  return { least: String(least), most: String(most), exact: by !== 'bounds', how };
}

/** How mixed it is: what can be said for certain. */
function sayIs({ orders }: Mixing, riffles: RifflesData | null, all: bigint): string {
  if (riffles !== null && riffles.whole) {
    const { count, distance } = riffles;
    const how = distance < WELL ? 'well mixed' : distance < PARTLY ? 'partly mixed' : 'far from mixed';
    return `After ${counted(count, 'riffle')} the packet is ${how}: its distance from any order at all is ${distance.toFixed(3)}, where 1 is unmixed and 0 is well mixed.`;
  }
  if (orders === null) return 'Some performances get stuck, so that final orders cannot be counted.';
  const { least, most } = orders;
  if (least === most && most === 1n) return 'Nothing is mixed: there is one final order.';
  if (most < all) {
    const share = all / most;
    const upTo = least === most ? '' : 'at most ';
    const one = share > 1n ? `, one in ${grouped(share)}` : '';
    return `It is not mixed: ${upTo}${grouped(most)} of the ${grouped(all)} ways in which the cards could lie can come about${one}.`;
  }
  if (least === all)
    return 'Every order can come about; whether they are equally likely is another question.';
  return `How many orders can come about is not known: at least ${grouped(least)} of ${grouped(all)}.`;
}

// Distances up to which a packet is called well mixed and partly mixed.
const WELL = 0.1;
const PARTLY = 0.5;
// A mean so near to that of a mixed packet is not told from it by looking.
const NEAR = 0.15;

function sayLooks({
  travel,
  rising,
  neighbours,
}: Pick<MixingReport, 'travel' | 'rising' | 'neighbours'>): string {
  if (travel === null || rising === null || neighbours === null)
    return 'Cards are shuffled freely, so that it looks as mixed as that shuffle is.';
  const near = ({ mean, mixed }: MeanData): boolean => Math.abs(mean - mixed) <= NEAR * mixed;
  const signs = [near(travel), near(rising), neighbours.mean <= 2 * neighbours.mixed];
  const good_ = signs.filter(Boolean).length;
  const how = good_ === 3 ? 'It looks mixed' : good_ === 0 ? 'It does not look mixed' : 'It looks half mixed';
  return `${how}: a card travels ${travel.mean.toFixed(1)} places on average (${travel.mixed.toFixed(1)} in a mixed packet), there are ${rising.mean.toFixed(1)} rising sequences (${rising.mixed.toFixed(1)}), and ${percent(neighbours.mean)} of the cards lie under the card they lay under (${percent(neighbours.mixed)}).`;
}

function percent(share: number): string {
  return `${(100 * share).toFixed(share < 0.1 ? 1 : 0)} %`;
}
