// The records of a year as a form: a sentence with three numbers first, everything else on demand.
import { el, fill } from "./dom.js";
import { another, begun, groups, isNeeded, kindOf, lineOf, lists, measuredBy, numbersOf, together } from "./farm-records.js";
import { capital, enteredNumbers, has, name, small, t, typedNumbers } from "./i18n.js";
import { grouped, options, productGroups } from "./vocabulary.js";

const usual = { product: "mealworm", "feed.1.ingredient": "wheat-bran", "energy.1.carrier": "grid-electricity" };
const mostLines = 100;
/** The choice of an insect that is on no list. */
const unlisted = "another";

/**
 * The form, with the vocabularies of the service.
 *
 * @param boxes the elements of the sentence and of the other records
 * @param changed called after a change
 */
export function notebook({ sentence, more }, words, changed) {
  const form = sentence.closest("form");
  let lines = new Map();
  let sent = new Map();

  const linesOf = (list) => lines.get(list) ?? ([...begun, "hens.feed"].includes(list) ? [1] : []);
  const inputs = () => [...form.elements].filter((input) => input.name);
  const input = (path) => inputs().find((one) => one.name === path);

  function choicesOf(from) {
    if (Array.isArray(from)) return from.map((id) => [id, t(`farm.choice.${id}`)]);
    return [...words[from].values()].map((item) => [item.id, capital(name(from, item.id, item.name ?? item.id)) + (item.own_grid === false ? ` (${t("farm.no-own-grid")})` : "")]);
  }

  /** The unit of an amount: fixed, or that of the choice beside it. */
  function unitOf(spec, path) {
    const [amount, choice] = measuredBy[spec.unit] ?? [];
    if (!amount) return spec.unit === "" ? "" : has(`farm.unit.${spec.unit}`) ? t(`farm.unit.${spec.unit}`) : spec.unit;
    const chosen = words[spec.unit].get(input(path.slice(0, -amount.length) + choice)?.value);
    return chosen ? t("farm.unit-a-year", { unit: name("measure", chosen.unit.replace(/\W/g, ""), chosen.unit) }) : "";
  }

  function control(spec, path, described) {
    const common = { id: idOf(path), name: path, form: form.id, "data-kind": spec.kind, "data-unit": spec.unit, "aria-describedby": described };
    if (spec.kind === "choice") {
      const box = el("select", common);
      if (path === "product") {
        const insects = [...words.products.values()].filter((product) => product.group === "insect");
        grouped(box, [...productGroups(insects), [t("farm.unlisted"), [[unlisted, t("farm.another")]]]], usual.product);
      } else if (path in usual) {
        options(box, choicesOf(spec.from).map(([id, said]) => [id, small(said)]), usual[path]);
      } else {
        options(box, [["", t(path === "region" ? "farm.nowhere" : "farm.blank")], ...choicesOf(spec.from)], "");
      }
      return box;
    }
    const numeric = spec.kind === "number";
    return el("input", { ...common, type: "text", inputmode: numeric ? "decimal" : null, maxlength: numeric ? 60 : 100, autocomplete: "off" });
  }

  /** Whether a line of feed has a name of its own instead of one of the list. */
  const isNamed = (at) => Boolean(input(`${at.list}.${at.n}.name`)?.value.trim()) && kindOf(at.list) === "feed";

  /** The word for what a line of feed is of. */
  const ingredientOf = (at) => (isNamed(at) ? undefined : words.ingredients.get(input(`${at.list}.${at.n}.ingredient`)?.value));

  const idOf = (path) => `field-${path.replaceAll(".", "-")}`;
  const keyOf = (path) => path.replace(/^hens\.(?!heads|yield)/, "").replace(/\.\d+\./, ".");

  /** What the page says of a field; of one that it does not know, what the service says. */
  function notes(path, description) {
    const key = `farm.help.${keyOf(path)}`;
    const words = has(key) ? t(key) : has(`farm.field.${keyOf(path)}`) ? null : description;
    return {
      help: words ? el("small", { id: `${idOf(path)}-help`, class: "help" }, words) : null,
      wrong: el("small", { id: `${idOf(path)}-wrong`, class: "wrong" }),
      described: `${words ? `${idOf(path)}-help ` : ""}${idOf(path)}-wrong`,
    };
  }

  function labelOf(path) {
    const key = `farm.field.${keyOf(path)}`;
    return has(key) ? t(key) : capital(keyOf(path).replace(/[._]/g, " "));
  }

  /** One field with its name, its unit, its help and its error message. */
  function field(spec, path) {
    const { help, wrong, described } = notes(path, spec.description);
    return el("div", { class: "field", "data-goes-with": spec.goesWith?.join(" ") },
      el("span", { class: "field-head" }, el("label", { for: idOf(path) }, labelOf(path)),
        spec.kind === "number" ? [" ", el("span", { class: "unit", "data-unit-of": path }, unitOf(spec, path))] : null),
      el("span", { class: "with-unit" }, control(spec, path, described)),
      el("span", { class: "field-foot" }, help, wrong));
  }

  /** A year in one sentence, in the word order of the language, with an explanation of each number below. */
  function drawSentence() {
    const below = [];
    const slot = (spec, path) => {
      const { help, wrong, described } = notes(path);
      below.push(el("span", { class: "below" }, help, " ", wrong));
      return el("label", {}, el("span", { class: "unseen" }, t(`farm.field.${keyOf(path)}`)), control(spec, path, described));
    };
    const [ingredient, feed, burden] = lists.feed.fields;
    const [carrier, amount] = lists.energy.fields;
    const slots = {
      harvest: () => slot({ kind: "number", unit: "kg live a year" }, "harvest.kg_per_year"), product: () => slot({ kind: "choice" }, "product"),
      feed: () => slot(feed, "feed.1.kg"), ingredient: () => slot(ingredient, "feed.1.ingredient"),
      energy: () => slot(amount, "energy.1.amount"), unit: () => el("span", { "data-unit-of": "energy.1.amount", "data-bare": true }),
      carrier: () => slot(carrier, "energy.1.carrier"), region: () => slot({ kind: "choice", from: "regions" }, "region"),
    };
    slots.burden = () => slot(burden, "feed.1.burden");
    const said = (key) => t(key).split(/\{(\w+)\}/).map((part, index) => (index % 2 ? slots[part]() : part));
    fill(sentence, el("p", { class: "sentence" }, said("farm.say")), el("div", { class: "fields", "data-of-another": true }, another.map((spec) => field(spec, spec.path))), el("p", { class: "sentence", "data-of-by-product": "feed.1" }, said("farm.say-burden")),
      el("p", { class: "belows" }, below));
  }

  function line(list, n) {
    const { fields, seldom } = lists[kindOf(list)];
    const own = begun.includes(list) && n === 1;
    const label = t(`farm.list.${kindOf(list)}`);
    return el("div", { class: "line", "data-line": `${list}.${n}` },
      own
        ? el("p", { class: "of-sentence" }, t("farm.of-sentence"))
        : [fields.map((spec) => field(spec, `${list}.${n}.${spec.path}`)),
          el("button", { type: "button", class: "quiet remove", "aria-label": t("farm.remove-which", { line: label, n }), onclick: () => remove(list, n) }, t("farm.remove"))],
      seldom ? el("details", { class: "seldom", open: own && list === "feed" }, el("summary", {}, t(`farm.seldom.${kindOf(list)}`)),
        el("div", { class: "line-fields" }, seldom.map((spec) => field(spec, `${list}.${n}.${spec.path}`)))) : null);
  }

  function listBox(list) {
    const kind = kindOf(list);
    return [
      el("div", { class: "lines", "data-list": list }, linesOf(list).map((n) => line(list, n))),
      el("button", { type: "button", class: "quiet add", "data-add": list, onclick: () => add(list) }, `+ ${t(`farm.list.${kind}`)}`),
    ];
  }

  function add(list) {
    const n = Math.max(0, ...linesOf(list)) + 1;
    if (n > mostLines) return;
    lines.set(list, [...linesOf(list), n]);
    const fresh = line(list, n);
    more.querySelector(`[data-list="${list}"]`).append(fresh);
    fresh.querySelector("input, select").focus();
    showDependent();
  }

  /** Removes a line; the focus moves to the button that adds one. */
  function remove(list, n) {
    lines.set(list, linesOf(list).filter((other) => other !== n));
    more.querySelector(`[data-line="${list}.${n}"]`).remove();
    more.querySelector(`[data-add="${list}"]`).focus();
    showDependent();
    changed();
  }

  function draw() {
    drawSentence();
    fill(more, groups.map(([group, ...parts]) => el("details", { "data-group": group, class: "group" },
      el("summary", {}, t(`farm.group.${group}`), " ", el("small", { class: "filled" })),
      has(`farm.about.${group}`) ? el("p", { class: "help" }, t(`farm.about.${group}`)) : null,
      parts.map((part) => (Array.isArray(part) ? el("div", { class: "fields" }, part.map((spec) => field(spec, spec.path))) : listBox(part))))));
    showDependent();
  }

  /** Updates what depends on other fields: units, conditional fields, how much of a group is filled in. */
  function showDependent() {
    for (const unit of form.ownerDocument.querySelectorAll("[data-unit-of]")) {
      const path = unit.dataset.unitOf;
      const spec = { unit: input(path).dataset.unit };
      unit.textContent = unit.dataset.bare === undefined ? unitOf(spec, path) : words[spec.unit].get(input("energy.1.carrier").value)?.unit ?? "";
    }
    for (const box of more.querySelectorAll("[data-goes-with]")) {
      const [beside, ...values] = box.dataset.goesWith.split(" ");
      const own = box.querySelector("[name]");
      const off = !values.includes(input(own.name.replace(/\w+$/, beside)).value);
      box.hidden = off;
      own.disabled = off;
    }
    for (const box of sentence.querySelectorAll("[data-of-by-product]")) {
      const made = ["crop", "forage", "compound", "insect-substrate"].includes(ingredientOf({ list: "feed", n: 1 })?.kind);
      box.hidden = made;
      box.querySelector("[name]").disabled = made;
    }
    // What an insect that is on no list holds stands with its name; for others the same numbers are their composition.
    for (const one of inputs().filter(({ name: path }) => /^(product|composition)\./.test(path))) {
      one.disabled = (input("product").value === unlisted) !== one.name.startsWith("product.");
      one.closest(".field").hidden = one.disabled;
    }
    sentence.querySelector("[data-of-another]").hidden = input("product").value !== unlisted;
    const said = (...paths) => paths.map((path) => input(path).value.trim()).filter(Boolean);
    input("harvest.kg_per_year").placeholder = said("harvest.containers", "harvest.kg_per_container", "harvest.cycles_per_year").join(" × ")
      || said("harvest.larvae", "harvest.larvae_per_kg").join(" ÷ ");
    for (const group of more.querySelectorAll(".group")) {
      const n = [...group.querySelectorAll("[name]")].filter((one) => one.value && !one.disabled).length;
      group.querySelector(".filled").textContent = n ? t("farm.filled", { n }) : "";
    }
  }

  /** The lines of each list that count, those with an amount, in order. */
  function counted() {
    const order = new Map();
    for (const one of inputs()) {
      const at = lineOf(one.name);
      if (!at || at.field !== lists[kindOf(at.list)].needs || one.value.trim() === "") continue;
      order.set(at.list, [...(order.get(at.list) ?? []), at.n]);
    }
    return order;
  }

  /** Reads the fields under flat names; marks what is not a number, and notes what would not count. */
  function read() {
    const flat = new Map();
    let wrong = false;
    sent = new Map();
    const order = counted();
    inputs().forEach((one) => mark(one, ""));
    for (const one of inputs()) {
      const at = lineOf(one.name);
      const place = at ? (order.get(at.list) ?? []).indexOf(at.n) : 0;
      if (one.disabled || (one.name === "product" && one.value === unlisted) || (at?.field === "ingredient" && isNamed(at))) continue;
      if (one.value.trim() === "") {
        if (at && place >= 0 && isNeeded(at.list, at.field, ingredientOf(at), input(`${at.list}.${at.n}.burden`)?.value, isNamed(at))) {
          say(one, t("farm.needed"));
          wrong = true;
        }
        continue;
      }
      if (place < 0) {
        const begins = begun.includes(at.list) && at.n === 1;
        if (!begins) say(input(`${at.list}.${at.n}.${lists[kindOf(at.list)].needs}`), t("farm.without"));
        continue;
      }
      const path = at ? `${at.list}.${place + 1}.${at.field}` : one.name;
      sent.set(path, one);
      if (one.dataset.kind !== "number") {
        flat.set(path, one.value.trim());
        continue;
      }
      const { numbers, ambiguous } = enteredNumbers(one.value);
      // A year is one number.
      if (numbers.length === 0 || (numbers.length > 1 && one.dataset.unit === "year")) {
        mark(one, t("farm.bad"));
        wrong = true;
        continue;
      }
      if (ambiguous) say(one, t("farm.read-as", { number: typedNumbers(numbers) }));
      const read = one.dataset.unit === "percent" ? numbers.map((value) => Number((value / 100).toPrecision(12))) : numbers;
      flat.set(path, read.length === 1 ? read[0] : read);
    }
    if (input("product").value === unlisted && !flat.has("product.name")) {
      say(input("product.name"), t("farm.needed"));
      wrong = true;
    }
    for (const { given, only, unless, needs, or } of together) {
      if (flat.has(or) || !flat.has(given) || flat.get(given) === unless || (only && flat.get(given) !== only)) continue;
      for (const path of needs.filter((other) => !flat.has(other))) {
        say(input(path), t("farm.needed"));
        wrong = true;
      }
    }
    const hens = [...flat.keys()].some((path) => path.startsWith("hens."));
    if (hens && !(flat.has("hens.heads") && (flat.has("hens.yield.eggs_kg") || flat.has("hens.yield.live_kg")))) {
      say(input("hens.heads"), t("farm.hens-need"));
      [...flat.keys()].filter((path) => path.startsWith("hens.")).forEach((path) => flat.delete(path));
    }
    const harvested = ["harvest.kg_per_year", "harvest.containers", "harvest.larvae", "harvest.pairs"].some((path) => flat.has(path));
    return { flat, ready: !wrong && harvested && flat.has("feed.1.kg") };
  }

  function say(one, words) {
    const place = form.ownerDocument.getElementById(`${one.id}-wrong`);
    if (place) place.textContent = words;
  }

  function mark(one, words) {
    one.setAttribute("aria-invalid", String(Boolean(words)));
    say(one, words);
  }

  /** Puts values into the form, by flat name, replacing its content. */
  function write(flat) {
    lines = new Map();
    for (const path of flat.keys()) {
      const at = lineOf(path);
      if (at && at.n <= mostLines && !linesOf(at.list).includes(at.n)) lines.set(at.list, [...linesOf(at.list), at.n].sort((one, two) => one - two));
    }
    draw();
    if (flat.has("product.name")) input("product").value = unlisted;
    for (const [path, value] of flat) {
      const one = input(path);
      if (!one) continue;
      const numbers = one.dataset.kind === "number" ? numbersOf(value) : [];
      const shown = one.dataset.unit === "percent" ? numbers.map((number) => Number((number * 100).toPrecision(12))) : numbers;
      one.value = shown.length > 0 ? typedNumbers(shown) : value;
      const seldom = one.closest("details.seldom");
      if (seldom) seldom.open = true;
    }
    showDependent();
  }

  /** Marks a field that the service refused, by its pointer in the records; returns whether there is one. */
  function refuse(pointer, words) {
    const hens = pointer.startsWith("/compare/systems/0/");
    const path = pointer.replace(/^\/(system|compare\/systems\/0)\//, "").split("/").map((part) => (/^\d+$/.test(part) ? Number(part) + 1 : part)).join(".");
    const full = hens ? `hens.${path}` : path;
    const at = lineOf(full);
    const beside = at && [...sent].find(([other]) => other.startsWith(`${at.list}.${at.n}.`))?.[1];
    const one = sent.get(full) ?? (beside && input(beside.name.replace(/\w+$/, at.field))) ?? input(full) ?? inputs().find((other) => other.name.startsWith(`${full}.`));
    if (!one) return false;
    mark(one, words);
    for (let group = one.closest("details"); group; group = group.parentElement.closest("details")) group.open = true;
    return true;
  }

  const heard = () => { showDependent(); changed(); };
  form.addEventListener("submit", (event) => event.preventDefault());
  for (const box of [sentence, more]) for (const event of ["input", "change"]) box.addEventListener(event, heard);
  draw();
  return { read, write, refuse };
}
