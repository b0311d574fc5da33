// Shows the step under the cursor as the tree's page will, and turns the tabs beside the text.
import { later } from "./later.js";

export function previewer(path, panel) {
  const wait = later(150);
  return {
    show(view) {
      if (panel.hidden) return;
      wait(async signal => {
        const line = view.state.doc.lineAt(view.state.selection.main.head).number;
        const body = JSON.stringify({ path, text: view.state.doc.toString(), line });
        const answer = await fetch("/api/preview", { method: "POST", headers: { "Content-Type": "application/json" }, body, signal });
        if (answer.ok) panel.innerHTML = (await answer.json()).html; // rendered and made safe by the server, as on the tree's page
      });
    }
  };
}

/** Tabs as WAI-ARIA describes them: arrows move between them, and only the chosen one is in the tab order. */
export function tabs(list, changed) {
  const all = [...list.querySelectorAll("[role=tab]")];
  const choose = chosen => {
    for (const tab of all) {
      tab.setAttribute("aria-selected", String(tab === chosen));
      tab.tabIndex = tab === chosen ? 0 : -1;
      document.getElementById(tab.getAttribute("aria-controls")).hidden = tab !== chosen;
    }
    changed();
  };
  all.forEach((tab, i) => {
    tab.addEventListener("click", () => choose(tab));
    tab.addEventListener("keydown", event => {
      const step = { ArrowRight: 1, ArrowLeft: -1 }[event.key];
      if (!step) return;
      const next = all[(i + step + all.length) % all.length];
      next.focus();
      choose(next);
    });
  });
}
