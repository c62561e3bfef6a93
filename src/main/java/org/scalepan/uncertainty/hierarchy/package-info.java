/**
 * Pooling by a normal-normal random-effects hierarchy with a prior on the standard deviation between studies: its posterior, what follows
 * for the mean and for a further study, draws that share their scores with other pools, and how often intervals hold a study left out.
 */
@org.jspecify.annotations.NullMarked
package org.scalepan.uncertainty.hierarchy;
