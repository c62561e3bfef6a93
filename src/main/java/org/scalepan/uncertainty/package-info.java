/** What is not known exactly: distributions, draws, quantiles, error propagation and the pooling of studies. */
@org.jspecify.annotations.NullMarked
package org.scalepan.uncertainty;
