/** Made of the rules of tow fit when the page is built; see build/kernel.ts. */
declare module 'virtual:kernel' {
  const kernel: import('@tarebook/sweep/kernels').Packed;
  export default kernel;
}
