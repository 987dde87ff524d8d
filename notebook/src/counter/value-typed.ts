/** A field holds another value, as the case is to say it. */
export class ValueTyped extends CustomEvent<{ text: string }> {
  constructor(text: string) {
    super('value-typed', { detail: { text }, bubbles: true });
  }
}

/** Enter was pressed in a field that holds nothing to be mended: on to the next. */
export class WentOn extends Event {
  constructor() {
    super('went-on', { bubbles: true });
  }
}
