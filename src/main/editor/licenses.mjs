// Prints the license of every package that the bundle holds, in the order of their names.
import { readFileSync, readdirSync } from "node:fs";

const lock = JSON.parse(readFileSync("package-lock.json", "utf8"));
const packages = Object.entries(lock.packages).filter(([folder, entry]) => folder && !entry.dev);

for (const [folder, entry] of packages.sort(([a], [b]) => (a < b ? -1 : 1))) {
  const file = readdirSync(folder).find(name => /^licen[cs]e/i.test(name));
  console.log(`${folder.replace("node_modules/", "")} ${entry.version} (${entry.license})\n`);
  console.log(`${readFileSync(`${folder}/${file}`, "utf8").trim()}\n\n${"-".repeat(72)}\n`);
}
