export function changesOf(root: string, folder: string): string;
export function layBeside(root: string, packages: readonly string[]): void;
