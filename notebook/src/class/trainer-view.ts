import type { UnitSystem } from '@tarebook/rules/quantity';
import { html, nothing } from 'lit';
import { keyed } from 'lit/directives/keyed.js';
import { PlainElement } from '../elements/plain-element';
import {
  beginGroup,
  type Group,
  goOn,
  joined,
  markAnew,
  openWorking,
  takeBack,
} from '../state/group';
import type { Lesson } from '../state/lesson';
import './class-case';
import type {
  CodeShown,
  Committed,
  Joined,
  PhonesInvited,
  SaidMarked,
  StepShown,
  TakenBack,
} from './class-case-events';
import './class-paper';
import { ClassRun } from './class-run';
import './class-tally';
import './comes-back';
import type { LessonMade } from './comes-back';
import './earlier-classes';
import type { ClassActed } from './earlier-classes';
import { endCode } from './end-code';
import './lesson-list';
import type { LessonActed, LessonFileChosen } from './lesson-list';
import './lesson-plan';
import type { ClassBegun, LessonChanged } from './lesson-plan';
import { Lessons } from './lessons';
import type { PhonesOpened } from './on-phones';
import { RelayDesk } from './relay-desk';
import type { SheetsWanted } from './sheets-wanted';
import type { FactMoved } from './what-if';

/** The trainer's window: a lesson is prepared, walked with learners, and its tally looked at. */
export class TrainerView extends PlainElement {
  static override properties = {
    system: { attribute: false },
    notice: { state: true },
    paper: { state: true },
  };
  declare system: UnitSystem;
  declare notice: string;
  /** What is being printed. */
  declare paper: SheetsWanted['detail'] | undefined;
  private readonly tell = (says: string): void => {
    this.notice = says;
  };
  private readonly run = new ClassRun(this, this.tell);
  private readonly lessons = new Lessons(this, this.tell);

  constructor() {
    super();
    this.notice = '';
  }

  override connectedCallback(): void {
    super.connectedCallback();
    void this.lessons.look();
  }

  private async focusOn(selector: string): Promise<void> {
    await this.updateComplete;
    await new Promise((done) => requestAnimationFrame(done));
    this.querySelector<HTMLElement>(selector)?.focus();
  }

  private begun({ detail }: ClassBegun): void {
    const { name } = this.lessons.open;
    this.run.begin(beginGroup(detail.learners, detail.cases, Date.now(), name || undefined));
    void this.focusOn('class-case h2');
  }

  private opened(): void {
    this.run.put(undefined);
    this.run.go(openWorking);
    void this.focusOn('h2.out').then(() => {
      this.querySelector('h2.out')?.scrollIntoView({ block: 'start' });
    });
  }

  /** That there are phones without a line is known to the end, whoever folds this away. */
  private phonesOpened(open: boolean): void {
    if (open && !this.run.group?.byCode) this.run.go((group) => ({ ...group, byCode: true }));
  }

  private onward(): void {
    this.run.move(undefined);
    this.run.go(goOn);
    this.tellOver();
    void this.focusOn('class-case h2, class-tally h2');
  }

  /** Phones hear it while the line is still there. */
  private tellOver(): void {
    const { group } = this.run;
    const desk = this.querySelector('relay-desk');
    if (group && group.at >= group.cases.length && desk instanceof RelayDesk) desk.over();
  }

  private end(): void {
    this.run.end();
    this.tellOver();
    void this.focusOn('class-tally h2');
  }

  private toLessons(): void {
    this.run.show(undefined);
    void this.run.look(false);
    void this.focusOn('h1');
  }

  private async acted({ detail: { act, group } }: ClassActed): Promise<void> {
    if (act === 'drop') {
      await this.run.drop(group.id);
      return;
    }
    this.run.show(group);
    await this.focusOn('class-case h2, class-tally h2');
  }

  /** Paper is drawn, printed and put away again. */
  private async print({ detail }: SheetsWanted): Promise<void> {
    this.paper = detail;
    await this.updateComplete;
    await new Promise((done) => requestAnimationFrame(done));
    print();
    this.paper = undefined;
  }

  private onPaper(lesson: Pick<Lesson, 'name' | 'items'>) {
    const { paper } = this;
    return paper
      ? html`<class-paper .lesson=${lesson} .cases=${paper.cases} .sheets=${paper.sheets} .learners=${paper.learners} .system=${this.system}></class-paper>`
      : nothing;
  }

  private walk(group: Group) {
    const ended = group.at >= group.cases.length;
    const screen = () => open('#/class/learners', 'tarebook-learners');
    return html`
      <div class="acts noprint">
        ${
          ended
            ? html`<button @click=${this.toLessons}>To the lessons</button>`
            : html`<button @click=${screen}>Open the window for the wall</button>
              <button @click=${this.end}>End the class here</button>`
        }
      </div>
      ${
        ended
          ? html`${
              group.byCode
                ? html`<p class="noprint">End code for phones that read their answers out: <strong class="read-out num">${endCode(group.id)}</strong></p>`
                : nothing
            }<class-tally .group=${group}></class-tally>${this.onPaper({ name: group.lesson ?? '', items: [] })}`
          : html`<relay-desk .group=${group}></relay-desk>
            <class-case .group=${group} .system=${this.system}></class-case>`
      }
    `;
  }

  /** A lesson made here stands open, its name in hand. */
  private made(lesson: Lesson): void {
    this.lessons.change(lesson);
    void this.focusOn('#lesson-name');
  }

  private prepare(groups: readonly Group[]) {
    const { lessons } = this;
    const { open, all } = lessons;
    return html`<p>Walk cases with new staff: each predicts, the working opens, and the difference is talked over. Names and predictions stay on this device.</p>
      <p><a href="#/class/practice">Practice alone</a>: predict, ask, say it aloud, find the wrong figure. <a href="#/class/weeks">Over weeks</a>: who falls for what, and what comes back. <a href="#/class/write">Write a case</a> of your own.</p>
      <comes-back @lesson-made=${({ detail }: LessonMade) => this.made(detail)}></comes-back>
      ${keyed(
        open.id,
        html`<lesson-plan
        .lesson=${open}
        @lesson-changed=${({ detail }: LessonChanged) => lessons.change(detail)}
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
      ${this.onPaper(open)}`;
  }

  protected override render() {
    const { run, notice } = this;
    const { group, groups } = run;
    return html`
      <div
        @class-begun=${this.begun}
        @sheets-wanted=${this.print}
        @prediction-committed=${({ detail }: Committed) => run.took(detail.learner, detail.said, detail.reason)}
        @said-marked=${({ detail }: SaidMarked) => run.go((now) => markAnew(now, detail.learner, detail.said, Date.now()))}
        @prediction-taken-back=${({ detail }: TakenBack) => run.go((now) => takeBack(now, detail))}
        @learner-joined=${({ detail }: Joined) => run.go((now) => joined(now, detail))}
        @phones-opened=${({ detail }: PhonesOpened) => this.phonesOpened(detail)}
        @code-shown=${({ detail }: CodeShown) => run.put(detail)}
        @phones-invited=${({ detail }: PhonesInvited) => run.invite(detail)}
        @step-shown=${({ detail }: StepShown) => run.step(detail)}
        @fact-moved=${({ detail }: FactMoved) => run.move(detail)}
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

customElements.define('trainer-view', TrainerView);
