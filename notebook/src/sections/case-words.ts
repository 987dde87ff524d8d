import type { Block } from '@tarebook/casebook';
import { PlainElement } from '../elements/plain-element';
import type { CaseView } from './case-view';
import { written } from './written';

/** What an author wrote, where it is folded until somebody reads it. */
export class CaseWords extends PlainElement {
  static override properties = { view: { attribute: false }, blocks: { attribute: false } };
  declare view: CaseView;
  declare blocks: readonly Block[];

  protected override render() {
    return written(this.view, this.blocks);
  }
}

customElements.define('case-words', CaseWords);
