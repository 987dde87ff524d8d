import { type Group, isOpen, waiting } from '../state/group';
import { hasFields } from '../state/shelf';

/** What the learners' window may know: never who predicted what. */
export type Shown = {
  readonly text: string;
  readonly open: boolean;
  readonly committed: number;
  readonly of: number;
  /** From 1. */
  readonly number: number;
  readonly cases: number;
  readonly done: boolean;
};

const name = 'tarebook-class';

function isShown(value: unknown): value is Shown {
  const flag = (key: string): boolean =>
    typeof Object.getOwnPropertyDescriptor(value, key)?.value === 'boolean';
  return (
    hasFields(value, {
      text: 'string',
      committed: 'number',
      of: 'number',
      number: 'number',
      cases: 'number',
    }) &&
    flag('open') &&
    flag('done')
  );
}

export function shownOf(group: Group): Shown {
  const each = group.cases[group.at];
  return {
    text: each?.text ?? '',
    open: isOpen(group),
    committed: group.learners.length - waiting(group).length,
    of: group.learners.length,
    number: Math.min(group.at + 1, group.cases.length),
    cases: group.cases.length,
    done: each === undefined,
  };
}

/** The trainer's end: says what is to be seen, and says it again to a window that asks. */
export function speak(now: () => Shown | undefined): { say: () => void; end: () => void } {
  const channel = new BroadcastChannel(name);
  const say = (): void => channel.postMessage({ kind: 'show', shown: now() ?? null });
  channel.addEventListener('message', ({ data }: MessageEvent<unknown>) => {
    if (hasFields(data, { kind: 'string' }) && 'kind' in data && data.kind === 'ask') say();
  });
  say();
  return { say, end: () => channel.close() };
}

/** The learners' end: asks, and hears. Undefined: no class is on. */
export function listen(heard: (shown: Shown | undefined) => void): () => void {
  const channel = new BroadcastChannel(name);
  channel.addEventListener('message', ({ data }: MessageEvent<unknown>) => {
    if (typeof data !== 'object' || data === null || !('shown' in data)) return;
    heard(isShown(data.shown) ? data.shown : undefined);
  });
  channel.postMessage({ kind: 'ask' });
  return () => channel.close();
}
