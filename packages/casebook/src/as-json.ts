import type { Answer } from '@tarebook/rules/engine';

/** An answer as other programs read it. Open ends become null when it is written. */
export function judged(answer: Answer): object {
  const { topic, rules, asOf, outcome, sentence, restsOn, binding, values, findings } = answer;
  const { missing, apart, cautions, assumed, parameters, trace } = answer;
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
    missing,
    ...apart,
    cautions,
    assumed,
    parameters,
    trace,
  };
}
