package org.scalepan.factors;

/**
 * Which library an answer was computed from.
 *
 * @param version the content of {@code factors/VERSION}, followed by {@code +own} when a user's rows overlay it
 * @param digest the first 16 hex digits of the SHA-256 over the canonical content (every cell of every table, in order)
 * @param ownRows how many of the user's own rows are in it
 */
public record LibraryVersion(String version, String digest, int ownRows) {}
