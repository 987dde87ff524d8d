import type { ReactiveController, ReactiveControllerHost } from 'lit';
import { allGroups, dropGroup, keepGroup } from '../state/everything';
import { type ClassStep, commit, type Group, mergedGroups } from '../state/group';
import { whyNotKept } from '../state/shelf';
import { type Beside, type Invited, type Shown, shownOf, speak } from './channel';
import type { Reason } from './class-case-events';

/** The class that is on, or whose tally is looked at: kept at every step, and told to other windows. */
export class ClassRun implements ReactiveController {
  group: Group | undefined;
  /** The last begun first; undefined while they are looked for. */
  groups: readonly Group[] | undefined;
  private spoken: ReturnType<typeof speak> | undefined;
  /** What the wall shows beside the case or in its place. */
  private beside: Beside = {};

  constructor(
    private readonly host: ReactiveControllerHost,
    /** '' once all is kept again. */
    private readonly notice: (says: string) => void,
  ) {
    host.addController(this);
  }

  hostConnected(): void {
    this.spoken = speak(
      () => this.group && shownOf(this.group, this.beside),
      (id) => void this.heard(id),
    );
    void this.look(true);
  }

  hostDisconnected(): void {
    this.spoken?.end();
  }

  /** Reads the records; a class that was going on goes on. */
  async look(resume: boolean): Promise<void> {
    try {
      const groups = [...(await allGroups())].sort((a, b) => b.started - a.started);
      this.groups = groups;
      if (resume) this.group = groups.find(({ closed }) => !closed);
    } catch (problem) {
      this.groups = [];
      this.notice(whyNotKept(problem));
    }
    this.show(this.group);
  }

  /** Another window took a guess down in this very class. */
  private async heard(id: string): Promise<void> {
    if (this.group?.id !== id) return;
    const kept = (await allGroups().catch(() => [])).find((each) => each.id === id);
    const { group } = this;
    // The other window moved it last, and says itself what is to be seen.
    if (kept && group?.id === id) this.group = mergedGroups(kept, group);
    this.host.requestUpdate();
  }

  show(group: Group | undefined): void {
    // How to join one class is nothing to the next.
    if (group?.id !== this.group?.id) this.beside = {};
    this.group = group;
    this.host.requestUpdate();
    this.spoken?.say();
  }

  /** Does with the class what is asked, and keeps it. */
  go(change: (group: Group) => Group): void {
    if (this.group) this.begin(change(this.group));
  }

  begin(group: Group): void {
    this.show(group);
    keepGroup(group).then(
      (kept) => {
        this.notice('');
        if (this.group?.id === kept.id) this.show(mergedGroups(this.group, kept));
        this.spoken?.kept(kept.id);
      },
      (problem: unknown) => {
        this.notice(`${whyNotKept(problem)} Save the record as CSV before you leave.`);
      },
    );
  }

  took(learner: string, said: string, reason: Reason): void {
    this.go((group) => commit(group, learner, said, Date.now(), reason));
  }

  step(step: ClassStep): void {
    this.see({ moved: undefined });
    this.go((group) => ({ ...group, step }));
  }

  /** A fact of the open case, moved for all to see; undefined puts it back. */
  move(moved: Shown['moved']): void {
    this.see({ moved });
  }

  /** How phones join, for the wall; undefined: they may not any more. */
  invite(invited: Invited | undefined): void {
    this.see({ invited });
  }

  /** The code that opens the class on phones, alone on the wall; undefined: the case is there again. */
  put(code: string | undefined): void {
    this.see({ code });
  }

  private see(to: Beside): void {
    this.beside = { ...this.beside, ...to };
    this.spoken?.say();
  }

  end(): void {
    this.go((group) => ({ ...group, at: group.cases.length, closed: true }));
  }

  async drop(id: string): Promise<void> {
    await dropGroup(id).catch((problem: unknown) => this.notice(whyNotKept(problem)));
    await this.look(false);
  }
}
