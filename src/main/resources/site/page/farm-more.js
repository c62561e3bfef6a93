// Sensitivity of a farm's figure, and its break-even with another.
import { el, english, fill } from "./dom.js";
import { capital, name, share, spoken, t } from "./i18n.js";
import { address, newest, post } from "./service.js";

const shown = 6;
const latestDrivers = newest();
const latestEven = newest();

/**
 * The variance shares, and the inputs that can be changed, with the break-even.
 *
 * @param others published products for the break-even
 * @param hens a flock for the break-even, where there is one
 */
export async function drivers(box, question, others, hens) {
  if (!box) return;
  const answer = await latestDrivers((signal) => post("/v1/sensitivity", question, signal));
  if (!answer) return;
  const inputs = [...answer.inputs].sort((one, two) => two.total.share - one.total.share).slice(0, shown).filter((input) => input.total.share >= 0.005);
  const changes = answer.you_can_change;
  const input = el("select", {}, changes.map((entry) => el("option", { value: entry.id, lang: "en" }, `${entry.name} (${entry.unit})`)));
  const against = el("select", {}, hens ? el("option", { value: "hens" }, hens.name) : null, others.map((id) => el("option", { value: id }, name("product", id))));
  const said = el("p", { class: "even-said", role: "status", "aria-live": "polite" });
  const ask = async () => {
    try {
      const even = await latestEven((signal) => post(address("/v1/break-even", spoken), { ...question, input: input.value, ...(against.value === "hens" ? { against_system: hens } : { against: against.value }) }, signal));
      if (even) fill(said, even.sentence);
    } catch (fault) {
      fill(said, english(fault.message));
    }
  };
  input.addEventListener("change", ask);
  against.addEventListener("change", ask);
  const changeable = changes.length > 0 && against.options.length > 0;
  fill(box,
    inputs.length === 0 ? null : el("section", {},
      el("h2", {}, t("farm.drives")),
      el("div", { class: "scrolls", tabindex: "0", role: "group", "aria-label": t("farm.drives") },
        el("table", { class: "drives" },
          el("caption", {}, t("farm.drives-why")),
          el("thead", {}, el("tr", {}, el("th", { scope: "col" }, t("farm.input")), el("th", { scope: "col" }, t("farm.share")))),
          el("tbody", {}, inputs.map((one) => el("tr", {},
            el("th", { scope: "row" }, english(capital(one.name))),
            el("td", {}, el("meter", { min: 0, max: 1, value: String(one.total.share), "aria-label": share(Math.max(0, one.total.share)) }), " ",
              share(Math.max(0, Math.min(1, one.total.share)))))))))),
    changes.length === 0 ? null : el("section", {},
      el("h2", {}, t("farm.change")),
      el("ul", { lang: "en" }, changes.slice(0, shown).map((entry) => el("li", {}, capital(entry.text))))),
    !changeable ? null : el("section", {},
      el("h2", {}, t("farm.even")),
      el("p", { class: "even" }, el("label", {}, t("farm.even-input"), " ", input), " ", el("label", {}, t("farm.even-with"), " ", against)),
      said));
  if (changeable) await ask();
}
