// What the records of a year can hold and in which order the page asks for it, and the two shapes they come in: flat names, as the form, a
// link and bulk tables write them (`feed.1.kg`), and nested, as the service reads them. What a field is (its kind, its unit, the words it
// may be) comes from the service's table of fields; a field of farms that is in no group here stands in the last one. Everything under
// `hens.` is a flock that the farm is compared with.

/** Lists of the records: the fields of a line in order, those seldom needed, and the one without which a line is not counted. */
const lines = {
  feed: { fields: ["ingredient", "kg", "burden"], seldom: ["displaces", "displaced_kg_per_kg", "moisture"], needs: "kg" },
  energy: { fields: ["carrier", "amount"], seldom: ["for"], needs: "amount" },
  transport: { fields: ["mode", "tonne_km"], needs: "tonne_km" },
  materials: { fields: ["material", "kg", "years"], needs: "kg" },
  co_products: { fields: ["name", "kg", "price_per_kg"], needs: "kg" },
  processing: { fields: ["step", "water_kg", "carrier", "kwh_per_kg"], needs: "water_kg" },
  manure: { fields: ["system", "share"], needs: "share" },
};

/** Fields of a line that are asked only beside some values of another. */
const beside = {
  "feed.#.displaces": ["burden", "displaced", "burden-free"],
  "feed.#.displaced_kg_per_kg": ["burden", "displaced", "burden-free"],
};

/** The form below the sentence: a group has fields and names of lists. */
const order = [
  ["harvest", ["harvest.containers", "harvest.kg_per_container", "harvest.cycles_per_year", "harvest.larvae", "harvest.larvae_per_kg",
    "harvest.grams_per_larva", "harvest.pairs", "harvest.eggs_per_pair", "harvest.hatch", "harvest.survival", "harvest.batches_lost",
    "composition.dry_matter", "composition.protein", "composition.nitrogen", "composition.fat", "product.nitrogen", "product.fat", "kept_for_breeding", "mortality", "cycle_days", "pairs_stocked"]],
  ["feed", "feed"],
  ["energy", ["grid_ghg_per_kwh"], "energy"],
  ["heating", ["heating.room_m2", "heating.temperature_c", "heating.insulation", "heating.carrier"]],
  ["site", ["water_m3", "building_m2", "yard_m2"], "transport"],
  ["materials", "materials"],
  ["frass", ["frass.fate", "frass.kg", "frass.nitrogen", "frass.credited"]],
  ["processing", "processing"],
  ["sold", ["form", "sold_kg", "price_per_kg", "co_product_allocation", "year", "name"], "co_products"],
  ["other", []],
  ["hens", ["hens.heads", "hens.yield.eggs_kg", "hens.yield.live_kg", "hens.breeding_stock"], "hens.feed", "hens.energy",
    ["hens.water_m3", "hens.building_m2", "hens.yard_m2", "hens.climate", "hens.region", "hens.name"], "hens.manure", "hens.transport", "hens.materials"],
];

/** What is asked of an insect that the service does not know. */
const ofAnother = ["product.name", "product.dry_matter", "product.protein"];

/** What the sentence above the groups asks for, what the page says itself, and what `composition` stands for. */
const elsewhere = ["kind", "product", "region", "harvest.kg_per_year", "product.group", ...ofAnother];

/** The choice that determines the unit of the amount beside it. */
export const measuredBy = { "energy-carriers": ["amount", "carrier"], "transport-modes": ["tonne_km", "mode"] };
const measured = { "energy.#.amount": "energy-carriers", "transport.#.tonne_km": "transport-modes" };

/** The lists as the form asks for them, once the service's table of fields is learnt. */
export let lists = {};

/** The groups as the form asks for them. */
export let groups = [];

/** The fields of an insect that the service does not know. */
export let another = [];

/** Learns the service's table of fields. */
export function learnFields(table) {
  const known = new Map(table.map((field) => [field.path, field]));
  const spec = (path, from = path.replace(/^hens\./, "")) => {
    const { kind, unit, most, words, list, description } = known.get(from);
    if (kind === "text") return { path, kind };
    if (kind === "word") return { path, kind: "choice", from: words ?? list.replace("/v1/", ""), goesWith: beside[from], description };
    const share = kind === "number" && (unit.startsWith("kg N per kg") || (unit === "" && most <= 1));
    return { path, kind: "number", unit: measured[from] ?? (share ? "percent" : unit), goesWith: beside[from], description };
  };
  lists = Object.fromEntries(Object.entries(lines).map(([list, { fields, seldom = [], needs }]) => {
    const own = table.filter(({ path }) => path.startsWith(`${list}.#.`)).map(({ path }) => path.slice(list.length + 3));
    const rest = own.filter((field) => !fields.includes(field) && !seldom.includes(field));
    const specs = (names) => names.map((name) => spec(name, `${list}.#.${name}`));
    const more = specs([...seldom, ...rest]);
    return [list, { fields: specs(fields), needs, ...(more.length ? { seldom: more } : {}) }];
  }));
  another = ofAnother.map((path) => spec(path));
  const asked = [...elsewhere, ...order.flatMap(([, ...parts]) => parts.flat())];
  const rest = table.filter(({ path, systems = ["insects"] }) => systems.includes("insects") && !path.includes("#") && !asked.includes(path)).map(({ path }) => path);
  groups = order.map(([group, ...parts]) => [group, ...parts.map((part) => (Array.isArray(part) ? (group === "other" ? rest : part).map((path) => spec(path)) : part))])
    .filter(([, ...parts]) => parts.some((part) => part.length > 0));
}

/** Fields that require others: the given field (one value of it, or all but one), the required ones, and one that does instead. */
export const together = [
  { given: "harvest.containers", needs: ["harvest.kg_per_container", "harvest.cycles_per_year"] },
  { given: "harvest.larvae", needs: ["harvest.larvae_per_kg"], or: "harvest.grams_per_larva" },
  { given: "harvest.pairs", needs: ["harvest.eggs_per_pair", "harvest.hatch", "harvest.survival", "harvest.cycles_per_year"] },
  { given: "harvest.pairs", needs: ["harvest.larvae_per_kg"], or: "harvest.grams_per_larva" },
  { given: "heating.room_m2", needs: ["heating.carrier", "region"] },
  { given: "heating.carrier", needs: ["heating.room_m2"] },
  { given: "form", unless: "fresh", needs: ["sold_kg"] },
  { given: "co_product_allocation", only: "economic", needs: ["price_per_kg"] },
];

/**
 * Whether a line cannot be sent without this field: what it is of, the burden of a by-product that is sold, and what a displaced burden is
 * displaced by.
 *
 * @param ingredient the word for the line's feed, if it is feed
 * @param named whether the feed has a name of its own instead
 * @param burden that of the line
 */
export function isNeeded(list, field, ingredient, burden, named) {
  if (field === "ingredient" && named) return false;
  if (field === "burden") return ingredient?.needs_burden === true;
  if (field === "displaces") return burden === "displaced";
  return lists[kindOf(list)].fields.some((spec) => spec.path === field && spec.kind === "choice");
}

/** The lists whose first line is in the sentence. */
export const begun = ["feed", "energy"];

/** The list of a flat name, with its line: `hens.feed.2.kg` is line 2 of `hens.feed`. */
export function lineOf(path) {
  const [, list, n, field] = /^([a-z_.]+)\.(\d+)\.(\w+)$/.exec(path) ?? [];
  return list && kindOf(list) in lists ? { list, n: Number(n), field } : null;
}

/** The kind of a list, with or without `hens.`. */
export const kindOf = (list) => list.replace(/^hens\./, "");

/** The nested records of flat names: the farm, and the hens if there are any. */
export function systems(flat) {
  const part = (hens) => new Map([...flat].filter(([path]) => path.startsWith("hens.") === hens).map(([path, value]) => [path.replace(/^hens\./, ""), value]));
  const hens = part(true);
  const farm = nested(part(false), { kind: "insects" });
  if (farm.product?.name) farm.product.group = "insect";
  return {
    system: farm,
    hens: hens.size === 0 ? null : nested(hens, { kind: "herd", animals: "layers" }),
  };
}

/** Puts flat values into nested records. */
export function nested(flat, system) {
  for (const [path, value] of flat) {
    const parts = path.split(".");
    let at = system;
    parts.forEach((part, index) => {
      const key = Array.isArray(at) ? Number(part) - 1 : part;
      if (index === parts.length - 1) at[key] = value;
      else at = at[key] ??= /^\d+$/.test(parts[index + 1]) ? [] : {};
    });
  }
  return system;
}

/** The numbers of a flat value: a number, a range, or either as a link has it; none where it is neither. */
export function numbersOf(value) {
  const numbers = (Array.isArray(value) ? value : String(value).split("..")).map(Number);
  return numbers.every(Number.isFinite) ? numbers : [];
}

/** Flat values as a link has them. */
export const linked = (flat) => [...flat].map(([path, value]) => [path, Array.isArray(value) ? value.join("..") : value]);

const isRange = (value) => Array.isArray(value) && value.length > 0 && value.every(Number.isFinite);

/** The flat names of nested records. */
export function flattened(system, before = "", flat = new Map()) {
  for (const [key, value] of Object.entries(system)) {
    if (["kind", "animals"].includes(key) && /^(hens\.)?$/.test(before)) continue;
    const path = before + (Array.isArray(system) ? Number(key) + 1 : key);
    if (value !== null && typeof value === "object" && !isRange(value)) flattened(value, `${path}.`, flat);
    else flat.set(path, value);
  }
  return flat;
}
