// In the pack of one tree: stands for trees.js.
export const trees = null;
