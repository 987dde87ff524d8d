export function ownTopicsOf(file: string): Promise<string>;
