import type { Answer, Asked } from '@tarebook/rules/engine';

/**
 * An answer as other programs read it. Open ends become null when it is written.
 *
 * @param asked what was asked; with it, a saved answer can be run again
 */
export function judged(answer: Answer, asked?: Pick<Asked, 'facts' | 'readFrom'>): object {
  const { topic, rules, asOf, outcome, sentence, restsOn, binding, values, findings } = answer;
  const { missing, apart, cautions, assumed, parameters, trace } = answer;
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
    ...(asked && { asked: { facts: asked.facts, readFrom: asked.readFrom ?? {} } }),
    trace,
  };
}
