/**
 * The factor library: an open dataset of CSV tables, checked against its own Table Schema and read into immutable records.
 * Every number that the service prints comes from a row here.
 */
@NullMarked
package org.scalepan.factors;

import org.jspecify.annotations.NullMarked;
