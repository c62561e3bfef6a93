/** The records of a farm or herd as they are written down, and how they are read. */
@NullMarked
package org.scalepan.production.records;

import org.jspecify.annotations.NullMarked;
