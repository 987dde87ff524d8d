import type { ReactiveController, ReactiveControllerHost } from 'lit';

/** Whether what is told and what comes of it stand one below the other. */
export class NarrowScreen implements ReactiveController {
  private readonly query = matchMedia('screen and (max-width: 59.99rem)');

  constructor(private readonly host: ReactiveControllerHost) {
    host.addController(this);
  }

  get is(): boolean {
    return this.query.matches;
  }

  private turned = (): void => this.host.requestUpdate();

  hostConnected(): void {
    this.query.addEventListener('change', this.turned);
  }

  hostDisconnected(): void {
    this.query.removeEventListener('change', this.turned);
  }
}
