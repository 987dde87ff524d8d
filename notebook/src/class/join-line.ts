import type { ReactiveController, ReactiveControllerHost } from 'lit';
import { type Heard, lineTo } from './line';
import { codeHere } from './own-phone';

/** What a phone knows and does of itself when the line tells it something. */
export type JoinHooks = {
  /** Which learner has the phone, from 0. */
  readonly me: () => number | undefined;
  /** The case that is on, from 0. */
  readonly at: () => number;
  readonly tell: (says: string) => void;
  /** What is wrong, beside the join code; '' once nothing is. */
  readonly refuse: (why: string) => void;
  readonly open: (packed: string) => void;
  /** Whether what was said last was noted. */
  readonly replied: (isTaken: boolean) => void;
  readonly goTo: (at: number) => void;
  readonly over: () => void;
  /** The name of this phone went along to another. */
  readonly nameGone: () => void;
};

type Line = ReturnType<typeof lineTo>;

/** The line from a learner's phone to the trainer's window, over the relay that the page came from. */
export class JoinLine implements ReactiveController {
  /** Learners that a phone has already, from 0. */
  taken: ReadonlySet<number> = new Set();
  /** Whether the working of the present case is open, as the line tells. */
  isOpen = false;
  /** Whether the trainer's window has noted what this learner says of the present case. */
  isTaken = false;
  /** Set once the relay has let this phone in. */
  private line: Line | undefined;
  /** The join code that was sent last. */
  private sent = '';

  constructor(
    private readonly host: ReactiveControllerHost,
    private readonly hooks: JoinHooks,
  ) {
    host.addController(this);
  }

  hostConnected(): void {}

  hostDisconnected(): void {
    this.line?.close();
  }

  get isIn(): boolean {
    return this.line !== undefined;
  }

  say(message: Parameters<Line['say']>[0]): void {
    this.line?.say(message);
  }

  letIn(code: string): void {
    this.sent = code;
    const line = lineTo(
      'learner',
      (message) => this.hear(message, line),
      (wasOpen) => this.closed(wasOpen),
      () => line.say({ code }),
    );
  }

  private closed(wasOpen: boolean): void {
    if (!wasOpen) this.hooks.refuse('Nobody takes guesses at once just now; read your guess out.');
    const had = this.isIn;
    this.line = undefined;
    if (had)
      this.hooks.tell(
        this.isTaken
          ? 'Your guess is noted. The line to the trainer is closed.'
          : 'The line to the trainer is closed; read your guess out, or join once more.',
      );
    this.host.requestUpdate();
  }

  private hear(heard: Heard, line: Line): void {
    const { hooks } = this;
    const { kind, at, says, taken, lesson } = heard;
    if (kind === 'wrong') {
      line.close();
      codeHere.know('');
      hooks.refuse('That is not the join code; look at it once more.');
    }
    if (kind === 'in') this.letInBy(line);
    if (typeof lesson === 'string') hooks.open(lesson);
    if (kind === 'reply') {
      hooks.tell(String(says));
      this.isTaken = taken === true;
      hooks.replied(this.isTaken);
    }
    if (kind === 'in' || kind === 'names') this.hearNames(heard);
    if (kind === 'over') {
      hooks.over();
      line.close();
    }
    const to = Number(at);
    if ((kind === 'in' || kind === 'at') && to !== hooks.at()) hooks.goTo(to);
    if (kind === 'in' || kind === 'at') this.isOpen = heard.open === true;
    if (kind === 'in') hooks.tell('You have joined.');
    this.host.requestUpdate();
  }

  private letInBy(line: Line): void {
    this.line = line;
    this.hooks.refuse('');
    codeHere.know(this.sent);
    // Whoever joins once more is who they were.
    const me = this.hooks.me();
    if (me !== undefined) line.say({ me });
  }

  /** Who is here; a phone whose name went along to another asks once more. */
  private hearNames({ kind, taken, mine }: Heard): void {
    this.taken = new Set(Array.isArray(taken) ? taken.map(Number) : []);
    const me = this.hooks.me();
    if (kind !== 'names' || mine === undefined || me === undefined || mine === me) return;
    this.hooks.nameGone();
  }
}
