/**
 * The HTTP layer: one folder for each question, on {@code http}, {@code read}, {@code render} and {@code
 * route}; {@code server} puts them together.
 */
@NullMarked
package org.scalepan.web;

import org.jspecify.annotations.NullMarked;
