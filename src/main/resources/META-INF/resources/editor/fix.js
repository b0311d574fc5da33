// Makes a known fix in the text, as one step that can be undone.
import { EditorView } from "../vendor/codemirror.js";

export function makeFix(view, edits) {
  view.dispatch({
    changes: edits.map(({ from, to, text }) => ({ from, to, insert: text })),
    selection: { anchor: edits[0].from },
    effects: EditorView.scrollIntoView(edits[0].from, { y: "center" }),
    userEvent: "input.mend"
  });
  view.focus();
}
