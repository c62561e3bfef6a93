/**
 * Renders answers: JSON, CSV, Markdown, HTML, SVG and the blocks of workbooks. It depends on estimates and library rows, but on no
 * question.
 */
@NullMarked
package org.scalepan.web.render;

import org.jspecify.annotations.NullMarked;
