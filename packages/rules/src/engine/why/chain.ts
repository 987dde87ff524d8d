import type { Step, Trace } from '../answer/shapes';
import type { Source } from '../define/shapes';
import { message } from '../words/message';
import { own, type Said, type Sayable } from '../words/value';

/** A chain of sentences under way: what was told, and which sources were named. */
export type Chain = {
  readonly trace: Trace;
  readonly sentences: Said[];
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

/** A source, each once in a chain. */
export function cite({ cited }: Chain, source: Source | undefined): Said | null {
  if (!source) return null;
  const key = `${source.class} ${source.cite}`;
  if (cited.has(key)) return null;
  cited.add(key);
  return message('cited', { kind: source.class, cite: own(source.cite) });
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
  const how = step.kind === 'formula' ? step.messages.told : undefined;
  const only = how ? onlyNew(chain, step) : undefined;
  if (how || step.from.length === 1) for (const each of step.from) tell(chain, each);
  if (!how) return;
  const source = cite(chain, step.source);
  for (const each of step.from) {
    const isFact = stepNamed(chain, each)?.kind === 'fact';
    if (isFact && step.is !== undefined) chain.ways.add(withBlank(step.is, each));
  }
  if (step.is !== undefined) chain.ways.add(step.is);
  const { noun, value } = step.messages;
  const from = only === undefined ? undefined : stepNamed(chain, only);
  chain.sentences.push(
    from
      ? message('comes-in-same-way', { noun, value, from: readNow(from), source })
      : message('comes-to', { noun, value, told: how, source }),
  );
}

/** “500 lb (owner’s manual)” */
export const valueRead = ({ messages, readFrom }: Step): Sayable =>
  readFrom ? message('value-read', { value: messages.value, from: own(readFrom) }) : messages.value;

/** “the tongue rating (500 lb, owner’s manual)” */
const readNow = ({ messages: { noun, value }, readFrom }: Step): Sayable =>
  message('noun-is', { noun, value, from: readFrom ? own(readFrom) : null });

/** The same, with where it was read only where that was not told. */
export function named(chain: Chain, name: string): Sayable {
  const step = stepNamed(chain, name);
  if (!step) return own(name);
  const { noun, value } = step.messages;
  if (step.kind === 'parameter' && isNothing(step)) return value;
  if (isOpen(step)) return message('noun-unknown', { noun });
  const isNew = step.readFrom && !chain.told.has(name);
  return message('noun-is', {
    noun,
    value,
    from: isNew && step.readFrom ? own(step.readFrom) : null,
  });
}
