/** The questions that people ask, answered from footprints. */
@NullMarked
package org.scalepan.ask;

import org.jspecify.annotations.NullMarked;
