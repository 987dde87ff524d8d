export type SourceClass = 'published' | 'common-practice' | 'from-memory' | 'house' | 'invented';

export type Source = {
  readonly class: SourceClass;
  /** The standard, handbook or custom, as one would cite it. */
  readonly cite: string;
  readonly section?: string;
  readonly note?: string;
};
