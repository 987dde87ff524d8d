/**
 * Stands in for the path language that json-rules-engine would load: conditions never look inside a
 * value, so the package that does is left out of what we ship.
 */
export function JSONPath(): never {
  throw new Error('Conditions may not look inside a value.');
}
