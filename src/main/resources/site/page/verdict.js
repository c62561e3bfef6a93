// The verdict on a claim, in words.
import { el, english, fill } from "./dom.js";
import { capital, figure, interval, name, share, t, the, written } from "./i18n.js";
import { isThin, spoken, studies } from "./spoken.js";
import { sentenceOf, term } from "./terms.js";

const signs = { holds: "✓", "leans-to-hold": "✓?", open: "≈", "leans-against": "✗?", fails: "✗", undecided: "?", "no-evidence": "—" };

export const sign = (verdict) => signs[verdict];

/** The share of the draws, in one sentence. */
function chance(asked, times) {
  const part = asked.share_of_draws?.value;
  if (part === undefined) return null;
  const draws = term(t("verdict.draws"), "draws");
  return sentenceOf(part === 0 ? "verdict.never" : part === 1 ? "verdict.always" : "verdict.share-of-draws", { times, share: share(part), draws });
}

/** Where only the other kind of evidence has figures: a button that asks for it. */
function otherKind(check, go) {
  const kind = { "modelled-figure": "modelled", "published-figure": "published" }[check?.known_instead?.code];
  if (!kind) return null;
  return el("p", {}, el("button", { type: "button", id: "other-evidence", onclick: () => go({ evidence: kind }) },
    t(kind === "modelled" ? "modelled.see" : "modelled.see-published")));
}

/** What the sides of a cell leave out, in one sentence. */
function leftOut(asked) {
  const what = [asked.product, asked.reference].flatMap((side) => side?.not_counted ?? []);
  return what.length ? el("p", {}, t("modelled.not-counted", { what: [...new Set(what)].join(", ") })) : null;
}

/** Shows the verdict; the box is a live region, so it is filled once. */
export function sayVerdict(box, answer, question, go) {
  const modelled = question.evidence === "modelled";
  const check = answer.checks[0];
  const asked = check?.cells.find((cell) => cell.asked);
  const times = written(question.times_less);
  if (asked && !asked.times_less && asked.verdict !== "no-evidence") {
    fill(box,
      headline(asked.verdict, times),
      el("p", { class: "fact" }, t("verdict.only-bounds")),
      modelled ? el("p", {}, `${capital(t("modelled.both"))}.`) : null,
      leftOut(asked));
    return;
  }
  if (!asked?.times_less || asked.verdict === "no-evidence") {
    const silent = modelled ? "modelled.silent" : !asked || asked.reference?.studies > 0 ? "verdict.no-product" : "verdict.silent";
    fill(box,
      headline("no-evidence", times),
      el("p", { class: "fact" }, t(silent, { product: the("product", question.products[0]), reference: the("product", question.against) })),
      otherKind(check, go),
      question.own ? el("p", {}, el("a", { href: question.own }, t("verdict.own"))) : null);
    return;
  }
  const ratio = asked.times_less;
  const less = ratio.median >= 1;
  fill(box,
    headline(asked.verdict, times),
    el("p", { class: "fact" },
      t(modelled ? less ? "modelled.fact" : "modelled.fact-more" : less ? "verdict.fact" : "verdict.fact-more", { bound: bound(asked, less), median: figure(less ? ratio.median : 1 / ratio.median) }), " ",
      el("span", { class: "range" }, sentenceOf(modelled ? "modelled.interval" : "verdict.interval", { interval: less ? interval(ratio.low, ratio.high) : interval(1 / ratio.high, 1 / ratio.low),
        next: term(t("verdict.next"), "next") })), "."),
    el("p", {}, chance(asked, times), " ", capital(studies(check, question)), isThin(asked, question) ? [t("colon"), term(t("verdict.thin"), "thin")] : null, "."),
    modelled ? leftOut(asked) : null,
    elsewhere(check, asked));
}

/** What stands before a ratio that is only a bound; turned round it bounds from the other side. */
function bound(asked, less) {
  if (asked.bound === "exact") return "";
  return t((asked.bound === "at-least") === less ? "verdict.at-least" : "verdict.at-most");
}

function headline(verdict, times) {
  return el("p", { class: `headline is-${verdict}` },
    el("span", { class: "sign", "aria-hidden": "true" }, signs[verdict]),
    el("span", {}, t("verdict.claim", { times }), t("colon")), el("strong", {}, t(`verdict.${verdict}`)));
}

/** Other bases on which the claim holds, if it does not hold on this one. */
function elsewhere(check, asked) {
  if (asked.verdict === "holds") return null;
  const there = [...new Set(check.cells.filter((cell) => cell.verdict === "holds").map((cell) => cell.boundary))]
    .filter((boundary) => boundary !== asked.boundary);
  if (there.length === 0) return null;
  return el("p", { class: "elsewhere" },
    t("verdict.elsewhere", { boundaries: there.map((boundary) => name("boundary", boundary)).join(", ") }), " ",
    there.includes("animal") ? t("verdict.elsewhere-animal") : null);
}

/** What may be said instead in one sentence, its footnote, a copy button for both, and the service's full reasoning. */
export function sayInstead(box, answer, question, copy) {
  const check = answer.checks[0];
  const said = spoken(answer, question);
  const whole = [said.text, said.note].filter(Boolean).join(" ");
  const holds = check?.cells.find((cell) => cell.asked)?.verdict === "holds";
  fill(box,
    el("h3", {}, t(holds ? "verdict.instead-holds" : "verdict.instead")),
    el("blockquote", { id: "sentence" }, said.text),
    el("p", { id: "footnote", class: "footnote" }, said.note),
    copy(t("verdict.copy"), () => whole),
    el("details", {},
      el("summary", {}, t("verdict.reasoning")),
      el("p", {}, answer.reason),
      (check?.circulating ?? []).slice(0, 3).map((one) =>
        el("p", { class: "circulating" }, el("strong", {}, `${t("verdict.circulating")}${t("colon")}`), english(`“${one.claim}” ${one.verdict_text}`)))));
  return { text: whole };
}

/** The ratio of a cell, with what a bound is called; empty where two bounds have none. */
function ratioOf({ times_less: ratio, bound: kind }) {
  if (!ratio) return "";
  const less = ratio.median >= 1;
  return `${bound({ bound: kind }, less)}${less ? t("chart.times", { times: figure(ratio.median) }) : t("chart.more", { times: figure(1 / ratio.median) })}`;
}

/** The claim on every unit and boundary that has evidence, under the warming set asked for. */
export function sayGrid(box, answer, question, go) {
  const check = answer.checks[0];
  if (!check) return fill(box);
  const cells = check.cells.filter((cell) => cell.gwp === undefined || cell.gwp === question.gwp);
  const boundaries = [...new Set(cells.map((cell) => cell.boundary))];
  const units = [...new Set(cells.map((cell) => cell.per))];
  fill(box, el("div", { class: "scrolls", tabindex: "0", role: "group", "aria-label": t("grid.title") },
    el("table", { class: "footings" },
      el("caption", {}, t("grid.caption", { times: written(question.times_less), gwp: question.gwpName ?? "" })),
      el("thead", {}, el("tr", {}, el("th", { scope: "col" }, t("grid.unit")),
        boundaries.map((boundary) => el("th", { scope: "col" }, capital(name("boundary-short", boundary)))))),
      el("tbody", {}, units.map((per) => el("tr", {},
        el("th", { scope: "row" }, capital(t("verdict.per", { per: name("per", per) }))),
        boundaries.map((boundary) => {
          const cell = cells.find((one) => one.per === per && one.boundary === boundary);
          if (!cell || cell.verdict === "no-evidence") return el("td", {}, el("span", { class: "footing is-no-evidence" }, t("grid.none")));
          return el("td", {}, el("button", { type: "button", class: `footing is-${cell.verdict}`, "aria-pressed": String(cell.asked),
            onclick: () => go({ per, boundary }) },
          el("span", { "aria-hidden": "true" }, signs[cell.verdict]), ` ${t(`verdict.${cell.verdict}`)} `,
          el("span", { class: "footing-ratio" }, ratioOf(cell))));
        })))))));
  return undefined;
}
