// Solves a network of admittances, as the program's circuit package does: node by node, star to mesh, without ever forming a
// diagonal, so that a leak of nanosiemens beside a contact of fifty siemens keeps its digits.

// stamps [a, b, re, im, apart] siemens between nodes, which are connected unless they are apart;
// currents { node: [re, im] } amperes into nodes; node 0 is ground
export function network(count, stamps, currents) {
  const re = new Float64Array(count * count), im = new Float64Array(count * count), is = new Uint8Array(count * count);
  const near = [], group = [];
  for (let i = 0; i < count; i++) { near.push([]); group.push(i); }
  function root(i) {
    while (group[i] !== i) i = group[i];
    return i;
  }
  function add(a, b, g, s) {
    re[a * count + b] = re[b * count + a] += g;
    im[a * count + b] = im[b * count + a] += s;
    if (is[a * count + b]) return;
    is[a * count + b] = is[b * count + a] = 1;
    near[a].push(b);
    near[b].push(a);
  }
  stamps.forEach(s => {
    if (s[0] === s[1]) return;
    add(s[0], s[1], s[2], s[3]);
    if (s[4]) return;
    const a = root(s[0]), b = root(s[1]);
    if (a < b) group[b] = a; else group[a] = b;
  });
  // 1 S from a node of each floating group to ground; no current flows there, so its size does not matter
  for (let i = 1; i < count; i++) if (root(i) === i) add(i, 0, 1, 0);
  const turn = new Int32Array(count), steps = [], flow = [], left = [];
  for (let i = 0; i < count; i++) flow.push(currents[i] ? currents[i].slice() : [0, 0]);
  for (let i = 1; i < count; i++) left.push(i);
  function eliminate(node) {
    const to = near[node], shares = [];
    let g = 0, s = 0;
    to.forEach(n => { g += re[node * count + n]; s += im[node * count + n]; });
    const square = g * g + s * s, zr = g / square, zi = -s / square;
    to.forEach(n => {
      const y = re[node * count + n], x = im[node * count + n];
      shares.push([y * zr - x * zi, y * zi + x * zr]);
      near[n].splice(near[n].indexOf(node), 1);
    });
    to.forEach((n, i) => {
      if (n) {
        flow[n][0] += flow[node][0] * shares[i][0] - flow[node][1] * shares[i][1];
        flow[n][1] += flow[node][0] * shares[i][1] + flow[node][1] * shares[i][0];
      }
      for (let j = i + 1; j < to.length; j++) {
        const y = re[node * count + to[j]], x = im[node * count + to[j]];
        add(n, to[j], y * shares[i][0] - x * shares[i][1], y * shares[i][1] + x * shares[i][0]);
      }
    });
    turn[node] = steps.length;
    steps.push({ node: node, to: to, shares: shares, zr: zr, zi: zi });
  }
  while (left.length) {
    let best = 0, fewest = Infinity;
    for (let i = 0; i < left.length && fewest > 1; i++) {
      const degree = near[left[i]].length;
      if (degree < fewest) { fewest = degree; best = i; }
    }
    eliminate(left.splice(best, 1)[0]);
  }
  const vr = new Float64Array(count), vi = new Float64Array(count), units = [];
  let last = [-1];
  for (let k = steps.length - 1; k >= 0; k--) {
    const s = steps[k], f = flow[s.node];
    let a = f[0] * s.zr - f[1] * s.zi, b = f[0] * s.zi + f[1] * s.zr;
    s.to.forEach((n, i) => {
      a += s.shares[i][0] * vr[n] - s.shares[i][1] * vi[n];
      b += s.shares[i][0] * vi[n] + s.shares[i][1] * vr[n];
    });
    vr[s.node] = a;
    vi[s.node] = b;
  }
  // one ampere into a node, as it passes on: what arrives at each node, by its step
  function unit(node) {
    if (units[node]) return units[node];
    const f = new Float64Array(2 * steps.length);
    if (node) f[2 * turn[node]] = 1;
    for (let k = node ? turn[node] : steps.length; k < steps.length; k++) {
      const s = steps[k], a = f[2 * k], b = f[2 * k + 1];
      if (!a && !b) continue;
      for (let i = 0; i < s.to.length; i++) {
        const to = 2 * turn[s.to[i]], share = s.shares[i];
        if (!s.to[i]) continue;
        f[to] += a * share[0] - b * share[1];
        f[to + 1] += a * share[1] + b * share[0];
      }
    }
    return units[node] = f;
  }
  // the impedance between two nodes with all sources off: Z = sum of f f / Y
  function impedance(a, b) {
    const f = unit(a), g = unit(b);
    let zr = 0, zi = 0;
    for (let k = 0; k < steps.length; k++) {
      const x = f[2 * k] - g[2 * k], y = f[2 * k + 1] - g[2 * k + 1];
      if (!x && !y) continue;
      const p = x * x - y * y, q = 2 * x * y, s = steps[k];
      zr += p * s.zr - q * s.zi;
      zi += p * s.zi + q * s.zr;
    }
    return [zr, zi];
  }
  return {
    re: vr,
    im: vi,
    connected: (a, b) => root(a) === root(b),
    // the same pair is asked for again on other dials
    impedance: (a, b) => {
      if (last[0] !== a || last[1] !== b) last = [a, b, impedance(a, b)];
      return last[2];
    }
  };
}
