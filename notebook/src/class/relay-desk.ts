import { html, nothing } from 'lit';
import { PlainElement } from '../elements/plain-element';
import '../elements/qr-code';
import { type Group, isOpen } from '../state/group';
import { Committed, PhonesInvited, TakenBack } from './class-case-events';
import { type Heard, lineTo } from './line';
import { packClass } from './passed-on';
import { guessByCode } from './take-code';

const place = 'tarebook.let-in';

/** The class whose phones were let in from this tab; '' where none were. */
function wasOpen(): string {
  try {
    return sessionStorage.getItem(place) ?? '';
  } catch {
    return '';
  }
}

function noteOpen(id: string): void {
  try {
    sessionStorage.setItem(place, id);
  } catch {
    // Where the device keeps nothing, a window that is opened anew says nothing of it.
  }
}

type Open = { readonly url: string; readonly code: string };

/** Where the trainer turns it on, guesses come from the learners' phones at once, while the lesson runs. */
export class RelayDesk extends PlainElement {
  static override properties = {
    group: { attribute: false },
    addresses: { state: true },
    on: { state: true },
    count: { state: true },
    told: { state: true },
  };
  declare group: Group;
  declare addresses: readonly string[] | undefined;
  declare on: Open | undefined;
  declare count: number;
  declare told: string;
  private line: ReturnType<typeof lineTo> | undefined;
  /** The case at which it was looked at last. */
  private folded: number | undefined;
  /** The lesson as it was handed out last. */
  private handed = '';

  constructor() {
    super();
    this.count = 0;
    this.told = '';
  }

  override disconnectedCallback(): void {
    this.off();
    super.disconnectedCallback();
  }

  /** Phones follow the case that is on; whoever came late finds a name there. */
  protected override updated(changed: Map<PropertyKey, unknown>): void {
    if (!changed.has('group')) return;
    if (this.on) void this.hand();
    // Whoever was to join has by the next case; it stays in sight on the wall.
    const details = this.querySelector('details');
    if (details && this.on && this.folded !== this.group.at) details.open = false;
    this.folded = this.group.at;
  }

  /** Which case is on, and the lesson where it is another one than phones have. */
  private async hand(): Promise<void> {
    this.line?.say({ kind: 'at', at: this.group.at, open: isOpen(this.group) });
    const lesson = await packClass(this.group);
    if (lesson === this.handed) return;
    this.handed = lesson;
    this.line?.say({ kind: 'lesson', lesson });
  }

  private hrefOf({ url, code }: Open): string {
    return `${url}#/class/join/-/at-once/${code}`;
  }

  /** The wall shows how to join for as long as anybody may. */
  private invite(): void {
    const { on, count } = this;
    if (!on) {
      this.dispatchEvent(new PhonesInvited(undefined));
      return;
    }
    const address = `${on.url.replace('http://', '')}join`;
    const how = { address, code: on.code, href: this.hrefOf(on), joined: count };
    this.dispatchEvent(new PhonesInvited(how));
  }

  private look(): void {
    this.line = lineTo(
      'trainer',
      (message) => this.hear(message),
      (wasOpen) => {
        this.told = wasOpen
          ? 'The line is closed; guesses still come as codes.'
          : 'This page was not started with “npm start”, so it has no line of its own; guesses come as codes, as below.';
        this.forget();
      },
    );
  }

  private hear({ kind, addresses, url, code, count, says, from, ...told }: Heard): void {
    if (kind === 'addresses' && Array.isArray(addresses)) this.addresses = addresses.map(String);
    if (kind === 'refused') this.told = String(says);
    if (kind === 'count') {
      this.count = Number(count);
      this.invite();
    }
    if (kind === 'open') {
      this.on = { url: String(url), code: String(code) };
      this.told = '';
      noteOpen(this.group.id);
      void this.hand();
      this.invite();
    }
    if (kind !== 'guess') return;
    const isAgain = told.again === true;
    const read = guessByCode(this.group, String(told.guess), String(told.why ?? ''), isAgain);
    const taken = typeof read !== 'string';
    const reply = taken ? `${read.learner}, your guess is noted.` : read;
    // Before the working opens a mistyped guess gives way to the one said anew.
    if (taken && isAgain) this.dispatchEvent(new TakenBack(read.learner));
    if (taken) this.dispatchEvent(new Committed(read.learner, read.said, read.reason));
    this.line?.say({ kind: 'reply', to: from, taken, says: reply });
  }

  /** Whoever opens this wants to know where phones can come in. */
  private shown({ target }: Event): void {
    const isOpen = target instanceof HTMLDetailsElement && target.open;
    if (isOpen && !this.line && !this.on) this.look();
  }

  private forget(): void {
    this.line = undefined;
    this.addresses = undefined;
    this.on = undefined;
    this.count = 0;
    this.handed = '';
    this.invite();
  }

  /** The class is over, and not only out of sight: phones are told before the line closes. */
  over(): void {
    noteOpen('');
    this.line?.say({ kind: 'over' });
  }

  private turnOff = (): void => {
    noteOpen('');
    this.off();
  };

  private off(): void {
    this.line?.close();
    this.forget();
  }

  private choice(addresses: readonly string[]) {
    const at = (address: string, words: string) =>
      html`<button @click=${() => this.line?.say({ kind: 'open', address })}>${words}</button>`;
    const [own = '', ...shop] = addresses;
    return html`<p>The learners’ phones come in over the shop’s network while the lesson runs; only who somebody is and what they guess is taken, and nothing is kept.</p>
      <div class="acts">
        ${shop.map((each) => at(each, `Let the learners in at ${each}`))}
        ${at(own, 'Only try it, on this machine alone')}
      </div>
      ${shop.length === 0 ? html`<p class="small">This machine is in no network that a phone could reach.</p>` : nothing}`;
  }

  /** A window that is read anew has lost its phones, and says so where they were let in. */
  protected override firstUpdated(): void {
    if (wasOpen() !== this.group.id) return;
    const details = this.querySelector('details');
    if (details) details.open = true;
    this.told =
      'This window was opened anew, so the phones are cut off. Let the learners in again; the join code is a new one, and what they sent is here.';
  }

  private let(on: Open) {
    const href = this.hrefOf(on);
    return html`<div class="let"><qr-code .text=${href} .label=${'Code that opens this class on a learner’s phone'}></qr-code>
      <div><p>Join code: <strong class="read-out num">${on.code}</strong> <span role="status">${this.count} ${this.count === 1 ? 'phone has' : 'phones have'} joined.</span></p>
      <p>Typed on a phone: <strong class="num">${on.url}join</strong>. The wall shows address and code for as long as anybody may join.</p>
      <p class="small"><a href=${href}>The link for the learners</a> has the join code in it. It is served until the lesson ends, takes names and answers alone and keeps nothing.</p>
      <button @click=${this.turnOff}>Let nobody in any more</button></div></div>`;
  }

  protected override render() {
    const { addresses, on, told, count } = this;
    return html`<details class="noprint" id="at-once" @toggle=${this.shown}>
      <summary>Learners’ phones, at once over the shop’s network${
        on ? html`: join code ${on.code}, ${count} joined` : nothing
      }</summary>
      ${
        on
          ? this.let(on)
          : addresses
            ? this.choice(addresses)
            : html`<p>Started with “npm start”, this page takes guesses from the learners’ phones at once.</p>
              ${
                told
                  ? html`<button @click=${() => {
                      this.told = '';
                      this.look();
                    }}>Look once more</button>`
                  : nothing
              }`
      }
      <p role="status">${told || nothing}</p>
    </details>`;
  }
}

customElements.define('relay-desk', RelayDesk);
