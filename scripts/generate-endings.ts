import type { Claim, ClaimExample } from '../packages/engine/src/claims/claim.ts';
import { CLAIMS } from '../packages/engine/src/claims/index.ts';
import { DENIALS, EXACTLY } from '../packages/engine/src/note/ending-words.ts';
import { claimTable } from '../packages/engine/testing/claim-tables.ts';
import { draw } from './generate-drawing.ts';
import {
  anchor,
  block,
  capital,
  HOW_TO_READ_TABLES,
  HOW_TO_READ_WORDINGS,
  page,
  plain,
  wordings,
} from './generate-parts.ts';

/** Every form of ending, with tables of which it is true and false. */
export function endingsPage(claims: readonly Claim[] = CLAIMS): string {
  return page([
    '# Sentences of the ending',
    `The ${claims.length} forms of ending there are. Each sentence of an ending is proved on its own, for every choice that the working leaves.`,
    HOW_TO_READ_WORDINGS,
    `${HOW_TO_READ_TABLES} \`r\` and \`b\` are a red and a black card.`,
    `Sentences may be joined by _and_, _or_, _if_ ... _then_ and ${oneOf(EXACTLY)}, and denied by ${oneOf(DENIALS)}; _up to a cut_ or _up to turning the packet over_ at the end weakens one. Brackets say what belongs together.`,
    `${claims.map(({ title }) => `[${title}](#${anchor(title)})`).join(', ')}.`,
    ...claims.flatMap(entry),
  ]);
}

function entry(claim: Claim): string[] {
  const { synonyms, endings } = claim;
  const known = synonyms.length === 0 ? '' : `Trade words: ${synonyms.map(plain).join(', ')}. `;
  return [
    `## ${capital(claim.title)}`,
    plain(claim.help),
    `**Mind:** ${plain(claim.caution)}`,
    wordings(claim.phrases),
    `${known}Catalogue: ${endings.join(', ')}.`,
    ...claim.examples.map(drawn),
  ];
}

function drawn({ table, sentence, holds }: ClaimExample): string {
  return block([sentence, draw([[holds ? 'true of' : 'false of', claimTable(table)]])].join('\n\n'));
}

function oneOf(ways: readonly (readonly string[])[]): string {
  return ways.map((words) => `_${words.join(' ')}_`).join(' or ');
}
