import type { Answer } from '../answer/shapes';
import type { Topic } from '../define/shapes';
import { why } from './why';

/** Why everything asked stands as it does: the verdict at both lengths, the rest in one sentence. */
export type Whys = {
  readonly verdict: { readonly short: string; readonly full: string };
  /** Every limit that was asked, by id. */
  readonly limits: Readonly<Record<string, string>>;
  /** Every finding at a level other than `ok`, by id. */
  readonly findings: Readonly<Record<string, string>>;
};

export function whys(topic: Topic, answer: Answer): Whys {
  const short = (of: string) => why(topic, answer, of, 'short');
  const limits = answer.limits.filter(({ state }) => state !== 'not-asked');
  const findings = answer.findings.filter(({ level }) => level !== 'not-asked' && level !== 'ok');
  return {
    verdict: { short: short('verdict'), full: why(topic, answer, 'verdict', 'full') },
    limits: Object.fromEntries(limits.map(({ id }) => [id, short(`limit.${id}`)])),
    findings: Object.fromEntries(findings.map(({ id }) => [id, short(`finding.${id}`)])),
  };
}
