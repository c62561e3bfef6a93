// A farm's figure: what it is made of, stage by stage, and where it stands beside published products.
import { scaleLinear, select } from "./d3.js";
import { capital, figure, interval, name, share, t, unit } from "./i18n.js";
import { drawScale, logScale } from "./scale.js";

const bar = 34;
const lane = 46;

export function farmPicture(box) {
  let shown = null;

  function draw() {
    if (!shown) return;
    const { footprint, farm } = shown;
    const width = box.clientWidth || 320;
    const phone = width < 520;
    const left = phone ? 14 : 190;
    const right = width - (phone ? 14 : 130);
    const words = unit(footprint.indicator, footprint.per);
    const stages = (footprint.by_stage ?? []).filter((stage) => stage.value !== 0).sort((one, two) => two.value - one.value);
    const others = (footprint.compare ?? []).filter((side) => side.footprint);
    const tall = phone ? bar + 16 : bar;
    const madeEnd = 40 + stages.length * tall;
    const rule = madeEnd + 54;
    const rowTall = phone ? lane + 14 : lane;
    const height = rule + (1 + others.length) * rowTall + 56;
    box.replaceChildren();
    const svg = select(box).append("svg").attr("viewBox", `0 0 ${width} ${height}`).attr("width", width).attr("height", height)
      .attr("role", "img").attr("aria-label", t("farm.chart", { farm, unit: words }));

    svg.append("text").attr("class", "row-name").attr("x", 8).attr("y", 24).text(t("farm.made"));
    const from = Math.min(0, ...stages.map((stage) => stage.value));
    const along = scaleLinear().domain([from, Math.max(...stages.map((stage) => stage.value), 1e-12)]).range([left, right]);
    stages.forEach((stage, index) => {
      const y = 40 + index * tall;
      const label = name("stage", stage.stage, capital(stage.stage));
      const at = phone ? y + 20 : y + 6;
      svg.append("text").attr("class", "stage-name").attr("x", 8).attr("y", phone ? y + 14 : y + 21).text(label);
      svg.append("rect").attr("class", `stage stage-${index % 2}`).attr("x", along(Math.min(0, stage.value)))
        .attr("width", Math.max(1.5, Math.abs(along(stage.value) - along(0)))).attr("y", at).attr("height", 22).attr("rx", 2);
      svg.append("text").attr("class", "stage-value").attr("x", width - 8).attr("y", phone ? y + 14 : y + 21).attr("text-anchor", "end")
        .text(`${figure(stage.value)} · ${share(stage.share)}`);
    });

    svg.append("text").attr("class", "row-name").attr("x", 8).attr("y", madeEnd + 36).text(t("farm.beside-others"));
    const rows = [{ own: true, name: farm, footprint: footprint.footprint }, ...others.map((side) => ({
      name: capital(name("product", side.product, side.name)), footprint: side.footprint, studies: side.studies }))];
    const x = logScale(rows.flatMap((row) => [row.footprint.low, row.footprint.high]).filter((value) => value > 0), left, right);
    const end = rule + rows.length * rowTall;
    svg.append("rect").attr("class", "strip").attr("x", left - 10).attr("width", right - left + 20).attr("y", end).attr("height", 38);
    drawScale(svg.append("g"), { at: x, low: x.domain()[0], high: x.domain()[1], y: end, down: true, left, right });
    svg.append("text").attr("class", "scale-name").attr("x", right).attr("text-anchor", "end").attr("y", end + 51).text(words);
    const mine = x(footprint.footprint.median);
    svg.append("line").attr("class", "hair-own").attr("x1", mine).attr("x2", mine).attr("y1", rule - 4).attr("y2", end);
    rows.forEach((row, index) => {
      const y = rule + index * rowTall;
      const middle = y + (phone ? 40 : 22);
      const g = svg.append("g").attr("class", row.own ? "row own-row" : "row");
      g.append("text").attr("class", "row-name").attr("x", 8).attr("y", phone ? y + 18 : middle + 5).text(row.name.length > 24 ? `${row.name.slice(0, 22)}…` : row.name);
      g.append("rect").attr("class", "band").attr("x", x(row.footprint.low)).attr("width", Math.max(2, x(row.footprint.high) - x(row.footprint.low)))
        .attr("y", middle - 11).attr("height", 22).attr("rx", 2);
      g.append("line").attr("class", "median").attr("x1", x(row.footprint.median)).attr("x2", x(row.footprint.median)).attr("y1", middle - 15).attr("y2", middle + 15);
      g.append("text").attr("class", "row-under").attr("x", width - 8).attr("text-anchor", "end").attr("y", phone ? y + 18 : middle + 5)
        .text(`${figure(row.footprint.median)} (${interval(row.footprint.low, row.footprint.high)})`);
    });
  }

  new ResizeObserver(() => draw()).observe(box);
  return {
    show(footprint, farm) {
      shown = { footprint, farm };
      draw();
    },
    svg: () => box.querySelector("svg"),
  };
}
