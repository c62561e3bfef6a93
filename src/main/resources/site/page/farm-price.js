// What a kilogram of protein costs at the farm's own price: by its own analysis where there is one, else by the published content.
import { el, fill } from "./dom.js";
import { along } from "./frame.js";
import { figure, interval, t } from "./i18n.js";
import { get, newest } from "./service.js";

const latest = newest();
/** ISO 4217: the code where no currency is meant. */
const noCurrency = "XXX";

const ends = (value) => [].concat(value).map(Number);

/** The protein in a kilogram as it is sold, lowest first; none where nobody published it. */
async function contentOf(system) {
  const form = system.form ?? "fresh";
  const own = form === "fresh" ? system.composition?.protein ?? system.product?.protein : undefined;
  if (own !== undefined) return ends(own);
  if (typeof system.product !== "string") return [];
  const answer = await latest((signal) => get("/v1/nutrition", { products: form === "fresh" ? system.product : `${system.product}:${form}`, price_per_kg: 1, currency: noCurrency }, signal));
  const price = answer?.items[0]?.price;
  return price?.status === "ok" ? [1 / (price.high ?? price.value), 1 / (price.low ?? price.value)] : [];
}

/** Writes the price of a kilogram of protein into the box; empty where no price is recorded. */
export async function sayPrice(box, system) {
  if (!box) return;
  if (system.price_per_kg === undefined) {
    fill(box);
    return;
  }
  const prices = ends(system.price_per_kg);
  const contents = await contentOf(system).catch(() => []);
  if (contents.length === 0) {
    fill(box, t("farm.price-unknown"));
    return;
  }
  const low = prices[0] / contents[contents.length - 1];
  const high = prices[prices.length - 1] / contents[0];
  fill(box, t("farm.price-of-protein", { price: figure(low) === figure(high) ? figure(low) : interval(low, high) }), " ", el("a", { href: along("/protein") }, t("farm.price-beside")));
}
