import type { UnitSystem } from '@tarebook/rules/quantity';
import { html } from 'lit';
import '../class/class.css';
import '../class/join-view';
import '../class/learners-view';
import { takeScanned } from '../class/scanned-guess';
import '../class/trainer-view';
import { PlainElement } from '../elements/plain-element';

function decoded(part: string): string {
  try {
    return decodeURIComponent(part);
  } catch {
    return '';
  }
}

/** What a trainer seldom needs in the same hour comes when it is asked for. */
const later: Readonly<Record<string, () => Promise<unknown>>> = {
  practice: () => import('../practice/practice-view'),
  weeks: () => import('../practice/weeks-view'),
  write: () => import('../practice/author-view'),
};

/** Cases walked with learners, each predicting before the working opens. */
export class ClassPage extends PlainElement {
  static override properties = {
    view: { attribute: false },
    system: { attribute: false },
    scanned: { state: true },
    unread: { state: true },
  };
  /** 'learners': a second screen; 'join': a learner's own phone; 'guess': one scanned from there. */
  declare view: string;
  declare system: UnitSystem;
  /** What became of a guess that was scanned. */
  declare scanned: string;
  /** Whether the part that is wanted could not be had. */
  declare unread: boolean;

  constructor() {
    super();
    this.scanned = '';
    this.unread = false;
  }

  protected override firstUpdated(): void {
    if (this.view === 'guess') void this.scan();
    later[this.view]?.().catch(() => {
      this.unread = true;
    });
  }

  private async scan(): Promise<void> {
    const [, , , id = '', code = '', why = ''] = location.hash.split('/').map(decoded);
    this.scanned = await takeScanned(id, code, why);
  }

  protected override render() {
    const { view, system } = this;
    if (this.unread) {
      return html`<h1>Class</h1><p class="notice" role="alert">This part of the page could not be read: the network is away, or a newer page has taken its place.</p>`;
    }
    switch (view) {
      case 'learners':
        return html`<learners-view .system=${system}></learners-view>`;
      case 'join':
        return html`<join-view
          .packed=${location.hash.split('/')[3] ?? ''}
          .atOnce=${location.hash.split('/')[4] === 'at-once'}
          .scanned=${location.hash.split('/')[5] ?? ''}
          .system=${system}
        ></join-view>`;
      case 'guess':
        return html`<h1>Class</h1><p class="notice" role="status">${this.scanned || 'Taking the guess down …'}</p>`;
      case 'practice':
        return html`<practice-view .system=${system}></practice-view>`;
      case 'weeks':
        return html`<weeks-view></weeks-view>`;
      case 'write':
        return html`<author-view></author-view>`;
      default:
        return html`<trainer-view .system=${system}></trainer-view>`;
    }
  }
}

customElements.define('class-page', ClassPage);
