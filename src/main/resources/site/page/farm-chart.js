// A farm's figure: its stages, and a comparison with others, computed or published.
import { scaleLinear, select } from "./d3.js";
import { isPractice, isPublished, kind, stagesOf } from "./farm-said.js";
import { capital, figure, interval, name, t, unit } from "./i18n.js";
import { defineHatching } from "./modelled.js";
import { drawScale, logScale } from "./scale.js";

const bar = 34;
const lane = 52;

export function farmPicture(box) {
  let shown = null;

  function draw() {
    if (!shown) return;
    const { footprint, farm, missing } = shown;
    const width = box.clientWidth || 320;
    const phone = width < 520;
    const left = phone ? 14 : 200;
    const right = width - (phone ? 14 : 150);
    const frame = { width, phone, left, right };
    const stages = stagesOf(footprint).filter((stage) => stage.value !== 0).sort((one, two) => two.value - one.value);
    const rows = [
      { own: true, name: farm, kind: t("farm.computed"), footprint: footprint.footprint, bound: footprint.bound },
      ...(footprint.compare ?? []).map((side) => ({
        computed: !isPublished(side),
        practice: isPractice(side),
        name: isPublished(side) ? capital(name("product", side.product, side.name)) : side.system,
        kind: isPractice(side) ? t("farm.practice-short") : kind(side),
        footprint: side.footprint,
        bound: side.bound,
      })),
    ];
    const tall = phone ? bar + 16 : bar;
    const madeEnd = 40 + (stages.length + missing.length) * tall;
    const rule = madeEnd + 54;
    const rowTall = phone ? lane + 24 : lane;
    const height = rule + rows.length * rowTall + 56;
    box.replaceChildren();
    const svg = select(box).append("svg").attr("viewBox", `0 0 ${width} ${height}`).attr("width", width).attr("height", height)
      .attr("role", "img").attr("aria-label", t("farm.chart", { farm, unit: unit(footprint.indicator, footprint.per) }));
    svg.append("text").attr("class", "row-name").attr("x", 8).attr("y", 24).text(t("farm.made"));
    drawStages(svg, stages, tall, frame);
    drawMissing(svg, missing, 40 + stages.length * tall, tall, frame);
    svg.append("text").attr("class", "row-name").attr("x", 8).attr("y", madeEnd + 36).text(t("farm.beside-others"));
    drawBeside(svg, rows, { ...frame, rule, rowTall, words: unit(footprint.indicator, footprint.per) });
  }

  /** Bars on a plain scale: a credit extends to the left of zero. */
  function drawStages(svg, stages, tall, { width, phone, left, right }) {
    const values = stages.map((stage) => stage.value);
    const along = scaleLinear().domain([Math.min(0, ...values), Math.max(0, ...values) || 1e-12]).range([left, right]);
    stages.forEach((stage, index) => {
      const y = 40 + index * tall;
      const at = phone ? y + 20 : y + 6;
      svg.append("text").attr("class", "stage-name").attr("x", 8).attr("y", phone ? y + 14 : y + 21).text(name("stage", stage.stage, capital(stage.stage)));
      svg.append("rect").attr("class", `stage stage-${index % 2}`).attr("x", along(Math.min(0, stage.value)))
        .attr("width", Math.max(1.5, Math.abs(along(stage.value) - along(0)))).attr("y", at).attr("height", 22).attr("rx", 2);
      svg.append("text").attr("class", "stage-value").attr("x", width - 8).attr("y", phone ? y + 14 : y + 21).attr("text-anchor", "end")
        .text([figure(stage.value), stage.said].filter(Boolean).join(" · "));
    });
    if (values.some((value) => value < 0)) {
      svg.append("line").attr("class", "tick").attr("x1", along(0)).attr("x2", along(0)).attr("y1", 40).attr("y2", 40 + stages.length * tall);
    }
  }

  /** A bound: edges above and below and at the known end, none at the other, where arrow heads point on. */
  function openEnd(g, { closed, open, way }, middle) {
    g.append("path").attr("class", "bound-edge").attr("d", `M${open} ${middle - 11}H${closed}V${middle + 11}H${open}`);
    for (const step of [0, 8]) g.append("path").attr("class", "bound-arrow").attr("d", `M${open - way * (6 + step)} ${middle - 6}l${way * 6} 6l${-way * 6} 6`);
  }

  /** What is required and not counted has no length: a hatched bar over the whole scale, with its name. */
  function drawMissing(svg, missing, top, tall, { width, phone, left, right }) {
    if (missing.length === 0) return;
    const pattern = svg.append("defs").append("pattern").attr("id", "hatch").attr("width", 7).attr("height", 7)
      .attr("patternUnits", "userSpaceOnUse").attr("patternTransform", "rotate(45)");
    pattern.append("line").attr("class", "hatch-line").attr("x1", 0).attr("x2", 0).attr("y1", 0).attr("y2", 7);
    missing.forEach((what, index) => {
      const y = top + index * tall;
      const label = capital(what);
      svg.append("text").attr("class", "stage-name").attr("x", 8).attr("y", phone ? y + 14 : y + 21).text(label.length > 26 ? `${label.slice(0, 25)}…` : label);
      svg.append("rect").attr("class", "uncounted").attr("x", left).attr("width", right - left).attr("y", phone ? y + 20 : y + 6).attr("height", 22).attr("rx", 2)
        .append("title").text(label);
      svg.append("text").attr("class", "stage-value").attr("x", width - 8).attr("y", phone ? y + 14 : y + 21).attr("text-anchor", "end").text(t("farm.uncounted"));
    });
  }

  function drawBeside(svg, rows, { width, phone, left, right, rule, rowTall, words }) {
    const positive = rows.flatMap((row) => (row.footprint ? [row.footprint.low, row.footprint.median, row.footprint.high] : [])).filter((value) => value > 0);
    const x = logScale(positive.length ? positive : [1, 100], left, right);
    const end = rule + rows.length * rowTall;
    svg.append("rect").attr("class", "strip").attr("x", left - 10).attr("width", right - left + 20).attr("y", end).attr("height", 38);
    drawScale(svg.append("g"), { at: x, low: x.domain()[0], high: x.domain()[1], y: end, down: true, left, right });
    svg.append("text").attr("class", "scale-name").attr("x", right).attr("text-anchor", "end").attr("y", end + 51).text(t("chart.scale", { unit: words }));
    if (rows.some((row) => row.practice)) defineHatching(svg);
    const mine = rows[0].footprint.median;
    if (mine > 0) svg.append("line").attr("class", "hair-own").attr("x1", x(mine)).attr("x2", x(mine)).attr("y1", rule - 4).attr("y2", end);
    // On a phone the figure stands on the same line.
    const longest = phone ? Math.min(23, Math.floor((width - 190) / 8.5)) : 23;
    rows.forEach((row, index) => {
      const y = rule + index * rowTall;
      const middle = y + (phone ? 53 : 22);
      const g = svg.append("g").attr("class", row.own ? "row own-row" : row.practice ? "row practice-row" : row.computed ? "row computed-row" : "row");
      g.append("text").attr("class", "row-name").attr("x", 8).attr("y", phone ? y + 14 : middle - 1).text(row.name.length > longest ? `${row.name.slice(0, longest - 1)}…` : row.name);
      g.append("text").attr("class", "row-under").attr("x", 8).attr("y", phone ? y + 30 : middle + 16).text(row.kind);
      const said = (text) => g.append("text").attr("class", "row-under").attr("x", width - 8).attr("text-anchor", "end").attr("y", phone ? y + 14 : middle + 5).text(text);
      if (!row.footprint) {
        said(t("tables.none"));
        return;
      }
      const { low, high, median } = row.footprint;
      const atLeast = row.bound === "at-least";
      const atMost = row.bound === "at-most";
      said(`${atLeast ? t("farm.at-least") : atMost ? t("farm.at-most") : ""}${figure(median)} (${interval(low, high)})`);
      if (high > 0) {
        // A bound has no end on the side where the true value lies.
        const from = low > 0 && !atMost ? x(low) : left - 10;
        const open = atLeast && !row.practice;
        const edges = atLeast || atMost;
        const to = open ? right - 8 : x(high);
        if (row.practice && atLeast) {
          for (const edge of [middle - 11, middle + 11]) {
            g.append("line").attr("class", "hatched-open").attr("x1", to).attr("x2", right - 8).attr("y1", edge).attr("y2", edge);
          }
        }
        g.append("rect").attr("class", edges ? "band band-bound" : low > 0 ? "band" : "band band-open").attr("x", from).attr("width", Math.max(2, to - from)).attr("y", middle - 11).attr("height", 22).attr("rx", edges ? 0 : 2);
        if (edges && !row.practice) openEnd(g, atLeast ? { closed: from, open: to, way: 1 } : { closed: to, open: from, way: -1 }, middle);
      }
      if (median > 0) g.append("line").attr("class", "median").attr("x1", x(median)).attr("x2", x(median)).attr("y1", middle - 15).attr("y2", middle + 15);
      if (!(low > 0)) {
        g.append("text").attr("class", "row-under off-scale").attr("x", left).attr("y", middle + 5).text(t(high > 0 ? "chart.open-band" : "chart.off"));
      }
    });
  }

  new ResizeObserver(() => draw()).observe(box);
  return {
    /** Shows a figure; `missing` has the names of what is required and not counted. */
    show(footprint, farm, missing) {
      shown = { footprint, farm, missing };
      draw();
    },
    svg: () => box.querySelector("svg"),
  };
}
