/** Topics of one's own that the page was built with: build/own-topics.ts. */
declare module 'virtual:own-topics' {
  const loaders: Readonly<Record<string, () => Promise<Readonly<Record<string, unknown>>>>>;
  export default loaders;
}
