// Pages of text are complete without this script, which adds language, theme, and links that keep both.
import { frame } from "./frame.js";

frame();
