package org.scalepan.ask.nutrition;

/** What a reader must know about how a single figure came about. */
public enum Caveat {
    RANGE_ONLY(
            "range-only",
            "Some sources print a range without a central value; the geometric middle of the range stands as the value, as"
                    + " everywhere in this service."),
    BY_DRY_MATTER(
            "by-dry-matter",
            "Some figures are carried between fresh weight and dry matter by the published dry matter."),
    CRUDE_RESTATED(
            "crude-restated",
            "Some protein contents are printed with another nitrogen factor than 6.25; they are restated as N × 6.25."),
    ENERGY_COMPUTED(
            "energy-computed",
            "Some energy is not measured but computed from protein and fat with the general factors of Regulation (EU) No 1169/2011"
                    + " (/v1/food-energy-factors)."),
    WITHOUT_CARBOHYDRATE(
            "energy-without-carbohydrate",
            "Some computed energy leaves out carbohydrate, of which no content is published: it is a lower bound, and what"
                    + " stands per 100 kcal of it an upper one.");

    private final String code;
    private final String text;

    Caveat(String code, String text) {
        this.code = code;
        this.text = text;
    }

    public String code() {
        return code;
    }

    public String text() {
        return text;
    }
}
