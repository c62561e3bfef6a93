// Rows with a value and its range on a plain scale from zero; what has no value says why.
import { scaleLinear, select } from "./d3.js";
import { tick } from "./i18n.js";

const lane = 46;

/**
 * A picture in a box, drawn again when the box changes its width.
 *
 * @param label its text alternative
 */
export function rangePicture(box, label) {
  let shown = null;

  function draw() {
    if (!shown || box.clientWidth === 0) return;
    const { rows, words } = shown;
    const width = box.clientWidth;
    const phone = width < 520;
    const left = phone ? 14 : 230;
    const right = width - (phone ? 14 : 170);
    const tall = phone ? lane + 26 : lane;
    const end = 12 + rows.length * tall;
    const values = rows.flatMap((row) => [row.low, row.value, row.high]).filter(Number.isFinite);
    const x = scaleLinear().domain([Math.min(0, ...values), Math.max(0, ...values) || 1]).nice(5).range([left, right]);
    box.replaceChildren();
    const svg = select(box).append("svg").attr("viewBox", `0 0 ${width} ${end + 54}`).attr("width", width).attr("height", end + 54)
      .attr("role", "img").attr("aria-label", label(rows));
    svg.append("rect").attr("class", "strip").attr("x", left - 10).attr("width", right - left + 20).attr("y", end).attr("height", 30);
    for (const value of x.ticks(phone ? 4 : 7)) {
      svg.append("line").attr("class", "between").attr("x1", x(value)).attr("x2", x(value)).attr("y1", 8).attr("y2", end);
      svg.append("text").attr("class", "number").attr("x", x(value)).attr("y", end + 19).attr("text-anchor", "middle").text(tick(value));
    }
    svg.append("line").attr("class", "rule").attr("x1", x(0)).attr("x2", x(0)).attr("y1", 8).attr("y2", end);
    svg.append("text").attr("class", "scale-name").attr("x", right).attr("y", end + 46).attr("text-anchor", "end").text(words);
    rows.forEach((row, index) => drawRow(svg, row, { x, y: 12 + index * tall, left, width, phone }));
  }

  function drawRow(svg, row, { x, y, left, width, phone }) {
    const middle = y + (phone ? 52 : 20);
    const group = svg.append("g").attr("class", `row ${row.kind ?? ""}`);
    group.append("text").attr("class", "row-name").attr("x", 8).attr("y", phone ? y + 16 : middle - 1).text(row.name);
    if (row.under) group.append("text").attr("class", "row-under").attr("x", 8).attr("y", phone ? y + 32 : middle + 15).text(row.under);
    if (!Number.isFinite(row.value)) {
      group.append("line").attr("class", "nothing").attr("x1", left).attr("x2", width - (phone ? 14 : 170)).attr("y1", middle).attr("y2", middle);
      group.append("text").attr("class", "none-said").attr("x", phone ? width - 8 : left + 6).attr("y", phone ? y + 16 : middle - 6).attr("text-anchor", phone ? "end" : "start").text(row.said);
      return;
    }
    const low = row.low ?? row.value;
    const high = row.high ?? row.value;
    group.append("rect").attr("class", row.open ? "band band-open" : "band").attr("x", x(low)).attr("width", Math.max(2, x(high) - x(low))).attr("y", middle - 10).attr("height", 20).attr("rx", 2);
    group.append("line").attr("class", "median").attr("x1", x(row.value)).attr("x2", x(row.value)).attr("y1", middle - 14).attr("y2", middle + 14);
    group.append("text").attr("class", "row-value").attr("x", width - 8).attr("y", phone ? y + 16 : middle + 5).attr("text-anchor", "end").text(row.said);
  }

  new ResizeObserver(() => draw()).observe(box);
  return {
    show(rows, words) {
      shown = { rows, words };
      draw();
    },
    svg: () => box.querySelector("svg"),
  };
}
