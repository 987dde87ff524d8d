import type { UnitSystem } from '@tarebook/rules/quantity';
import { html, nothing } from 'lit';
import { keyed } from 'lit/directives/keyed.js';
import '../class/class.css';
import { type Shown, shownOf, speak } from '../class/channel';
import '../class/class-case';
import type { Committed, Joined, StepShown, TakenBack } from '../class/class-case-events';
import '../class/class-paper';
import '../class/class-tally';
import '../class/earlier-classes';
import type { ClassActed } from '../class/earlier-classes';
import '../class/join-view';
import '../class/learners-view';
import '../class/lesson-list';
import type { LessonActed, LessonFileChosen } from '../class/lesson-list';
import '../class/lesson-plan';
import type { ClassBegun, LessonChanged, SheetsWanted } from '../class/lesson-plan';
import { Lessons } from '../class/lessons';
import { takeScanned } from '../class/scanned-guess';
import type { FactMoved } from '../class/what-if';
import { PlainElement } from '../elements/plain-element';
import { allGroups, dropGroup, keepGroup } from '../state/everything';
import {
  beginGroup,
  commit,
  type Group,
  goOn,
  joined,
  mergedGroups,
  openWorking,
  takeBack,
} from '../state/group';
import { whyNotKept } from '../state/shelf';

function decoded(part: string): string {
  try {
    return decodeURIComponent(part);
  } catch {
    return '';
  }
}

/** Cases walked with learners, each predicting before the working opens. */
export class ClassPage extends PlainElement {
  static override properties = {
    view: { attribute: false },
    system: { attribute: false },
    group: { state: true },
    groups: { state: true },
    notice: { state: true },
    paper: { state: true },
    scanned: { state: true },
  };
  /** 'learners': a second screen; 'join': a learner's own phone; 'guess': one scanned from there. */
  declare view: string;
  declare system: UnitSystem;
  /** The class that is on, or whose tally is looked at. */
  declare group: Group | undefined;
  declare groups: readonly Group[] | undefined;
  declare notice: string;
  /** What is being printed. */
  declare paper: SheetsWanted['detail'] | undefined;
  /** What became of a guess that was scanned. */
  declare scanned: string;
  private spoken: ReturnType<typeof speak> | undefined;
  private moved: Shown['moved'];
  private readonly lessons = new Lessons(this, (problem) => {
    this.notice = problem;
  });

  constructor() {
    super();
    this.notice = '';
    this.scanned = '';
  }

  /** Drawn before its script was here, it learns only now which of the two windows it is. */
  protected override firstUpdated(): void {
    if (this.view === 'learners' || this.view === 'join') return;
    if (this.view === 'guess') {
      void this.scan();
      return;
    }
    this.spoken = speak(
      () => this.group && shownOf(this.group, this.moved),
      (id) => void this.heard(id),
    );
    void this.lessons.look();
    void this.look(true);
  }

  override disconnectedCallback(): void {
    this.spoken?.end();
    super.disconnectedCallback();
  }

  private async scan(): Promise<void> {
    const [, , , id = '', code = '', why = ''] = location.hash.split('/').map(decoded);
    this.scanned = await takeScanned(id, code, why);
  }

  /** Reads the records; a class that was going on goes on. */
  private async look(resume: boolean): Promise<void> {
    try {
      const groups = [...(await allGroups())].sort((a, b) => b.started - a.started);
      this.groups = groups;
      if (resume) this.group = groups.find(({ closed }) => !closed);
    } catch (problem) {
      this.groups = [];
      this.notice = whyNotKept(problem);
    }
    this.spoken?.say();
  }

  /** Another window took a guess down in this very class. */
  private async heard(id: string): Promise<void> {
    if (this.group?.id !== id) return;
    const kept = (await allGroups().catch(() => [])).find((each) => each.id === id);
    const { group } = this;
    // The other window moved it last, and says itself what is to be seen.
    if (kept && group?.id === id) this.group = mergedGroups(kept, group);
  }

  private go(group: Group): void {
    this.group = group;
    this.spoken?.say();
    keepGroup(group).then(
      (kept) => {
        this.notice = '';
        if (this.group?.id === kept.id) this.group = mergedGroups(this.group, kept);
        this.spoken?.say();
        this.spoken?.kept(kept.id);
      },
      (problem: unknown) => {
        this.notice = `${whyNotKept(problem)} Save the record as CSV before you leave.`;
      },
    );
  }

  private async focusOn(selector: string): Promise<void> {
    await this.updateComplete;
    await new Promise((done) => requestAnimationFrame(done));
    this.querySelector<HTMLElement>(selector)?.focus();
  }

  private begun({ detail }: ClassBegun): void {
    const { name } = this.lessons.open;
    this.go(beginGroup(detail.learners, detail.cases, Date.now(), name || undefined));
    void this.focusOn('class-case h2');
  }

  private took({ detail: { learner, said, reason } }: Committed): void {
    if (this.group) this.go(commit(this.group, learner, said, Date.now(), reason));
  }

  private back({ detail }: TakenBack): void {
    if (this.group) this.go(takeBack(this.group, detail));
  }

  private came({ detail }: Joined): void {
    if (this.group) this.go(joined(this.group, detail));
  }

  private showed({ detail }: StepShown): void {
    this.moved = undefined;
    if (this.group) this.go({ ...this.group, step: detail });
  }

  private movedFact({ detail }: FactMoved): void {
    this.moved = detail;
    this.spoken?.say();
  }

  private opened(): void {
    if (this.group) this.go(openWorking(this.group));
    void this.focusOn('h2.out');
  }

  private onward(): void {
    this.moved = undefined;
    if (this.group) this.go(goOn(this.group));
    void this.focusOn('class-case h2, class-tally h2');
  }

  private end(): void {
    const { group } = this;
    if (!group) return;
    this.go({ ...group, at: group.cases.length, closed: true });
    void this.focusOn('class-tally h2');
  }

  private toLessons(): void {
    this.group = undefined;
    this.spoken?.say();
    void this.look(false);
    void this.focusOn('h1');
  }

  private async acted({ detail: { act, group } }: ClassActed): Promise<void> {
    if (act === 'open') {
      this.group = group;
      this.spoken?.say();
      await this.focusOn('class-case h2, class-tally h2');
      return;
    }
    await dropGroup(group.id).catch((problem: unknown) => {
      this.notice = whyNotKept(problem);
    });
    await this.look(false);
  }

  /** Paper is drawn, printed and put away again. */
  private async print({ detail }: SheetsWanted): Promise<void> {
    this.paper = detail;
    await this.updateComplete;
    await new Promise((done) => requestAnimationFrame(done));
    print();
    this.paper = undefined;
  }

  private walk(group: Group) {
    const ended = group.at >= group.cases.length;
    const screen = () => open('#/class/learners', 'tarebook-learners');
    return html`
      <div class="acts noprint">
        ${
          ended
            ? html`<button @click=${this.toLessons}>To the lessons</button>`
            : html`<button @click=${screen}>Open a window for the learners</button>
              <button @click=${this.end}>End the class here</button>`
        }
      </div>
      ${
        ended
          ? html`<class-tally .group=${group}></class-tally>`
          : html`<class-case .group=${group} .system=${this.system}></class-case>`
      }
    `;
  }

  private prepare(groups: readonly Group[]) {
    const { lessons, paper } = this;
    const { open, all } = lessons;
    return html`<p>Walk cases with new staff: each predicts, the working opens, and the difference is talked over. Names and predictions stay on this device.</p>
      ${keyed(
        open.id,
        html`<lesson-plan
        .lesson=${open}
        @lesson-changed=${({ detail }: LessonChanged) => lessons.change(detail)}
        @sheets-wanted=${this.print}
      ></lesson-plan>`,
      )}
      <lesson-list
        .lessons=${all}
        .open=${open}
        @lesson-acted=${({ detail }: LessonActed) => lessons.act(detail.act, detail.lesson)}
        @lesson-file=${({ detail }: LessonFileChosen) => lessons.takeIn(detail)}
      ></lesson-list>
      <p role="status">${lessons.told}
        ${lessons.gone ? html`<button @click=${() => lessons.undo()}>Put it back</button>` : nothing}</p>
      <earlier-classes .groups=${groups} @class-acted=${this.acted}></earlier-classes>
      ${
        paper
          ? html`<class-paper .lesson=${open} .cases=${paper.cases} .sheets=${paper.sheets} .system=${this.system}></class-paper>`
          : nothing
      }`;
  }

  protected override render() {
    if (this.view === 'learners') {
      return html`<learners-view .system=${this.system}></learners-view>`;
    }
    if (this.view === 'join') {
      const packed = location.hash.split('/')[3] ?? '';
      return html`<join-view .packed=${packed} .system=${this.system}></join-view>`;
    }
    if (this.view === 'guess') {
      return html`<h1>Class</h1><p class="notice" role="status">${this.scanned || 'Taking the guess down …'}</p>`;
    }
    const { group, groups, notice } = this;
    return html`
      <div
        @class-begun=${this.begun}
        @prediction-committed=${this.took}
        @prediction-taken-back=${this.back}
        @learner-joined=${this.came}
        @step-shown=${this.showed}
        @fact-moved=${this.movedFact}
        @working-opened=${this.opened}
        @class-goes-on=${this.onward}
      >
        <h1 tabindex="-1">Class</h1>
        ${notice ? html`<p class="notice" role="alert">${notice}</p>` : nothing}
        ${
          group
            ? this.walk(group)
            : groups === undefined
              ? html`<p class="soft">Looking for a class that was going on …</p>`
              : this.prepare(groups)
        }
      </div>
    `;
  }
}

customElements.define('class-page', ClassPage);
