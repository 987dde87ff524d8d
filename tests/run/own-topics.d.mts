export function ownTopicsOf(file: string): Promise<string>;
export function topicsFile(file: string): string;
