export function seedRows(name: string): readonly Readonly<Record<string, string>>[];
export function yardFromSeeds(): unknown;
