import { html, nothing } from 'lit';
import { PlainElement } from '../elements/plain-element';
import type { Group } from '../state/group';

export class ClassActed extends CustomEvent<{
  readonly act: 'open' | 'drop';
  readonly group: Group;
}> {
  constructor(act: 'open' | 'drop', group: Group) {
    super('class-acted', { detail: { act, group }, bubbles: true });
  }
}

/** The records of classes that were held or were going on. */
export class EarlierClasses extends PlainElement {
  static override properties = { groups: { attribute: false }, leaving: { state: true } };
  declare groups: readonly Group[];
  /** The record that would be deleted if it is asked for once more. */
  declare leaving: string | undefined;

  private drop(group: Group): void {
    if (this.leaving !== group.id) {
      this.leaving = group.id;
      return;
    }
    this.leaving = undefined;
    this.dispatchEvent(new ClassActed('drop', group));
  }

  protected override render() {
    const { groups } = this;
    if (groups.length === 0) return nothing;
    return html`<h2>Earlier classes</h2>
      <ul class="cases">${groups.map((group) => {
        const day = new Date(group.started).toISOString().slice(0, 16).replace('T', ' ');
        const open = () => this.dispatchEvent(new ClassActed('open', group));
        return html`<li>
          <span>${group.lesson ? `${group.lesson}, ` : ''}${day} <span class="from">${group.learners.join(', ')} · ${group.opened.length} of ${group.cases.length} cases</span></span>
          <span class="acts">
            <button aria-label="${group.closed ? 'Tally' : 'Go on'}: class of ${day}" @click=${open}>${group.closed ? 'Tally' : 'Go on'}</button>
            <button aria-label="Delete: class of ${day}" @click=${() => this.drop(group)}>${this.leaving === group.id ? 'Press again to delete' : 'Delete'}</button>
          </span>
        </li>`;
      })}</ul>`;
  }
}

customElements.define('earlier-classes', EarlierClasses);
