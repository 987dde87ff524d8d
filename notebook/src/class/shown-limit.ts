import type { Answer, LimitAnswer, Topic } from '@tarebook/rules/engine';
import type { UnitSystem } from '@tarebook/rules/quantity';
import { html } from 'lit';
import '../elements/limit-rows';
import { levelOf } from '../state/level';

/**
 * The limit that a verdict is about: of an open one the limit that is open, of a stop the one that is
 * passed, else the one that runs out first. A limit with room beside either would only reassure.
 */
export function shownLimit(topic: Topic | undefined, answer: Answer): LimitAnswer | undefined {
  const { limits, missing, binding, outcome } = answer;
  const level = topic ? levelOf(topic.outcomes, outcome) : 'unknown';
  if (level === 'unknown') {
    const open = limits.filter(({ state }) => state === 'unknown');
    return open.find(({ id }) => missing[0]?.decides.includes(id)) ?? open[0];
  }
  if (level === 'stop') {
    const passed = limits.filter(({ state }) => state === 'stop');
    return passed.toSorted((a, b) => b.roomUsed.hi - a.roomUsed.hi)[0];
  }
  return limits.find(({ id }) => id === binding);
}

/** That limit as a bar, with how it stood in the case as filed; undefined where there is none. */
export function limitRead(
  topic: Topic | undefined,
  answer: Answer,
  system: UnitSystem,
  filed?: Answer,
) {
  const limit = shownLimit(topic, answer);
  if (!limit) return undefined;
  const before = filed?.limits.find(({ id, state }) => id === limit.id && state !== 'not-asked');
  return html`<limit-rows .rows=${[{ limit, ...(before && { before }) }]} .system=${system}></limit-rows>`;
}
