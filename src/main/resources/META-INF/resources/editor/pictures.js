// Takes a picture that is chosen, dropped or pasted: uploads it and names it in the text.
import { encoded } from "./address.js";
import { slug } from "./words.js";

export function pictureTaker({ input, view, path, say, author }) {
  if (!input) return;
  const kinds = Object.fromEntries(input.dataset.kinds.split(" ").map(kind => kind.split("=")));
  const mostBytes = Number(input.dataset.mostBytes);
  const folder = path.slice(0, path.lastIndexOf("/") + 1);
  input.addEventListener("change", () => { take(input.files[0]); input.value = ""; });
  for (const event of ["drop", "paste"]) {
    view.contentDOM.addEventListener(event, happened => {
      const file = [...((happened.dataTransfer ?? happened.clipboardData)?.files ?? [])].find(each => kinds[each.type]);
      if (!file) return;
      happened.preventDefault();
      take(file);
    });
  }

  async function take(file) {
    if (!file) return;
    if (!kinds[file.type]) return say(`${file.name} is no picture that a pack can hold; use PNG, JPEG, GIF, WebP or SVG`);
    if (file.size > mostBytes) return say(`${file.name} is larger than ${mostBytes >> 20} MB; save it smaller`);
    if (!author()) return say("Save once first, so that your name is known");
    const target = await freeName(file);
    const address = encoded(folder + target);
    const answer = await fetch(`/api/files/${address}?basedOn=0&author=${encodeURIComponent(author())}&message=Picture`, {
      method: "PUT", headers: { "Content-Type": file.type }, body: file
    });
    if (!answer.ok) {
      const body = await answer.json();
      return say(`Not uploaded: ${body.detail}; ${body.hint}`);
    }
    name(target);
  }

  async function freeName(file) {
    const there = (await (await fetch(`/api/documents?under=${encodeURIComponent(`${folder}pictures/`)}`)).json()).map(entry => entry.path);
    const plain = slug(file.name.replace(/\.[^.]*$/, "")).replace(/^[-_]+/, "") || "picture";
    for (let n = 1; ; n++) {
      const target = `pictures/${plain}${n > 1 ? `-${n}` : ""}.${kinds[file.type]}`;
      if (!there.includes(folder + target)) return target;
    }
  }

  function name(target) {
    const at = view.state.selection.main.head;
    const words = "what the picture shows";
    view.dispatch({ changes: { from: at, insert: `![${words}](${target})` }, selection: { anchor: at + 2, head: at + 2 + words.length } });
    view.focus();
    say("Picture uploaded. Say in words what it shows.");
  }
}
