import { refuseOnlyJudging } from '../check/asked';
import type { Topic } from '../define/shapes';
import { allFormulas } from '../define/topic';
import { isRecord } from './data';

/**
 * A released version of a rule set as it is kept: everything it says and everything it reaches in
 * the trade, the formulas that its limits add included, an entry a line. Its conditions follow from
 * these. `topicFromPublished` makes a rule set of it again.
 */
export function keptText(topic: Topic): string {
  refuseOnlyJudging(topic);
  const all = { ...topic, formulas: Object.fromEntries(allFormulas(topic)) };
  const parts = Object.entries(all).map(([part, value]) => `"${part}":${byLine(value)}`);
  return `{${parts.join(',\n')}}\n`;
}

function byLine(value: unknown): string {
  if (!isRecord(value)) return JSON.stringify(value);
  const lines = Object.entries(value).map(
    ([id, one]) => `${JSON.stringify(id)}:${JSON.stringify(one)}`,
  );
  return lines.length === 0 ? '{}' : `{\n${lines.join(',\n')}}`;
}
