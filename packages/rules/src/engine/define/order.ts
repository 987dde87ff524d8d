/** The three numbers of a semantic version; undefined when it is not one (`1.10.0`). */
export function numbersOf(version: string): readonly number[] | undefined {
  return /^\d{1,9}\.\d{1,9}\.\d{1,9}$/.test(version) ? version.split('.').map(Number) : undefined;
}

export const isVersion = (text: string): boolean => numbersOf(text) !== undefined;

/** Below zero when `a` is the older of two versions, above when it is the newer, else 0. */
export function compareVersions(a: string, b: string): number {
  const [left, right] = [numbersOf(a) ?? [], numbersOf(b) ?? []];
  for (let i = 0; i < 3; i += 1) {
    const apart = (left[i] ?? -1) - (right[i] ?? -1);
    if (apart !== 0) return apart;
  }
  return 0;
}
