// What Rungbook's editor uses of CodeMirror 6; build.sh bundles it into one static file.
export { EditorState } from "@codemirror/state";
export {
  EditorView, keymap, lineNumbers, highlightActiveLine, highlightActiveLineGutter,
  drawSelection, highlightSpecialChars
} from "@codemirror/view";
export { defaultKeymap, history, historyKeymap, undo, redo } from "@codemirror/commands";
export { autocompletion, completionKeymap, startCompletion } from "@codemirror/autocomplete";
export { setDiagnostics, lintGutter, lintKeymap } from "@codemirror/lint";
export { search, searchKeymap, openSearchPanel } from "@codemirror/search";
export { syntaxHighlighting, HighlightStyle, LanguageSupport } from "@codemirror/language";
export { markdownLanguage, insertNewlineContinueMarkup, deleteMarkupBackward } from "@codemirror/lang-markdown";
export { tags } from "@lezer/highlight";
