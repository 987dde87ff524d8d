/**
 * An object whose parts are made when somebody first reads them, and kept: what judges thousands of
 * times reads a verdict and none of its words.
 */
export function whenRead<T extends object>(makers: { readonly [K in keyof T]: () => T[K] }): T;
export function whenRead(makers: Readonly<Record<string, () => unknown>>): object {
  const made: Record<string, unknown> = {};
  for (const [name, make] of Object.entries(makers)) onceRead(made, name, make);
  return made;
}

/** Has one part of an object made when somebody first reads it. */
export function onceRead<T extends object, K extends string, V>(
  of: T,
  name: K,
  make: () => V,
): asserts of is T & { readonly [P in K]: V } {
  Object.defineProperty(of, name, {
    enumerable: true,
    configurable: true,
    get() {
      const value = make();
      Object.defineProperty(of, name, { enumerable: true, configurable: true, value });
      return value;
    },
  });
}
