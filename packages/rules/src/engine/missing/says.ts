import { show } from '../../quantity';
import { listed, lowered } from '../answer/phrases';
import type { Topic } from '../define/shapes';
import type { Edges } from './trial';

/** What one fact does to one open decision. */
export type Deciding = {
  /** `limit.payload` */
  readonly of: string;
  readonly edges: Edges;
  /** Options that would stop it. */
  readonly stopping: readonly string[];
  /** Facts with which alone it decides; empty where it settles it by itself. */
  readonly together: readonly string[];
};

function nameOf(topic: Topic, of: string): string {
  const [kind = '', id = ''] = of.split(/\.(.*)/);
  const entry = kind === 'limit' ? topic.limits[id] : topic.findings[id];
  return lowered(entry?.label ?? id);
}

const factName = (topic: Topic, fact: string): string => lowered(topic.facts[fact]?.label ?? fact);

/** “above 484 lb it does not fit” */
function tipping({ edges: { tip, sure }, stopping }: Deciding, words: string): string {
  if (tip && tip.lo === tip.hi) return `${tip.side} ${show(tip, tip.unit)} it ${words}`;
  if (tip) {
    const above = tip.side === 'above';
    const [holds, stops] = above ? [tip.lo, tip.hi] : [tip.hi, tip.lo];
    const at = (value: number) => show({ lo: value, hi: value }, tip.unit);
    const near = above ? 'up to' : 'from';
    return `${near} ${at(holds)} it holds and ${tip.side} ${at(stops)} it ${words}, whatever else is found`;
  }
  if (sure) {
    const at = show({ lo: sure.at, hi: sure.at }, sure.unit);
    return `${sure.side} ${at} it ${words}, whatever else is found`;
  }
  return stopping.length > 0 ? `“${stopping.join(', ')}” would rule it out` : '';
}

/** Which decisions a fact settles, where each tips, and with what it decides only together. */
export function missingSays(topic: Topic, deciding: readonly Deciding[]): string {
  const stops = topic.outcomes.stop.words;
  const groups = new Map<string, { tip: string; together: readonly string[]; of: string[] }>();
  for (const each of deciding) {
    const tip = tipping(each, stops);
    const key = `${tip}|${each.together.join()}`;
    const group = groups.get(key) ?? { tip, together: each.together, of: [] };
    group.of.push(nameOf(topic, each.of));
    groups.set(key, group);
  }
  const sentences = [...groups.values()].map(({ tip, together, of }) => {
    const partners = listed(together.map((fact) => factName(topic, fact)));
    const names = listed(of);
    if (partners === '') return tip === '' ? `Decides ${names}.` : `Decides ${names}: ${tip}.`;
    return tip === ''
      ? `Decides ${names} only together with ${partners}.`
      : `Decides ${names} together with ${partners}: ${tip}.`;
  });
  return sentences.join(' ');
}
