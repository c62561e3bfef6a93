package org.scalepan.words;

import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What differs between languages besides their words: articles, plurals, numbers, spaces before punctuation. */
enum Grammar {
    ENGLISH(Locale.ENGLISH) {
        @Override
        boolean isPlural(long number) {
            return number != 1;
        }

        @Override
        String figure(String printed) {
            return printed;
        }

        @Override
        String inForm(String text, String form) {
            return form.equals("capital") || form.equals("Alone") ? capital(text) : text;
        }

        @Override
        String joint(Listing.Joint joint) {
            return switch (joint) {
                case COMMA -> ", ";
                case SEMICOLON -> "; ";
                case AND -> " and ";
                case OR -> " or ";
            };
        }

        @Override
        String spaced(String template) {
            return template;
        }
    },
    /**
     * Source: Lexique des règles typographiques en usage à l'Imprimerie nationale (from memory): decimal comma, groups of three, a no-break
     * space before double punctuation marks, a narrow one before the per cent sign. Four digits stay together, as on the pages.
     */
    FRENCH(Locale.FRENCH) {
        @Override
        boolean isPlural(long number) {
            return Math.abs(number) > 1;
        }

        @Override
        String figure(String printed) {
            int point = printed.indexOf('.');
            String whole = point < 0 ? printed : printed.substring(0, point);
            String grouped =
                    whole.replace("-", "").length() < 5 ? whole : whole.replaceAll("(?<=\\d)(?=(\\d{3})+$)", NARROW);
            return point < 0 ? grouped : grouped + "," + printed.substring(point + 1);
        }

        @Override
        String inForm(String text, String form) {
            Matcher article = ARTICLE.matcher(text);
            boolean has = article.find();
            String bare = has ? text.substring(article.end()) : text;
            return switch (form) {
                case "alone" -> bare;
                case "capital" -> capital(text);
                case "Alone" -> capital(bare);
                case "of" -> has ? OF.get(article.group()) + bare : (beginsOpen(text) ? "d’" : "de ") + text;
                case "to" -> has ? TO.get(article.group()) + bare : "à " + text;
                case "in" -> has ? place(article.group(), bare) : "à " + text;
                default -> text;
            };
        }

        @Override
        String joint(Listing.Joint joint) {
            return switch (joint) {
                case COMMA -> ", ";
                case SEMICOLON -> NO_BREAK + "; ";
                case AND -> " et ";
                case OR -> " ou ";
            };
        }

        private static String place(String article, String bare) {
            return switch (article) {
                case "le " -> "au " + bare;
                case "les " -> Character.isUpperCase(bare.charAt(0)) ? "aux " + bare : "dans les " + bare;
                default -> "en " + bare;
            };
        }

        private static boolean beginsOpen(String text) {
            return !text.isEmpty() && "aeiouyàâéèêëîïôûœAEIOUÀÂÉÈÊËÎÏÔÛŒ".indexOf(text.charAt(0)) >= 0;
        }

        @Override
        String spaced(String template) {
            return template.replaceAll(" ([:;!?»])", NO_BREAK + "$1")
                    .replace("« ", "«" + NO_BREAK)
                    .replace(" %", NARROW + "%");
        }
    };

    private static final String NARROW = "\u202f";
    private static final String NO_BREAK = "\u00a0";
    private static final Pattern ARTICLE = Pattern.compile("^(?:le |la |les |l’)");
    private static final java.util.Map<String, String> OF =
            java.util.Map.of("le ", "du ", "la ", "de la ", "les ", "des ", "l’", "de l’");
    private static final java.util.Map<String, String> TO =
            java.util.Map.of("le ", "au ", "la ", "à la ", "les ", "aux ", "l’", "à l’");

    private final Locale locale;

    Grammar(Locale locale) {
        this.locale = locale;
    }

    abstract boolean isPlural(long number);

    /** A number that is printed with a decimal point and no grouping. */
    abstract String figure(String printed);

    /**
     * A text in a form that a template asks for.
     *
     * @param form {@code alone} without article, {@code of} and {@code to} with what means of it and to it, {@code in} of a place; with a capital: {@code
     *     capital}, {@code Alone}
     */
    abstract String inForm(String text, String form);

    abstract String joint(Listing.Joint joint);

    /** A template with the spaces of its language. */
    abstract String spaced(String template);

    final String capital(String text) {
        return text.isEmpty() ? text : text.substring(0, 1).toUpperCase(locale) + text.substring(1);
    }
}
