import { type JudgedNote, judgeCaseNow, judgeNote, noteForms, readNote } from '@tarebook/casebook';
import { formNames } from '@tarebook/rules/engine';
import { html, nothing, type TemplateResult } from 'lit';
import { PlainElement } from '../elements/plain-element';
import { caseAddress } from '../state/address';
import { filedCase } from '../state/filed';
import { openReader, openYaml, readDocument } from '../state/reading';
import { openTopic } from '../state/topics';

const formLabels: Readonly<Record<(typeof formNames)[number], string>> = {
  ticket: 'At the counter',
  short: 'In short',
  spoken: 'On the phone',
  everybody: 'To everybody',
  post: 'In public',
  letter: 'By mail',
  askBack: 'To ask back',
  sheet: 'On paper',
  slip: 'To hand on',
};

const today = (): string => new Date().toISOString().slice(0, 10);

/** The case a note leans on, `../topic/name.md`, where it came with the page. */
async function leaningOf(path: string | undefined) {
  const [, topic, name] = /^\.\.\/([a-z-]+)\/([a-z0-9-]+)\.md$/.exec(path ?? '') ?? [];
  if (path === undefined || topic === undefined || name === undefined) return undefined;
  const text = await filedCase(topic, name);
  if (text === undefined) return undefined;
  await openTopic(topic);
  const doc = readDocument(text);
  if (!doc.topic || doc.troubles.length > 0) return undefined;
  const answer = judgeCaseNow(doc);
  return { leaning: { path, title: doc.front.title, topic: doc.topic, answer }, topic, name };
}

/** An answer that is no calculation: whether it still holds, and as it is said. */
export class NotePage extends PlainElement {
  static override properties = {
    name: { attribute: false },
    judged: { state: true },
    leansOn: { state: true },
    missing: { state: true },
  };
  declare name: string;
  declare judged: JudgedNote | undefined;
  /** The address of the case it leans on. */
  declare leansOn: string | undefined;
  /** Why there is no note, in a sentence. */
  declare missing: string | undefined;
  private opening: Promise<void> = Promise.resolve();

  override connectedCallback(): void {
    super.connectedCallback();
    this.opening = this.open().catch(() => {
      this.missing = 'This part of the page could not be read; reload it.';
    });
  }

  /** The note is there, or it is said why not. */
  protected override async getUpdateComplete(): Promise<boolean> {
    await this.opening;
    return super.getUpdateComplete();
  }

  private async open(): Promise<void> {
    await Promise.all([openReader(), openYaml()]);
    const text = await filedCase('note', this.name);
    const note = text === undefined ? undefined : readNote(text);
    const [trouble] = note?.troubles ?? [];
    if (!note || trouble) {
      this.missing = trouble?.says ?? `There is no note “${this.name}” here.`;
      return;
    }
    const found = await leaningOf(note.leansOn);
    this.leansOn = found && caseAddress(found.topic, found.name);
    this.judged = judgeNote(note, today(), found?.leaning);
  }

  private shown(judged: JudgedNote): TemplateResult {
    const { note, outcome } = judged;
    const forms = noteForms(judged);
    return html`<h1>${note.front.title}</h1>
      <p><strong>${outcome === 'expired' ? 'Expired' : 'Holds'}</strong>${
        note.owner === undefined ? nothing : html`, kept by the ${note.owner}`
      }, good until ${note.goodUntil}</p>
      <p class="as-written">${forms.post}</p>
      ${note.links.map(
        ({ label, address }) =>
          html`<p><a href=${address} rel="noreferrer noopener">${label}</a></p>`,
      )}
      ${this.leansOn ? html`<p><a href=${this.leansOn}>The case it leans on</a></p>` : nothing}
      ${formNames
        .filter((name) => name !== 'post')
        .map(
          (name) => html`<details>
            <summary>${formLabels[name]}</summary>
            <p class="as-written">${forms[name]}</p>
          </details>`,
        )}`;
  }

  protected override render() {
    if (this.missing !== undefined) {
      return html`<h1>Note</h1><p>${this.missing} <a href="#/cases">All cases</a> are one page back.</p>`;
    }
    return this.judged ? this.shown(this.judged) : html`<p class="soft">Reading the note …</p>`;
  }
}

customElements.define('note-page', NotePage);
