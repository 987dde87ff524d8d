import type { Plugin as EsbuildPlugin } from 'esbuild';
import type { Plugin } from 'vite';

export function seedRows(name: string): readonly Readonly<Record<string, string>>[];
export function yardForVite(): Plugin;
export const yardForEsbuild: EsbuildPlugin;
