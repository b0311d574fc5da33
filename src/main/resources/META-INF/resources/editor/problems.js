// Asks the server what is wrong, marks it in the text and lists it.
import { setDiagnostics } from "../vendor/codemirror.js";
import { makeFix } from "./fix.js";
import { later } from "./later.js";
import { showState } from "./state.js";

const LEVELS = { error: "error", warning: "warning", note: "info" };

export function problemList(path, list, count) {
  let choose = () => {};
  const wait = later(120);

  function mark(view, problems) {
    const most = view.state.doc.length;
    const own = problems.filter(problem => problem.file === path);
    view.dispatch(setDiagnostics(view.state, own.map(problem => ({
      from: Math.min(problem.from, most), to: Math.min(Math.max(problem.to, problem.from), most),
      severity: LEVELS[problem.severity], source: problem.code,
      message: [problem.says, problem.shownBy && `Shown by ${problem.shownBy}`, problem.hint].filter(Boolean).join("\n")
    }))));
  }

  function write(view, problems, silenced) {
    count.textContent = `(${problems.length || "none"}${silenced ? `, ${silenced} silenced` : ""})`;
    list.replaceChildren(...(problems.length ? [listOf(view, problems)] : [paragraph(`No problems in the text.${isNewTree() ? " The tree can become a pack once it is saved." : ""}`)]));
  }

  // the page's own address is none until the first save
  function isNewTree() {
    const { tree, view } = document.getElementById("editor").dataset;
    return tree === "true" && view === "/";
  }

  function listOf(view, problems) {
    const items = document.createElement("ul");
    items.className = "problems";
    items.append(...problems.map(problem => item(view, problem)));
    return items;
  }

  function item(view, problem) {
    const row = document.createElement("li");
    const letter = document.createElement("span");
    letter.className = "letter square";
    letter.textContent = problem.severity[0].toUpperCase();
    letter.setAttribute("aria-hidden", "true");
    const place = document.createElement("button");
    place.type = "button";
    place.className = "place";
    place.textContent = problem.file === path ? `line ${problem.line}` : `${problem.file}:${problem.line}`;
    place.disabled = problem.file !== path;
    place.addEventListener("click", () => choose(problem.from));
    const says = paragraph(problem.says);
    says.prepend(Object.assign(document.createElement("strong"), { textContent: `${problem.severity}: ` }));
    row.append(letter, place, says);
    if (problem.shownBy) row.append(paragraph(`Shown by ${problem.shownBy}`, "quiet"));
    row.append(paragraph(problem.hint));
    if (problem.edits.length && problem.file === path) row.append(fixButton(view, problem));
    return row;
  }

  // its places are those of the text that was checked; in a newer one it does nothing, and the next answer brings another
  function fixButton(view, problem) {
    const checked = view.state.doc;
    const fix = Object.assign(document.createElement("button"), { type: "button", className: "fix" });
    const label = document.createElement("span"); // the button sets each of its children apart
    label.append(...words(problem.fix[0].toUpperCase() + problem.fix.slice(1)));
    fix.append(label);
    fix.addEventListener("click", () => view.state.doc.eq(checked) && makeFix(view, problem.edits));
    return fix;
  }

  function paragraph(text, style = "") {
    const element = Object.assign(document.createElement("p"), { className: style });
    element.append(...words(text));
    return element;
  }

  // words in backticks are the text's own, and set as such
  function words(text) {
    return text.split("`").map((piece, i) => i % 2 ? Object.assign(document.createElement("code"), { textContent: piece }) : piece);
  }

  return {
    onChoose(action) { choose = action; },
    check: view => wait(async signal => {
      const text = view.state.doc.toString();
      const answer = await fetch("/api/check", {
        method: "POST", headers: { "Content-Type": "application/json" }, body: JSON.stringify({ path, text }), signal
      });
      const body = await answer.json();
      if (!answer.ok) {
        list.replaceChildren(paragraph(`${body.detail}; ${body.hint}`));
      } else if (view.state.doc.toString() === text) {
        mark(view, body.problems);
        write(view, body.problems, body.silenced);
        showState(body.state);
      }
    })
  };
}
