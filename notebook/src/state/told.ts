import type { CaseDocument } from '@tarebook/casebook';
import {
  type Answer,
  againstOf,
  asWritten,
  gravestFirst,
  isRows,
  type LimitAnswer,
  leftOf,
  overOf,
  type Source,
  type Step,
  type Topic,
} from '@tarebook/rules/engine';
import { type Interval, show, showMargin, type UnitSystem } from '@tarebook/rules/quantity';

/** One limit in words, for paper and post. */
export type LimitLine = {
  readonly limit: LimitAnswer;
  readonly used: string;
  readonly of: string;
  /** Both in one. */
  readonly against: string;
  /** `52 lb left`, `108 lb over`, `nothing left`; '' where nobody can know. */
  readonly left: string;
};

/** One step of the working, in words. */
export type WorkingLine = {
  readonly label: string;
  readonly value: string;
  /** The formula with the numbers put in; '' where it says no more than the value. */
  readonly working: string;
  /** The same for whoever would rather read words; '' where there is nothing to tell. */
  readonly told: string;
  readonly source?: Source;
};

const isBounded = ({ lo, hi }: Interval): boolean => Number.isFinite(lo) && Number.isFinite(hi);

function leftSaid(limit: LimitAnswer, system: UnitSystem): string {
  const { headroom } = limit;
  if (!isBounded(headroom)) return '';
  const { hi, unit } = headroom;
  if (hi < 0) return `${showMargin(overOf(limit), unit, system)} over`;
  if (hi === 0) return 'nothing left';
  return `${showMargin(leftOf(limit), unit, system)} left`;
}

const gravest = ['stop', 'unknown', 'care', 'ok'];

/** The limits that were asked, the gravest first, and among equals the fullest. */
export function limitLines(answer: Answer, system: UnitSystem): readonly LimitLine[] {
  return answer.limits
    .filter(({ state }) => state !== 'not-asked')
    .toSorted(
      (a, b) =>
        gravest.indexOf(a.state) - gravest.indexOf(b.state) || b.roomUsed.hi - a.roomUsed.hi,
    )
    .map((limit) => {
      const { used, of, says } = againstOf(limit, system);
      return { limit, used, of, against: says, left: leftSaid(limit, system) };
    });
}

/** The results that a reader looks for, with how they came about; what is open is left out. */
export function workingLines(
  answer: Answer,
  topic: Topic,
  system: UnitSystem,
): readonly WorkingLine[] {
  const line = (step: Step): WorkingLine => {
    const value = step.ends ? show(step.ends, step.ends.unit, system) : step.value;
    const working =
      step.working && /\D/.test(step.working) && step.working !== step.value ? step.working : '';
    const told = step.told ? step.told : '';
    return { label: step.label, value, working, told, ...(step.source && { source: step.source }) };
  };
  return topic.headline.flatMap((name) => {
    const step = answer.trace.steps[name];
    return step && (!step.ends || isBounded(step.ends)) ? [line(step)] : [];
  });
}

/** A class of source as a reader sees it. */
export const classWords = ({ class: kind }: Source): string => kind.replace('-', ' ');

/** Every source that the answer stands on, once, its class before it. */
export function sourceLines(answer: Answer): readonly string[] {
  const lines = Object.values(answer.trace.steps).flatMap(({ source }) => {
    if (!source) return [];
    const { cite, section, note } = source;
    const where = section ? `, ${section}` : '';
    return [`${classWords(source)}: ${cite}${where}${note ? `. ${note}` : ''}`];
  });
  return [...new Set(lines)].toSorted();
}

/** The numbers of the trade and of the house that took part, each with its class. */
export function numberLines(answer: Answer, system: UnitSystem): readonly string[] {
  return answer.parameters
    .filter(({ id }) => answer.trace.steps[id])
    .map(
      ({ label, value, unit, source }) =>
        `${label}: ${show({ lo: value, hi: value }, unit, system)} (${classWords(source)})`,
    );
}

/** What stands beside the limits and is not in order, the gravest first. */
export function findingLines(answer: Answer) {
  return gravestFirst(answer.findings).map(({ label, level, wrong, says }) => ({
    label,
    level,
    wrong: wrong,
    says: says,
  }));
}

/** Every fact as it was written, with where it was read; a list with its rows. */
export function factLines({ facts, readFrom }: CaseDocument, topic: Topic): readonly string[] {
  return Object.entries(facts).flatMap(([id, given]) => {
    const declared = topic.facts[id];
    const label = declared?.label ?? id;
    if (!isRows(given)) {
      const from = readFrom[id];
      return [`${label}: ${asWritten(given)}${from ? ` (${from})` : ''}`];
    }
    if (declared?.kind !== 'rows') return [];
    const [first, ...others] = Object.entries(declared.columns);
    const rows = given.map((row) => {
      const rest = others.flatMap(([column, { label: said }]) =>
        row[column] ? [`${said.toLowerCase()} ${asWritten(row[column])}`] : [],
      );
      const size = first && row[first[0]];
      const head = `${asWritten(row.label ?? '')} ${asWritten(size ?? '')}`.trim();
      return rest.length === 0 ? head : `${head} (${rest.join(', ')})`;
    });
    return [`${label}: ${rows.join('; ')}`];
  });
}
