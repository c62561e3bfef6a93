package org.scalepan.ask;

/** What a product is used as. Food and feed are different questions: what feeds a hen displaces nothing on a plate. */
public enum Use {
    FOOD("food"),
    FEED("feed");

    private final String id;

    Use(String id) {
        this.id = id;
    }

    public String id() {
        return id;
    }
}
