/** Somebody looks at what stands beside vehicles and trailers: it is to be read. */
export class BesideWanted extends CustomEvent<undefined> {
  constructor() {
    super('beside-wanted', { bubbles: true });
  }
}
