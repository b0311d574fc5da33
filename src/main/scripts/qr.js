// QR codes (ISO/IEC 18004) of up to 425 ASCII letters: byte mode, versions 1 to 13, level L.
// of level L, by version: the correction codewords of a block, the blocks
const EC = [7, 10, 15, 20, 26, 18, 20, 24, 30, 18, 20, 24, 26], BLOCKS = [1, 1, 1, 1, 1, 2, 2, 2, 2, 4, 4, 4, 4];
const masks = [
  (x, y) => (x + y) % 2, (x, y) => y % 2, x => x % 3,
  (x, y) => (x + y) % 3, (x, y) => ((x / 3 | 0) + (y >> 1)) % 2,
  (x, y) => x * y % 2 + x * y % 3, (x, y) => (x * y % 2 + x * y % 3) % 2,
  (x, y) => ((x + y) % 2 + x * y % 3) % 2
];

// how many modules of a version carry codewords, as bits
function room(v) {
  const aligned = v > 1 ? (v / 7 | 0) + 2 : 0;
  return (16 * v + 128) * v + 64 - (aligned ? (25 * aligned - 10) * aligned - 55 : 0) - (v > 6 ? 36 : 0);
}
function times(a, b) {
  let product = 0;
  for (let i = 7; i >= 0; i--) product = product << 1 ^ (product >> 7) * 0x11d ^ (b >> i & 1) * a;
  return product;
}
// the remainder of a block by the generator polynomial of Reed-Solomon codes
function correction(data, degree) {
  const generator = Array(degree - 1).fill(0).concat(1);
  for (let i = 0, root = 1; i < degree; i++, root = times(root, 2)) {
    for (let j = 0; j < degree; j++) generator[j] = times(generator[j], root) ^ (generator[j + 1] || 0);
  }
  return data.reduce((rest, byte) => {
    const factor = byte ^ rest[0];
    return rest.slice(1).concat(0).map((one, i) => one ^ times(generator[i], factor));
  }, Array(degree).fill(0));
}
function codewords(text, v) {
  const total = room(v) >> 3, blocks = BLOCKS[v - 1], ec = EC[v - 1], capacity = total - blocks * ec, bits = [], data = [];
  function put(value, length) { while (length--) bits.push(value >> length & 1); }
  put(4, 4);
  put(text.length, v > 9 ? 16 : 8);
  for (let i = 0; i < text.length; i++) put(text.charCodeAt(i), 8);
  put(0, 4);
  while (bits.length % 8) bits.push(0);
  for (let i = 0; i < bits.length; i += 8) data.push(parseInt(bits.slice(i, i + 8).join(''), 2));
  for (let pad = 0xec; data.length < capacity; pad ^= 0xec ^ 0x11) data.push(pad);
  data.length = capacity;
  // the last blocks are a codeword longer
  const size = capacity / blocks | 0, long = capacity % blocks, cut = [];
  for (let i = 0, from = 0; i < blocks; i++) cut.push(data.slice(from, from += size + (i >= blocks - long ? 1 : 0)));
  const checks = cut.map(block => correction(block, ec)), out = [];
  for (let i = 0; i <= size; i++) cut.forEach(block => { if (i < block.length) out.push(block[i]); });
  for (let i = 0; i < ec; i++) checks.forEach(block => { out.push(block[i]); });
  return out;
}
// a number and its BCH remainder
function withCheck(value, degree, polynomial) {
  let rest = value;
  for (let i = 0; i < degree; i++) rest = rest << 1 ^ (rest >> degree - 1) * polynomial;
  return value << degree | rest;
}
function drawn(words, v, mask) {
  const side = 17 + 4 * v, rows = [], fixed = [];
  for (let y = 0; y < side; y++) { rows.push(Array(side).fill(false)); fixed.push(Array(side).fill(false)); }
  function set(x, y, dark) {
    if (rows[y] && x >= 0 && x < side) { rows[y][x] = !!dark; fixed[y][x] = true; }
  }
  for (let i = 0; i < side; i++) { set(6, i, i % 2 === 0); set(i, 6, i % 2 === 0); }
  function square(cx, cy, reach) {
    for (let y = -reach; y <= reach; y++) {for (let x = -reach; x <= reach; x++) {
      const ring = Math.max(Math.abs(x), Math.abs(y));
      set(cx + x, cy + y, ring !== 2 - (reach < 3) && ring !== 4);
    }}
  }
  const aligned = v > 1 ? (v / 7 | 0) + 2 : 0, step = aligned && Math.ceil((v * 4 + 4) / (aligned * 2 - 2)) * 2, at = [6];
  for (let i = 1; i < aligned; i++) at.splice(1, 0, side - 7 - (i - 1) * step);
  at.forEach((y, j) => { at.forEach((x, i) => {
    if (!(!i && !j || !i && j === aligned - 1 || !j && i === aligned - 1)) square(x, y, 2);
  }); });
  square(3, 3, 4);
  square(side - 4, 3, 4);
  square(3, side - 4, 4);
  const format = withCheck(1 << 3 | mask, 10, 0x537) ^ 0x5412;
  for (let i = 0; i < 15; i++) {
    const dark = format >> i & 1;
    set(8, i < 6 ? i : i < 8 ? i + 1 : side - 15 + i, dark);
    set(i < 8 ? side - 1 - i : i < 9 ? 7 : 14 - i, 8, dark);
  }
  set(8, side - 8, true);
  if (v > 6) {for (let i = 0, version = withCheck(v, 12, 0x1f25); i < 18; i++) {
    const x = side - 11 + i % 3, y = i / 3 | 0;
    set(x, y, version >> i & 1);
    set(y, x, version >> i & 1);
  }}
  let bit = 0;
  for (let right = side - 1; right > 0; right -= 2) {
    if (right === 6) right = 5;
    for (let i = 0; i < side; i++) {for (let x = right; x > right - 2; x--) {
      const y = right + 1 & 2 ? i : side - 1 - i;
      if (fixed[y][x]) continue;
      rows[y][x] = !!(words[bit >> 3] >> 7 - bit % 8 & 1) !== !masks[mask](x, y);
      bit++;
    }}
  }
  return rows;
}
// how hard a picture is to read, by the standard's four rules
function penalty(rows) {
  const side = rows.length, all = rows.concat(rows.map((row, x) => rows.map(one => one[x])));
  let sum = 0, dark = 0;
  all.forEach((row, n) => {
    const text = row.map(Number).join('');
    (text.match(/0{5,}|1{5,}/g) || []).forEach(run => { sum += run.length - 2; });
    sum += 40 * (text.match(/1011101(?=0000)|0000(?=1011101)/g) || []).length;
    if (n < side) dark += text.replace(/0/g, '').length;
    if (n && n < side) {for (let x = 1; x < side; x++) {
      if (row[x] === row[x - 1] && row[x] === all[n - 1][x] && row[x] === all[n - 1][x - 1]) sum += 3;
    }}
  });
  return sum + 10 * Math.floor(Math.abs(dark * 20 / side / side - 10));
}
// rows of modules, true where dark
export function qr(text) {
  let v = 1;
  while ((room(v) >> 3) - BLOCKS[v - 1] * EC[v - 1] < text.length + (v > 9 ? 3 : 2)) v++;
  const words = codewords(text, v);
  return masks.map((mask, i) => drawn(words, v, i))
    .map(rows => ({ rows: rows, penalty: penalty(rows) }))
    .reduce((best, one) => one.penalty < best.penalty ? one : best).rows;
};
