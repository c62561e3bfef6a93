// A guide is complete without this script, which adds language, theme, and links that keep both.
import { frame } from "./frame.js";

document.querySelector('.top nav a[href="/guide"]').setAttribute("aria-current", "page");
frame();
