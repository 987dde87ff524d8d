import type { UnitSystem } from '@tarebook/rules/quantity';
import { html, nothing } from 'lit';
import '../class/class.css';
import '../class/class-case';
import '../class/class-start';
import '../class/class-tally';
import '../class/learners-view';
import { shownOf, speak } from '../class/channel';
import type { Committed } from '../class/class-case';
import type { ClassBegun } from '../class/class-start';
import { PlainElement } from '../elements/plain-element';
import { allGroups, dropGroup, keepGroup } from '../state/everything';
import { beginGroup, commit, type Group, goOn, openWorking } from '../state/group';
import { whyNotKept } from '../state/shelf';

/** Cases walked with learners, each predicting before the working opens. */
export class ClassPage extends PlainElement {
  static override properties = {
    view: { attribute: false },
    system: { attribute: false },
    group: { state: true },
    groups: { state: true },
    notice: { state: true },
    leaving: { state: true },
  };
  /** 'learners': what is seen on a second screen. */
  declare view: string;
  declare system: UnitSystem;
  /** The class that is on, or whose tally is looked at. */
  declare group: Group | undefined;
  declare groups: readonly Group[] | undefined;
  declare notice: string;
  /** The record that would be deleted if it is asked for once more. */
  declare leaving: string | undefined;
  private spoken: { say: () => void; end: () => void } | undefined;

  override connectedCallback(): void {
    super.connectedCallback();
    this.notice = '';
    if (this.view === 'learners') return;
    this.spoken = speak(() => this.group && shownOf(this.group));
    void this.look(true);
  }

  override disconnectedCallback(): void {
    this.spoken?.end();
    super.disconnectedCallback();
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

  private go(group: Group): void {
    this.group = group;
    this.spoken?.say();
    keepGroup(group).then(
      () => {
        this.notice = '';
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
    this.go(beginGroup(detail.learners, detail.cases, Date.now()));
    void this.focusOn('class-case h2');
  }

  private took({ detail }: Committed): void {
    if (this.group) this.go(commit(this.group, detail.learner, detail.said, Date.now()));
  }

  private opened(): void {
    if (this.group) this.go(openWorking(this.group));
    void this.focusOn('h2.out');
  }

  private onward(): void {
    if (this.group) this.go(goOn(this.group));
    void this.focusOn('class-case h2, class-tally h2');
  }

  private end(): void {
    const { group } = this;
    if (!group) return;
    this.go({ ...group, at: group.cases.length, closed: true });
    void this.focusOn('class-tally h2');
  }

  private back(): void {
    this.group = undefined;
    this.spoken?.say();
    void this.look(false);
    void this.focusOn('h1');
  }

  private async drop(id: string): Promise<void> {
    if (this.leaving !== id) {
      this.leaving = id;
      return;
    }
    this.leaving = undefined;
    await dropGroup(id).catch((problem: unknown) => {
      this.notice = whyNotKept(problem);
    });
    await this.look(false);
  }

  private records() {
    const { groups } = this;
    if (!groups || groups.length === 0) return nothing;
    return html`<h2>Earlier classes</h2>
      <ul class="cases">${groups.map((group) => {
        const day = new Date(group.started).toISOString().slice(0, 16).replace('T', ' ');
        const open = () => {
          this.group = group;
          void this.focusOn('class-case h2, class-tally h2');
        };
        return html`<li>
          <span>${day} <span class="from">${group.learners.join(', ')} · ${group.opened.length} of ${group.cases.length} cases</span></span>
          <span class="acts">
            <button aria-label="${group.closed ? 'Tally' : 'Go on'}: class of ${day}" @click=${open}>${group.closed ? 'Tally' : 'Go on'}</button>
            <button aria-label="Delete: class of ${day}" @click=${() => this.drop(group.id)}>${this.leaving === group.id ? 'Press again to delete' : 'Delete'}</button>
          </span>
        </li>`;
      })}</ul>`;
  }

  private walk(group: Group) {
    const ended = group.at >= group.cases.length;
    const screen = () => open('#/class/learners', 'tarebook-learners');
    return html`
      <div class="acts noprint">
        ${
          ended
            ? html`<button @click=${this.back}>To the classes</button>`
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

  protected override render() {
    if (this.view === 'learners') {
      return html`<learners-view .system=${this.system}></learners-view>`;
    }
    const { group, groups, notice } = this;
    return html`
      <div
        @class-begun=${this.begun}
        @prediction-committed=${this.took}
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
              : html`<p>Walk cases with new staff: each predicts, the working opens, and the difference is talked over. Names and predictions stay on this device.</p>
                <class-start .last=${groups[0]}></class-start>
                ${this.records()}`
        }
      </div>
    `;
  }
}

customElements.define('class-page', ClassPage);
