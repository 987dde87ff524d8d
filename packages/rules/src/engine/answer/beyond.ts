import type { Compiled } from '../formula/compile';
import { reckon } from '../formula/reckon';
import type { Run } from '../formula/run';
import { inUnit } from '../formula/words';
import { asNumber, asTruth } from '../value/truth';
import { message } from '../words/message';
import { type Say, type Sayable, text } from '../words/value';
import { fromCatalogues } from './listed';
import { endsOf } from './named';
import type { ChoiceAnswer, Ends, RankingAnswer, SelectionAnswer, SeriesAnswer } from './shapes';
import { textOf } from './shown';

/** What each decision came to; more than one result while its inputs leave it open. */
export function choicesOf(
  compiled: Compiled,
  run: Run,
  say: Say,
): Readonly<Record<string, ChoiceAnswer>> {
  const found: Record<string, ChoiceAnswer> = {};
  const { decisions = {} } = compiled.topic;
  for (const [name, { label, results, source }] of Object.entries(decisions)) {
    const value = run.value(name);
    const among = value.kind === 'among' ? value.options : [];
    const labels = among.map((word) => say(text(results[word]?.label ?? word)));
    const messages = among.map((word) => textOf(compiled, run, results[word]?.says ?? word));
    const says = messages.map(say);
    found[name] = { label: say(text(label)), among, labels, says, messages, source };
  }
  return found;
}

/** The things chosen from each selection, with their amounts and why. */
export function selectionsOf(compiled: Compiled, run: Run, say: Say): readonly SelectionAnswer[] {
  const chosen = Object.entries(compiled.topic.selections ?? {}).map(([id, selection]) => {
    const items = Object.entries(selection.items).map(([item, entry]) => {
      const { label, group, when, because, source } = entry;
      const truth = when === undefined ? undefined : asTruth(run.value(when));
      const isChosen = truth?.no ? (truth.yes ? 'unknown' : 'no') : 'yes';
      const amounts = Object.entries(entry.amounts).map(([amount, name]): [string, Ends] => [
        amount,
        endsOf(compiled, run, name),
      ]);
      return {
        id: item,
        label: say(text(label)),
        ...(group !== undefined && { group: say(text(group)) }),
        chosen: isChosen,
        amounts: Object.fromEntries(amounts),
        because: say(textOf(compiled, run, because)),
        message: textOf(compiled, run, because),
        source,
      } as const;
    });
    const totals = Object.keys(selection.amounts).map((amount): [string, Ends] => [
      amount,
      endsOf(compiled, run, `${id}.${amount}`),
    ]);
    return { id, label: say(text(selection.label)), items, totals: Object.fromEntries(totals) };
  });
  return [...chosen, ...fromCatalogues().lists(compiled.topic, run, say)];
}

/**
 * Each ranking in its order; over ranges by the middle of what is known, an open end last. `apart`
 * says whether an entry certainly comes before the next; what never
 * comes, or comes to nothing, is out of the order.
 */
export function rankingsOf(compiled: Compiled, run: Run, say: Say): readonly RankingAnswer[] {
  const ranked = Object.entries(compiled.topic.rankings ?? {}).map(([id, ranking]) => {
    const { label, first, of, source } = ranking;
    const sign = first === 'least' ? 1 : -1;
    const middle = ({ lo, hi }: Ends) =>
      Number.isFinite(lo) && Number.isFinite(hi) ? ((lo + hi) / 2) * sign : Infinity;
    const sorted = Object.entries(of)
      .map(([item, { by, says }]) => {
        const message: Sayable = textOf(compiled, run, says);
        return { id: item, says: say(message), message, value: endsOf(compiled, run, by) };
      })
      .toSorted((a, b) => middle(a.value) - middle(b.value));
    const isOut = ({ lo, hi }: Ends) => (sign > 0 ? lo === Infinity : hi <= 0);
    const entries = sorted.map((entry, i) => {
      const next = sorted[i + 1];
      const apart =
        !next ||
        (isOut(entry.value) && isOut(next.value)) ||
        (sign > 0 ? entry.value.hi < next.value.lo : entry.value.lo > next.value.hi);
      return { ...entry, apart, out: isOut(entry.value) };
    });
    const out = entries.filter((entry) => entry.out).map(({ message }) => message);
    const code = sign > 0 ? 'not-in-sight' : 'comes-to-nothing';
    const rest = out.length === 0 ? '' : say(message(code, { of: out }));
    return { id, label: say(text(label)), entries, rest, source };
  });
  return [...ranked, ...fromCatalogues().rankings(compiled.topic, run, say)];
}

/** Every simulation step by step, for drawings: each state at the start of a step and at the end. */
export function seriesOf(
  compiled: Compiled,
  run: Run,
  say: Say,
): Readonly<Record<string, SeriesAnswer>> {
  const found: Record<string, SeriesAnswer> = {};
  for (const [id, { simulation }] of compiled.simulations) {
    const { steps, end } = run.scope.simulation(id);
    const line = (name: string, unit: string, scopes: typeof steps) =>
      scopes.map((scope) => {
        const value = asNumber(reckon({ kind: 'name', id: name }, scope));
        return { ...inUnit(value, unit), unit };
      });
    const lines: Record<string, { label: string; ends: readonly Ends[] }> = {};
    for (const [name, { label, unit }] of Object.entries(simulation.states)) {
      lines[name] = { label: say(text(label)), ends: line(name, unit, [...steps, end]) };
    }
    for (const [name, { label, unit }] of Object.entries(simulation.values)) {
      if (unit === 'yes-no') continue;
      lines[name] = { label: say(text(label)), ends: line(name, unit, steps) };
    }
    found[id] = { label: say(text(simulation.label)), steps: steps.length, lines };
  }
  return found;
}
