package org.scalepan.web.route;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.scalepan.input.Input;
import org.scalepan.sheet.ExcelFile;
import org.scalepan.web.http.Problem;
import org.scalepan.web.http.ProblemException;

/** The formats an answer can have. */
public enum Format {
    JSON("json", "application/json"),
    CSV("csv", "text/csv"),
    MARKDOWN("md", "text/markdown"),
    HTML("html", "text/html"),
    SVG("svg", "image/svg+xml"),
    XML("xml", "application/xml"),
    BIBTEX("bibtex", "application/x-bibtex"),
    RIS("ris", "application/x-research-info-systems"),
    CSL("csl", "application/vnd.citationstyles.csl+json"),
    TEXT("text", "text/plain"),
    XLSX("xlsx", ExcelFile.MEDIA_TYPE);

    private final String id;
    private final String mediaType;

    Format(String id, String mediaType) {
        this.id = id;
        this.mediaType = mediaType;
    }

    String id() {
        return id;
    }

    public String mediaType() {
        return mediaType;
    }

    public static Format choose(Input parameters, String accept, List<Format> offered) {
        Optional<String> asked = parameters.raw("format");
        if (asked.isPresent()) {
            List<String> ids = offered.stream().map(Format::id).toList();
            String id = asked.get();
            if (!ids.contains(id)) {
                parameters.unknown("format", id, ids);
                return offered.get(0);
            }
            parameters.resolve("format", id);
            return offered.stream()
                    .filter(format -> format.id.equals(id))
                    .findFirst()
                    .orElseThrow();
        }
        if (accept.isBlank()) {
            return offered.get(0);
        }
        List<MediaRange> ranges =
                Stream.of(accept.split(",", -1)).limit(50).map(MediaRange::read).toList();
        Optional<Wish> wish = offered.stream()
                .flatMap(format -> Wish.of(format, ranges).stream())
                // The sort is stable: between equals the client's order wins, then the order of the offer.
                .sorted(Comparator.comparingDouble((Wish one) -> one.range().quality())
                        .thenComparingInt(one -> one.range().precision())
                        .reversed()
                        .thenComparingInt(one -> ranges.indexOf(one.range())))
                .findFirst();
        if (wish.isPresent()) {
            Format format = wish.get().format();
            if (format != offered.get(0)) {
                // A permalink is opened without the Accept header of the request.
                parameters.resolve("format", format.id);
            }
            return format;
        }
        throw new ProblemException(Problem.plain(
                406,
                "not-acceptable",
                "None of the wanted media types is offered",
                "this address answers as "
                        + String.join(
                                ", ", offered.stream().map(Format::mediaType).toList())));
    }

    /** The quality value of a format: that of the most specific media range that matches; 0 if none does. */
    private record Wish(Format format, MediaRange range) {
        static Optional<Wish> of(Format format, List<MediaRange> ranges) {
            return ranges.stream()
                    .filter(range -> range.includes(format.mediaType))
                    .max(Comparator.comparingInt(MediaRange::precision))
                    .filter(range -> range.quality > 0)
                    .map(range -> new Wish(format, range));
        }
    }

    /** A media range of an Accept header (RFC 9110, section 12.5.1). */
    private record MediaRange(String type, double quality) {
        static MediaRange read(String text) {
            String[] parts = text.strip().toLowerCase(Locale.ROOT).split(";", -1);
            double quality = 1;
            for (String written : parts) {
                // Split first and strip then: a pattern with blanks on both sides takes quadratic time over many
                // blanks.
                String part = written.strip();
                if (part.startsWith("q=")) {
                    quality = part.matches("q=(0(\\.\\d{0,3})?|1(\\.0{0,3})?)")
                            ? Double.parseDouble(part.substring(2))
                            : 0;
                }
            }
            return new MediaRange(parts[0].strip(), quality);
        }

        int precision() {
            return type.equals("*/*") ? 0 : type.endsWith("/*") ? 1 : 2;
        }

        boolean includes(String mediaType) {
            return type.equals("*/*")
                    || type.equals(mediaType)
                    || (type.endsWith("/*") && mediaType.startsWith(type.substring(0, type.length() - 1)));
        }
    }
}
