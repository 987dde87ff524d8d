import type { Untraced } from '../answer/shapes';
import { withTrace } from '../answer/traced';
import { refuseTopic, refuseUnlessAnswer } from '../check/asked';
import type { Topic } from '../define/shapes';
import { sayer } from '../words/say';
import type { Voice } from '../words/speaker';
import type { Said } from '../words/value';
import { whySaid } from './why';

type Told<Words> = {
  readonly verdict: { readonly short: Words; readonly full: Words };
  /** Every limit that was asked, by id. */
  readonly limits: Readonly<Record<string, Words>>;
  /** Every finding at a level other than `ok`, by id. */
  readonly findings: Readonly<Record<string, Words>>;
};

/** Why everything asked stands as it does: the verdict at both lengths, the rest in one sentence. */
export type Whys = Told<string> & { readonly messages: Told<Said> };

export function whys(topic: Topic, given: Untraced, voice?: Voice): Whys {
  refuseTopic(topic);
  refuseUnlessAnswer(given);
  const answer = withTrace(given);
  const say = sayer(voice ?? { units: answer.trace.units });
  const short = (of: string) => whySaid(topic, answer, of, 'short');
  const asked = answer.limits.filter(({ state }) => state !== 'not-asked');
  const told = answer.findings.filter(({ level }) => level !== 'not-asked' && level !== 'ok');
  const messages = {
    verdict: { short: short('verdict'), full: whySaid(topic, answer, 'verdict', 'full') },
    limits: Object.fromEntries(asked.map(({ id }) => [id, short(`limit.${id}`)])),
    findings: Object.fromEntries(told.map(({ id }) => [id, short(`finding.${id}`)])),
  };
  const inWords = (of: Readonly<Record<string, Said>>): Readonly<Record<string, string>> =>
    Object.fromEntries(Object.entries(of).map(([id, said]) => [id, say(said)]));
  const { verdict, limits, findings } = messages;
  return {
    verdict: { short: say(verdict.short), full: say(verdict.full) },
    limits: inWords(limits),
    findings: inWords(findings),
    messages,
  };
}
