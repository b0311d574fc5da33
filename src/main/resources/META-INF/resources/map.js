// Opens a map in its full size with the first step in sight; without this script it is made to fit the width.
export function openMap(frame) {
  const start = frame.querySelector("svg a");
  if (!start) return;
  frame.classList.add("full");
  const [step, sight] = [start.getBoundingClientRect(), frame.getBoundingClientRect()];
  frame.scrollLeft += step.left + step.width / 2 - (sight.left + sight.width / 2);
  frame.scrollTop = 0;
}

for (const frame of document.querySelectorAll(".mapframe")) openMap(frame);
