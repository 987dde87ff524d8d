import { capital, lowered } from '../answer/phrases';
import type { Step, Trace } from '../answer/shapes';
import type { Source } from '../define/shapes';

/** A chain of sentences under way: what was told, and which sources were named. */
export type Chain = {
  readonly trace: Trace;
  readonly sentences: string[];
  readonly told: Set<string>;
  readonly cited: Set<string>;
  /** The formulas told, each with a blank for one of the facts it stands on. */
  readonly ways: Set<string>;
};

export const newChain = (trace: Trace): Chain => ({
  trace,
  sentences: [],
  told: new Set(),
  cited: new Set(),
  ways: new Set(),
});

export const stepNamed = ({ trace: { steps } }: Chain, name: string): Step | undefined =>
  Object.hasOwn(steps, name) ? steps[name] : undefined;

export const nounOfStep = (step: Step): string => step.noun ?? lowered(step.label);

const kinds = {
  published: '',
  'common-practice': 'common practice',
  'from-memory': 'from memory',
  house: 'a choice of the house',
  invented: 'invented',
} as const;

/** “ [49 CFR 571.110]”, “ [common practice: custom of the trade]”; each once in a chain. */
export function cite({ cited }: Chain, source: Source | undefined): string {
  if (!source) return '';
  const kind = kinds[source.class];
  const text = kind === '' ? source.cite : `${kind}: ${lowered(source.cite)}`;
  if (cited.has(text)) return '';
  cited.add(text);
  return ` [${text}]`;
}

const isNothing = ({ ends }: Step): boolean => ends?.lo === 0 && ends.hi === 0;

/** Nobody can know it from these facts: it has an upper or lower end that is open, and no other. */
export const isOpen = ({ ends }: Step): boolean =>
  ends !== undefined && ends.lo <= 0 && ends.hi === Infinity;

const withBlank = (is: string, name: string): string => is.replaceAll(name, '_');

/** The one thing that a formula has other than one that was told: the rest need not be said again. */
function onlyNew(chain: Chain, { is, from }: Step): string | undefined {
  const [name, more] = from.filter((each) => !chain.told.has(each));
  if (name === undefined || more !== undefined || is === undefined || from.length < 2) return;
  const step = stepNamed(chain, name);
  if (step?.kind !== 'fact' || isNothing(step) || chain.ways.has(is)) return;
  return chain.ways.has(withBlank(is, name)) ? name : undefined;
}

/**
 * Tells a value and, before it, everything that it was reckoned from and that takes a sentence of
 * its own: “The tongue comes to 473 lb: the dry tongue (430 lb, brochure) and 10 % on top.”
 */
export function tell(chain: Chain, name: string): void {
  const step = stepNamed(chain, name);
  if (!step || chain.told.has(name) || isNothing(step) || isOpen(step)) return;
  chain.told.add(name);
  const isTold = step.kind === 'formula' && step.told !== undefined;
  const only = isTold ? onlyNew(chain, step) : undefined;
  if (isTold || step.from.length === 1) for (const each of step.from) tell(chain, each);
  if (!isTold) return;
  const source = cite(chain, step.source);
  for (const each of step.from) {
    const isFact = stepNamed(chain, each)?.kind === 'fact';
    if (isFact && step.is !== undefined) chain.ways.add(withBlank(step.is, each));
  }
  if (step.is !== undefined) chain.ways.add(step.is);
  const head = `${capital(nounOfStep(step))} comes to ${step.value}`;
  const same = only && `${head} in the same way, from ${readNow(chain, only)}${source}.`;
  chain.sentences.push(same || `${head}: ${step.told}${source}.`);
}

/** “500 lb (owner’s manual)” */
export const valueRead = ({ value, readFrom }: Step): string =>
  readFrom ? `${value} (${lowered(readFrom)})` : value;

function readNow(chain: Chain, name: string): string {
  const step = stepNamed(chain, name);
  return step ? `${nounOfStep(step)} (${valueRead(step).replace(/ \((.*)\)$/, ', $1')})` : name;
}

/** “the tongue rating (500 lb, owner’s manual)” */
export function named(chain: Chain, name: string): string {
  const step = stepNamed(chain, name);
  if (!step) return name;
  if (step.kind === 'parameter' && isNothing(step)) return step.value;
  if (isOpen(step)) return `${nounOfStep(step)} (not known)`;
  const read = step.readFrom && !chain.told.has(name) ? `, ${lowered(step.readFrom)}` : '';
  return `${nounOfStep(step)} (${step.value}${read})`;
}
