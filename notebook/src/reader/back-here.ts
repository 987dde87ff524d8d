import type { CaseDocument } from '@tarebook/casebook';
import { html, nothing } from 'lit';
import { PlainElement } from '../elements/plain-element';
import { pageAddress } from '../elements/share-case';
import { linkFor } from '../state/link';
import { ownName } from '../state/link-name';

/** Where a case is a question that stands in the record here: the way of its answers back to it. */
export class BackHere extends PlainElement {
  static override properties = {
    doc: { attribute: false },
    name: { attribute: false },
    question: { state: true },
  };
  declare doc: CaseDocument;
  declare name: string;
  /** What was asked; '' where it was not asked here. */
  declare question: string;

  constructor() {
    super();
    this.question = '';
  }

  override connectedCallback(): void {
    super.connectedCallback();
    if (!ownName(this.name).startsWith('asked-')) return;
    // A device that keeps nothing has no record.
    import('../questions/come-back')
      .then(({ messageOf }) => messageOf(this.name))
      .then((asked) => {
        this.question = asked?.text ?? '';
      })
      .catch(() => undefined);
  }

  private put = async (): Promise<void> => {
    const { leaveForQuestions } = await import('../questions/come-back');
    const link = await linkFor(this.doc, ownName(this.name), pageAddress());
    if (link) leaveForQuestions(link.href);
  };

  protected override render() {
    const { question } = this;
    if (question === '') return nothing;
    const short = question.length > 120 ? `${question.slice(0, 120)} …` : question;
    return html`<section class="noprint" aria-label="Asked here">
      <p>This is what was asked back here, to “${short}”</p>
      <button type="button" class="strong" @click=${this.put}>Put the answers to the question</button>
    </section>`;
  }
}

customElements.define('back-here', BackHere);
