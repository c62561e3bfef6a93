// Common to all pages: language, theme, and links to the other pages that keep both.
import { el, byId, fill } from "./dom.js";
import { language, languages, t, translate } from "./i18n.js";

const kept = ["lang", "theme"];
const themes = ["auto", "light", "dark"];

function setting(name, otherwise) {
  return new URLSearchParams(location.search).get(name) ?? otherwise;
}

/** This page's address with one setting changed. */
function changed(name, value) {
  const url = new URL(location.href);
  url.searchParams.set(name, value);
  if (value === "auto") url.searchParams.delete(name);
  return url;
}

function showTheme(theme) {
  document.documentElement.dataset.theme = theme;
  const dark = theme === "dark" || (theme === "auto" && matchMedia("(prefers-color-scheme: dark)").matches);
  // The reader of the description has a dark look under this name.
  document.documentElement.classList.toggle("dark-mode", dark);
  byId("theme").textContent = t(dark ? "frame.to-light" : "frame.to-dark");
  byId("theme").dataset.next = dark ? "light" : "dark";
}

/** A path of this site with language and theme. */
export function along(path) {
  const url = new URL(path, location.href);
  for (const name of kept) {
    const value = setting(name);
    if (value) url.searchParams.set(name, value);
  }
  return url.pathname + url.search + url.hash;
}

/** Adds them to the links between pages. */
export function carry() {
  for (const link of document.querySelectorAll("a[data-carry]")) link.setAttribute("href", along(link.getAttribute("href")));
}

export function frame() {
  translate();
  const here = location.pathname;
  for (const link of document.querySelectorAll(".top nav a")) {
    const path = link.getAttribute("href");
    // A guide is under the list of guides.
    if (here === path || (path !== "/" && here.startsWith(`${path}/`))) link.setAttribute("aria-current", "page");
  }
  const theme = themes.includes(setting("theme")) ? setting("theme") : "auto";
  showTheme(theme);
  byId("theme").addEventListener("click", () => {
    history.replaceState(history.state, "", changed("theme", byId("theme").dataset.next));
    showTheme(byId("theme").dataset.next);
    carry();
    showLanguages();
    document.dispatchEvent(new Event("themechange"));
  });
  showLanguages();
  carry();
  addEventListener("popstate", showLanguages);
  document.addEventListener("statechange", showLanguages);
}

function showLanguages() {
  fill(
    byId("languages"),
    Object.entries(languages).map(([code, own]) =>
      el(
        "a",
        { href: changed("lang", code).href, lang: code, hreflang: code, "aria-current": code === language ? "true" : null },
        own,
      ),
    ),
  );
}
