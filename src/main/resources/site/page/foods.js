// The foods of the question: which, in which form, at which price. The address holds them as the service takes them.
import { el, fill } from "./dom.js";
import { capital, entered, name, t, typed } from "./i18n.js";
import { options } from "./vocabulary.js";

const usual = { products: ["mealworm:dried", "house-cricket:dried", "black-soldier-fly:dried", "egg", "chicken", "beef"], nutrient: "protein", basis: "100g-dry-matter", currency: "EUR", prices: [] };

/** The question of an address. */
export function read(search) {
  const given = new URLSearchParams(search);
  const list = (part) => (given.get(part) ?? "").split(",").filter(Boolean);
  const products = [...new Set(list("products"))].slice(0, 20);
  return {
    products: products.length ? products : usual.products,
    nutrient: given.get("nutrient") || usual.nutrient,
    basis: given.get("basis") || usual.basis,
    currency: given.get("currency") || usual.currency,
    prices: list("prices").slice(0, 20),
  };
}

/** The address of a question, keeping its other parameters. */
export function write(question, search) {
  const query = new URLSearchParams(search);
  const priced = question.products.some((product, index) => Number(question.prices[index]) > 0);
  for (const [part, value] of Object.entries({ ...question, prices: priced ? question.products.map((product, index) => question.prices[index] || "-") : [] })) {
    const text = Array.isArray(value) ? value.join(",") : value;
    if (text === "" || text === String(usual[part])) query.delete(part);
    else query.set(part, text);
  }
  if (!priced) query.delete("currency");
  return `?${query.toString().replaceAll("%2C", ",").replaceAll("%3A", ":")}`;
}

/** The parameters of the service's question. */
export function parameters({ products, basis, currency, prices }) {
  const priced = products.map((product, index) => (Number(prices[index]) > 0 ? prices[index] : "-"));
  return {
    products: products.join(","), basis,
    // Fresh beside dried is asked for here on purpose, and the answer warns.
    ...(basis === "100g-edible" ? { mixed_forms: "yes" } : {}),
    ...(priced.some((price) => price !== "-") && /^[A-Z]{3}$/.test(currency) ? { prices: priced.join(","), currency } : {}),
  };
}

/** The form of a food as it is asked, which its name may leave out. */
export const formOf = (id, product) => id.split(":")[1] ?? product?.default_form ?? "fresh";

/**
 * A row for each food with its form and price.
 *
 * @param now gives the question as it stands, which prices typed since have changed
 * @param changed takes the new list of foods and of prices
 */
export function foodRows(box, now, { products, forms }, changed) {
  const put = (index, id, price) => changed({ products: now().products.map((one, at) => (at === index ? id : one)), prices: now().products.map((one, at) => (at === index ? price : now().prices[at] ?? "-")) });
  const question = now();
  fill(box, question.products.map((id, index) => {
    const [plain] = id.split(":");
    const product = products.get(plain);
    const said = capital(name("product", plain, product?.name ?? plain));
    const known = forms.get(plain) ?? [formOf(id, product)];
    const form = el("select", { id: `form-${index}`, "aria-label": `${said}${t("colon")}${t("protein.form")}`,
      onchange: (event) => put(index, event.target.value === product?.default_form ? plain : `${plain}:${event.target.value}`, "-") });
    options(form, known.map((one) => [one, name("form", one)]), formOf(id, product));
    const price = el("input", { id: `price-${index}`, type: "text", inputmode: "decimal", autocomplete: "off", size: 8, "aria-label": `${said}${t("colon")}${t("protein.price")}`,
      value: Number(question.prices[index]) > 0 ? typed(Number(question.prices[index])) : "",
      oninput: (event) => {
        const { value } = entered(event.target.value);
        const wrong = event.target.value.trim() !== "" && !(value > 0);
        event.target.setAttribute("aria-invalid", String(wrong));
        if (!wrong) put(index, id, value > 0 ? String(value) : "-");
      } });
    return el("tr", {}, el("th", { scope: "row" }, said), el("td", {}, form), el("td", {}, price));
  }));
}
