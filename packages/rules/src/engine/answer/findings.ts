import { type RulingLevel, rulingLevels, rulingsAt, whenAsked } from '../condition/rules';
import { conditionFrom } from '../condition/text';
import { holds } from '../condition/walk';
import { type Finding, levels, type Ruling, type State, type Topic } from '../define/shapes';
import type { Compiled } from '../formula/compile';
import type { Run } from '../formula/run';
import { holesIn } from '../words/fill';
import { message } from '../words/message';
import { nounOr, type Say, type Sayable, text } from '../words/value';
import type { Holding } from './levels';
import { lookIn } from './named';
import type { FindingAnswer, Told } from './shapes';
import { optionOf, textOf, toldOf } from './shown';

type Setting = {
  readonly compiled: Compiled;
  readonly run: Run;
  readonly say: Say;
};

type Words = {
  readonly code: string;
  readonly wrong: Sayable;
  readonly because?: Sayable | undefined;
  readonly do?: Sayable | undefined;
  readonly proviso?: Sayable | undefined;
  readonly alternatives?: readonly Sayable[];
  /** The texts of the rule set that it is said with. */
  readonly texts: readonly string[];
};

type Own = { readonly wrong: string; readonly because?: string; readonly do?: string };

/** Words of the rule set with this run's values in their holes. */
function ownWords(
  { compiled, run }: Setting,
  code: string,
  own: Own & { readonly proviso?: string },
): Words {
  const said = (words: string | undefined) =>
    words === undefined ? undefined : textOf(compiled, run, words);
  const { wrong, because, do: todo, proviso } = own;
  return {
    code,
    wrong: textOf(compiled, run, wrong),
    because: said(because),
    do: said(todo),
    proviso: said(proviso),
    texts: [wrong, because, todo, proviso].flatMap((each) => each ?? []),
  };
}

/** What must be true, of all that may have to be. */
function provisoOf(
  { compiled, run }: Setting,
  possible: readonly Ruling[],
): Pick<Words, 'proviso' | 'texts'> {
  const texts = possible.flatMap(({ proviso }) => proviso ?? []);
  const of = texts.map((each) => textOf(compiled, run, each));
  return of.length === 0 ? { texts } : { proviso: message('all', { of }), texts };
}

/** The rulings of a level that hold for sure, or that may. */
function ruled(
  { compiled, run }: Setting,
  { askedWhen }: Finding,
  rulings: readonly Ruling[],
  question: 'certain' | 'possible',
): readonly (readonly [number, Ruling])[] {
  return rulings.flatMap((ruling, i) => {
    const condition = whenAsked(conditionFrom(ruling.when), askedWhen);
    return holds(condition, question, lookIn(compiled, run)) ? [[i, ruling] as const] : [];
  });
}

/** From which rulings a finding has its level: a stop that may be is unknown, or what it counts as. */
function levelOfWords(finding: Finding, id: string, level: State, holding: Holding): RulingLevel {
  const isRuled = rulingLevels.find((each) => each === level);
  if (isRuled && holding.possible.has(`finding.${id}.${isRuled}`)) return isRuled;
  return finding.stop ? 'stop' : 'unknown';
}

/** What is asked to settle an open decision: the first of its questions that is open. */
function hangsOn(topic: Topic, run: Run, decision: string): Sayable | null {
  const open = topic.decisions?.[decision]?.on.find((name) => {
    const value = run.value(name);
    return value.kind === 'among'
      ? value.options.length > 1
      : value.kind === 'truth' && value.yes && value.no;
  });
  return open === undefined ? null : nounOr(topic.facts[open] ?? topic.formulas[open], open);
}

/** Several results are possible: none of them is spoken as if it were so. */
function openDecision({ compiled, run }: Setting, finding: Finding): Words | undefined {
  const { decision } = finding;
  if (decision === undefined) return undefined;
  const value = run.value(decision);
  if (value.kind !== 'among' || value.options.length < 2) return undefined;
  const results = compiled.topic.decisions?.[decision]?.results;
  const gravity = (option: string) => levels.indexOf(results?.[option]?.level ?? 'ok');
  const ordered = value.options.toSorted((a, b) => gravity(a) - gravity(b));
  const alternatives = ordered.map((option) => optionOf(compiled, decision, option));
  const on = hangsOn(compiled.topic, run, decision);
  const wrong = message('hangs-on', { on, of: alternatives });
  return { code: 'decision-open', wrong, alternatives, texts: [] };
}

function openWords(setting: Setting, finding: Finding, rulings: readonly Ruling[]): Words {
  if (finding.open) return ownWords(setting, 'open', finding.open);
  const open = openDecision(setting, finding);
  if (open) return open;
  const { compiled, run } = setting;
  const possible = ruled(setting, finding, rulings, 'possible').map(([, ruling]) => ruling);
  const alternatives = possible.map(({ wrong }) => textOf(compiled, run, wrong));
  const { proviso, texts } = provisoOf(setting, possible);
  return {
    code: 'perhaps',
    wrong: message('perhaps', { of: alternatives }),
    alternatives,
    proviso,
    texts: [...possible.map(({ wrong }) => wrong), ...texts],
  };
}

function wordsAt(setting: Setting, id: string, level: State, holding: Holding): Words {
  const finding = setting.compiled.topic.findings[id];
  if (!finding || level === 'not-asked') {
    return { code: 'not-asked', wrong: message('not-asked', {}), texts: [] };
  }
  if (level === 'ok') {
    // All that may come out is in order, and none of it is certain: no single one is said.
    const open = openDecision(setting, finding);
    if (open) return { ...open, code: 'ok' };
    return ownWords(setting, 'ok', { wrong: okSaid(setting, finding) });
  }
  const from = levelOfWords(finding, id, level, holding);
  const rulings = rulingsAt(finding, from);
  if (from === level) {
    const isSure = holding.certain.has(`finding.${id}.${from}`);
    const [first] = ruled(setting, finding, rulings, 'certain');
    // That one of several holds is certain, and which of them is not: none is said as if it did.
    const may = first || !isSure ? [] : ruled(setting, finding, rulings, 'possible');
    const sure = first ?? (may.length === 1 ? may[0] : undefined);
    if (sure) return ownWords(setting, `${from}.${sure[0]}`, sure[1]);
  }
  const words = openWords(setting, finding, rulings);
  if (level !== 'if' || words.proviso !== undefined) return words;
  const possible = ruled(setting, finding, rulings, 'possible').map(([, ruling]) => ruling);
  const { proviso, texts } = provisoOf(setting, possible);
  return { ...words, proviso, texts: [...words.texts, ...texts] };
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
  const { compiled, run, say } = setting;
  const said = (words: Sayable | undefined): string => (words === undefined ? '' : say(words));
  return Object.entries(compiled.topic.findings).map(([id, { label, source, see }]) => {
    const level = states.get(`finding.${id}`) ?? 'unknown';
    const words = wordsAt(setting, id, level, holding);
    const { code, wrong, because, do: todo, proviso, alternatives = [], texts } = words;
    const names = new Set(texts.flatMap(holesIn));
    const values = [...names].map((name): [string, Told] => [name, toldOf(compiled, run, name)]);
    return {
      id,
      label: say(text(label)),
      level,
      code,
      wrong: say(wrong),
      because: said(because),
      do: said(todo),
      proviso: said(proviso),
      ...(see !== undefined &&
        level !== 'ok' &&
        level !== 'not-asked' && { see: { topic: see.topic, says: say(text(see.says)) } }),
      alternatives: alternatives.map(said),
      values: Object.fromEntries(values),
      says: [wrong, because, todo]
        .map(said)
        .filter((each) => each !== '')
        .join(' '),
      messages: {
        wrong,
        ...(because && { because }),
        ...(todo && { do: todo }),
        ...(proviso && { proviso }),
      },
      source,
    };
  });
}
