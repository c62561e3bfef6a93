// The ticks of two opposite logarithmic axes: the footprint below, how many times less above.
import { scaleLog } from "./d3.js";
import { tick } from "./i18n.js";

const long = 11;
const middle = 7;
const short = 4;

/** Multiples of each power of ten between two ends, with the length of each tick. */
function ticks(low, high, room) {
  const marks = [];
  for (let power = Math.floor(Math.log10(low)); power <= Math.ceil(Math.log10(high)); power++) {
    for (let digit = 1; digit < 10; digit++) {
      const value = digit * 10 ** power;
      if (value < low * 0.999 || value > high * 1.001) continue;
      const numbered = digit === 1 || (room > 70 && (digit === 2 || digit === 5)) || (room > 420 && digit < 6);
      marks.push({ value, depth: digit === 1 ? long : digit === 5 || digit === 2 ? middle : short, numbered });
    }
  }
  return marks;
}

export function logScale(values, left, right) {
  const low = Math.min(...values);
  const high = Math.max(...values);
  return scaleLog().domain([low / 1.25, high * 1.25]).range([left, right]);
}

/**
 * Draws one axis along a line.
 *
 * @param at position of a value along the line
 * @param down whether its ticks are below the line
 */
export function drawScale(group, { at, low, high, y, down, left, right }) {
  const decade = Math.abs(at(10) - at(1));
  const way = down ? 1 : -1;
  group.append("line").attr("class", "rule").attr("x1", left).attr("x2", right).attr("y1", y).attr("y2", y);
  let last = -Infinity;
  const marks = ticks(low, high, decade).sort((one, two) => at(one.value) - at(two.value));
  for (const mark of marks) {
    const x = at(mark.value);
    if (x < left - 0.5 || x > right + 0.5) continue;
    group.append("line").attr("class", "tick").attr("x1", x).attr("x2", x).attr("y1", y).attr("y2", y + way * mark.depth);
    if (!mark.numbered) continue;
    const text = tick(Number(mark.value.toPrecision(3)));
    const half = text.length * 3.6;
    if (x - half < last + 4 || x - half < left - 14 || x + half > right + 14) continue;
    group.append("text").attr("class", "number").attr("x", x).attr("y", y + way * (long + 4) + (down ? 8 : 0))
      .attr("text-anchor", "middle").text(text);
    last = x + half;
  }
}
