import { topics } from '@tarebook/rules';
import { html, nothing } from 'lit';
import { chosen } from '../elements/files-chosen';
import { mark } from '../elements/marks';
import { PlainElement } from '../elements/plain-element';
import type { CaseStarted } from '../elements/start-case';
import { levelOf } from '../state/level';
import '../elements/start-case';
import { byTopic, topicChoice } from '../elements/topic-choice';
import { caseAddress } from '../state/address';
import { allFiled } from '../state/filed';
import { houseOver } from '../state/house';
import { judge } from '../state/judged';
import { allKept, hearElsewhere, keep } from '../state/kept';

type Row = {
  readonly topic: string;
  readonly name: string;
  readonly title: string;
  readonly asked: string;
  readonly level: string;
  readonly outcome: string;
  readonly words: string;
  /** Lower case, for the search. */
  readonly all: string;
  readonly own: 'filed' | 'changed' | 'mine';
};

const levels = ['starter', 'working', 'hard'];

/** What was judged in this window, while neither its text nor the house's numbers have changed. */
const judgedBefore = new Map<string, { readonly house: unknown; readonly row: Row }>();

function rowOf(topic: string, name: string, text: string, own: Row['own']): Row {
  const key = JSON.stringify([topic, name, own, text]);
  const set = topics[topic];
  const [house] = set ? houseOver(set) : [];
  const before = judgedBefore.get(key);
  if (before && before.house === house) return before.row;
  const row = judgedRow(topic, name, text, own);
  judgedBefore.set(key, { house, row });
  return row;
}

function judgedRow(topic: string, name: string, text: string, own: Row['own']): Row {
  const { doc, answer } = judge(text);
  const { title, asked = '', level = '' } = doc.front;
  const outcome = answer?.outcome ?? '';
  const words = answer?.words ?? 'not readable yet';
  return { topic, name, title, asked, level, outcome, words, all: text.toLowerCase(), own };
}

/** So many cases are judged before the page is drawn again. */
const atOnce = 6;

/** Every case there is, judged a few at a time so that the page never stands still. */
async function* rowsOf(): AsyncGenerator<readonly Row[]> {
  const filed = await allFiled();
  const kept = await allKept().catch(() => []);
  const others = kept.filter(
    ({ topic, name }) => !filed.some((f) => f.topic === topic && f.name === name),
  );
  const all = [
    ...others.map(({ topic, name, text }) => ({ topic, name, text, own: 'mine' as const })),
    ...filed.map(({ topic, name, text }) => {
      const mine = kept.find((each) => each.topic === topic && each.name === name);
      return {
        topic,
        name,
        text: mine?.text ?? text,
        own: mine ? ('changed' as const) : ('filed' as const),
      };
    }),
  ].toSorted(byTopic);
  const rows: Row[] = [];
  for (const [i, { topic, name, text, own }] of all.entries()) {
    rows.push(rowOf(topic, name, text, own));
    if (i % atOnce !== atOnce - 1) continue;
    yield [...rows];
    await new Promise((next) => setTimeout(next));
  }
  yield rows;
}

/** All worked cases by topic and level, with their verdicts as they stand today. */
export class CasesPage extends PlainElement {
  static override properties = {
    rows: { state: true },
    search: { state: true },
    about: { state: true },
    notice: { state: true },
    reading: { state: true },
  };
  declare rows: readonly Row[] | undefined;
  declare search: string;
  /** The topic shown; '' shows all. */
  declare about: string;
  declare notice: string;
  /** Whether there are still cases to come. */
  declare reading: boolean;
  private turn = 0;
  private unhear: (() => void) | undefined;

  override connectedCallback(): void {
    super.connectedCallback();
    this.search = '';
    this.about = '';
    this.notice = '';
    this.unhear = hearElsewhere(() => this.read());
    this.read();
  }

  override disconnectedCallback(): void {
    this.unhear?.();
    super.disconnectedCallback();
  }

  private read(): void {
    this.turn += 1;
    this.readRows(this.turn).catch(() => {
      this.notice = 'The cases could not be read; reload the page.';
    });
  }

  /** Draws the rows as they come; when they are read anew, the old ones stand until all are there. */
  private async readRows(turn: number): Promise<void> {
    this.reading = true;
    const again = this.rows !== undefined;
    let all: readonly Row[] = [];
    for await (const rows of rowsOf()) {
      if (!this.isConnected || turn !== this.turn) return;
      all = rows;
      if (!again) this.rows = rows;
    }
    this.rows = all;
    this.reading = false;
  }

  private async begin(text: string, topic: string): Promise<void> {
    const name = `mine-${Date.now().toString(36)}`;
    try {
      await keep({ topic, name, text, at: Date.now() });
      location.hash = caseAddress(topic, name);
    } catch {
      this.notice =
        'This device keeps nothing for the page just now, so no case of your own can be started.';
    }
  }

  /** Files are opened by what takes dropped ones. */
  private picked({ target: field }: Event): void {
    if (!(field instanceof HTMLInputElement)) return;
    const files = [...(field.files ?? [])];
    field.value = '';
    document.dispatchEvent(chosen(files));
  }

  private row(row: Row) {
    const topic = topics[row.topic];
    const level = topic ? levelOf(topic.outcomes, row.outcome) : 'unknown';
    const asked = row.asked ? `asked: ${row.asked}` : '';
    const own = { changed: 'changed by you', mine: 'yours', filed: '' }[row.own];
    const said = [levels.includes(row.level) ? row.level : '', asked, own];
    return html`<li>
      <a href=${caseAddress(row.topic, row.name)}>${row.title}</a>
      <span class="level-${level} word-of">${mark(level)}${row.words}</span>
      <span class="from">${said.filter((each) => each !== '').join(' · ')}</span>
    </li>`;
  }

  private group(topic: string, rows: readonly Row[]) {
    const rank = ({ level }: Row): number =>
      levels.includes(level) ? levels.indexOf(level) : levels.length;
    const inOrder = rows.filter((row) => row.topic === topic).toSorted((a, b) => rank(a) - rank(b));
    return html`<h2>${topics[topic]?.title ?? topic}</h2>
      <ul class="cases">${inOrder.map((row) => this.row(row))}</ul>`;
  }

  protected override render() {
    const wanted = this.search.trim().toLowerCase().split(/\s+/);
    const { about, rows } = this;
    const found = rows
      ?.filter(({ topic }) => about === '' || topic === about)
      .filter(({ all }) => wanted.every((word) => all.includes(word)));
    const named = [...new Set(found?.map(({ topic }) => topic))];
    const typed = (event: Event) => {
      if (event.target instanceof HTMLInputElement) this.search = event.target.value;
    };
    return html`
      <h1>Cases</h1>
      <p>Questions people asked, each with what was known, the verdict and the reason. Open one, change what is known, and the verdict follows.</p>
      <div class="finder">
        <label>Find a case<br /><input type="search" .value=${this.search} @input=${typed} /></label>
        ${topicChoice(about, rows ?? [], (topic) => {
          this.about = topic;
        })}
        <label class="small">Open a case from a file<br /><input type="file" multiple accept=".md,.json,text/markdown,application/json" @change=${this.picked} /></label>
      </div>
      <h2>Start a case</h2>
      <start-case @case-started=${({ detail }: CaseStarted) => this.begin(detail.text, detail.topic)}></start-case>
      ${this.notice ? html`<p class="notice" role="alert">${this.notice}</p>` : nothing}
      ${
        found === undefined || (found.length === 0 && this.reading)
          ? html`<p class="soft">Reading the cases …</p>`
          : found.length === 0
            ? html`<p role="status">No case has all these words; try fewer of them, or start a blank case.</p>`
            : named.map((topic) => this.group(topic, found))
      }
    `;
  }
}

customElements.define('cases-page', CasesPage);
