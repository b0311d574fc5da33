// Takes a picture that is chosen, dropped or pasted: uploads it and names it in the text.
import { slug } from "./words.js";

const KINDS = { "image/png": "png", "image/jpeg": "jpg", "image/gif": "gif", "image/webp": "webp", "image/svg+xml": "svg" };
const MOST_BYTES = 1 << 20;

export function pictureTaker({ input, view, path, say, author }) {
  if (!input) return;
  const folder = path.slice(0, path.lastIndexOf("/") + 1);
  input.addEventListener("change", () => { take(input.files[0]); input.value = ""; });
  for (const event of ["drop", "paste"]) {
    view.contentDOM.addEventListener(event, happened => {
      const file = [...((happened.dataTransfer ?? happened.clipboardData)?.files ?? [])].find(each => KINDS[each.type]);
      if (!file) return;
      happened.preventDefault();
      take(file);
    });
  }

  async function take(file) {
    if (!file) return;
    if (!KINDS[file.type]) return say(`${file.name} is no picture that a pack can hold; use PNG, JPEG, GIF, WebP or SVG`);
    if (file.size > MOST_BYTES) return say(`${file.name} is larger than 1 MB; save it smaller`);
    if (!author()) return say("Save once first, so that your name is known");
    const target = await freeName(file);
    const address = (folder + target).split("/").map(encodeURIComponent).join("/");
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
      const target = `pictures/${plain}${n > 1 ? `-${n}` : ""}.${KINDS[file.type]}`;
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
