import type { ReactiveController, ReactiveControllerHost } from 'lit';

/** The width an element has on the page, so that text in a drawing keeps its size. */
export class MeasuredWidth implements ReactiveController {
  private observer: ResizeObserver | undefined;
  /** Pixels. */
  width: number;

  constructor(
    private readonly host: ReactiveControllerHost & Element,
    first: number,
  ) {
    this.width = first;
    host.addController(this);
  }

  hostConnected(): void {
    this.observer = new ResizeObserver(([entry]) => {
      const width = Math.round(entry?.contentRect.width ?? 0);
      if (width === 0 || width === this.width) return;
      this.width = width;
      this.host.requestUpdate();
    });
    this.observer.observe(this.host);
  }

  hostDisconnected(): void {
    this.observer?.disconnect();
  }
}
