import type { Answer, Asked, Matter, Remedies, Spread, Whys } from '@tarebook/rules/engine';

/**
 * An answer as other programs read it. Open ends become null when it is written.
 *
 * @param asked what was asked; with it, a saved answer can be run again
 * @param spread chances from draws; each limit then has its `chance`
 * @param found what would change the outcome, and what would not; the facts as they then were are
 *   left out, since `from` and `to` tell them
 * @param reasons which facts matter most, and why everything stands as it does
 */
export function judged(
  answer: Answer,
  asked?: Pick<Asked, 'facts' | 'readFrom'>,
  spread?: Spread,
  found?: Remedies,
  reasons?: { readonly matters: readonly Matter[]; readonly why: Whys },
): object {
  const { topic, rules, asOf, outcome, sentence, restsOn, binding, values, findings } = answer;
  const { missing, apart, cautions, assumed, parameters, dated, house, messages, trace } = answer;
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
    messages,
    binding,
    limits,
    values,
    findings,
    choices,
    selections,
    rankings,
    series,
    missing,
    ...(found && { remedies: found.remedies.map(({ facts: _, ...told }) => told) }),
    ...(found && { noHelp: found.noHelp }),
    ...(found?.cutShort && { cutShort: true }),
    ...reasons,
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
