// What the records of a year can hold, field by field, and the two shapes they come in: flat names, as the form, a link and bulk tables
// write them (`feed.1.kg`; a range is a list of numbers, in a link `400..600`), and nested, as the service reads them. Everything under `hens.` is a flock that the farm is compared with.
const num = (path, unit, more = {}) => ({ path, kind: "number", unit, ...more });
const pick = (path, from, more = {}) => ({ path, kind: "choice", from, ...more });
const text = (path) => ({ path, kind: "text" });

/** Lists of the records: their fields, those seldom needed, and the one without which a line is not counted. */
export const lists = {
  feed: {
    fields: [pick("ingredient", "ingredients"), num("kg", "kg"), pick("burden", ["economic", "mass", "burden-free", "displaced"])],
    seldom: [pick("displaces", "ingredients", { goesWith: ["burden", "displaced", "burden-free"] }),
      num("displaced_kg_per_kg", "kgperkg", { goesWith: ["burden", "displaced", "burden-free"] }), num("moisture", "percent"),
      num("ghg_per_kg", "ghgperkg"), num("land_per_kg", "landperkg"), num("energy_per_kg", "mjperkg"), num("water_per_kg", "m3perkg")],
    needs: "kg",
  },
  energy: { fields: [pick("carrier", "energy-carriers"), num("amount", "energy-carriers")], seldom: [pick("for", ["farm", "processing"])], needs: "amount" },
  transport: { fields: [pick("mode", "transport-modes"), num("tonne_km", "transport-modes")], needs: "tonne_km" },
  materials: { fields: [pick("material", "materials"), num("kg", "kgkept"), num("years", "years")], needs: "kg" },
  co_products: { fields: [text("name"), num("kg", "kg"), num("price_per_kg", "price")], needs: "kg" },
  processing: { fields: [pick("step", "processing-steps"), num("water_kg", "kg"), pick("carrier", "energy-carriers"), num("kwh_per_kg", "kwhperkg")], needs: "water_kg" },
  manure: { fields: [pick("system", "manure-systems"), num("share", "percent")], needs: "share" },
};

/** Fields that require others: the given field (one value of it, or all but one), and the required ones. */
export const together = [
  { given: "harvest.containers", needs: ["harvest.kg_per_container", "harvest.cycles_per_year"] },
  { given: "harvest.larvae", needs: ["harvest.larvae_per_kg"] },
  { given: "form", unless: "fresh", needs: ["sold_kg"] },
  { given: "co_product_allocation", only: "economic", needs: ["price_per_kg"] },
];

/**
 * Whether a line cannot be sent without this field: what it is of, the burden of a by-product that is sold, and what a displaced burden is
 * displaced by.
 *
 * @param ingredient the word for the line's feed, if it is feed
 * @param burden that of the line
 */
export function isNeeded(list, field, ingredient, burden) {
  if (field === "burden") return ingredient?.needs_burden === true;
  if (field === "displaces") return burden === "displaced";
  return lists[kindOf(list)].fields.some((spec) => spec.path === field && spec.kind === "choice");
}

/** The lists whose first line is in the sentence. */
export const begun = ["feed", "energy"];

/** The choice that determines the unit of the amount beside it. */
export const measuredBy = { "energy-carriers": ["amount", "carrier"], "transport-modes": ["tonne_km", "mode"] };

/** The form below the sentence: a group has fields and names of lists. */
export const groups = [
  ["harvest", [num("harvest.containers", "count"), num("harvest.kg_per_container", "kgeach"), num("harvest.cycles_per_year", "ayear"),
    num("harvest.larvae", "ayear"), num("harvest.larvae_per_kg", "perkg"), num("kept_for_breeding", "percent"), num("mortality", "percent"),
    num("cycle_days", "days"), num("pairs_stocked", "eachbox")]],
  ["feed", "feed"],
  ["energy", [num("grid_ghg_per_kwh", "ghgperkwh")], "energy"],
  ["site", [num("water_m3", "m3"), num("building_m2", "m2"), num("yard_m2", "m2")], "transport"],
  ["materials", "materials"],
  ["frass", [pick("frass.fate", ["stored", "spread"]), num("frass.kg", "kg"), num("frass.nitrogen", "percent"), pick("frass.credited", ["no", "yes"])]],
  ["processing", "processing"],
  ["sold", [pick("form", "forms"), num("sold_kg", "kg"), num("price_per_kg", "price"), pick("co_product_allocation", ["none", "mass", "economic"]), num("year", "year"), text("name")],
    "co_products"],
  ["hens", [num("hens.heads", "hens"), num("hens.yield.eggs_kg", "kg"), num("hens.yield.live_kg", "kg"), pick("hens.breeding_stock", ["included", "bought-in", "none"])], "hens.feed", "hens.energy",
    [num("hens.water_m3", "m3"), num("hens.building_m2", "m2"), num("hens.yard_m2", "m2"), pick("hens.climate", "climates"), pick("hens.region", "regions"), text("hens.name")],
    "hens.manure", "hens.transport", "hens.materials"],
];

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
  return {
    system: nested(part(false), { kind: "insects" }),
    hens: hens.size === 0 ? null : nested(hens, { kind: "herd", animals: "layers" }),
  };
}

function nested(flat, system) {
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
