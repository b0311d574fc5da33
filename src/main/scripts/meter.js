// What the display shows of a reading: as many counts as the scale of AC volts has, in the range that shows the most digits.

// the last digit of the range that shows a number, and how many of them; scale { low, high, digit, unit }
export function rounded(scale, counts, value) {
  let digit = scale.digit;
  while (Math.round(value / digit) > counts) digit *= 10;
  return { digit: digit, count: Math.round(value / digit) };
}
export function display(scale, counts, value) {
  if (value === 'unsteady') return { text: 'jumps', unit: '' };
  if (typeof value !== 'number') return { text: '- - -', unit: '' };
  if (value > scale.high) return { text: 'OL', unit: scale.unit };
  const shown = rounded(scale, counts, value), prefixes = scale.unit === 'Ω' ? ['', 'k', 'M'] : [''];
  let power = 0;
  while (power < prefixes.length - 1 && shown.digit * counts > 1000 * Math.pow(1000, power)) power++;
  const unit = Math.pow(1000, power), decimals = Math.max(0, -Math.floor(Math.log10(shown.digit / unit) + 1e-9));
  return { text: (shown.count * shown.digit / unit).toFixed(decimals), unit: prefixes[power] + scale.unit };
}
