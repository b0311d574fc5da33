// The text component itself, in Rungbook's colors.
import {
  EditorState, EditorView, keymap, lineNumbers, highlightActiveLine, highlightActiveLineGutter, drawSelection, highlightSpecialChars,
  defaultKeymap, history, historyKeymap, autocompletion, completionKeymap, lintGutter, lintKeymap, search, searchKeymap,
  syntaxHighlighting, HighlightStyle, LanguageSupport, markdownLanguage, insertNewlineContinueMarkup, deleteMarkupBackward, tags
} from "../vendor/codemirror.js";

const colors = syntaxHighlighting(HighlightStyle.define([
  { tag: tags.heading, fontWeight: "700", color: "var(--ink)" },
  { tag: tags.strong, fontWeight: "700" },
  { tag: tags.emphasis, fontStyle: "italic" },
  { tag: [tags.link, tags.url], color: "var(--common)" },
  { tag: tags.monospace, color: "var(--hot)" },
  { tag: [tags.processingInstruction, tags.meta, tags.contentSeparator], color: "var(--quiet)" }
]));

const look = EditorView.theme({
  "&": { backgroundColor: "var(--face)", color: "var(--ink)", height: "100%" },
  "&.cm-focused": { outline: "3px solid var(--common)" },
  ".cm-scroller": { fontFamily: "var(--mono)", fontSize: "1rem", lineHeight: "1.6" },
  ".cm-content": { caretColor: "var(--ink)", padding: "0.5rem 0 40vh" },
  ".cm-cursor": { borderLeftColor: "var(--ink)", borderLeftWidth: "2px" },
  ".cm-gutters": { backgroundColor: "var(--paper)", color: "var(--quiet)", borderRight: "1px solid var(--line)" },
  ".cm-activeLine, .cm-activeLineGutter": { backgroundColor: "var(--shade)" },
  "&.cm-focused > .cm-scroller > .cm-selectionLayer .cm-selectionBackground, .cm-selectionBackground": { backgroundColor: "var(--added-strong)" },
  ".cm-tooltip": { backgroundColor: "var(--face)", color: "var(--ink)", border: "2px solid var(--ink)" },
  ".cm-tooltip-autocomplete > ul > li": { padding: "0.5rem 0.75rem", minHeight: "44px", lineHeight: "1.4" },
  ".cm-tooltip-autocomplete > ul > li[aria-selected]": { backgroundColor: "var(--ink)", color: "var(--paper)" },
  ".cm-completionDetail": { color: "inherit", fontStyle: "normal", marginLeft: "1rem" },
  ".cm-diagnostic": { whiteSpace: "pre-wrap", maxWidth: "34rem", padding: "0.5rem 0.75rem" },
  ".cm-panels": { backgroundColor: "var(--paper)", color: "var(--ink)" },
  ".cm-panel.cm-search": { padding: "0.5rem", fontSize: "1rem" },
  ".cm-textfield, .cm-button": { backgroundColor: "var(--face)", backgroundImage: "none", color: "var(--ink)", border: "2px solid var(--ink)", minHeight: "44px", fontSize: "1rem" }
});

/** Puts the component in the place of the text area. */
export function textEditor({ area, path, words, nonce, changed, moved, save }) {
  const place = document.createElement("div");
  place.className = "textplace";
  area.replaceWith(place);
  return new EditorView({
    parent: place,
    state: EditorState.create({ doc: area.value, extensions: [
      EditorView.cspNonce.of(nonce),
      EditorView.contentAttributes.of({ "aria-label": `Text of ${path}`, tabindex: "0", spellcheck: "true", autocapitalize: "sentences" }),
      EditorView.lineWrapping,
      lineNumbers(), highlightActiveLine(), highlightActiveLineGutter(), drawSelection(), highlightSpecialChars(),
      history(), search({ top: true }), lintGutter(),
      autocompletion({ override: [words.complete], icons: false, maxRenderedOptions: 60 }),
      new LanguageSupport(markdownLanguage), colors, look,
      keymap.of([
        { key: "Mod-s", preventDefault: true, run: () => { save(); return true; } },
        { key: "Enter", run: insertNewlineContinueMarkup },
        { key: "Backspace", run: deleteMarkupBackward },
        ...completionKeymap, ...lintKeymap, ...searchKeymap, ...historyKeymap, ...defaultKeymap
      ]),
      EditorView.updateListener.of(update => {
        if (update.docChanged) changed(update.view);
        else if (update.selectionSet) moved(update.view);
      })
    ] })
  });
}
