// Keeps what is typed in this browser until it is saved, so that a closed window or a stopped server loses nothing.
import { later } from "./later.js";

/** @param isNew whether nothing was saved under the path yet */
export function keeper(path, say, isNew) {
  const key = `rungbook:${path}`;
  const wait = later(400);
  const store = action => { try { return action(localStorage); } catch { return null; } };

  return {
    changed: view => wait(() => store(kept => kept.setItem(key, view.state.doc.toString()))),
    forget: () => wait(() => store(kept => kept.removeItem(key))),
    /** Puts back a text that was typed but never saved; undo brings the other one again. */
    offer(view) {
      const kept = store(storage => storage.getItem(key));
      if (kept === null || kept === view.state.doc.toString()) return;
      view.dispatch({ changes: { from: 0, to: view.state.doc.length, insert: kept } });
      say(`This text was typed here earlier and not saved. Undo brings back ${isNew ? "the one to begin with" : "the saved one"}.`);
    }
  };
}
