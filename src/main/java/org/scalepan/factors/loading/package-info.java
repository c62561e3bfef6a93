/**
 * Reads and checks the data package: schema, references, consistency between rows, overlay of a user's own
 * rows.
 */
@NullMarked
package org.scalepan.factors.loading;

import org.jspecify.annotations.NullMarked;
