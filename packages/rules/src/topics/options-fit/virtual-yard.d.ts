/** Made of seeds/*.csv by whatever builds or tests this; see tests/run/catalogue.mjs. */
declare module 'virtual:yard' {
  export const yard: import('../../engine/define/catalogue').Catalogue;
}
