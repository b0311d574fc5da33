// Puts a new step behind the one under the cursor, its heading chosen so that it can be typed over.
const STEPS = {
  check: "## New check\n\n```check\nmeasure: AC volts\nleads: \nat: \nexpect: 24 to 28 V\n```\n\nWhere the leads go.\n\n- 24 to 28: []()\n- under 24: []()\n- over 28: []()\n",
  task: "## New task\n\n```task\nset: \nat: \n```\n\nWhat to do.\n\n- done: []()\n",
  finding: "## New finding\n\n```finding\nfault: \n```\n\nHow to be sure.\n\n- repair: []()\n",
  end: "## New end\n\n```end\nresult: repaired and proved\n```\n"
};

export function stepInserter(buttons, view) {
  for (const button of buttons) {
    button.addEventListener("click", () => insert(view, button.dataset.insert));
  }
}

function insert(view, kind) {
  const doc = view.state.doc;
  let line = doc.lineAt(view.state.selection.main.head).number + 1;
  while (line <= doc.lines && !doc.line(line).text.startsWith("## ")) line++;
  const at = line <= doc.lines ? doc.line(line).from : doc.length;
  const before = at === doc.length && !doc.toString().endsWith("\n\n") ? (doc.toString().endsWith("\n") ? "\n" : "\n\n") : "";
  const text = unique(STEPS[kind], doc.toString());
  const heading = at + before.length + 3;
  view.dispatch({
    changes: { from: at, insert: before + text + (line <= doc.lines ? "\n" : "") },
    selection: { anchor: heading, head: heading + text.indexOf("\n") - 3 },
    scrollIntoView: true
  });
  view.focus();
}

function unique(step, text) {
  const heading = step.slice(0, step.indexOf("\n"));
  let name = heading;
  for (let n = 2; text.split("\n").includes(name); n++) name = `${heading} ${n}`;
  return name + step.slice(heading.length);
}
