// A programme as a form: a sentence with the four things that must be said, everything else on demand. Its values have the flat names of the
// request (`baseline.1.share`), as a link has them.
import { el, fill } from "./dom.js";
import { entered, name, t, the, typed } from "./i18n.js";
import { nested } from "./farm-records.js";
import { grouped, options, productGroups } from "./vocabulary.js";

const kilograms = ["kg-product", "kg-live", "kg-edible", "kg-dry-matter", "kg-protein"];
const uses = ["food", "poultry", "fish", "pig"];
const equals = { food: ["kg-protein", "kg-quality-protein", "kg-edible", "kg-dry-matter"], feed: ["kg-protein", "kg-digestible-lysine", "kg-dry-matter"] };
const percent = ["displacement_rate", /^baseline\.\d+\.(share|imported_share)$/];
const feedForms = ["meal", "defatted-meal", "dried"];
const mostDisplaced = 10;

/** What the fields below the sentence ask for, by group. */
const groups = [
  ["diet", ["inclusion_percent", "feed_kg_per_year"]],
  ["reach", ["households", "beneficiaries", "women", "men", "meals_per_year", "grams_per_meal", "years"]],
  ["money", ["currency", "price_per_kg", "cost_per_year"]],
];
const units = { inclusion_percent: "%", feed_kg_per_year: "kg", grams_per_meal: "g" };

const isShare = (path) => percent.some((one) => (typeof one === "string" ? one === path : one.test(path)));

/**
 * The form in its two boxes.
 *
 * @param words vocabularies: `products` by id, and `forms`, the forms in which each product has published contents
 * @param changed called after each change
 */
export function programmeForm({ sentence, more }, words, changed) {
  const form = sentence.closest("form");
  let lines = [1];
  const control = (path) => form.elements.namedItem(path);
  const use = () => control("use")?.value ?? "food";
  const isFeed = () => use() !== "food";

  const own = (path) => ({ name: path, id: `p-${path}`, form: form.id });

  const number = (path, label, value = "") => el("label", {}, el("span", { class: "unseen" }, label), el("input", { ...own(path), type: "text", inputmode: "decimal", autocomplete: "off", maxlength: 20, value }));

  const menu = (path, label, choices, value) => {
    const box = el("select", own(path));
    options(box, choices, value);
    return el("label", {}, el("span", { class: "unseen" }, label), box);
  };

  function productMenu(path, label, value, feed, mine) {
    const box = el("select", own(path));
    const all = [...words.products.values()];
    if (feed && mine) {
      const meals = all.filter((product) => product.group === "insect").flatMap((product) => (words.forms.get(product.id) ?? []).filter((one) => feedForms.includes(one))
        .map((one) => [`${product.id}:${one}`, t("contents.formed", { product: the("product", product.id, product.name), form: name("form", one) })]));
      options(box, meals, value);
    } else {
      grouped(box, productGroups(feed ? all.filter((product) => product.group === "feed" || product.group === "plant") : all, the), value);
    }
    return el("label", {}, el("span", { class: "unseen" }, label), box);
  }

  function drawSentence(values) {
    const feed = (values.use ?? "food") !== "food";
    const slots = {
      kg: () => number("kg_per_year", t("programme.field.kg_per_year"), values.kg_per_year ?? ""),
      unit: () => menu("unit", t("programme.field.unit"), kilograms.map((id) => [id, name("per", id)]), values.unit ?? "kg-product"),
      product: () => productMenu("product", t("claim.product"), values.product ?? (feed ? "mealworm:meal" : "mealworm"), feed, true),
      use: () => menu("use", t("programme.field.use"), uses.map((id) => [id, t(`programme.use.${id}`)]), values.use ?? "food"),
      rate: () => number("displacement_rate", t("programme.field.displacement_rate"), values.displacement_rate ?? ""),
      baseline: () => productMenu("baseline.1.product", t("programme.field.baseline"), values["baseline.1.product"] ?? (feed ? "soybean-meal" : "chicken"), feed),
    };
    fill(sentence, el("p", { class: "sentence" }, t("programme.say").split(/\{(\w+)\}/).map((part, index) => (index % 2 ? slots[part]() : part))),
      el("p", { class: "help" }, t("programme.rate-help")));
  }

  const field = (path, label, { unit = "", help = null, value = "", kind = "decimal" } = {}) => el("div", { class: "field" },
    el("span", { class: "field-head" }, el("label", { for: `p-${path}` }, label), unit ? [" ", el("span", { class: "unit" }, unit)] : null),
    el("span", { class: "with-unit" }, el("input", { ...own(path), type: "text", inputmode: kind, autocomplete: "off", maxlength: 20, value, "data-kind": kind === "text" ? null : "number" })),
    help ? el("small", { class: "help" }, help) : null);

  function line(n, values) {
    const path = (part) => `baseline.${n}.${part}`;
    const value = (part) => values[path(part)] ?? "";
    return el("div", { class: "line", "data-line": n },
      n === 1 ? el("p", { class: "of-sentence" }, t("farm.of-sentence"), " ", el("strong", { id: "first-displaced" }))
        : el("div", { class: "field" }, el("span", { class: "field-head", "aria-hidden": "true" }, t("programme.field.baseline")), productMenu(path("product"), t("programme.field.baseline"), value("product") || (isFeed() ? "fishmeal" : "pork"), isFeed())),
      field(path("share"), t("programme.field.share"), { unit: "%", value: value("share") }),
      field(path("price_per_kg"), t("programme.field.displaced_price"), { value: value("price_per_kg") }),
      field(path("imported_share"), t("programme.field.imported_share"), { unit: "%", value: value("imported_share") }),
      n === 1 ? null : el("button", { type: "button", class: "quiet remove", onclick: () => { lines = lines.filter((other) => other !== n); drawMore(read().shown); changed(); } }, t("farm.remove")));
  }

  function drawMore(values) {
    const feed = isFeed();
    const open = new Set([...more.querySelectorAll("details[open]")].map((one) => one.dataset.group));
    const group = (id, ...parts) => el("details", { class: "group", "data-group": id, open: open.has(id) }, el("summary", {}, t(`programme.group.${id}`), " ", el("small", { class: "filled" })), parts);
    fill(more,
      group("displaced", el("p", { class: "help" }, t("programme.about.displaced")), lines.map((n) => line(n, values)),
        lines.length < mostDisplaced ? el("button", { type: "button", class: "quiet add", onclick: () => {
          const shown = read().shown;
          lines = [...lines, Math.max(...lines) + 1];
          drawMore(shown);
          changed();
        } }, `+ ${t("programme.add")}`) : null),
      groups.filter(([id]) => feed || id !== "diet").map(([id, paths]) => group(id, el("p", { class: "help" }, t(`programme.about.${id}`)), el("div", { class: "fields" },
        paths.map((path) => field(path, t(`programme.field.${path}`), { unit: units[path], value: values[path] ?? (path === "currency" ? "EUR" : ""), kind: path === "currency" ? "text" : "decimal" }))))),
      group("account", el("div", { class: "fields" },
        el("div", { class: "field" }, el("label", { for: "p-on" }, t("programme.field.on")), choice("on", equals[feed ? "feed" : "food"].map((id) => [id, id === "kg-digestible-lysine" ? t("programme.lysine") : name("per", id)]), values.on ?? "kg-protein")),
        el("div", { class: "field" }, el("label", { for: "p-region" }, t("basis.region")), choice("region", [...words.regions.values()].map((region) => [region.id, name("region", region.id, region.name)]), values.region ?? "world")))));
    dependent();
  }

  function choice(path, choices, value) {
    const box = el("select", own(path));
    options(box, choices, value);
    return el("span", { class: "with-unit" }, box);
  }

  function dependent() {
    const first = control("baseline.1.product");
    const place = document.getElementById("first-displaced");
    if (place && first) place.textContent = first.selectedOptions[0]?.textContent ?? "";
    for (const group of more.querySelectorAll("[data-group]")) {
      const filled = [...group.querySelectorAll("input")].filter((one) => one.value.trim() && one.name !== "currency").length;
      group.querySelector(".filled").textContent = filled ? t("farm.filled", { n: filled }) : "";
    }
    for (const path of ["kg_per_year", "unit"]) control(path).disabled = Boolean(control("inclusion_percent")?.value.trim());
  }

  /** Reads the form: the request, the values as they stand, and whether all that is needed is there. */
  function read() {
    const shown = {};
    const flat = new Map();
    let wrong = false;
    for (const one of [...form.elements].filter((input) => input.name)) {
      const text = one.value.trim();
      one.setAttribute("aria-invalid", "false");
      shown[one.name] = one.value;
      if (!text || one.disabled || one.name === "use") continue;
      if (one.tagName === "SELECT" || one.name === "currency") {
        flat.set(one.name, one.name === "currency" ? text.toUpperCase() : text);
        continue;
      }
      const { value } = entered(text);
      const high = isShare(one.name) || one.name === "inclusion_percent" ? 100 : 1e12;
      if (!(value >= 0 && value <= high)) {
        one.setAttribute("aria-invalid", "true");
        wrong = true;
        continue;
      }
      flat.set(one.name, isShare(one.name) ? Number((value / 100).toPrecision(12)) : value);
    }
    if (isFeed()) {
      flat.set("as", "feed");
      flat.set("animal", use());
    }
    const money = ["price_per_kg", "cost_per_year"].some((path) => flat.has(path)) || [...flat.keys()].some((path) => path.endsWith(".price_per_kg"));
    if (!money) flat.delete("currency");
    if (flat.get("region") === "world") flat.delete("region");
    const quantity = flat.has("kg_per_year") || (flat.has("inclusion_percent") && flat.has("feed_kg_per_year"));
    return { flat, shown, ready: !wrong && quantity && flat.has("displacement_rate"), wrong };
  }

  /** The body of the request; lines of what is displaced are numbered without holes. */
  function request(flat) {
    const order = lines.filter((n) => flat.has(`baseline.${n}.product`));
    const numbered = new Map([...flat].map(([path, value]) => [path.replace(/^baseline\.(\d+)\./, (whole, n) => `baseline.${order.indexOf(Number(n)) + 1}.`), value]));
    return nested(numbered, {});
  }

  /** Puts the values of a link or a demo into the form. */
  function write(given) {
    const values = Object.fromEntries([...given].map(([path, value]) => [path, isShare(path) && Number.isFinite(Number(value)) ? typed(Number((Number(value) * 100).toPrecision(12)))
      : /^[\d.]+$/.test(String(value)) ? typed(Number(value)) : String(value)]));
    values.use = values.as === "feed" ? values.animal ?? "poultry" : "food";
    lines = [...new Set([1, ...Object.keys(values).flatMap((path) => /^baseline\.(\d+)\./.exec(path)?.[1] ?? []).map(Number)])].slice(0, mostDisplaced);
    drawSentence(values);
    drawMore(values);
    for (const group of more.querySelectorAll("details")) group.open = [...group.querySelectorAll("input")].some((one) => one.value && one.name !== "currency");
  }

  form.addEventListener("submit", (event) => event.preventDefault());
  for (const box of [sentence, more]) for (const event of ["input", "change"]) box.addEventListener(event, () => { dependent(); changed(); });
  sentence.addEventListener("change", (event) => {
    if (event.target.name !== "use") return;
    // Feed is made of other products than food, and displaces others.
    const { kg_per_year, displacement_rate, use: chosen } = read().shown;
    lines = [1];
    drawSentence({ kg_per_year, displacement_rate, use: chosen });
    drawMore({});
    control("use").focus();
    changed();
  });
  drawSentence({});
  drawMore({});
  return { read, request, write };
}
