// The picture of a comparison: one row for each product, published results as marks, pooled intervals as bands, the reference as a
// line, the claim as a draggable flag.
import { select, drag } from "./d3.js";
import { capital, figure, interval, name, t, the, unit, written } from "./i18n.js";
import { drawMark, spread } from "./marks.js";
import { besideOf, boundWords, bounded, defineHatching, inWords, modelledOf } from "./modelled.js";
import { drawScale, logScale } from "./scale.js";

const narrow = 620;
const top = 74;
const bottom = 58;
const secondLane = 24;
const least = 0.01;
const most = 100000;

/** Two significant figures: the precision of the dragged flag. */
const handy = (times) => Number(times.toPrecision(2));

/** The published results of one side of the answer. */
export const findings = (side) =>
  (side.evidence ?? []).flatMap((study) => study.findings.map((finding) => ({ ...finding, study: study.study })));

/** A note on values of a side that a log scale cannot show; empty if there are none. */
function offScale(side) {
  const n = findings(side).filter((finding) => !(finding.harmonised_median > 0)).length;
  return [
    n > 0 ? t("chart.negative", { n }) : "",
    side.footprint && !(side.footprint.low > 0) ? t("chart.open-band") : "",
  ].filter(Boolean).join(" ");
}

/**
 * Draws the chart in a box.
 *
 * @param on what to call: `claim(times, done)` while the flag moves, `study(finding, side, pinned)` when a mark is selected,
 *   `modelled(side, pinned)` when the figure of a reference farm is,
 *   `subject(product)` when a row is chosen, `basis(boundary)` when another boundary is
 */
export function picture(box, on) {
  let answer = null;
  let question = null;
  let defensible = null;
  let rows = [];
  let x = null;
  let pinned = null;
  let at = { row: 0, mark: 0 };
  let moved = () => {};

  function show(newAnswer, newQuestion) {
    answer = newAnswer;
    question = newQuestion;
    defensible = null;
    pinned = null;
    draw();
  }

  function draw() {
    if (!answer) return;
    const width = box.clientWidth || 320;
    const phone = width < narrow;
    const left = phone ? 14 : 178;
    const right = width - (phone ? 14 : 156);
    const reference = answer.reference.footprint?.median;
    const sides = [answer.reference, ...answer.items];
    const words = unit(question.indicator, question.per);
    const values = [];
    for (const side of sides) {
      if (side.footprint) values.push(side.footprint.low, side.footprint.high);
      const beside = besideOf(side, question);
      if (beside) values.push(beside.footprint.low, beside.footprint.high);
      for (const finding of findings(side)) values.push(finding.harmonised_median);
    }
    if (reference > 0) values.push(reference, reference / Math.max(question.times_less, 120), reference / Math.min(question.times_less, 1));
    const positive = values.filter((value) => value > 0);
    x = logScale(positive.length ? positive : [1, 100], left, right);

    let y = top;
    rows = sides.map((side, index) => {
      const marks = findings(side)
        .filter((finding) => finding.harmonised_median > 0)
        .sort((one, two) => one.harmonised_median - two.harmonised_median);
      const places = marks.map((finding) => x(finding.harmonised_median));
      const heights = spread(places);
      const reach = Math.max(17, ...heights.map(Math.abs));
      const label = phone ? 36 : 8;
      const below = offScale(side);
      const modelled = modelledOf(side, question);
      const beside = besideOf(side, question);
      const tall = label + 2 * reach + 18 + (beside ? secondLane + (phone ? 16 : 0) : 0) + (below ? 20 : 0);
      const row = { side, index, y, tall, middle: y + label + reach + 5, marks, places, heights, below, modelled, beside,
        second: y + label + 2 * reach + (phone ? 28 : 12) };
      if (modelled) places.push(x(modelled.footprint.median));
      y += tall;
      return row;
    });
    if (!(rows[at.row]?.places.length > at.mark)) at = { row: Math.max(0, rows.findIndex((row) => row.places.length > 0)), mark: 0 };
    const hatched = rows.some((row) => row.modelled);
    const height = y + bottom + (hatched && phone ? 34 : 0);

    const hadFocus = document.activeElement && box.contains(document.activeElement)
      ? { flag: document.activeElement.classList.contains("flag"), mark: document.activeElement.classList.contains("stop") }
      : null;
    box.replaceChildren();
    const svg = select(box).append("svg")
      .attr("viewBox", `0 0 ${width} ${height}`).attr("width", width).attr("height", height)
      .attr("role", "group").attr("aria-label", t("chart.label", {
        indicator: capital(name("indicator", question.indicator)), boundary: name("boundary", question.boundary), unit: words }));

    if (hatched) {
      defineHatching(svg);
      const key = svg.append("text").attr("class", "scale-name").attr("y", y + (phone ? 67 : 49)).attr("aria-hidden", "true");
      lined(key, t("modelled.key"), phone ? left - 6 : 8, width - 16);
    }
    drawRuled(svg, { left, right, width, height, y, reference, words, phone });
    if (reference > 0) drawReference(svg, { reference, y });
    const lanes = svg.append("g").attr("class", "lanes");
    for (const row of rows) drawRow(lanes, row, { left, right, width, phone, words });
    const overlay = svg.append("g").attr("class", "defensible");
    if (reference > 0) drawFlag(svg, { reference, y, left, right, words });
    moved(question.times_less);
    drawDefensible(overlay, y);
    if (hadFocus?.flag) box.querySelector(".flag")?.focus();
    else if (hadFocus?.mark) box.querySelector(".stop[tabindex='0']")?.focus();
  }

  function drawRuled(svg, { left, right, width, height, y, reference, words, phone }) {
    const ruled = svg.append("g").attr("class", "ruled").attr("aria-hidden", "true");
    ruled.append("rect").attr("class", "strip").attr("x", left - 10).attr("y", top - 40).attr("width", right - left + 20).attr("height", 40);
    ruled.append("rect").attr("class", "strip").attr("x", left - 10).attr("y", y).attr("width", right - left + 20).attr("height", bottom - 20);
    for (const [low, high] of [x.domain()]) {
      drawScale(ruled.append("g"), { at: x, low, high, y, down: true, left, right });
      if (reference > 0) {
        drawScale(ruled.append("g"), { at: (times) => x(reference / times), low: reference / high, high: reference / low, y: top,
          down: false, left, right });
      }
    }
    ruled.append("text").attr("class", "scale-name").attr("x", phone ? left - 6 : right).attr("text-anchor", phone ? "start" : "end")
      .attr("y", y + 49).text(t("chart.scale", { unit: words }));
    if (reference > 0) {
      ruled.append("text").attr("class", "scale-name").attr("x", right).attr("text-anchor", "end").attr("y", top - 46)
        .text(`← ${t("chart.ratio", { reference: the("product", answer.reference.product, answer.reference.name) })}`);
    }
  }

  function drawRow(lanes, row, { left, right, width, phone, words }) {
    const { side, middle } = row;
    const isReference = row.index === 0;
    const isSubject = row.index === 1;
    const kind = isReference ? "row reference-row" : isSubject ? "row subject-row" : "row";
    const lane = lanes.append("g").attr("class", kind);
    if (row.index > 0) {
      lane.append("line").attr("class", "between").attr("x1", phone ? 0 : 8).attr("x2", phone ? width : width - 8)
        .attr("y1", row.y).attr("y2", row.y).attr("aria-hidden", "true");
    }
    const label = capital(name("product", side.product, side.name)) + (side.form && side.form !== "fresh" ? `, ${side.form}` : "");
    const nameY = phone ? row.y + 22 : middle - 4;
    const named = lane.append("text").attr("class", "row-name").attr("x", phone ? left - 6 : 8).attr("y", nameY).text(label);
    if (!isReference && !isSubject) {
      named.attr("class", "row-name choosable").on("click", () => on.subject(askedAs(side)));
    }
    const under = isReference ? t("chart.is-reference") : question.evidence === "modelled" ? (row.modelled ? t("modelled.short") : "") : t("chart.row", { n: side.studies });
    const second = lane.append("text").attr("class", "row-under").attr("y", phone ? nameY : middle + 14).text(under);
    if (phone) second.attr("x", width - 8).attr("text-anchor", "end");
    else second.attr("x", 8);

    if (side.status !== "ok" || !side.footprint) {
      drawNothing(lane, row, { left, right, phone });
      drawSecond(lane, row, { left, right, width, phone });
      return;
    }
    const { low, high, median } = side.footprint;
    if (question.evidence === "modelled") {
      drawModelled(lane, row, { left, right, top: middle - 13, tall: 26 });
    } else if (high > 0) {
      // A band that reaches zero or below has no left end on this scale and extends to the edge of the picture; a bound has none on the side
      // where the true value lies.
      const from = low > 0 && side.bound !== "at-most" ? x(low) : left - 10;
      const to = side.bound === "at-least" ? right : x(high);
      lane.append("rect").attr("class", low > 0 && side.bound === "exact" ? "band" : "band band-open").attr("x", from).attr("width", to - from).attr("y", middle - 13)
        .attr("height", 26).attr("rx", 2).attr("aria-hidden", "true");
    }
    // What the average of such studies is known to lie in, inside what the next study would find.
    const mean = side.pooling?.mean_of_studies;
    if (question.evidence !== "modelled" && mean?.low > 0 && side.interval_of !== "mean") {
      lane.append("rect").attr("class", "band band-mean").attr("x", x(mean.low)).attr("width", x(mean.high) - x(mean.low)).attr("y", middle - 13)
        .attr("height", 26).attr("rx", 2).attr("aria-hidden", "true");
    }
    if (median > 0) {
      lane.append("line").attr("class", "median").attr("x1", x(median)).attr("x2", x(median)).attr("y1", middle - 17)
        .attr("y2", middle + 17).attr("aria-hidden", "true");
    }
    if (!phone) {
      lane.append("text").attr("class", "row-value").attr("x", width - 8).attr("text-anchor", "end").attr("y", middle - 4)
        .text(isReference || !side.times_less ? bounded(side) : boundedTimes(side.times_less));
      lane.append("text").attr("class", "row-under").attr("x", width - 8).attr("text-anchor", "end").attr("y", middle + 14)
        .text(isReference || !side.times_less ? interval(low, high) : timesInterval(side.times_less));
    } else {
      const said = isReference || !side.times_less ? bounded(side) : boundedTimes(side.times_less);
      second.text(isReference ? `${bounded(side)} (${interval(low, high)})` : `${said} · ${under}`);
    }
    drawBelow(lane, row, left);
    row.marks.forEach((finding, index) => drawResult(lane, row, finding, index, words));
    drawSecond(lane, row, { left, right, width, phone });
  }

  /** Sets a text in as many lines as its width asks for. */
  function lined(text, words, at, width) {
    let line = text.append("tspan").attr("x", at);
    for (const word of words.split(" ")) {
      const before = line.text();
      line.text(before ? `${before} ${word}` : word);
      if (before && line.node().getComputedTextLength() > width) {
        line.text(before);
        line = text.append("tspan").attr("x", at).attr("dy", 16).text(word);
      }
    }
  }

  /** The modelled figure: a hatched interval; a bound goes on to the edge as two broken lines, because its end is not known. */
  function drawModelled(lane, row, { left, right, top: y, tall }) {
    const { side, modelled } = row;
    const { low, high, median } = modelled.footprint;
    const index = row.marks.length;
    const group = lane.append("g").attr("class", "modelled stop").attr("role", "button").attr("aria-pressed", "false")
      .attr("tabindex", row.index === at.row && index === at.mark ? 0 : -1)
      .attr("aria-label", inWords(side, modelled, question));
    const from = low > 0 ? x(low) : left - 10;
    const to = x(high);
    group.append("rect").attr("class", "hatched-ground").attr("x", from).attr("width", to - from).attr("y", y).attr("height", tall);
    group.append("rect").attr("class", "hatched").attr("x", from).attr("width", to - from).attr("y", y).attr("height", tall);
    const open = modelled.bound === "at-least" ? [to, right + 10] : modelled.bound === "at-most" ? [left - 10, from] : null;
    if (open) {
      for (const edge of [y, y + tall]) {
        group.append("line").attr("class", "hatched-open").attr("x1", open[0]).attr("x2", open[1]).attr("y1", edge).attr("y2", edge);
      }
    }
    group.append("line").attr("class", "median").attr("x1", x(median)).attr("x2", x(median)).attr("y1", y - 3).attr("y2", y + tall + 3);
    const look = looking(group, modelled, (held) => on.modelled(side, held));
    group.on("pointerenter", (event) => { if (event.pointerType === "mouse") look(false); })
      .on("focus", () => { at = { row: row.index, mark: index }; rove(); look(false); })
      .on("click", () => { look(true); })
      .on("keydown", (event) => walk(event, row, index, look));
  }

  /** The figure of the other kind of evidence, in a narrow lane below the one asked for. */
  function drawSecond(lane, row, { left, right, width, phone }) {
    if (!row.beside) return;
    const { footprint } = row.beside;
    const modelled = question.evidence !== "modelled";
    if (modelled) {
      drawModelled(lane, row, { left, right, top: row.second, tall: 12 });
    } else if (footprint.low > 0) {
      lane.append("rect").attr("class", "band").attr("x", x(footprint.low)).attr("width", x(footprint.high) - x(footprint.low))
        .attr("y", row.second).attr("height", 12).attr("rx", 2).attr("aria-hidden", "true");
      lane.append("line").attr("class", "median").attr("x1", x(footprint.median)).attr("x2", x(footprint.median))
        .attr("y1", row.second - 3).attr("y2", row.second + 15).attr("aria-hidden", "true");
    }
    const kind = modelled ? t("modelled.short") : t("chart.row", { n: row.beside.studies });
    const text = (anchor, at, words) => lane.append("text").attr("class", "row-under").attr("aria-hidden", "true").attr("x", at)
      .attr("text-anchor", anchor).attr("y", row.second + (phone ? -6 : 10)).text(words);
    if (phone) {
      text("start", left - 6, kind);
      text("end", width - 8, bounded(row.beside));
    } else {
      text("start", 8, kind);
      text("end", width - 8, bounded(row.beside));
    }
  }

  /** Selects what is shown beside the picture, for a while or held. */
  function looking(node, thing, shown) {
    return (hold) => {
      if (hold) {
        pinned = pinned === thing ? null : thing;
        box.querySelectorAll(".stop[aria-pressed='true']").forEach((other) => other.setAttribute("aria-pressed", "false"));
        node.attr("aria-pressed", String(pinned === thing));
      }
      if (hold || !pinned) shown(pinned === thing);
    };
  }

  /** Notes under a row the values that a log scale cannot show. */
  function drawBelow(lane, row, left) {
    if (row.below) lane.append("text").attr("class", "row-under off-scale").attr("x", left).attr("y", row.y + row.tall - 8).text(row.below);
  }

  function drawNothing(lane, row, { left, right, phone }) {
    const { side, middle } = row;
    lane.append("line").attr("class", "nothing").attr("x1", left).attr("x2", right).attr("y1", middle).attr("y2", middle)
      .attr("aria-hidden", "true");
    const elsewhere = [...new Set((side.known_elsewhere ?? [])
      .filter((known) => known.indicator === question.indicator && known.published.boundary !== question.boundary
        && /^(its boundary|sa limite)/.test(known.reason))
      .map((known) => known.published.boundary))];
    const text = lane.append("text").attr("class", "none-said").attr("x", left + (phone ? 0 : 8)).attr("y", middle + 5);
    const none = question.evidence === "modelled" ? t("modelled.none")
      : phone ? t("chart.none-phone") : t("chart.none", { boundary: name("boundary", question.boundary) });
    text.append("tspan").text(`${none} `);
    const way = (words, href, click) => {
      const link = text.append("a").attr("href", href).attr("class", "way");
      link.append("tspan").text(words);
      if (click) link.on("click", (event) => { event.preventDefault(); click(); });
      text.append("tspan").text("  ");
    };
    if (elsewhere.length > 0 && !phone) {
      const boundary = elsewhere[elsewhere.length - 1];
      way(t("chart.see", { boundary: name("boundary-short", boundary).toLowerCase() }), `?boundary=${boundary}`, () => on.basis(boundary));
    }
    if (on.insect(side.product)) way(t("chart.own"), on.farm(side.product));
    // A background under the text keeps the dashes from crossing it.
    const size = text.node().getBBox();
    lane.insert("rect", ".none-said").attr("class", "none-ground").attr("x", size.x - 4).attr("y", size.y - 3)
      .attr("width", size.width + 6).attr("height", size.height + 6).attr("aria-hidden", "true");
  }

  function drawResult(lane, row, finding, index, words) {
    const study = on.label(finding.source);
    const value = figure(finding.harmonised_median);
    const mark = lane.append("g")
      .attr("class", "mark stop").attr("data-result", finding.result)
      .attr("transform", `translate(${row.places[index].toFixed(1)} ${(row.middle + row.heights[index]).toFixed(1)})`)
      .attr("role", "button").attr("aria-pressed", "false")
      .attr("tabindex", row.index === at.row && index === at.mark ? 0 : -1)
      .attr("aria-label", t("chart.mark", { study, place: name("region", finding.region, on.region(finding.region)), value, unit: words,
        grade: capital(name("grade", finding.check)) }));
    drawMark(mark, finding.check, 0.7 + 0.8 * Math.sqrt(finding.weight));
    const look = looking(mark, finding, (held) => on.study(finding, row.side, held));
    mark.on("pointerenter", (event) => { if (event.pointerType === "mouse") look(false); })
      .on("focus", () => { at = { row: row.index, mark: index }; rove(); look(false); })
      .on("click", () => { look(true); })
      .on("keydown", (event) => walk(event, row, index, look));
  }

  function rove() {
    box.querySelectorAll(".stop").forEach((mark) => mark.setAttribute("tabindex", "-1"));
    nodeAt(at.row, at.mark)?.setAttribute("tabindex", "0");
  }

  const nodeAt = (row, mark) => box.querySelectorAll(".row")[row]?.querySelectorAll(".stop")[mark];

  function walk(event, row, index, look) {
    const to = (r, m) => { event.preventDefault(); nodeAt(r, m)?.focus(); };
    const beside = (way) => {
      let next = row.index + way;
      while (rows[next] && rows[next].places.length === 0) next += way;
      if (!rows[next]) return event.preventDefault();
      const here = row.places[index];
      const near = rows[next].places.reduce((best, place, i, all) => (Math.abs(place - here) < Math.abs(all[best] - here) ? i : best), 0);
      return to(next, near);
    };
    switch (event.key) {
      case "ArrowRight": return to(row.index, Math.min(index + 1, row.places.length - 1));
      case "ArrowLeft": return to(row.index, Math.max(index - 1, 0));
      case "ArrowDown": return beside(1);
      case "ArrowUp": return beside(-1);
      case "Home": return to(row.index, 0);
      case "End": return to(row.index, row.places.length - 1);
      case "Enter":
      case " ": event.preventDefault(); return look(true);
      case "Escape": pinned = null; return on.study(null);
      default: return undefined;
    }
  }

  function drawReference(svg, { reference, y }) {
    const line = svg.append("g").attr("class", "reference").attr("aria-hidden", "true");
    line.append("line").attr("x1", x(reference)).attr("x2", x(reference)).attr("y1", top).attr("y2", y);
  }

  function drawFlag(svg, { reference, y, left, right, words }) {
    const subject = rows[1];
    const zone = svg.insert("rect", "g").attr("class", "zone").attr("x", left - 10).attr("y", subject.y).attr("height", subject.tall)
      .attr("aria-hidden", "true");
    const flag = svg.append("g").attr("class", "flag").attr("tabindex", 0).attr("role", "slider")
      .attr("aria-label", t("chart.flag-label")).attr("aria-orientation", "horizontal")
      .attr("aria-valuemin", least).attr("aria-valuemax", most);
    // The visible line is below the labels of the rows; the drag handle is above everything.
    const hair = svg.insert("line", ".lanes").attr("class", "hair").attr("aria-hidden", "true").attr("y1", 28).attr("y2", y);
    const grip = flag.append("line").attr("class", "grip").attr("y1", 20).attr("y2", y);
    const cloth = flag.append("path").attr("class", "cloth");
    const text = flag.append("text").attr("class", "cloth-text").attr("y", 19);
    const foot = flag.append("circle").attr("class", "foot").attr("r", 5).attr("cy", y);

    moved = (times) => {
      const px = Math.max(left - 10, Math.min(right + 10, x(reference / times)));
      hair.attr("x1", px).attr("x2", px);
      grip.attr("x1", px).attr("x2", px);
      foot.attr("cx", px);
      text.text(t("chart.flag", { times: written(handy(times) === times ? times : Number(times.toPrecision(4))) }));
      const wide = text.node().getComputedTextLength() + 22;
      const toRight = px + wide < right + 16;
      cloth.attr("d", toRight
        ? `M${px} 2h${wide}l-6 13l6 13h${-wide}Z`
        : `M${px} 2h${-wide}l6 13l-6 13h${wide}Z`);
      text.attr("x", toRight ? px + 8 : px - 8).attr("text-anchor", toRight ? "start" : "end");
      zone.attr("width", Math.max(0, px - left + 10));
      flag.attr("aria-valuenow", times).attr("aria-valuetext", t("chart.flag-value", { times: written(times),
        reference: the("product", answer.reference.product, answer.reference.name), value: figure(reference / times), unit: words }));
    };
    const set = (times, done) => {
      question.times_less = Math.max(least, Math.min(most, handy(times)));
      moved(question.times_less);
      on.claim(question.times_less, done);
    };
    flag.call(drag()
      .container(svg.node())
      .on("start", () => hair.classed("held", true))
      .on("drag", (event) => set(reference / x.invert(Math.max(left - 9, Math.min(right + 9, event.x))), false))
      .on("end", () => { hair.classed("held", false); on.claim(question.times_less, true); }));
    flag.on("keydown", (event) => {
      const by = { ArrowLeft: 1.05, ArrowUp: 1.05, ArrowRight: 1 / 1.05, ArrowDown: 1 / 1.05, PageUp: 1.5, PageDown: 1 / 1.5 }[event.key];
      if (!by) return;
      event.preventDefault();
      let next = handy(question.times_less * by);
      if (next === question.times_less) next = handy(question.times_less + (by > 1 ? 1 : -1) * 10 ** (Math.floor(Math.log10(question.times_less)) - 1));
      set(next, true);
    });
  }

  /** Marks on the upper scale the ratio that can be defended. */
  function drawDefensible(group, y) {
    group.selectAll("*").remove();
    const reference = answer?.reference.footprint?.median;
    if (!defensible || !(reference > 0) || !rows[1]) return;
    const px = x(reference / defensible);
    const row = rows[1];
    group.attr("aria-hidden", "true");
    group.append("path").attr("class", "can").attr("d", `M${px} ${row.y + 1}l-5 -0v0l5 8l5 -8Z`);
    if (box.clientWidth >= narrow) {
      const toRight = px + 110 < x.range()[1];
      group.append("text").attr("class", "can-text").attr("x", px + (toRight ? 9 : -9)).attr("y", row.y + 12).attr("text-anchor", toRight ? "start" : "end")
        .text(t("chart.defensible", { times: figure(defensible) }));
    }
    group.append("line").attr("class", "can-line").attr("x1", px).attr("x2", px).attr("y1", row.y + 4).attr("y2", row.y + row.tall - 3);
  }

  function times(value) {
    if (!(value > 0)) return t("chart.no-times");
    return value >= 1 ? t("chart.times", { times: figure(value) }) : t("chart.more", { times: figure(1 / value) });
  }

  /** The same with what a bound is called; turned round it bounds from the other side. */
  function boundedTimes(ratio) {
    const turned = { "at-least": "at-most", "at-most": "at-least" }[ratio.bound];
    return `${boundWords({ bound: ratio.median >= 1 ? ratio.bound : turned })}${times(ratio.median)}`;
  }

  function timesInterval(ratio) {
    if (!(ratio.low > 0)) return "";
    return ratio.median >= 1 ? interval(ratio.low, ratio.high) : interval(1 / ratio.high, 1 / ratio.low);
  }

  new ResizeObserver(() => draw()).observe(box);

  return {
    show,
    /** Moves the flag without a callback. */
    claim(times) {
      question.times_less = times;
      const reference = answer?.reference.footprint?.median;
      if (reference > 0 && (reference / times < x.domain()[0] || reference / times > x.domain()[1])) draw();
      else moved(times);
    },
    /** Shows how many times less can be defended; nothing where unknown. */
    defend(times) {
      defensible = times;
      const group = box.querySelector(".defensible");
      if (group) drawDefensible(select(group), 0);
    },
    /** Releases a pinned study. */
    release() {
      pinned = null;
      const pressed = box.querySelector(".stop[aria-pressed='true']");
      pressed?.setAttribute("aria-pressed", "false");
      on.study(null);
      pressed?.focus();
    },
    svg: () => box.querySelector("svg"),
  };
}

/** The query value of a side: its product, with the form if it is not the default. */
export const askedAs = (side) => side.asked ?? side.product;
