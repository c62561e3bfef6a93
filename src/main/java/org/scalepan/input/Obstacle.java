package org.scalepan.input;

/**
 * Why records or a question cannot be answered as they are: two entries contradict each other, or one needs another.
 *
 * @param field the entry to change, such as {@code manure}
 * @param text what is wrong and what would be right
 */
public record Obstacle(String field, String text) {}
