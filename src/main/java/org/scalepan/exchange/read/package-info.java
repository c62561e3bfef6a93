/** Reads questions from query strings and JSON bodies: the comparison basis, products, farms and herds. All field errors are collected. */
@NullMarked
package org.scalepan.exchange.read;

import org.jspecify.annotations.NullMarked;
