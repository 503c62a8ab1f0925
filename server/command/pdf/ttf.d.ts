/** The bundler hands a font over as its bytes. */
declare module '*.ttf' {
  const bytes: Uint8Array;
  export default bytes;
}
