// The notebook of a year as a form. Names of fields are the columns of the table that POST /v1/footprints takes.
import { el, fill } from "./dom.js";
import { capital, has, language, name, t, written } from "./i18n.js";
import { number } from "./question.js";
import { grouped, options, productGroups } from "./vocabulary.js";

const num = (path, unit, more = {}) => ({ path, kind: "number", unit, ...more });
const pick = (path, from, more = {}) => ({ path, kind: "choice", from, ...more });

/** Lists of the records: their fields, and the one without which a line is left out. */
const lists = {
  feed: { fields: [pick("ingredient", "ingredients"), num("kg", "kg"), num("moisture", "percent"), pick("burden", ["economic", "mass", "burden-free"])], needs: "kg" },
  energy: { fields: [pick("carrier", "energy-carriers"), num("amount", "carrier")], needs: "amount" },
  transport: { fields: [pick("mode", "transport-modes"), num("tonne_km", "tkm")], needs: "tonne_km" },
  materials: { fields: [pick("material", "materials"), num("kg", "kgkeep"), num("years", "years")], needs: "kg" },
  processing: { fields: [pick("step", "processing-steps"), num("water_kg", "kg"), pick("carrier", "energy-carriers")], needs: "water_kg" },
};

const groups = [
  ["harvest", [num("harvest.containers", "times"), num("harvest.kg_per_container", "kgeach"), num("harvest.cycles_per_year", "times"), num("cycle_days", "days"),
    num("kept_for_breeding", "percent"), num("mortality", "percent"), num("year", "times"), { path: "name", kind: "text" }]],
  ["feed", "feed"],
  ["energy", "energy"],
  ["site", [num("water_m3", "m3"), num("building_m2", "m2"), num("yard_m2", "m2")], "transport"],
  ["materials", "materials"],
  ["frass", [pick("frass.fate", ["stored", "spread"]), pick("frass.credited", ["no", "yes"])]],
  ["processing", "processing"],
];

/** The form over the words of the service; calls when something in it changes. */
export function notebook(form, words, changed) {
  const counts = { feed: 1, energy: 1, transport: 1, materials: 1, processing: 1 };

  function choicesOf(from) {
    if (Array.isArray(from)) return from.map((id) => [id, t(`farm.choice.${id}`)]);
    return [...words[from].values()].map((item) => [item.id, name(from, item.id, item.name ?? t(`farm.choice.${item.id}`))]);
  }

  function unitOf(spec, path) {
    if (spec.unit !== "carrier") return t(`farm.unit.${spec.unit}`);
    const carrier = form.elements[path.replace("amount", "carrier")]?.value || "grid-electricity";
    return `${words["energy-carriers"].get(carrier)?.unit ?? ""}${language === "fr" ? " par an" : " a year"}`;
  }

  /** One field with its name, its unit, its help and a place for what is wrong with it. */
  function field(spec, path, { label, blank = true, value = "" } = {}) {
    const id = `field-${path.replaceAll(".", "-")}`;
    const key = path.replace(/\.\d+\./, ".");
    const help = has(`farm.help.${key}`) ? el("small", { id: `${id}-help`, class: "help" }, t(`farm.help.${key}`)) : null;
    const wrong = el("small", { id: `${id}-wrong`, class: "wrong" });
    const described = [help && `${id}-help`, `${id}-wrong`].filter(Boolean).join(" ");
    const common = { id, name: path, "data-unit": spec.unit, "aria-describedby": described };
    let input;
    if (spec.kind === "text") {
      input = el("input", { ...common, type: "text", maxlength: 100, autocomplete: "off" });
      input.value = value;
    } else if (spec.kind === "number") {
      input = el("input", { ...common, type: "text", inputmode: "decimal", autocomplete: "off" });
      input.value = value;
    } else {
      input = el("select", common);
      const choices = choicesOf(spec.from);
      options(input, blank ? [["", t("farm.blank")], ...choices] : choices, value || (blank ? "" : choices[0][0]));
    }
    return el("div", { class: "field" },
      el("label", { for: id }, label ?? t(`farm.field.${key}`)),
      el("span", { class: "with-unit" }, input, spec.kind === "number" ? el("span", { class: "unit" }, unitOf(spec, path)) : null),
      help, wrong);
  }

  function line(list, n) {
    return el("div", { class: "line" }, lists[list].fields.map((spec) => field(spec, `${list}.${n}.${spec.path}`)));
  }

  function listBox(list, from) {
    const box = el("div", { class: "lines", "data-list": list });
    for (let n = from; n <= counts[list]; n++) box.append(line(list, n));
    const add = el("button", { type: "button", class: "quiet", onclick: () => {
      counts[list] += 1;
      const fresh = line(list, counts[list]);
      box.append(fresh);
      fresh.querySelector("input, select").focus();
    } }, `+ ${t("farm.add")}: ${t(`farm.group.${list === "transport" ? "site" : list}`) && t(`farm.field.${list}.${lists[list].fields[0].path}`)}`);
    return [box, add];
  }

  function draw() {
    const insects = [...words.products.values()].filter((product) => product.group === "insect");
    const product = field(pick("product", []), "product", { blank: true });
    grouped(product.querySelector("select"), productGroups(insects, (kind, id, own) => capital(name(kind, id, own))), "mealworm");
    const region = field(pick("region", "regions"), "region", {});
    fill(form,
      el("fieldset", { class: "first" },
        el("legend", {}, t("farm.group.first")),
        product,
        field(num("harvest.kg_per_year", "kg"), "harvest.kg_per_year"),
        el("div", { class: "pair" },
          field(lists.feed.fields[0], "feed.1.ingredient", { blank: false, value: "wheat-bran" }),
          field(lists.feed.fields[1], "feed.1.kg")),
        el("div", { class: "pair" },
          field(lists.energy.fields[0], "energy.1.carrier", { blank: false, value: "grid-electricity" }),
          field(lists.energy.fields[1], "energy.1.amount")),
        region),
      groups.map(([group, ...parts]) => el("details", { "data-group": group },
        el("summary", {}, t(`farm.group.${group}`)),
        parts.map((part) => Array.isArray(part)
          ? el("div", { class: "line" }, part.map((spec) => field(spec, spec.path)))
          : part === "feed"
            ? [el("div", { class: "line" }, field(lists.feed.fields[2], "feed.1.moisture"), field(lists.feed.fields[3], "feed.1.burden")), listBox("feed", 2)]
            : part === "energy" ? listBox("energy", 2) : listBox(part, 1)))));
  }

  /** Reads what is filled in as nested records; fields that are no numbers are marked and left out. */
  function read() {
    const flat = new Map();
    let wrong = false;
    for (const input of form.querySelectorAll("[name]")) {
      mark(input, "");
      if (input.value.trim() === "") continue;
      if (input.tagName === "SELECT" || !input.dataset.unit) {
        flat.set(input.name, input.value.trim());
        continue;
      }
      const value = number(input.value);
      if (Number.isNaN(value)) {
        mark(input, t("farm.bad"));
        wrong = true;
      } else flat.set(input.name, input.dataset.unit === "percent" ? Number((value / 100).toPrecision(12)) : value);
    }
    if (flat.has("harvest.containers") && !flat.has("harvest.kg_per_container")) wrong = true;
    for (const [list, { fields, needs }] of Object.entries(lists)) {
      for (let n = 1; n <= counts[list]; n++) {
        if (!flat.has(`${list}.${n}.${needs}`)) fields.forEach((spec) => flat.delete(`${list}.${n}.${spec.path}`));
      }
    }
    return { flat, wrong, ready: !wrong && (flat.has("harvest.kg_per_year") || flat.has("harvest.containers")) && flat.has("feed.1.kg") };
  }

  function mark(input, text) {
    input.setAttribute("aria-invalid", String(Boolean(text)));
    const place = form.querySelector(`#${CSS.escape(input.id)}-wrong`);
    if (place) place.textContent = text;
  }

  /** Puts values into the form, by name; what the form has no place for yet gets one. */
  function write(flat) {
    for (const path of flat.keys()) {
      const [, list, n] = /^(\w+)\.(\d+)\./.exec(path) ?? [];
      if (list in counts) counts[list] = Math.min(20, Math.max(counts[list], Number(n)));
    }
    draw();
    for (const [path, value] of flat) {
      const input = form.querySelector(`[name="${CSS.escape(path)}"]`);
      if (!input) continue;
      const percent = input.dataset.unit === "percent";
      input.value = typeof value === "number" ? written(percent ? Number((value * 100).toPrecision(12)) : value) : value;
      const group = input.closest("details");
      if (group) group.open = true;
    }
    showUnits();
  }

  function showUnits() {
    for (const input of form.querySelectorAll("[data-unit='carrier']")) {
      input.parentElement.querySelector(".unit").textContent = unitOf({ unit: "carrier" }, input.name);
    }
  }

  /** Marks a field that the service refused, by its place in the records. */
  function refuse(pointer, text) {
    const path = pointer.replace(/^\/system\//, "").split("/").map((part) => (/^\d+$/.test(part) ? Number(part) + 1 : part)).join(".");
    const input = form.querySelector(`[name="${CSS.escape(path)}"]`) ?? form.querySelector(`[name^="${CSS.escape(path)}."]`);
    if (!input) return false;
    mark(input, text);
    const group = input.closest("details");
    if (group) group.open = true;
    return true;
  }

  form.addEventListener("submit", (event) => event.preventDefault());
  form.addEventListener("input", () => { showUnits(); changed(); });
  draw();
  return { read, write, refuse };
}

/** Records as the service takes them, out of their flat names. */
export function nested(flat) {
  const system = { kind: "insects" };
  for (const [path, value] of flat) {
    const parts = path.split(".");
    let at = system;
    parts.forEach((part, index) => {
      const last = index === parts.length - 1;
      const key = Array.isArray(at) ? Number(part) - 1 : part;
      if (last) at[key] = value;
      else at = at[key] ??= /^\d+$/.test(parts[index + 1]) ? [] : {};
    });
  }
  for (const key of Object.keys(system)) if (Array.isArray(system[key])) system[key] = system[key].filter(Boolean);
  return system;
}

/** The flat names of nested records. */
export function flattened(system, before = "", flat = new Map()) {
  for (const [key, value] of Object.entries(system)) {
    if (before === "" && key === "kind") continue;
    const path = before + (Array.isArray(system) ? Number(key) + 1 : key);
    if (value !== null && typeof value === "object") flattened(value, `${path}.`, flat);
    else flat.set(path, value);
  }
  return flat;
}
