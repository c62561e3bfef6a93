package org.scalepan.cite;

import java.util.Set;

/**
 * The words CSL-JSON allows: the item types and item fields of the Citation Style Language 1.0.2 input schema
 * (csl-data.json, https://resource.citationstyles.org/schema/v1.0/input/json/csl-data.json).
 */
final class CslVocabulary {
    static final Set<String> TYPES = words("""
            article article-journal article-magazine article-newspaper bill book broadcast chapter classic collection
            dataset document entry entry-dictionary entry-encyclopedia event figure graphic hearing interview legal_case
            legislation manuscript map motion_picture musical_score pamphlet paper-conference patent performance
            periodical personal_communication post post-weblog regulation report review review-book software song speech
            standard thesis treaty webpage""");

    static final Set<String> FIELDS = words("""
            type id citation-key categories language journalAbbreviation shortTitle author chair collection-editor
            compiler composer container-author contributor curator director editor editorial-director executive-producer
            guest host interviewer illustrator narrator organizer original-author performer producer recipient
            reviewed-author script-writer series-creator translator accessed available-date event-date issued
            original-date submitted abstract annote archive archive_collection archive_location archive-place authority
            call-number chapter-number citation-number citation-label collection-number collection-title container-title
            container-title-short dimensions division DOI edition event event-title event-place
            first-reference-note-number genre ISBN ISSN issue jurisdiction keyword locator medium note number
            number-of-pages number-of-volumes original-publisher original-publisher-place original-title page page-first
            part part-title PMCID PMID printing publisher publisher-place references reviewed-genre reviewed-title scale
            section source status supplement title title-short URL version volume volume-title volume-title-short
            year-suffix custom""");

    static final Set<String> NAME_PARTS = words("""
            family given dropping-particle non-dropping-particle suffix comma-suffix static-ordering literal
            parse-names""");

    private CslVocabulary() {}

    private static Set<String> words(String text) {
        return Set.of(text.split("\\s+"));
    }
}
