// The chart as a file: with inline styles, because style sheets do not travel, and with a caption.
const looks = ["fill", "fill-opacity", "stroke", "stroke-width", "stroke-dasharray", "stroke-linecap", "stroke-linejoin", "opacity",
  "font-family", "font-size", "font-weight", "font-variant-numeric", "text-anchor", "display", "letter-spacing", "paint-order"];
const space = "http://www.w3.org/2000/svg";
const margin = 16;
const line = 17;

function inlined(svg) {
  const copy = svg.cloneNode(true);
  const from = [svg, ...svg.querySelectorAll("*")];
  const to = [copy, ...copy.querySelectorAll("*")];
  from.forEach((node, index) => {
    const style = getComputedStyle(node);
    for (const look of looks) {
      const value = style.getPropertyValue(look);
      if (value && value !== "normal" && value !== "auto") to[index].setAttribute(look, value);
    }
    for (const name of ["class", "tabindex", "role", "aria-pressed", "aria-hidden"]) to[index].removeAttribute(name);
  });
  return copy;
}

function text(words, y, size, weight, colour) {
  const node = document.createElementNS(space, "text");
  for (const [key, value] of Object.entries({ x: margin, y, "font-size": size, "font-weight": weight, fill: colour,
    "font-family": "system-ui, sans-serif" })) node.setAttribute(key, value);
  node.textContent = words;
  return node;
}

/** Wraps words into lines of a given width. */
function broken(words, width) {
  const most = Math.max(30, Math.floor((width - 2 * margin) / 6.3));
  const lines = [""];
  for (const word of words.split(" ")) {
    if (lines[lines.length - 1].length + word.length >= most) lines.push("");
    lines[lines.length - 1] += `${lines[lines.length - 1] ? " " : ""}${word}`;
  }
  return lines;
}

/** The picture with a title above and a caption below, as SVG text with its size. */
export function asSvg(svg, title, caption) {
  const style = getComputedStyle(document.body);
  const paper = style.getPropertyValue("--paper").trim();
  const ink = style.getPropertyValue("--ink").trim();
  const soft = style.getPropertyValue("--soft").trim();
  const width = Number(svg.getAttribute("width")) + 2 * margin;
  const inner = Number(svg.getAttribute("height"));
  const titles = broken(title, width / 1.2);
  const captions = caption.flatMap((words) => broken(words, width));
  const head = margin + titles.length * 22;
  const height = head + inner + captions.length * line + 2 * margin;
  const out = document.createElementNS(space, "svg");
  out.setAttribute("xmlns", space);
  out.setAttribute("width", width);
  out.setAttribute("height", height);
  out.setAttribute("viewBox", `0 0 ${width} ${height}`);
  const name = document.createElementNS(space, "title");
  name.textContent = title;
  const desc = document.createElementNS(space, "desc");
  desc.textContent = caption.join(" ");
  const ground = document.createElementNS(space, "rect");
  ground.setAttribute("width", width);
  ground.setAttribute("height", height);
  ground.setAttribute("fill", paper);
  const drawn = inlined(svg);
  drawn.setAttribute("x", margin);
  drawn.setAttribute("y", head + 6);
  out.append(name, desc, ground,
    ...titles.map((words, index) => text(words, margin + 16 + index * 22, 17, 600, ink)),
    drawn,
    ...captions.map((words, index) => text(words, head + inner + margin + 12 + index * line, 12, 400, soft)));
  return { text: new XMLSerializer().serializeToString(out), width, height };
}

/** The same as PNG, at double resolution. */
export async function asPng(picture) {
  const image = new Image();
  image.src = `data:image/svg+xml;charset=utf-8,${encodeURIComponent(picture.text)}`;
  await image.decode();
  const canvas = document.createElement("canvas");
  canvas.width = picture.width * 2;
  canvas.height = picture.height * 2;
  canvas.getContext("2d").drawImage(image, 0, 0, canvas.width, canvas.height);
  return new Promise((done) => canvas.toBlob(done, "image/png"));
}

/** Starts a download. */
export function save(blob, fileName) {
  const link = document.createElement("a");
  link.href = URL.createObjectURL(blob);
  link.download = fileName;
  document.body.append(link);
  link.click();
  link.remove();
  setTimeout(() => URL.revokeObjectURL(link.href), 10000);
}
