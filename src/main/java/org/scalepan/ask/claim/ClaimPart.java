package org.scalepan.ask.claim;

/**
 * One of several claims that a text makes.
 *
 * @param words the part of the text that makes it; with what another part says in its place where it leaves out what it compares
 * @param read what was understood of it
 */
public record ClaimPart(String words, ParsedClaim read) {}
