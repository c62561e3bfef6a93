package org.scalepan.web;

import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.exc.StreamConstraintsException;

/** How much a JSON text may hold. The parser keeps the limits; what it says when one is passed is said here in the words of who sends. */
final class JsonLimits extends StreamReadConstraints {
    static final int DEEPEST = 16;
    static final int MOST_TOKENS = 50_000;
    static final int LONGEST_NUMBER = 40;
    static final int LONGEST_TEXT = 10_000;
    static final int LONGEST_NAME = 100;

    private static final long serialVersionUID = 1L;

    JsonLimits() {
        super(DEEPEST, -1, LONGEST_NUMBER, LONGEST_TEXT, LONGEST_NAME, MOST_TOKENS);
    }

    @Override
    public void validateNestingDepth(int depth) throws StreamConstraintsException {
        keep(depth <= DEEPEST, "objects and lists in the body may lie at most " + DEEPEST + " deep in each other");
    }

    @Override
    public void validateTokenCount(long count) throws StreamConstraintsException {
        keep(count <= MOST_TOKENS, "the body may have at most " + MOST_TOKENS + " names, values and brackets");
    }

    @Override
    public void validateFPLength(int length) throws StreamConstraintsException {
        validateIntegerLength(length);
    }

    @Override
    public void validateIntegerLength(int length) throws StreamConstraintsException {
        keep(length <= LONGEST_NUMBER, "a number in the body may have at most " + LONGEST_NUMBER + " digits");
    }

    @Override
    public void validateStringLength(int length) throws StreamConstraintsException {
        keep(length <= LONGEST_TEXT, "a text in the body may have at most " + LONGEST_TEXT + " characters");
    }

    @Override
    public void validateNameLength(int length) throws StreamConstraintsException {
        keep(length <= LONGEST_NAME, "a name in the body may have at most " + LONGEST_NAME + " characters");
    }

    private static void keep(boolean within, String limit) throws StreamConstraintsException {
        if (!within) {
            throw new StreamConstraintsException(limit);
        }
    }
}
