package org.scalepan.words;

/**
 * The name of a thing. English is the library's own; another language has it in its message file of names, with the article it has in
 * a sentence, or else says the English one.
 *
 * @param key where another language has it: {@code product.mealworm}; empty for what has one name only, such as somebody's farm
 * @param english the name in English, what stands behind it included
 * @param behind the key of what stands behind it in brackets; empty for nothing
 */
public record DisplayName(String key, String english, String behind) {
    public static DisplayName of(String key, String english) {
        return new DisplayName(key, english, "");
    }

    /** The name that somebody gave. */
    public static DisplayName given(String name) {
        return new DisplayName("", name, "");
    }

    public String in(Language language) {
        return language.alone(this);
    }
}
