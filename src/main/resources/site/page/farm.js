// The farm view: the records of a year become a figure as they are typed. They are only sent to the service for computing;
// they are in no address but the fragment of a link that the reader copies, which browsers never send.
import { byId as at, calm, el, english, fill } from "./dom.js";
import { farmPicture } from "./farm-chart.js";
import { notebook } from "./farm-form.js";
import { drivers } from "./farm-more.js";
import { inWords, missing } from "./farm-places.js";
import { sayPrice } from "./farm-price.js";
import { flattened, learnFields, linked, systems } from "./farm-records.js";
import { cells, isPublished, kind, sentence, table, times } from "./farm-said.js";
import { frame } from "./frame.js";
import { capital, figure, interval, language, name, share, small, spoken, t, the, unit } from "./i18n.js";
import { farmChoices } from "./modelled.js";
import { address, fetched, get, newest, post, Refusal } from "./service.js";
import { save } from "./picture-file.js";
import { take, today } from "./take.js";
import { byId, choices, options, vocabulary } from "./vocabulary.js";

const indicators = ["ghg", "land", "feed", "energy", "energy-on-farm", "water", "water-on-farm"];
const units = ["kg-live", "kg-product", "kg-edible", "kg-dry-matter", "kg-protein", "100g-protein", "kg-quality-protein"];
const boundaries = ["animal", "farm-gate", "processing-gate"];
const usual = { indicator: "ghg", per: "kg-protein", boundary: "farm-gate", beside: "egg,chicken,beef", farms: "" };
const farms = { "demo-superworms": "invented-school-superworms.json", "demo-flies": "invented-brewery-black-soldier-flies.json" };
const flock = "invented-allotment-hens.json";
/** The largest number of published products of a brief about a farm. */
const briefest = 7;

const latest = newest();
const latestHens = newest();
let words = null;
let book = null;
let view = null;
let answer = null;
let asked = null;
let shown = { ...usual };

const beside = () => shown.beside.split(",").filter(Boolean);
const practice = () => shown.farms.split(",").filter(Boolean);

function complain(text) {
  at("fault").textContent = text;
  at("fault").hidden = !text;
}

/** The request to the service: the records, the comparison basis, and the sides to compare with. */
function question(flat) {
  const { system, hens } = systems(flat);
  system.name ??= t("farm.your-farm");
  if (hens) {
    hens.name ??= t("farm.your-hens");
    if (system.region) hens.region ??= system.region;
  }
  return {
    system,
    per: shown.per,
    // The default system boundary depends on the indicator: for published feed it is the animal.
    ...(shown.boundary === usual.boundary ? {} : { boundary: shown.boundary }),
    indicators,
    compare: { products: beside(), systems: hens ? [hens] : [], reference_farms: practice() },
  };
}

async function compute() {
  const { flat, ready } = book.read();
  complain("");
  if (!ready) {
    if (answer) complain(t("farm.stale"));
    else fill(at("figure"), el("p", { class: "waiting" }, t("farm.waiting")));
    return;
  }
  const body = question(flat);
  try {
    const got = await latest((signal) => post(address("/v1/footprint", spoken), body, signal));
    if (!got) return;
    answer = got;
    asked = body;
    show(flat);
    const [hens] = body.compare.systems;
    await Promise.all([drivers(at("drivers"), { system: body.system, indicator: shown.indicator, per: body.per, ...ends() }, beside(), hens), tellHens(hens)]);
  } catch (fault) {
    refused(fault);
  }
}

const ends = () => (asked.boundary ? { boundary: asked.boundary } : {});

function refused(fault) {
  if (!(fault instanceof Refusal)) {
    complain(t("fault.network"));
    return;
  }
  const errors = fault.problem.errors ?? [];
  const placed = errors.filter((error) => error.pointer && book.refuse(error.pointer, error.message));
  complain(t("fault.refused", { detail: placed.length === errors.length && errors.length > 0 ? errors.map((error) => error.message).join("; ") : fault.message }));
}

function show(flat) {
  const found = answer.footprints.find((one) => one.indicator === shown.indicator);
  const whole = found?.footprint;
  at("shown-as").hidden = false;
  at("chart").hidden = !whole;
  at("take-section").hidden = !whole;
  if (!whole) {
    fill(at("figure"), el("p", { class: "headline" }, t("farm.none", { reason: found?.reason ?? "" })));
    fill(at("said"), lists());
    return;
  }
  // The warning may be about another indicator.
  const lower = found.bound === "at-least";
  fill(at("figure"),
    el("p", { class: "headline own-figure" }, el("strong", {}, (found.bound === "at-least" ? t("farm.at-least") : "") + figure(whole.median)), ` ${unit(found.indicator, found.per)}`),
    el("p", { class: "fact" }, el("span", { class: "range" }, t("farm.range", { interval: interval(whole.low, whole.high) })), ", ", name("boundary", found.boundary)),
    found.credit_the_other_way?.footprint ? el("p", {}, t("farm.with-credit", { value: figure(found.credit_the_other_way.footprint.median),
      interval: interval(found.credit_the_other_way.footprint.low, found.credit_the_other_way.footprint.high) })) : null,
    found.with_displaced_use ? el("p", {}, displacedSaid(found.with_displaced_use)) : null,
    el("ul", { class: "besides" }, (found.compare ?? []).map((side) => el("li", {}, besideSaid(side, found)))),
    lower ? el("p", { class: "lower" }, found.not_counted.length > 0 ? t("farm.lower-named", { what: found.not_counted.map((what) => missing(what, words)).join("; ") }) : t("farm.lower")) : null,
    impossible(found) ? el("p", { class: "lower" }, t("farm.impossible"), el("span", { lang: language }, ` ${found.contradictions.join("; ")}.`)) : null,
    el("p", { id: "price-of-protein" }),
    next(found.record_next ?? []));
  sayPrice(at("price-of-protein"), asked.system);
  at("take-section").hidden = impossible(found);
  view.show(found, asked.system.name, (found.not_counted ?? []).map((what) => missing(what, words)));
  // The previous sensitivity stays until the new one arrives, so that the layout is stable and no focus is lost.
  fill(at("said"), table(found, asked.system.name), at("drivers") ?? el("div", { id: "drivers" }), lists());
  at("library").textContent = t("frame.library", answer.library);
  if (!impossible(found)) takeAway(found, flat, lower);
}

/** What would make the figure truer, what could change it most first. */
const next = (found) => (found.length === 0 ? null : el("details", { class: "record-next" }, el("summary", {}, t("farm.next")),
  el("ol", { lang: language }, found.map((one) => el("li", {}, el("strong", {}, inWords(one.field, words)), `${t("colon")}${one.now}`,
    one.share === undefined ? null : el("small", {}, ` ${t("farm.next-share", { share: share(one.share) })}`))))));

/** Whether the records contradict themselves: then the figure is shown, and nothing is there to be copied. */
const impossible = (found) => (found.contradictions ?? []).length > 0;

/** The second figure where a by-product that is sold is counted as carrying nothing: with what replaces it elsewhere. */
function displacedSaid({ ingredients, footprint }) {
  const feed = ingredients.map((id) => small(name("ingredients", id, id.replaceAll("-", " ")))).join(", ");
  return footprint ? t("farm.displaced", { feed, value: figure(footprint.median), interval: interval(footprint.low, footprint.high) }) : t("farm.displaced-unknown", { feed });
}

function besideSaid(side, found) {
  const told = times(side);
  const product = isPublished(side) ? the("product", side.product, side.name) : side.system;
  return [told ? t("farm.beside", told) : t(withoutRatio(side, found), { product }), el("small", {}, ` ${kind(side)}`)];
}

/** Why there is no ratio: no figure, a figure that may be zero or below, or a bound. */
function withoutRatio(side, found) {
  if (!side.footprint) return "farm.beside-none";
  if (impossible(found) || impossible(side)) return "farm.beside-impossible";
  if (["non-renewable", "cumulative-fossil"].includes(side.energy_kind)) return "farm.beside-kind";
  const positive = side.footprint.low > 0 && found.footprint.low > 0;
  return positive ? "farm.beside-bound" : "farm.beside-below";
}

function lists() {
  const list = (title, items) => (items.length === 0 ? null : el("section", {}, el("h2", {}, title), el("ul", { lang: language }, items.map((item) => el("li", {}, item)))));
  return [
    list(t("farm.remarks"), answer.remarks.filter((remark) => remark.code !== "method").map((remark) => remark.text)),
    gaps(t("farm.gaps"), answer.gaps),
    el("div", { id: "hens-gaps" }),
    el("details", {}, el("summary", {}, t("notes.title")),
      el("ul", { lang: language }, answer.warnings.map((warning) => el("li", {}, warning.text)), answer.remarks.filter((remark) => remark.code === "method").map((remark) => el("li", {}, remark.text))),
      el("ul", { lang: language }, answer.cautions.map((caution) => el("li", {}, caution.text))),
      el("ol", { lang: "en" }, answer.references.map((reference) => el("li", {}, reference.text)))),
  ];
}

const gaps = (title, found) => (found.length === 0 ? null : el("section", {}, el("h2", {}, title),
  el("ul", { class: "gaps", lang: language }, [...found].sort((one, two) => (one.kind === "filled") - (two.kind === "filled")).map((gap) => el("li", { class: gap.kind },
    el("strong", {}, inWords(gap.field, words)), `${t("colon")}${gap.filled_with}`)))));

/** Defaults and omissions of the hens: incomplete records must not look like a low footprint. */
async function tellHens(hens) {
  if (!hens) return;
  const told = await latestHens((signal) => post(address("/v1/footprint", spoken), { system: hens, indicators: ["ghg"], draws: 1000 }, signal));
  if (!told) return;
  const lower = told.warnings.some((warning) => warning.code === "lower-bound");
  fill(at("hens-gaps"), gaps(t("farm.hens-gaps", { hens: hens.name }), told.gaps));
  if (lower) at("figure").append(el("p", { class: "lower" }, t("farm.hens-lower", { hens: hens.name })));
}

/** The address of this view with the records in its fragment. */
function link(flat) {
  const address = new URL(location.pathname + location.search, location.href);
  const told = Object.entries(shown).filter(([part, value]) => value !== usual[part]);
  address.hash = new URLSearchParams([...linked(flat), ...told]).toString().replaceAll("%2C", ",");
  return address.href;
}

/** What a farm rears in a sentence: an insect of the service, or one by the name that its records give. */
const reared = (product) => product.name ?? the("product", product, words.products.get(product)?.name);

function takeAway(found, flat, lower) {
  const { version, digest } = answer.library;
  const second = found.with_displaced_use ? ` ${displacedSaid(found.with_displaced_use)}` : "";
  const said = sentence(found, { farm: asked.system.name, product: reared(asked.system.product), lower, version }) + second;
  const file = `scalepan-farm-${found.indicator}`;
  const question = asked;
  take(at("take"), {
    sentence: said,
    cells: { name: t("take.cells"), of: (decimal) => cells([found], question.system.name, answer.library, { decimal }) },
    link: link(flat),
    citation: t("take.cite", { version, digest, link: t("farm.cited", { address: new URL("/v1/footprint", location.href).href }), day: today() }),
    picture: { svg: () => view.svg(), title: `${question.system.name}${t("colon")}${unit(found.indicator, found.per)}`, fileName: file, caption: [said, t("take.drawn", { version, digest })] },
    made: [
      [t("take.csv"), "save-csv", () => save(new Blob([cells(answer.footprints, question.system.name, answer.library, { separator: ",", whole: true })], { type: "text/csv" }), "scalepan-farm.csv")],
      [t("take.workbook"), "save-workbook", () => filed(async () => save(await fetched("/v1/footprint?format=xlsx", question), "scalepan-farm.xlsx"))],
      against(question) && [t(beside().length > briefest + (question.compare.systems.length ? 0 : 1) ? "take.brief-some" : "take.brief", { n: briefest }), "save-brief", () => filed(() => brief(found, question))],
      [t("farm.save"), "save-records", () => save(new Blob([JSON.stringify(question, null, 2)], { type: "application/json" }), "records.json")],
    ].filter(Boolean),
  });
}

/** Creates a file from a request to the service. */
async function filed(make) {
  complain("");
  try {
    await make();
  } catch (fault) {
    refused(fault);
    at("fault").scrollIntoView({ block: "center" });
  }
}

/** The reference of a brief: hens by the same rules if there are any, else the last product. */
function against({ compare }) {
  const [hens] = compare.systems;
  if (hens) return { against_system: hens };
  return compare.products.length > 0 ? { against: compare.products[compare.products.length - 1] } : null;
}

/** The service's brief with inline styles, because a file cannot load style sheets from the service. */
async function brief(found, question) {
  const reference = against(question);
  const page = await fetched("/v1/brief?format=html", { system: question.system, ...reference, indicator: found.indicator, per: found.per, boundary: found.boundary,
    products: question.compare.products.filter((id) => id !== reference.against).slice(0, briefest) });
  const looks = await (await fetch("/page/scalepan.css")).text();
  const html = (await page.text()).replace(/<link rel="icon"[^>]*>\s*/, "").replace(/<link rel="stylesheet"[^>]*>/, () => `<style>${looks}</style>`);
  save(new Blob([html], { type: "text/html" }), "scalepan-farm-brief.html");
}

/** Fills the form and the settings from a link. */
function carried() {
  const given = new Map(new URLSearchParams(location.hash.slice(1)));
  if (given.size === 0) return;
  const told = Object.fromEntries(Object.keys(usual).map((part) => [part, given.get(part) ?? usual[part]]));
  Object.keys(usual).forEach((part) => given.delete(part));
  shown = { ...told, indicator: indicators.includes(told.indicator) ? told.indicator : usual.indicator };
  controls();
  book.write(given);
}

async function demo(file) {
  const { request } = await get(`/page/${file}`);
  shown = { indicator: shown.indicator, per: request.per, boundary: request.boundary ?? usual.boundary, beside: request.compare.products.join(","), farms: shown.farms };
  controls();
  book.write(flattened(request.system));
  await compute();
  at("figure").scrollIntoView({ block: "nearest" });
}

/** Adds hens to the farm in the form. */
async function hens() {
  const { request } = await get(`/page/${flock}`);
  const { flat } = book.read();
  for (const path of [...flat.keys()]) if (path.startsWith("hens.")) flat.delete(path);
  for (const [path, value] of flattened(request.system)) flat.set(`hens.${path}`, value);
  book.write(flat);
  await compute();
}

function controls() {
  options(at("indicator"), indicators.map((id) => [id, capital(name("indicator", id))]), shown.indicator);
  options(at("per"), units.map((id) => [id, capital(name("per", id))]), shown.per);
  options(at("boundary"), boundaries.map((id) => [id, capital(name("boundary", id))]), shown.boundary);
  const title = () => { at("beside-title").textContent = t("farm.besides", { n: beside().length + practice().length }); };
  title();
  farmChoices(at("farm-choices"), [...words["reference-farms"].values()], practice(), (id, on) => {
    shown.farms = (on ? [...practice(), id] : practice().filter((other) => other !== id)).join(",");
    title();
    compute();
  });
  choices(at("choices"), [...words.products.values()], {
    chosen: beside(),
    studied: (product) => product.evidence?.some((known) => known.indicator === shown.indicator),
    toggle: (id, on) => {
      shown.beside = (on ? [...beside(), id] : beside().filter((other) => other !== id)).join(",");
      title();
      compute();
    },
  });
}

async function start() {
  frame();
  document.title = t("farm.page");
  const known = await vocabulary("products", "regions", "ingredients", "energy-carriers", "transport-modes", "materials", "processing-steps", "forms", "climates", "manure-systems", "record-fields", "reference-farms");
  learnFields(known["record-fields"]);
  words = Object.fromEntries(Object.entries(known).map(([list, items]) => [list, byId(items)]));
  book = notebook({ sentence: at("said-year"), more: at("more") }, words, calm(350, compute));
  view = farmPicture(at("chart"));
  controls();
  for (const part of ["indicator", "per", "boundary"]) {
    at(part).addEventListener("change", (event) => {
      shown[part] = event.target.value;
      controls();
      compute();
    });
  }
  const loads = (key, load) => [el("button", { type: "button", class: "quiet demo", id: key, onclick: load }, t(`farm.${key}`)), " "];
  fill(at("demos"), Object.entries(farms).map(([key, file]) => loads(key, () => demo(file))), loads("demo-hens", hens));
  addEventListener("hashchange", () => { carried(); compute(); });
  carried();
  await compute();
}

start().catch((fault) => {
  complain(t("fault.network"));
  throw fault;
});
