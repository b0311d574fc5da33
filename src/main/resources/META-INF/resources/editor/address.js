/** A library path as it is written in addresses: each part encoded, its slashes kept. */
export function encoded(path) {
  return path.split("/").map(encodeURIComponent).join("/");
}
