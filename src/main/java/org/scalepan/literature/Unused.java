package org.scalepan.literature;

import org.scalepan.factors.PublishedResult;

/** A published result of the product that the answer does not use, and why. */
public record Unused(PublishedResult result, String reason) {}
