/**
 * Reads what is asked, from query strings and JSON bodies alike: the comparison basis, products, farms and
 * herds. Every field error is collected.
 */
@NullMarked
package org.scalepan.web.read;

import org.jspecify.annotations.NullMarked;
