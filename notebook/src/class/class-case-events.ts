import type { ClassStep, Commitment } from '../state/group';
import type { Invited } from './channel';

export type Reason = Pick<Commitment, 'sure' | 'why'>;
export class Committed extends CustomEvent<{
  readonly learner: string;
  readonly said: string;
  readonly reason: Reason;
}> {
  constructor(learner: string, said: string, reason: Reason) {
    super('prediction-committed', { detail: { learner, said, reason }, bubbles: true });
  }
}

/** The trainer says otherwise of what a learner said; `said` is what counts from now on. */
export class SaidMarked extends CustomEvent<{ readonly learner: string; readonly said: string }> {
  constructor(learner: string, said: string) {
    super('said-marked', { detail: { learner, said }, bubbles: true });
  }
}

export class TakenBack extends CustomEvent<string> {
  constructor(learner: string) {
    super('prediction-taken-back', { detail: learner, bubbles: true });
  }
}

export class Joined extends CustomEvent<string> {
  constructor(learner: string) {
    super('learner-joined', { detail: learner, bubbles: true });
  }
}

export class PhonesInvited extends CustomEvent<Invited | undefined> {
  constructor(invited: Invited | undefined) {
    super('phones-invited', { detail: invited, bubbles: true });
  }
}

/** The code that opens the class on phones, to stand alone on the wall; undefined: no more. */
export class CodeShown extends CustomEvent<string | undefined> {
  constructor(href: string | undefined) {
    super('code-shown', { detail: href, bubbles: true });
  }
}

export class StepShown extends CustomEvent<ClassStep> {
  constructor(step: ClassStep) {
    super('step-shown', { detail: step, bubbles: true });
  }
}
