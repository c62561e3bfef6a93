package org.scalepan.production;

/** What a field of the records holds. */
public enum FieldKind {
    /** A number within limits, with or without decimals. */
    NUMBER,
    /** A number without decimals within limits, such as a year. */
    WHOLE_NUMBER,
    /** Free text. */
    TEXT,
    /** One word of a vocabulary: an id of the library, or a choice of the records. */
    WORD;

    /** True for what is computed with and has limits. */
    public boolean isNumber() {
        return this == NUMBER || this == WHOLE_NUMBER;
    }
}
