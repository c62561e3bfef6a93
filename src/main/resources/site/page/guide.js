// A guide is whole without this; here it gets its language, light or dark, and links that keep both.
import { frame } from "./frame.js";

document.querySelector('.top nav a[href="/guide"]').setAttribute("aria-current", "page");
frame();
