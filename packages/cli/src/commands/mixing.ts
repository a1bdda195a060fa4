import { grouped, sayTrouble, type MixingReport } from '@foregone/engine';
import { EXIT } from '../exit-codes.ts';
import type { JobLimits } from '../job-limits.ts';
import { jsonText } from '../json.ts';
import { runJob } from '../run-job.ts';
import { hang, wrap } from '../render/wrap.ts';
import type { Terminal } from '../terminal.ts';
import { complainOfNote, fileOrCode } from './complain.ts';

export interface MixingCommandOptions {
  readonly json: boolean;
  readonly runs: number | undefined;
  readonly seed: number | undefined;
  readonly states: number | undefined;
  readonly limits: JobLimits;
}

/** How many performances and final orders there are, and how mixed the cards are and look. */
export async function mixing(
  path: string,
  options: MixingCommandOptions,
  terminal: Terminal,
): Promise<number> {
  const file = await fileOrCode(path, terminal);
  if (typeof file === 'number') return file;
  const { json, runs, seed, states, limits } = options;
  const { report, mixing: found } = await runJob({
    job: 'mixing',
    text: file.text,
    limits,
    options: {
      ...(runs === undefined ? {} : { runs }),
      ...(seed === undefined ? {} : { seed }),
      ...(states === undefined ? {} : { states }),
    },
  });
  if (report.verdict === 'not understood') {
    complainOfNote(path, file.text, report, terminal);
    return EXIT.notUnderstood;
  }
  const problem = found.ok ? undefined : sayTrouble(found.error);
  const { title } = report;
  if (json)
    terminal.out(
      jsonText({
        file: path,
        title,
        ...(problem === undefined ? {} : { problem }),
        ...(found.ok ? found.value : {}),
      }),
    );
  else if (found.ok) draw(found.value, terminal);
  if (problem !== undefined) terminal.err(`${problem}\n`);
  return found.ok ? EXIT.proved : EXIT.undecided;
}

function draw(report: MixingReport, { out, width }: Terminal): void {
  const { performances, orders, all, travel, places, rising, neighbours, riffles, words } = report;
  const line = (name: string, text: string): void => out(`${hang(name.padEnd(LEAD), text, width)}\n`);
  line('performances', performances === null ? 'without number, or not counted' : grouped(performances));
  if (orders !== null)
    line(
      'final orders',
      `${orders.exact ? grouped(orders.least) : `${grouped(orders.least)} to ${grouped(orders.most)}`} of ${grouped(all)}: ${orders.how}`,
    );
  const got = (of: { how: 'exact' } | { how: 'sampled'; runs: number; seed: number }): string =>
    of.how === 'exact' ? 'exact' : `from ${grouped(of.runs)} random performances, seed ${of.seed}`;
  if (travel !== null)
    line(
      'travel',
      `${travel.mean.toFixed(2)} places a card (${travel.mixed.toFixed(2)} when well mixed), ${got(travel)}`,
    );
  if (places !== null) {
    const { place, to, chance } = places.worst;
    line(
      'places',
      `${places.mean.toFixed(3)} from even on average, where 0 is even and near 1 is certain; the likeliest: from place ${place} to place ${to} with chance ${chance.toFixed(3)}; ${got(places)}`,
    );
  }
  if (rising !== null)
    line(
      'rising',
      `${rising.mean.toFixed(2)} rising sequences (${rising.mixed.toFixed(1)} when well mixed), ${got(rising)}`,
    );
  if (neighbours !== null)
    line(
      'neighbours',
      `${(100 * neighbours.mean).toFixed(1)} % of the cards lie under the card they lay under (${(100 * neighbours.mixed).toFixed(1)} % when well mixed), ${got(neighbours)}`,
    );
  if (riffles !== null)
    line(
      'riffles',
      `${riffles.count}${riffles.whole ? '' : ', by themselves'}: ${riffles.distance.toFixed(4)} from well mixed, exact (Bayer and Diaconis 1992)`,
    );
  out(`\n${wrap(words, width)}\n`);
}

const LEAD = 14;
