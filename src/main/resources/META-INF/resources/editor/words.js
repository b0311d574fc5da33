// Offers the words that fit where the cursor stands.
const FRONT = ["title", "complaint", "system", "meter", "quiet"];
const KINDS = ["check", "task", "finding", "end", "take"];
const ANSWERS = ["yes", "no", "done", "cannot be done", "anything else", "OL", "no reading"];

/** A heading's id, as the server makes it: lower case, spaces to hyphens, other signs dropped. */
export function slug(heading) {
  return heading.trim().toLowerCase().replace(/[ \t]/g, "-").replace(/[^\p{L}\p{Nd}\p{Mn}\p{Mc}_-]/gu, "");
}

/** What stands around a line: `front`, a block's kind, or `prose`. */
export function surroundings(doc, number) {
  let inside = doc.line(1).text.trim() === "---" ? "front" : "prose";
  for (let n = inside === "front" ? 2 : 1; n < number; n++) {
    const text = doc.line(n).text;
    if (inside === "front" && text.trim() === "---") inside = "prose";
    else if (inside === "prose" && /^(```|~~~)/.test(text)) inside = text.slice(3).trim() || "code";
    else if (inside !== "front" && inside !== "prose" && /^(```|~~~)\s*$/.test(text)) inside = "prose";
  }
  return inside;
}

const steps = doc => doc.toString().split("\n").filter(line => line.startsWith("## ")).map(line => line.slice(3).trim());

export function vocabulary() {
  let system = null;
  let words = { keys: {}, values: {}, trees: {} };

  async function load(name) {
    system = name;
    const answer = await fetch(`/api/words?system=${encodeURIComponent(name)}`);
    if (answer.ok) words = await answer.json();
  }

  function inFront(before, at) {
    const value = /^(?:(system|meter)\s*:\s*|(quiet)\s*:\s*(?:[^,]*,\s*)*)([^,]*)$/.exec(before);
    if (value) return offer(at - value[3].length, words.values[value[1] ?? value[2]] ?? []);
    return /^\w*$/.test(before) ? offer(at - before.length, FRONT, ": ") : null;
  }

  function inBlock(kind, before, at) {
    const line = /^\s*([^:]+?)\s*:\s*(.*)$/.exec(before);
    if (!line) return offer(at - before.trimStart().length, words.keys[kind] ?? [], ": ");
    const item = /[^,]*$/.exec(line[2])[0].trimStart();
    return offer(at - item.length, words.values[line[1].toLowerCase()] ?? []);
  }

  function inProse(before, at, doc) {
    const fence = /^```(\w*)$/.exec(before);
    if (fence) return { from: at - fence[1].length, options: KINDS.map(kind => ({ label: kind, apply: `${kind}\n` })) };
    const target = /\]\(([^)]*)$/.exec(before);
    if (target) return links(at - target[1].length, doc, heading => `#${slug(heading)})`, id => `${id}.md)`);
    const way = /^\s*[-*]\s+[^:[\]]+:\s*(\[?[^\]]*)$/.exec(before);
    if (way) return links(at - way[1].length, doc, heading => `[${heading}](#${slug(heading)})`, (id, title) => `[${title}](${id}.md)`);
    const answer = /^\s*[-*]\s+(\w*)$/.exec(before);
    return answer ? offer(at - answer[1].length, ANSWERS, ": ") : null;
  }

  function links(from, doc, toStep, toTree) {
    const own = steps(doc).map(heading => ({ label: heading, detail: "step", apply: toStep(heading), boost: 1 }));
    const others = Object.entries(words.trees).map(([id, title]) => ({ label: title, detail: "other tree", apply: toTree(id, title) }));
    return { from, options: [...own, ...others], validFor: /^[^\])]*$/ };
  }

  function offer(from, labels, after = "") {
    return { from, options: labels.map(label => ({ label, apply: label + after })), validFor: /^[^,:\n]*$/ };
  }

  return {
    /** Loads a system's words when the front matter names another one. */
    follow(doc) {
      const named = /^system:\s*(.*?)\s*$/m.exec(doc.sliceString(0, 2000))?.[1] ?? "";
      if (named !== system) load(named);
    },
    complete(context) {
      const line = context.state.doc.lineAt(context.pos);
      const before = line.text.slice(0, context.pos - line.from);
      if (!context.explicit && before.trim() === "") return null;
      const inside = surroundings(context.state.doc, line.number);
      if (inside === "front") return inFront(before, context.pos);
      return inside === "prose" ? inProse(before, context.pos, context.state.doc) : inBlock(inside, before, context.pos);
    }
  };
}
