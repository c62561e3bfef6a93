/**
 * The HTTP layer: one folder for each question, on top of {@code http}, {@code read}, {@code render} and {@code route}; {@code server}
 * assembles them.
 */
@NullMarked
package org.scalepan.web;

import org.jspecify.annotations.NullMarked;
