/** What lib/lines uses of @observablehq/runtime 6.0.1, which publishes no types. */
declare module "@observablehq/runtime" {
  export interface Observer {
    pending?(): void;
    fulfilled?(value: unknown): void;
    rejected?(error: unknown): void;
  }
  export interface Variable {
    define(name: string, inputs: readonly string[], definition: (...inputs: readonly unknown[]) => unknown): this;
    delete(): void;
  }
  export interface Module {
    variable(observer: Observer): Variable;
  }
  export class Runtime {
    constructor(builtins: null, global: (name: string) => never);
    module(): Module;
    dispose(): void;
    _computeSoon(): Promise<void>;
    _computeNow(): Promise<void>;
    readonly _disposed: boolean;
  }
}
