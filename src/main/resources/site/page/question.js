// The question of the compare view, and its encoding in the address.
const usual = {
  products: ["mealworm", "house-cricket", "chicken", "pork", "tofu"],
  against: "beef",
  times_less: 100,
  indicator: "ghg",
  per: "kg-protein",
  boundary: "farm-gate",
  gwp: "ar6-100",
  luc: "exclude",
  region: "world",
  grade: "secondary",
  evidence: "published",
  system: "",
};
const always = ["products", "against", "times_less"];

/** Reads a number from an address. */
function number(text) {
  const plain = text.trim().replace(",", ".");
  return /^\d+(\.\d+)?$/.test(plain) ? Number(plain) : NaN;
}

/** The question of an address, with defaults for what it leaves out. */
export function read(search) {
  const given = new URLSearchParams(search);
  const question = { ...usual };
  for (const name of Object.keys(usual)) {
    const value = given.get(name);
    if (value === null || value === "") continue;
    if (name === "products") question.products = [...new Set(value.split(",").filter(Boolean))];
    else if (name === "times_less") question.times_less = number(value) > 0 ? number(value) : usual.times_less;
    else question[name] = value;
  }
  question.products = question.products.filter((id) => id !== question.against);
  if (question.products.length === 0) question.products = usual.products.filter((id) => id !== question.against);
  return question;
}

/** The address of a question, keeping its other parameters. */
export function write(question, search) {
  const query = new URLSearchParams(search);
  for (const name of Object.keys(usual)) {
    const value = String(question[name]);
    if (!always.includes(name) && value === String(usual[name])) query.delete(name);
    else query.set(name, value);
  }
  return `?${query.toString().replaceAll("%2C", ",").replaceAll("%3A", ":")}`;
}

/** The parameters of the comparison basis. */
export function comparisonBasis(question) {
  const { indicator, per, boundary, gwp, luc, region, grade, system } = question;
  // What is usual stays out of addresses.
  const evidence = question.evidence === usual.evidence ? "" : question.evidence;
  return { indicator, per, boundary, gwp, luc, region, grade, evidence, system };
}
