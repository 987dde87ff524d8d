export const flags: string[];
