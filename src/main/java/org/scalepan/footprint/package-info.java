/**
 * A footprint is a distribution of one indicator on one functional unit. This layer knows how functional units hang together
 * and how warming sets are exchanged; what the footprint is made from is the business of the layer above.
 */
@NullMarked
package org.scalepan.footprint;

import org.jspecify.annotations.NullMarked;
