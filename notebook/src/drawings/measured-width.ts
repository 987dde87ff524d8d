import type { ReactiveController, ReactiveControllerHost } from 'lit';

/** What lettering measures in a drawing, in its own units; on a page that says nothing else, pixels. */
const usual = 12;

/**
 * The room an element has on the page, in units of the drawing, so that text in it keeps its size. A
 * page that is read from afar says with `--lettering` how many pixels its text shall have, and gives
 * the drawing a height too.
 */
export class MeasuredWidth implements ReactiveController {
  private observer: ResizeObserver | undefined;
  private within = 0;
  width: number;
  /** Where the page gives it a height. */
  height: number | undefined;

  constructor(
    private readonly host: ReactiveControllerHost & Element,
    first: number,
  ) {
    this.width = first;
    host.addController(this);
  }

  hostConnected(): void {
    this.observer = new ResizeObserver((entries) => {
      const own = entries.find(({ target }) => target === this.host);
      if (own) this.within = own.contentRect.width;
      this.measure();
    });
    this.observer.observe(this.host);
  }

  /** What stands below the picture may take a line more or less of its height. */
  hostUpdated(): void {
    const { sheet } = this;
    if (sheet && this.lettering > 0) this.observer?.observe(sheet);
  }

  hostDisconnected(): void {
    this.observer?.disconnect();
  }

  private get lettering(): number {
    return Number(getComputedStyle(this.host).getPropertyValue('--lettering'));
  }

  private get sheet(): Element | null {
    return this.host.querySelector('.drawing > svg');
  }

  private measure(): void {
    const { lettering, sheet } = this;
    const box = lettering > 0 ? sheet?.getBoundingClientRect() : undefined;
    const unit = lettering / usual;
    const width = Math.round(box ? box.width / unit : this.within);
    const height = box && Math.round(box.height / unit);
    if (width === 0 || (width === this.width && height === this.height)) return;
    this.width = width;
    this.height = height;
    this.host.requestUpdate();
  }
}
