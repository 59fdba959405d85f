/** The parts of the engraver that pages use; the package brings no types of its own. */

declare module 'verovio/wasm' {
  const createModule: () => Promise<object>;
  export default createModule;
}

declare module 'verovio/esm' {
  export const LOG_OFF: number;
  /** Sets how much the engraver writes to standard error. */
  export function enableLog(level: number, module: object): void;
  export class VerovioToolkit {
    constructor(module: object);
    setOptions(options: { readonly [name: string]: string | number | boolean }): void;
    /** False when the data cannot be read. */
    loadData(data: string): boolean;
    getMEI(options: object): string;
    getPageCount(): number;
    /** `page` counts from 1. */
    renderToSVG(page: number): string;
  }
}
