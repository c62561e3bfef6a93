package org.scalepan.ask.programme;

import java.util.OptionalDouble;

/**
 * The asker's own money, in one currency; nothing is converted, discounted or checked. Prices of what is displaced are part of the
 * {@link Baseline}.
 *
 * @param currency three capital letters
 * @param product price per kilogram of the product, in the programme's unit
 * @param cost what the programme costs a year
 */
public record Prices(String currency, OptionalDouble product, OptionalDouble cost) {}
