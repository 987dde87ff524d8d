import { LitElement } from 'lit';

/** An element drawn into the page itself, so that one style sheet and one outline serve all. */
export class PlainElement extends LitElement {
  protected override createRenderRoot(): this {
    return this;
  }
}
