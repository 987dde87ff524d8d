import { isPlain } from '@tarebook/casebook';
import type { House } from '../state/house-numbers';
import { noteRead, openYaml } from '../state/reading';
import { type CasesTried, type TrialAsked, type TrialOf, type Tried, trialBegins } from './trial';

/**
 * So long may one case take, in milliseconds, once its rules are here. Filed ones take a fiftieth;
 * on a device that does much else at the same time, ten times that, and theirs are to be opened too.
 */
const mostForCase = 5_000;
/** Many cases may take so many times as long together. */
const mostTimes = 2;
/** A whole rig asks every topic at every moment. */
const mostForRig = 30_000;

type Kind = TrialAsked['of'];
type Ends<Of extends Kind> = TrialOf<Of> | 'too-long';
/** After its work one waits so long for more, in milliseconds: several files come one after another. */
const restsFor = 5_000;
let resting: { readonly worker: Worker; readonly until: ReturnType<typeof setTimeout> } | undefined;

/** One that has the rules already, or a new one. */
function hired(): Worker {
  if (!resting) return new Worker(new URL('./worker.ts', import.meta.url), { type: 'module' });
  const { worker, until } = resting;
  clearTimeout(until);
  resting = undefined;
  return worker;
}

function rest(worker: Worker): void {
  if (resting) {
    worker.terminate();
    return;
  }
  const until = setTimeout(() => {
    resting = undefined;
    worker.terminate();
  }, restsFor);
  resting = { worker, until };
}

type Heard<Of extends Kind> = typeof trialBegins | { readonly trial: TrialOf<Of> };

/**
 * Has something read beside the page. What takes too long is ended there, and nobody waits for it.
 *
 * @param most so long it may take once it begins
 * @param signal ends it when nobody wants it any more; its promise then stays open
 * @throws Error when what reads cannot be had
 */
function aside<Of extends Kind>(
  asked: TrialAsked & { readonly of: Of },
  most: number,
  signal?: AbortSignal,
): Promise<Ends<Of>> {
  const worker = hired();
  return new Promise((done, failed) => {
    let timer: ReturnType<typeof setTimeout> | undefined;
    const heard = new AbortController();
    const unheard = (): void => {
      clearTimeout(timer);
      heard.abort();
    };
    const end = (): void => {
      unheard();
      worker.terminate();
    };
    const hear = ({ data }: MessageEvent<Heard<Of>>): void => {
      if (data === trialBegins) {
        timer = setTimeout(() => {
          end();
          done('too-long');
        }, most);
        return;
      }
      unheard();
      rest(worker);
      done(data.trial);
    };
    const broke = (): void => {
      end();
      failed(new Error('What reads beside the page could not be had.'));
    };
    worker.addEventListener('message', hear, { signal: heard.signal });
    worker.addEventListener('error', broke, { signal: heard.signal });
    signal?.addEventListener('abort', end, { signal: heard.signal });
    worker.postMessage({ kind: 'trial', ...asked });
  });
}

/**
 * Reads and judges cases that came from elsewhere, beside the page; the page then has them as read.
 * Undefined where all is well, else why they are not opened.
 */
export async function whyTooMuch(
  what: string,
  cases: readonly Tried[],
): Promise<string | undefined> {
  const most = mostForCase * Math.min(cases.length, mostTimes);
  const tried: CasesTried | 'too-long' = await aside({ of: 'cases', cases }, most);
  if (tried === 'too-long') return tooLong(what);
  for (const [at, { text }] of cases.entries()) {
    const read = tried[at];
    if (read) noteRead(text, read);
  }
  // What is typed into it is read here.
  if (!cases.every(({ text }) => isPlain(text))) await openYaml();
  return undefined;
}

const tooLong = (what: string): string =>
  `${what} was not opened: working it out takes longer than any case that somebody wrote, and would hold this page; ask for it with fewer rows and fewer facts left open.`;

/** Reads a file as a case or a rig, beside the page. */
export async function openedAside(
  file: string,
  bytes: Uint8Array<ArrayBuffer>,
): Promise<TrialOf<'file'>> {
  const opened = await aside({ of: 'file', file, bytes }, mostForCase);
  return opened === 'too-long' ? { says: tooLong(file) } : opened;
}

/** Asks every topic about a rig, beside the page. */
export async function rigAside(
  name: string,
  text: string,
  houses: readonly House[],
  signal: AbortSignal,
): Promise<TrialOf<'rig'>> {
  const told = await aside({ of: 'rig', name, text, houses }, mostForRig, signal);
  return told === 'too-long' ? { says: tooLong('This rig') } : told;
}
