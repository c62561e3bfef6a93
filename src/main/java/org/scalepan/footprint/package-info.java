/**
 * A footprint is a distribution of one indicator on one functional unit. This layer converts between functional units and between warming
 * sets; how a footprint is obtained is left to the layers above.
 */
@NullMarked
package org.scalepan.footprint;

import org.jspecify.annotations.NullMarked;
