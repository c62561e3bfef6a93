// The farm view: a notebook of a year becomes a figure, while it is typed. What is typed goes to the service to be computed and nowhere else;
// it stands in no address but in the fragment of a link that the reader copies, which browsers never send.
import { byId as at, calm, el, fill } from "./dom.js";
import { farmPicture } from "./farm-chart.js";
import { flattened, nested, notebook } from "./farm-form.js";
import { drivers } from "./farm-more.js";
import { frame } from "./frame.js";
import { capital, figure, interval, name, share, t, the, unit, written } from "./i18n.js";
import { get, newest, post, Refusal } from "./service.js";
import { save } from "./picture-file.js";
import { take, today } from "./take.js";
import { byId, options, vocabulary } from "./vocabulary.js";

const indicators = ["ghg", "land", "feed", "energy", "water"];
const units = ["kg-live", "kg-edible", "kg-dry-matter", "kg-protein"];
const beside = ["egg", "chicken", "beef"];
const invented = { "demo-superworms": "invented-school-superworms.json", "demo-flies": "invented-brewery-black-soldier-flies.json" };

const latest = newest();
let words = null;
let book = null;
let view = null;
let answer = null;
let system = null;

const chosen = () => ({ indicator: at("indicator").value, per: at("per").value });

function complain(text) {
  at("fault").textContent = text;
  at("fault").hidden = !text;
}

/** The records as they are sent; a farm without a name is called as the page calls it. */
function records(flat) {
  return { ...nested(flat), name: flat.get("name") ?? t("farm.your-farm") };
}

async function compute() {
  const { flat, ready } = book.read();
  complain("");
  if (!ready) {
    if (!answer) fill(at("figure"), el("p", { class: "waiting" }, t("farm.waiting")));
    return;
  }
  system = records(flat);
  try {
    const got = await latest((signal) => post("/v1/footprint",
      { system, per: at("per").value, indicators, compare: { products: beside } }, signal));
    if (!got) return;
    answer = got;
    show(flat);
    await drivers(at("drivers"), { system, ...chosen() }, beside);
  } catch (fault) {
    if (!(fault instanceof Refusal)) throw fault;
    const errors = fault.problem.errors ?? [];
    const placed = errors.filter((error) => error.pointer && book.refuse(error.pointer, error.message));
    complain(t("fault.refused", { detail: placed.length === errors.length && errors.length > 0 ? errors.map((error) => error.message).join("; ") : fault.message }));
  }
}

function show(flat) {
  const { indicator, per } = chosen();
  const found = answer.footprints.find((one) => one.indicator === indicator);
  at("shown-as").hidden = false;
  const whole = found?.footprint;
  at("chart").hidden = !whole;
  at("take-section").hidden = !whole;
  if (!whole) {
    fill(at("figure"), el("p", { class: "headline" }, t("farm.none", { reason: found?.reason ?? "" })));
    fill(at("said"), lists());
    return;
  }
  const said = unit(indicator, per);
  fill(at("figure"),
    el("p", { class: "headline own-figure" }, el("strong", {}, figure(whole.median)), ` ${said}`),
    el("p", { class: "fact" }, el("span", { class: "range" }, t("farm.range", { interval: interval(whole.low, whole.high) })), ", ", name("boundary", found.boundary)),
    el("ul", { class: "besides" }, (found.compare ?? []).filter((side) => side.times_less).map((side) => {
      const less = side.times_less.median >= 1;
      const median = less ? side.times_less.median : 1 / side.times_less.median;
      return el("li", {}, t("farm.beside", { product: the("product", side.product, side.name),
        times: t(less ? "farm.less" : "farm.more", { times: figure(median) }) }));
    })),
    answer.warnings.some((warning) => warning.code === "lower-bound") ? el("p", { class: "lower" }, t("farm.lower")) : null);
  view.show(found, system.name);
  fill(at("said"), table(found), el("div", { id: "drivers" }), lists());
  at("library").textContent = t("frame.library", answer.library);
  takeAway(found, flat);
}

/** The picture as a table. */
function table(found) {
  const words = unit(found.indicator, found.per);
  return el("details", { class: "results", open: true }, el("summary", {}, t("farm.table")),
    el("div", { class: "scrolls", tabindex: "0", role: "group", "aria-label": t("farm.table") },
      el("table", {},
        el("caption", {}, `${t("farm.made")} (${words})`),
        el("thead", {}, el("tr", {}, [t("farm.stage"), t("farm.value"), t("farm.part")].map((one) => el("th", { scope: "col" }, one)))),
        el("tbody", {}, found.by_stage.map((stage) => el("tr", {}, el("th", { scope: "row" }, name("stage", stage.stage, stage.stage)),
          el("td", { class: "n" }, figure(stage.value)), el("td", { class: "n" }, share(stage.share)))))),
      el("table", {},
        el("caption", {}, `${t("farm.beside-others")} (${words})`),
        el("thead", {}, el("tr", {}, [t("tables.product"), t("tables.footprint"), t("tables.interval"), t("tables.studies")].map((one) => el("th", { scope: "col" }, one)))),
        el("tbody", {},
          el("tr", {}, el("th", { scope: "row" }, system.name), el("td", { class: "n" }, figure(found.footprint.median)),
            el("td", { class: "n" }, interval(found.footprint.low, found.footprint.high)), el("td", {})),
          (found.compare ?? []).map((side) => el("tr", {}, el("th", { scope: "row" }, capital(name("product", side.product, side.name))),
            side.footprint
              ? [el("td", { class: "n" }, figure(side.footprint.median)), el("td", { class: "n" }, interval(side.footprint.low, side.footprint.high))]
              : el("td", { colspan: 2 }, t("tables.none")),
            el("td", { class: "n" }, written(side.studies ?? 0))))))));
}

function lists() {
  const list = (title, items) => (items.length === 0 ? null : el("section", {}, el("h2", {}, title), el("ul", { lang: "en" }, items.map((item) => el("li", {}, item)))));
  return [
    list(t("farm.remarks"), answer.remarks.filter((remark) => remark.code !== "method").map((remark) => remark.text)),
    answer.gaps.length === 0 ? null : el("section", {}, el("h2", {}, t("farm.gaps")),
      el("ul", { class: "gaps", lang: "en" }, answer.gaps.map((gap) => el("li", {}, el("strong", {}, gap.field.replaceAll("/", " › ")), `: ${gap.filled_with}`)))),
    el("details", {}, el("summary", {}, t("notes.title")),
      el("ul", { lang: "en" }, answer.warnings.map((warning) => el("li", {}, warning.text)), answer.remarks.filter((remark) => remark.code === "method").map((remark) => el("li", {}, remark.text))),
      el("ul", { lang: "en" }, answer.cautions.map((caution) => el("li", {}, caution.text))),
      el("ol", { lang: "en" }, answer.references.map((reference) => el("li", {}, reference.text)))),
  ];
}

function takeAway(found, flat) {
  const { version, digest } = answer.library;
  const sentence = t("farm.sentence", { name: system.name, boundary: name("boundary", found.boundary), value: figure(found.footprint.median),
    interval: interval(found.footprint.low, found.footprint.high), unit: unit(found.indicator, found.per),
    product: name("product", system.product, words.products.get(system.product)?.name), version });
  const link = new URL(location.pathname + location.search, location.href);
  link.hash = new URLSearchParams([...flat]).toString();
  take(at("take"), {
    sentence,
    link: link.href,
    citation: t("take.cite", { version, digest, link: "POST /v1/footprint", day: today() }),
    picture: { svg: () => view.svg(), title: `${system.name}: ${unit(found.indicator, found.per)}`, fileName: `scalepan-farm-${found.indicator}`,
      caption: [sentence, t("take.drawn", { version, digest })] },
  });
  at("take").querySelector(".downloads").prepend(el("button", { type: "button", id: "save-records", onclick: () => save(
    new Blob([JSON.stringify({ system, per: found.per, indicators, compare: { products: beside } }, null, 2)], { type: "application/json" }), "records.json") }, t("farm.save")));
}

/** Loads records that a link carries. */
function carried() {
  const given = new URLSearchParams(location.hash.slice(1));
  if ([...given].length === 0) return;
  book.write(new Map([...given].map(([path, value]) => [path, /^\d+(\.\d+)?(e[+-]?\d+)?$/.test(value) ? Number(value) : value])));
}

async function demo(file) {
  const { request } = await get(`/page/${file}`);
  book.write(flattened(request.system));
  at("per").value = request.per;
  await compute();
  at("figure").scrollIntoView({ block: "nearest" });
}

async function start() {
  frame();
  document.title = t("farm.page");
  const lists = await vocabulary("products", "regions", "ingredients", "energy-carriers", "transport-modes", "materials", "processing-steps");
  words = Object.fromEntries(Object.entries(lists).map(([list, items]) => [list, byId(items)]));
  options(at("indicator"), indicators.map((id) => [id, capital(name("indicator", id))]), "ghg");
  options(at("per"), units.map((id) => [id, capital(name("per", id))]), "kg-protein");
  const later = calm(350, compute);
  book = notebook(at("records"), words, later);
  view = farmPicture(at("chart"));
  at("per").addEventListener("change", compute);
  at("indicator").addEventListener("change", compute);
  fill(at("demos"), Object.entries(invented).map(([key, file]) => [el("button", { type: "button", class: "quiet demo", onclick: () => demo(file) }, t(`farm.${key}`)), " "]));
  addEventListener("hashchange", () => { carried(); compute(); });
  carried();
  await compute();
}

start().catch((fault) => {
  complain(t("fault.network"));
  throw fault;
});
