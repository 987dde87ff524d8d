/** Made of the folder of cases when the page is built; see build/filed-cases.ts. */
declare module 'virtual:filed' {
  type Case = {
    readonly text: string;
    /** As it is read; a note is read by its page. */
    readonly document: import('./reading').Read | undefined;
  };
  type Cases = Readonly<Record<string, () => Promise<Case>>>;
  const topics: Readonly<Record<string, () => Promise<{ readonly default: Cases }>>>;
  export default topics;
}

/** Every topic in the order of the rules. */
declare module 'virtual:filed-topics' {
  const topics: readonly {
    readonly id: string;
    readonly title: string;
    readonly question: string;
    /** What a blank case of it asks. */
    readonly asks: readonly string[];
  }[];
  export default topics;
}

/** By topic its cases, and how they came out when the page was built. */
declare module 'virtual:filed-list' {
  /** Answers that are no calculation. */
  export const notes: readonly { readonly name: string; readonly title: string }[];
  const list: readonly {
    readonly id: string;
    readonly cases: readonly {
      readonly name: string;
      readonly title: string;
      readonly asked: string;
      readonly level: string;
      readonly stands: import('@tarebook/rules/engine').State;
      readonly words: string;
    }[];
  }[];
  export default list;
}

/** By topic the words of every case, and the question it is filed for. */
declare module 'virtual:filed-words' {
  const words: Readonly<
    Record<
      string,
      {
        readonly cases: Readonly<Record<string, string>>;
        readonly asked: Readonly<Record<string, string>>;
      }
    >
  >;
  export default words;
}
