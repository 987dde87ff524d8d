import type { CaseDocument } from '@tarebook/casebook';
import type { namesIn, parseFormula, Topic } from '@tarebook/rules/engine';

export type Place = { readonly file: string; readonly line: number };
export type Around = {
  readonly places: readonly Place[];
  readonly checks: readonly Place[];
  /** Where it has no check itself: what stands on it and has. */
  readonly through: readonly {
    readonly result: { readonly id: string };
    readonly checks: readonly Place[];
  }[];
  readonly derivations: readonly Place[];
  readonly cases: readonly (Place & { readonly title: string; readonly text: string })[];
  readonly said: readonly string[];
};
export type Found = {
  readonly topic: Topic;
  readonly rows: readonly {
    readonly result: { readonly kind: string; readonly id: string; readonly label: string };
    readonly around: Around;
  }[];
};

export function resultPages(from: {
  readonly root: string;
  readonly topics: readonly Topic[];
  readonly engine: {
    readonly namesIn: typeof namesIn;
    readonly parseFormula: typeof parseFormula;
  };
  readonly readCase: (text: string) => CaseDocument;
}): { readonly pages: ReadonlyMap<string, string>; readonly found: readonly Found[] };
