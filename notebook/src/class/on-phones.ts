import { html, nothing, type PropertyValues } from 'lit';
import { PlainElement } from '../elements/plain-element';
import '../elements/qr-code';
import { pageAddress } from '../elements/share-case';
import type { Group } from '../state/group';
import { CodeShown, Committed } from './class-case-events';
import { mostByCode } from './guess-code';
import { packClass } from './passed-on';
import { guessByCode } from './take-code';

/** What a code that is scanned from a screen may carry, in characters. */
const mostForCode = 1_500;

/** An address by which a machine means itself. */
const isHereAlone = (host: string): boolean => /^(localhost|127\..*|\[::1\])$/.test(host);

/** Whether phones are asked for from here on. */
export class PhonesOpened extends CustomEvent<boolean> {
  constructor(open: boolean) {
    super('phones-opened', { detail: open, bubbles: true });
  }
}

/** Learners guess on phones of their own: a code opens the class there, and their guesses come back as codes. */
export class OnPhones extends PlainElement {
  static override properties = {
    group: { attribute: false },
    open: { attribute: false },
    href: { state: true },
    wrong: { state: true },
    taken: { state: true },
    onWall: { state: true },
  };
  declare group: Group;
  declare open: boolean;
  declare href: string | undefined;
  declare wrong: string;
  declare taken: string;
  /** Whether the code stands on the wall, in the place of the case. */
  declare onWall: boolean;
  private packedOf = '';

  constructor() {
    super();
    this.wrong = '';
    this.taken = '';
    this.onWall = false;
  }

  /** Whoever came late stands in the code, too; a wall that shows one shows the new one. */
  protected override updated(changed: PropertyValues<this>): void {
    if (this.open && changed.has('group')) void this.pack();
  }

  private show(event: Event): void {
    if (!(event.target instanceof HTMLDetailsElement)) return;
    const { open } = event.target;
    this.dispatchEvent(new PhonesOpened(open));
    if (open) void this.pack();
    else this.putOnWall(false);
  }

  private async pack(): Promise<void> {
    const { group } = this;
    const of = `${group.id} ${group.learners.join()}`;
    if (of === this.packedOf) return;
    this.packedOf = of;
    const packed = await packClass(group);
    if (of !== this.packedOf) return;
    this.href = `${pageAddress()}#/class/join/${packed}`;
    if (this.onWall) this.putOnWall(true);
  }

  private putOnWall(is: boolean): void {
    if (!is && !this.onWall) return;
    this.onWall = is;
    this.dispatchEvent(new CodeShown(is ? this.href : undefined));
  }

  private take(event: Event): void {
    event.preventDefault();
    const field = this.querySelector<HTMLInputElement>('#guess-code');
    if (!field) return;
    const why = this.querySelector<HTMLInputElement>('#guess-why');
    const read = guessByCode(this.group, field.value, why?.value.trim() ?? '');
    this.wrong = typeof read === 'string' ? read : '';
    if (typeof read !== 'string') {
      this.taken = `${read.learner}’s guess is noted.`;
      field.value = '';
      if (why) why.value = '';
      this.dispatchEvent(new Committed(read.learner, read.said, read.reason));
    }
    field.focus();
  }

  private link(href: string) {
    const { learners, cases } = this.group;
    if (learners.length > mostByCode || cases.length > mostByCode) {
      return html`<p>A class of more than ${mostByCode} learners or cases is too long for codes; go around with one device.</p>`;
    }
    return html`${
      href.length <= mostForCode
        ? html`<qr-code .text=${href} .label=${'Code that opens this class on a learner’s phone'}></qr-code>
          <div class="acts"><button aria-pressed=${this.onWall ? 'true' : 'false'} @click=${() => this.putOnWall(!this.onWall)}>The code on the wall</button></div>`
        : html`<p>The class holds cases of your own and is too long for a code to scan; send the link.</p>`
    }
      ${
        isHereAlone(new URL(href).hostname)
          ? html`<p class="notice">A phone cannot open this code: its address, “${new URL(href).hostname}”, is this machine alone. Let the learners in over the shop’s network, as above, where that is offered; or open this page at an address that phones reach, and begin the class there.</p>`
          : nothing
      }
      <p class="small"><a href=${href}>The link that opens this class</a> does the same. It works without a network once the page has been there.</p>`;
  }

  protected override render() {
    const { href, wrong, taken } = this;
    return html`<details class="noprint" ?open=${this.open} @toggle=${this.show}>
      <summary>Learners’ phones, by codes read out or scanned</summary>
      ${href ? this.link(href) : nothing}
      <form class="turn" @submit=${this.take} novalidate>
        <label>A code that was read out
          <input id="guess-code" autocomplete="off" autocapitalize="characters" spellcheck="false" aria-invalid=${wrong ? 'true' : 'false'} aria-describedby="guess-code-wrong" />
        </label>
        <label>Their reason <input id="guess-why" autocomplete="off" maxlength="300" /></label>
        <button>Note the guess</button>
        <p class="error" id="guess-code-wrong" role="alert">${wrong}</p>
      </form>
      <p role="status">${taken}</p>
    </details>`;
  }
}

customElements.define('on-phones', OnPhones);
