/** What these checks use of a package that comes without types. */
declare module '@lhncbc/ucum-lhc' {
  type Converted = { readonly status: string; readonly toVal: number | null };
  type Utils = { convertUnitTo(from: string, value: number, to: string): Converted };
  const ucum: { readonly UcumLhcUtils: { getInstance(): Utils } };
  export default ucum;
}
