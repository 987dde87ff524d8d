import { asWritten, type FactGiven, isRows } from '@tarebook/rules/engine';
import type { EntryMove, RefusedRow } from '@tarebook/sweep';
import { html, nothing } from 'lit';
import { repeat } from 'lit/directives/repeat.js';
import { PlainElement } from '../elements/plain-element';
import { saveAs } from '../state/files';
import {
  dropOwnFile,
  keepOwnFile,
  type OwnFile,
  type OwnFileName,
  type OwnTexts,
  ownFileNames,
} from '../state/own-catalogue';
import { whyNotKept } from '../state/shelf';
import type { Imported } from './asked';
import type { YardAsking } from './asking';
import { fileText } from './file-text';
import { type RestingHere, restingHere } from './resting-here';

/** The catalogue that counts on this device is another. */
export class CatalogueChanged extends CustomEvent<undefined> {
  constructor() {
    super('catalogue-changed', { bubbles: true });
  }
}

/** So many refused rows and moved entries are listed; the rest is counted. */
const most = 12;

const kinds: Readonly<Record<OwnFileName, readonly [one: string, many: string]>> = {
  'trailers.csv': ['trailer', 'trailers'],
  'vehicles.csv': ['vehicle', 'vehicles'],
  'loads.csv': ['load', 'loads'],
  'accessories.csv': ['accessory', 'accessories'],
  'accessory-fits.csv': ['line for an accessory', 'lines for accessories'],
  'rates.csv': ['work of the rate book', 'works of the rate book'],
  'offers.csv': ['offer', 'offers'],
  'options.csv': ['option', 'options'],
  'floor-plans.csv': ['floor plan', 'floor plans'],
  'columns.csv': ['name of a column', 'names of columns'],
};

/** What stands in a file, so many of them. */
function kindOf(file: string, count = 2): string {
  const name = ownFileNames.find((each) => each === file);
  return name ? kinds[name][count === 1 ? 0 : 1] : file;
}

const counted = (file: string, count: number): string => `${count} ${kindOf(file, count)}`;

const lines = (rows: readonly RefusedRow[], style: string) =>
  rows.length === 0
    ? nothing
    : html`<ul class=${style}>${rows.slice(0, most).map(({ line, says }) => html`<li>Line ${line}: ${says}</li>`)}
        ${rows.length > most ? html`<li>and ${rows.length - most} more</li>` : nothing}</ul>`;

const written = (given: FactGiven | undefined): string =>
  given === undefined || isRows(given) ? 'not told' : asWritten(given);

function moveSaid({ name, what, facts }: EntryMove): string {
  if (what === 'new') return `${name}: new`;
  if (what === 'gone') return `${name}: no longer in it`;
  const all = facts.map(
    ({ fact, was, is }) => `${fact.slice(fact.indexOf('.') + 1)} ${written(was)} → ${written(is)}`,
  );
  return `${name}: ${all.join(', ')}`;
}

const times = (n: number, one: string): string => `${n} ${n === 1 ? one : `${one}s`}`;

/** How many cases and answers rest on what has changed, and those that come out otherwise. */
function restingSaid(resting: readonly RestingHere[]) {
  if (resting.length === 0) return nothing;
  const count = (kind: RestingHere['kind']) => resting.filter((each) => each.kind === kind).length;
  const otherwise = resting.filter(({ was, is }) => was !== is);
  return html`<p>${times(count('case'), 'case')} kept here and ${times(count('answer'), 'answer')} given rest on what changed; ${
    otherwise.length === 0
      ? 'none of them comes'
      : `${otherwise.length} of them ${otherwise.length === 1 ? 'comes' : 'come'}`
  } out otherwise.</p>
    <ul>${otherwise
      .slice(0, most)
      .map(
        ({ title, address, was, is }) =>
          html`<li><a href=${address}>${title}</a>: ${was} Now: ${is}</li>`,
      )}${otherwise.length > most ? html`<li>and ${otherwise.length - most} more</li>` : nothing}</ul>`;
}

/** A dealer's own vehicles, trailers and all that stands beside them: read from a file, looked at, kept on the device, saved again. */
export class OwnCatalogue extends PlainElement {
  static override properties = {
    own: { attribute: false },
    files: { attribute: false },
    asking: { attribute: false },
    read: { state: true },
    resting: { state: true },
    notice: { state: true },
    said: { state: true },
  };
  declare own: readonly OwnFile[];
  declare files: OwnTexts | undefined;
  declare asking: YardAsking;
  /** What was read of a file and is not kept yet. */
  declare read: Imported | undefined;
  /** What on this device rests on what is changed by it. */
  declare resting: readonly RestingHere[];
  declare notice: string;
  declare said: string;
  private from = '';
  private text = '';
  private columns: Readonly<Record<string, string>> = {};
  /** What stands in the file, where somebody said so. */
  private as: OwnFileName | undefined;
  /** Files that were chosen together wait here, each to be looked at by itself. */
  private waiting: readonly File[] = [];

  constructor() {
    super();
    this.resting = [];
    this.notice = '';
    this.said = '';
  }

  async take([file, ...more]: readonly File[]): Promise<void> {
    this.waiting = more;
    this.read = undefined;
    if (!file) return;
    this.notice = '';
    this.columns = {};
    this.as = undefined;
    this.text = '';
    try {
      this.text = await fileText(file);
      this.from = file.name;
      await this.look();
    } catch (problem) {
      this.notice = problem instanceof Error ? problem.message : String(problem);
    }
  }

  private async look(): Promise<void> {
    try {
      const { from, text, files, columns } = this;
      const as = this.as === 'columns.csv' ? undefined : this.as;
      this.resting = [];
      this.read = await this.asking.read({ kind: 'import', from, text, files, as, columns });
      this.resting = await restingHere(this.read?.moves ?? []);
      this.notice = '';
    } catch (problem) {
      this.read = undefined;
      this.notice = problem instanceof Error ? problem.message : String(problem);
    }
  }

  private picked = ({ target: field }: Event): void => {
    if (!(field instanceof HTMLInputElement)) return;
    const files = [...(field.files ?? [])];
    field.value = '';
    this.said = '';
    void this.take(files);
  };

  private keep = async (): Promise<void> => {
    const { read } = this;
    if (!read) return;
    try {
      const { file, text, count, columns } = read;
      const at = { from: this.from, at: Date.now() };
      await keepOwnFile({ file, text, ...at });
      if (columns !== undefined) await keepOwnFile({ file: 'columns.csv', text: columns, ...at });
      this.said = `${counted(file, count)} of your own ${count === 1 ? 'is' : 'are'} kept on this device.`;
      this.dispatchEvent(new CatalogueChanged());
      await this.take(this.waiting);
    } catch (problem) {
      this.notice = whyNotKept(problem);
    }
  };

  private drop = async (own: OwnFile): Promise<void> => {
    try {
      await dropOwnFile(own.file);
      this.said =
        own.file === 'columns.csv'
          ? 'What your columns are called is forgotten.'
          : `The ${kindOf(own.file)} are the invented ones again.`;
      this.dispatchEvent(new CatalogueChanged());
    } catch (problem) {
      this.notice = whyNotKept(problem);
    }
  };

  private kept() {
    if (this.own.length === 0) {
      return html`<p class="soft">The catalogue here is invented. Open your own: CSV files as your spreadsheet saves them,
        the first row naming the columns – trailers, vehicles, loads, accessories, rates, offers, options, floor plans.</p>`;
    }
    return html`<ul class="own-files">${this.own.map(
      (own) => html`<li>
        <span>Your ${kindOf(own.file)}, from ${own.from}, ${new Date(own.at).toLocaleDateString('en-US')}</span>
        <span class="acts"><button @click=${() => saveAs(own.file, own.text, 'text/csv')}>Save as CSV</button>
        <button @click=${() => this.drop(own)}>${own.file === 'columns.csv' ? 'Forget them' : `Go back to the invented ${kindOf(own.file)}`}</button></span>
      </li>`,
    )}</ul>`;
  }

  /** What stands in the file; what was taken for it stays in sight, to be said otherwise. */
  private standsIn(now: string) {
    const said = async ({ target }: Event): Promise<void> => {
      if (!(target instanceof HTMLSelectElement)) return;
      this.as = ownFileNames.find((each) => each === target.value);
      this.columns = {};
      await this.look();
    };
    return html`<label class="small">In ${this.from} stand<br /><select @change=${said}>
      ${now === '' ? html`<option value="" selected>nobody can tell</option>` : nothing}
      ${ownFileNames
        .filter((each) => each !== 'columns.csv')
        .map(
          (each) => html`<option value=${each} ?selected=${each === now}>${kindOf(each)}</option>`,
        )}</select></label>`;
  }

  private column(theirs: string, mayBe: readonly string[]) {
    const called = async ({ target }: Event): Promise<void> => {
      if (!(target instanceof HTMLSelectElement)) return;
      const { [theirs]: _, ...others } = this.columns;
      this.columns = target.value === '' ? others : { ...others, [theirs]: target.value };
      await this.look();
    };
    const now = this.columns[theirs] ?? '';
    return html`<label>“${theirs}” is<br /><select @change=${called}>
      <option value="" ?selected=${now === ''}>kept as it is called</option>
      ${mayBe.map((ours) => html`<option value=${ours} ?selected=${now === ours}>${ours}</option>`)}</select></label>`;
  }

  /** What was said stays in sight, to be said otherwise. */
  private columnsOf({ unknown, mayBe }: Imported) {
    const said = Object.keys(this.columns).filter((each) => !unknown.includes(each));
    const all = [...said, ...unknown];
    if (all.length === 0) return nothing;
    return html`<p>Columns nobody here knows by their name:</p>
      <div class="finder">${repeat(
        all,
        (theirs) => theirs,
        (theirs) => this.column(theirs, mayBe),
      )}</div>`;
  }

  private arrived(read: Imported) {
    const { file, count, refused, notes, moves } = read;
    return html`<div class="arrived-file" role="status">
      <p>${counted(file, count)} ${count === 1 ? 'was' : 'were'} read from ${this.from}${
        refused.length === 0
          ? ''
          : `; ${refused.length} ${refused.length === 1 ? 'row was' : 'rows were'} not`
      }. Nothing is kept yet.</p>
      ${lines(refused, 'error')}${lines(notes, 'soft')}
      ${this.standsIn(file)}
      ${this.columnsOf(read)}
      ${
        moves.length === 0
          ? nothing
          : html`<p>Against what you had:</p><ul>${moves.slice(0, most).map((move) => html`<li>${moveSaid(move)}</li>`)}
              ${moves.length > most ? html`<li>and ${moves.length - most} more</li>` : nothing}</ul>`
      }
      ${restingSaid(this.resting)}
      <div class="acts">
        ${count === 0 ? nothing : html`<button @click=${this.keep}>Keep ${count === 1 ? 'this' : 'these'} ${counted(file, count)}</button>`}
        <button @click=${() => this.take(this.waiting)}>Leave all as it was</button>
      </div>
    </div>`;
  }

  protected override render() {
    const { read, notice, said } = this;
    return html`${this.kept()}
      <label class="small from-file">${this.own.length === 0 ? 'Open a file' : 'Open another file'}, or several, or drop them on the page<br />
        <input type="file" multiple accept=".csv,.tsv,.txt,text/csv" @change=${this.picked} /></label>
      ${notice ? html`<p class="error" role="alert">${notice}</p>` : nothing}
      ${notice && this.text !== '' ? this.standsIn('') : nothing}
      ${said ? html`<p role="status">${said}</p>` : nothing}
      ${read ? this.arrived(read) : nothing}`;
  }
}

customElements.define('own-catalogue', OwnCatalogue);
