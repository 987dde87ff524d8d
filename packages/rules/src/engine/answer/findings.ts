import type { UnitSystem } from '../../quantity';
import { namesCompared, type RulingLevel, rulingLevels, rulingsAt } from '../condition/rules';
import { conditionFrom } from '../condition/text';
import { holds } from '../condition/walk';
import type { Finding, Ruling, State, Topic } from '../define/shapes';
import type { Compiled } from '../formula/compile';
import type { Run } from '../formula/run';
import { holesIn } from '../words/fill';
import type { Holding } from './levels';
import { namedValues } from './named';
import { listed, lowered } from './phrases';
import type { FindingAnswer, Told } from './shapes';
import { filledIn, toldOf } from './shown';

type Setting = {
  readonly compiled: Compiled;
  readonly run: Run;
  readonly system: UnitSystem;
};

type Words = {
  readonly code: string;
  readonly wrong: string;
  readonly because?: string | undefined;
  readonly do?: string | undefined;
  readonly proviso?: string | undefined;
  readonly alternatives?: readonly string[];
};

/** The rulings of a level that hold for sure, or that may. */
function ruled(
  { compiled, run }: Setting,
  rulings: readonly Ruling[],
  question: 'certain' | 'possible',
): readonly (readonly [number, Ruling])[] {
  return rulings.flatMap((ruling, i) => {
    const condition = conditionFrom(ruling.when);
    const values = namedValues(compiled, run, namesCompared(condition));
    return holds(condition, question, values) ? [[i, ruling] as const] : [];
  });
}

/** From which rulings a finding has its level: a stop that may be is unknown, or what it counts as. */
function levelOfWords(finding: Finding, id: string, level: State, holding: Holding): RulingLevel {
  const isRuled = rulingLevels.find((each) => each === level);
  if (isRuled && holding.possible.has(`finding.${id}.${isRuled}`)) return isRuled;
  return finding.stop ? 'stop' : 'unknown';
}

/** What is asked to settle an open decision: the first of its questions that is open. */
function hangsOn(topic: Topic, run: Run, decision: string): string {
  const open = topic.decisions?.[decision]?.on.find((name) => {
    const value = run.value(name);
    return value.kind === 'among'
      ? value.options.length > 1
      : value.kind === 'truth' && value.yes && value.no;
  });
  if (open === undefined) return '';
  const entry = topic.facts[open] ?? topic.formulas[open];
  return entry ? (entry.noun ?? `“${lowered(entry.label)}”`) : '';
}

/** Several results are possible: none of them is spoken as if it were so. */
function openDecision({ compiled, run }: Setting, finding: Finding): Words | undefined {
  const { topic } = compiled;
  if (finding.decision === undefined) return undefined;
  const value = run.value(finding.decision);
  if (value.kind !== 'among' || value.options.length < 2) return undefined;
  const results = topic.decisions?.[finding.decision]?.results ?? {};
  const alternatives = value.options.map((option) => results[option]?.label ?? option);
  const on = hangsOn(topic, run, finding.decision);
  const either = listed(alternatives.map(lowered), 'or');
  const wrong = on === '' ? `Still open: ${either}.` : `It hangs on ${on}: ${either}.`;
  return { code: 'decision-open', wrong, alternatives };
}

function openWords(setting: Setting, finding: Finding, rulings: readonly Ruling[]): Words {
  if (finding.open) return { code: 'open', ...finding.open };
  const open = openDecision(setting, finding);
  if (open) return open;
  const possible = ruled(setting, rulings, 'possible').map(([, ruling]) => ruling);
  const alternatives = possible.map(({ wrong }) => wrong);
  const provisos = possible.flatMap(({ proviso }) => proviso ?? []);
  return {
    code: 'perhaps',
    wrong: `Perhaps: ${alternatives.join(' Or: ')}`,
    alternatives,
    ...(provisos.length > 0 && { proviso: listed(provisos) }),
  };
}

function wordsAt(setting: Setting, id: string, level: State, holding: Holding): Words {
  const { topic } = setting.compiled;
  const finding = topic.findings[id];
  if (!finding || level === 'not-asked') return { code: 'not-asked', wrong: 'Not asked.' };
  if (level === 'ok') return { code: 'ok', wrong: okSaid(setting, finding) };
  const from = levelOfWords(finding, id, level, holding);
  const rulings = rulingsAt(finding, from);
  if (from === level) {
    const [sure] = ruled(setting, rulings, 'certain');
    if (sure) return { code: `${from}.${sure[0]}`, ...sure[1] };
  }
  const words = openWords(setting, finding, rulings);
  if (level !== 'if' || words.proviso !== undefined) return words;
  const provisos = ruled(setting, rulings, 'possible').flatMap(([, { proviso }]) => proviso ?? []);
  return provisos.length === 0 ? words : { ...words, proviso: listed(provisos) };
}

/** What is in order is said by the one result that a decision came to. */
function okSaid({ compiled, run }: Setting, finding: Finding): string {
  if (finding.decision === undefined) return finding.otherwise;
  const value = run.value(finding.decision);
  const [only, more] = value.kind === 'among' ? value.options : [];
  if (only === undefined || more !== undefined) return finding.otherwise;
  return compiled.topic.decisions?.[finding.decision]?.results[only]?.says ?? finding.otherwise;
}

/** Every finding with its level and what is said of it. */
export function findingAnswers(
  setting: Setting,
  states: ReadonlyMap<string, State>,
  holding: Holding,
): readonly FindingAnswer[] {
  const { compiled, run, system } = setting;
  return Object.entries(compiled.topic.findings).map(([id, { label, source }]) => {
    const level = states.get(`finding.${id}`) ?? 'unknown';
    const words = wordsAt(setting, id, level, holding);
    const values: Record<string, Told> = {};
    const say = (text: string | undefined): string => {
      if (text === undefined) return '';
      for (const name of holesIn(text)) values[name] = toldOf(compiled, run, name);
      return filledIn(compiled, run, text, system);
    };
    const [wrong, because, todo] = [say(words.wrong), say(words.because), say(words.do)];
    return {
      id,
      label,
      level,
      code: words.code,
      wrong,
      because,
      do: todo,
      proviso: say(words.proviso),
      alternatives: (words.alternatives ?? []).map(say),
      values,
      says: [wrong, because, todo].filter((each) => each !== '').join(' '),
      source,
    };
  });
}
