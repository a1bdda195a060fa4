import * as v from 'valibot';
import { trouble, type Trouble } from '../base/diagnostic.ts';
import { isPrime, MOST_PRIME } from '../base/echelon.ts';
import { bad, good, type Result } from '../base/result.ts';
import { CERTIFICATE_FORMAT, CERTIFICATE_VERSION, type Certificate } from '../verdicts/certificate.ts';

const whole = v.pipe(v.number(), v.integer(), v.minValue(0), v.maxValue(MOST_PRIME));
const prime = v.pipe(whole, v.check(isPrime));
const family = v.object({
  p: prime,
  d: v.pipe(whole, v.maxValue(1024)),
  m: v.pipe(whole, v.minValue(1), v.maxValue(1024)),
  members: v.array(
    v.object({
      bits: v.pipe(v.array(v.string()), v.maxLength(8)),
      columns: v.array(v.array(whole)),
      constants: v.array(whole),
    }),
  ),
  under: v.record(v.string(), v.array(v.object({ columns: v.array(whole), constant: whole }))),
  locations: v.record(v.string(), v.array(v.array(whole))),
});
const closedSet = v.object({
  attributes: v.array(v.string()),
  bits: v.pipe(v.array(v.string()), v.maxLength(8)),
  tables: v.pipe(v.number(), v.integer(), v.minValue(0)),
  digest: v.string(),
});
const rule = v.object({
  attributes: v.array(v.string()),
  bits: v.pipe(v.array(v.string()), v.maxLength(8)),
  beliefs: v.pipe(v.number(), v.integer(), v.minValue(0)),
  tables: v.pipe(v.number(), v.integer(), v.minValue(0)),
  choices: v.array(v.object({ at: v.string(), digest: v.string(), key: v.union([v.string(), v.number()]) })),
});
const text = v.string();
const schema = v.object({
  format: v.literal(CERTIFICATE_FORMAT),
  version: v.literal(CERTIFICATE_VERSION),
  note: v.string(),
  sha256: v.string(),
  sentences: v.array(
    v.variant('proof', [
      v.object({ text, proof: v.literal('none') }),
      v.object({ text, proof: v.literal('sizes') }),
      v.object({ text, proof: v.literal('invariant'), families: v.array(family) }),
      v.object({ text, proof: v.literal('closed set'), set: closedSet }),
      v.object({
        text,
        proof: v.literal('closed set then invariant'),
        set: closedSet,
        families: v.array(family),
      }),
      v.object({ text, proof: v.literal('rule'), rule }),
    ]),
  ),
});

/** Reads a certificate from JSON text; anything that is none is a trouble that says where it departs. */
export function readCertificate(json: string): Result<Certificate, Trouble> {
  let data: unknown;
  try {
    data = JSON.parse(json);
  } catch {
    return bad(trouble('certificate-json'));
  }
  const parsed = v.safeParse(schema, data);
  if (parsed.success) return good(parsed.output);
  const issue = parsed.issues[0];
  return bad(trouble('certificate-shape', { what: v.getDotPath(issue) ?? issue.message }));
}
