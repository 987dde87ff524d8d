export const caps: {
  readonly message: number;
  readonly lesson: number;
  readonly windows: number;
  readonly burst: number;
  readonly wrongCodes: number;
  readonly toJoin: number;
  readonly why: number;
};
export function joinCode(draw: (most: number) => number): string;
export function allowance(most: number, every: number, now?: () => number): () => boolean;
export function guessIn(
  data: unknown,
): { readonly guess: string; readonly why: string } | undefined;
