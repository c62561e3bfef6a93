/**
 * Renders answers: JSON, CSV, Markdown, HTML, SVG and the blocks of workbooks. It knows estimates and
 * library rows, but no question.
 */
@NullMarked
package org.scalepan.web.render;

import org.jspecify.annotations.NullMarked;
