// The page takes the editor from its import map; the editor's own types are no part of this check.
declare module "@codemirror/*";
declare module "@codemirror/autocomplete" {
  export type CompletionContext = any;
  export const autocompletion: any, closeCompletion: any, completionKeymap: any, completionStatus: any, snippet: any, startCompletion: any;
}
