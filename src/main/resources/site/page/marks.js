// The mark of a published result: the weaker the check grade, the emptier. Shape and filling show it without colour.
import { symbol, symbolDiamond, symbolTimes } from "./d3.js";

const radius = 5.5;

/** Draws the mark of a check grade into a group around its origin, so many times its usual size. */
export function drawMark(whole, grade, size = 1) {
  whole.append("circle").attr("class", "mark-ground").attr("r", radius + 6.5);
  const group = size === 1 ? whole : whole.append("g").attr("transform", `scale(${size.toFixed(2)})`);
  if (grade === "fulltext") {
    group.append("circle").attr("class", "mark-full").attr("r", radius);
  } else if (grade === "abstract") {
    group.append("circle").attr("class", "mark-empty").attr("r", radius);
    group.append("path").attr("class", "mark-half").attr("d", `M0 ${-radius}A${radius} ${radius} 0 0 0 0 ${radius}Z`);
  } else if (grade === "secondary") {
    group.append("path").attr("class", "mark-empty").attr("d", symbol(symbolDiamond, 78)());
  } else {
    group.append("path").attr("class", "mark-cross").attr("d", symbol(symbolTimes, 62)());
  }
}

/** Gives every value a height above or below the row's middle so that no two marks overlap. */
export function spread(positions) {
  const step = 13.5;
  const placed = [];
  return positions.map((x) => {
    for (let n = 0; ; n++) {
      const y = (n % 2 ? 1 : -1) * Math.ceil(n / 2) * step;
      if (placed.every((other) => Math.hypot(other.x - x, other.y - y) >= step - 0.5)) {
        placed.push({ x, y });
        return y === 0 ? 0 : y;
      }
    }
  });
}
