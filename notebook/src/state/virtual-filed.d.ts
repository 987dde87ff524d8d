/** Made of the folder of cases when the page is built; see vite.config.ts. */
declare module 'virtual:filed' {
  type Loaded<T> = () => Promise<{ readonly default: T }>;
  const topics: Readonly<Record<string, Loaded<Readonly<Record<string, Loaded<string>>>>>>;
  export default topics;
}
