/** Made of seeds/loads.csv when the page is built; see vite.config.ts. */
declare module 'virtual:loads' {
  const rows: readonly {
    readonly name: string;
    readonly list: string;
    readonly label: string;
    readonly weight: string;
    readonly ahead: string;
  }[];
  export default rows;
}
