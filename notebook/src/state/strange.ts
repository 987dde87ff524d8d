/** Names that every object has, whatever is in it: nothing of ours is called so. */
export const isEveryObjects = (name: string): boolean => name in Object.prototype;

/** Whether any key of a value read from JSON, however deep, is a name that every object has. */
export function hasStrangeKey(value: unknown): boolean {
  const open: unknown[] = [value];
  for (let each = open.pop(); each !== undefined; each = open.pop()) {
    if (typeof each !== 'object' || each === null) continue;
    if (Object.keys(each).some(isEveryObjects)) return true;
    for (const inner of Object.values(each)) if (inner !== undefined) open.push(inner);
  }
  return false;
}
