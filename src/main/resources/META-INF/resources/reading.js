// Reads again after each choice, and changes the answer and the ladder in place; without this script the form does it.
const form = document.querySelector("form.reading");
let last = 0;

async function read() {
  const mine = ++last;
  const asked = new URLSearchParams(new FormData(form)).toString();
  const address = new URL(form.action);
  address.search = asked;
  try {
    const answer = await fetch(`${form.dataset.answers}?${asked}`, { headers: { Accept: "text/html" } });
    if (!answer.ok) throw new Error(`the server answered ${answer.status}`);
    const page = new DOMParser().parseFromString(await answer.text(), "text/html");
    if (mine !== last) return;
    for (const id of ["answer", "drawn"]) document.getElementById(id).replaceWith(page.getElementById(id));
    history.replaceState(null, "", address);
  } catch (failure) {
    if (mine === last) {document.getElementById("answer").replaceChildren(
      Object.assign(document.createElement("p"), { textContent: `Not read now: ${failure.message}` }));}
  }
}

form.addEventListener("change", read);
form.addEventListener("submit", (event) => {
  event.preventDefault();
  read();
});
