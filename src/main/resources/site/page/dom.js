/** Makes an element: attributes by name, handlers as functions under `on…`, children as nodes or text. Never parses markup. */
export function el(name, attributes = {}, ...children) {
  const node = document.createElement(name);
  for (const [key, value] of Object.entries(attributes)) {
    if (value === undefined || value === null || value === false) continue;
    if (typeof value === "function") node.addEventListener(key.slice(2), value);
    else if (key === "value") node.value = value;
    else node.setAttribute(key, value === true ? "" : value);
  }
  node.append(...children.flat(Infinity).filter((child) => child !== null && child !== undefined && child !== false));
  return node;
}

export const byId = (id) => document.getElementById(id);

const reachable = "a[href], button, input, select, summary, [tabindex='0']";

/** Replaces the content of a box and keeps the keyboard focus. */
export function fill(box, ...children) {
  const focused = box.contains(document.activeElement) && document.activeElement !== box ? document.activeElement : null;
  const place = focused ? [...box.querySelectorAll(reachable)].indexOf(focused) : -1;
  box.replaceChildren(...children.flat(Infinity).filter((child) => child !== null && child !== undefined && child !== false));
  if (!focused) return;
  const now = [...box.querySelectorAll(reachable)];
  (now.find((node) => focused.id && node.id === focused.id) ?? now[place])?.focus({ preventScroll: true });
}

/** Debounces: calls once no further call has come for a while. */
export function calm(milliseconds, call) {
  let timer = 0;
  return (...given) => {
    clearTimeout(timer);
    timer = setTimeout(() => call(...given), milliseconds);
  };
}

/** Text of the service, which is English whatever the language of the page. */
export const english = (text) => el("span", { lang: "en" }, text);
