package org.scalepan.words;

/**
 * A number in a message.
 *
 * @param printed as printed for English: a decimal point, no grouping
 */
public record Figure(String printed) {}
