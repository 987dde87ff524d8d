import type { Answer, Asked, Spread } from '@tarebook/rules/engine';

/**
 * An answer as other programs read it. Open ends become null when it is written.
 *
 * @param asked what was asked; with it, a saved answer can be run again
 * @param spread chances from draws; each limit then has its `chance`
 */
export function judged(
  answer: Answer,
  asked?: Pick<Asked, 'facts' | 'readFrom'>,
  spread?: Spread,
): object {
  const { topic, rules, asOf, outcome, sentence, restsOn, binding, values, findings } = answer;
  const { missing, apart, cautions, assumed, parameters, dated, house, trace } = answer;
  const { choices, selections, rankings, series } = answer;
  const limits = answer.limits.map(
    ({ id, label, used, limit, headroom, share, state, source }) => ({
      id,
      label,
      used,
      limit,
      headroom,
      share,
      state,
      ...(spread && { chance: spread.limits[id]?.chance ?? null }),
      source,
    }),
  );
  return {
    topic,
    rules,
    asOf,
    outcome,
    sentence,
    restsOn,
    binding,
    limits,
    values,
    findings,
    choices,
    selections,
    rankings,
    series,
    missing,
    ...apart,
    cautions,
    assumed,
    parameters,
    dated,
    house,
    ...(spread && { spread }),
    ...(asked && { asked: { facts: asked.facts, readFrom: asked.readFrom ?? {} } }),
    trace,
  };
}
